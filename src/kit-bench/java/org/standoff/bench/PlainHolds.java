package org.standoff.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The transaction of a hold, statement by statement as the service sends it, driven by pgbench with
 * no service between.
 */
final class PlainHolds {

  /** One unit of a random model in a random house for two days of the next three hundred. */
  private static final String SCRIPT =
      """
      \\set house random(0, 19)
      \\set model random(0, 499)
      \\set day random(60, 360)
      \\set key random(1, 1000000000000)
      select id, title, zone, currency, hours, turn_round_min, drop_box, weekend_days,
          minimum_charge_minor, revision, stock_revision
      from house where id in ('bench-' || :house) order by id;
      begin;
      select set_config('standoff.actor', 'plain', true), set_config('lock_timeout', '10s', true),
          kit_now() as now, exists (select from hold where state in ('waiting', 'tentative')
              and expires_at <= kit_now())
          or exists (select from idempotency_key where made_at <= kit_now() - interval '24 hours');
      select pg_try_advisory_xact_lock(hashtextextended('plain ' || :key, 1));
      select fingerprint, hold, answer from idempotency_key where caller = 'plain'
          and key = :key::text and made_at > kit_now() - interval '24 hours';
      select id from hold where desk = 'plain' and reference = :key::text;
      select pg_advisory_xact_lock(key) from (select distinct hashtextextended(name, 0) as key
          from unnest(array['bench-' || :house || ' bench/m-' || :model]) as name order by key) w;
      select u.id as unit from unit u
          where u.house = 'bench-' || :house and u.microphone = 'bench/m-' || :model
              and u.state = 'available' and u.matched_group is null
              and not exists (select from hold_unit b where b.unit = u.id and b.occupies
                  and b.busy && tstzrange(date_trunc('hour', now()) + make_interval(days => :day),
                      date_trunc('hour', now()) + make_interval(days => :day + 2)))
              and not exists (select from overdue_unit late where late.unit = u.id)
          limit 1 \\gset
      with made as (
          insert into hold (id, desk, reference, held_from, held_to, state, lifetime_min,
              expires_at, made_at, changed_at)
          values (md5('plain ' || :key)::uuid, 'plain', :key::text,
              date_trunc('hour', now()) + make_interval(days => :day),
              date_trunc('hour', now()) + make_interval(days => :day + 2), 'tentative', 1440,
              now() + interval '1 day', now(), now())
      ), lines as (
          insert into hold_line (hold, line, house, microphone, quantity, matched)
          values (md5('plain ' || :key)::uuid, 0, 'bench-' || :house, 'bench/m-' || :model, 1, false)
      )
      insert into hold_unit (hold, line, unit, house, microphone, day_rate_minor, busy)
      values (md5('plain ' || :key)::uuid, 0, :unit, 'bench-' || :house, 'bench/m-' || :model, 1000,
          tstzrange(date_trunc('hour', now()) + make_interval(days => :day),
              date_trunc('hour', now()) + make_interval(days => :day + 2)));
      insert into idempotency_key (caller, key, fingerprint, hold, answer, made_at)
      values ('plain', :key::text, sha256('body'), md5('plain ' || :key)::uuid, repeat('x', 600),
          now());
      commit;
      """;

  private static final Pattern TPS = Pattern.compile("tps = ([0-9.]+)");

  private PlainHolds() {}

  /** Transactions per second; empty where there is no pgbench. */
  static Optional<Double> perSecond(int port, Path work, int clients, int seconds)
      throws IOException, InterruptedException {
    Path script = Files.writeString(work.resolve("hold.sql"), SCRIPT);
    Path output = work.resolve("pgbench.log");
    ProcessBuilder builder =
        new ProcessBuilder(
            List.of(
                "pgbench",
                "--no-vacuum",
                "--protocol=prepared",
                "--client=" + clients,
                "--jobs=2",
                "--time=" + seconds,
                "--file=" + script,
                "--host=127.0.0.1",
                "--port=" + port,
                "--username=postgres",
                "postgres"));
    builder.environment().put("PGPASSWORD", "postgres");
    Process process;
    try {
      process = builder.redirectErrorStream(true).redirectOutput(output.toFile()).start();
    } catch (IOException missing) {
      return Optional.empty();
    }
    int exit = process.waitFor();
    String told = Files.readString(output, StandardCharsets.UTF_8);
    Matcher tps = TPS.matcher(told);
    if (exit != 0 || !tps.find()) {
      throw new IllegalStateException(told);
    }
    return Optional.of(Double.parseDouble(tps.group(1)));
  }
}
