package org.standoff.kit.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.SQLWarning;
import java.sql.Statement;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.OwnDatabase;

/**
 * What the triggers of a kit read grows with the kit and not with its square, whatever the planner
 * believed of it. Rows are counted, as the server's own auto_explain tells them.
 */
class KitPlansTest {
  private static final int UNITS = 2000;
  private static final int SHELVES = 200;

  /** A sum of a handful of triggers, each with a handful of passes; a square would be 2000. */
  private static final long MOST_ROWS_PER_UNIT = 60;

  private static final Pattern VISITED =
      Pattern.compile(
          "actual rows=(?<rows>\\d+) loops=(?<loops>\\d+)"
              + "|Rows Removed by (?:Join )?Filter: (?<removed>\\d+)");

  private OwnDatabase database;
  private Connection connection;

  @AfterEach
  void stop() {
    database.close();
  }

  /** A database for each, because what the planner believes rests on what there is. */
  @BeforeEach
  void countRows() throws SQLException {
    database = OwnDatabase.make();
    connection = database.pool(1).getConnection();
    run("load 'auto_explain'");
    run("set auto_explain.log_min_duration = 0");
    run("set auto_explain.log_nested_statements = on");
    run("set auto_explain.log_analyze = on");
    run("set auto_explain.log_timing = off");
    run("set auto_explain.log_level = notice");
  }

  @Test
  void aConnectionThatChangedOneUnitReadsTheKitThatFollowsOnce() throws SQLException {
    house("one-first");
    add("one-first", "A", 1);
    run("update unit set day_rate_minor = 2 where house = 'one-first'");

    house("kit-next");
    assertThat(add("kit-next", "B", UNITS)).isBetween((long) UNITS, UNITS * MOST_ROWS_PER_UNIT);
    assertThat(run("update unit set day_rate_minor = 3 where house = 'kit-next'"))
        .isBetween((long) UNITS, UNITS * MOST_ROWS_PER_UNIT);
  }

  @Test
  void aConnectionThatChangedSomeOfAFewUnitsReadsTheKitThatFollowsOnce() throws SQLException {
    house("few-first");
    add("few-first", "A", 60);
    run("analyze unit");
    for (int revision = 2; revision < 10; revision++) {
      run("update unit set day_rate_minor = %d where serial = 'A1'".formatted(revision));
    }

    house("kit-next");
    assertThat(add("kit-next", "B", UNITS)).isBetween((long) UNITS, UNITS * MOST_ROWS_PER_UNIT);
  }

  @Test
  void aKitThatComesAgainAfterItWasTakenBackIsReadOnce() throws SQLException {
    house("taken-back");
    connection.setAutoCommit(false);
    add("taken-back", "A", UNITS);
    connection.rollback();
    connection.setAutoCommit(true);
    run("analyze unit");

    assertThat(add("taken-back", "A", UNITS)).isBetween((long) UNITS, UNITS * MOST_ROWS_PER_UNIT);
  }

  @Test
  void whoHoldsTheUnitsOfAKitIsFoundWithoutReadingAllPromisesForEach() throws SQLException {
    house("one-first");
    add("one-first", "A", 1);
    promise("one-first", "00000000-0000-7000-8000-000000000001");
    run("analyze hold_unit");
    run("update unit set state = 'in-repair' where house = 'one-first'");

    house("kit-next");
    add("kit-next", "B", UNITS);
    promise("kit-next", "00000000-0000-7000-8000-000000000002");
    assertThat(run("update unit set state = 'in-repair' where house = 'kit-next'"))
        .isBetween((long) UNITS, UNITS * MOST_ROWS_PER_UNIT);
  }

  private void promise(String house, String hold) throws SQLException {
    run(
        "insert into hold (id, desk, reference, held_from, held_to, state)"
            + " values ('%1$s', 'desk', '%1$s', now(), now() + interval '1 day', 'confirmed')"
                .formatted(hold));
    run(
        "insert into hold_unit (hold, line, unit, house, microphone, busy)"
            + " select '%s', 0, id, house, microphone, tstzrange(now(), now() + interval '1 day')"
                .formatted(hold)
            + " from unit where house = '%s'".formatted(house));
  }

  private void house(String id) throws SQLException {
    run("insert into house (id, title, zone) values ('%s', 'Test house', 'UTC')".formatted(id));
  }

  private long add(String house, String prefix, int units) throws SQLException {
    return run(
        """
        insert into unit (house, serial, microphone, state, day_rate_minor)
        select '%s', '%s' || n, 'm/' || n %% %d, 'available', 1 from generate_series(1, %d) as n
        """
            .formatted(house, prefix, SHELVES, units));
  }

  /** Runs it, and says how many rows it and its triggers went through. */
  private long run(String sql) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(sql);
      long rows = 0;
      for (SQLWarning told = statement.getWarnings(); told != null; told = told.getNextWarning()) {
        rows += visited(told.getMessage());
      }
      return rows;
    }
  }

  private static long visited(String plan) {
    long rows = 0;
    long loops = 1;
    Matcher found = VISITED.matcher(plan);
    while (found.find()) {
      if (found.group("removed") == null) {
        loops = Long.parseLong(found.group("loops"));
        rows += Long.parseLong(found.group("rows")) * loops;
      } else {
        rows += Long.parseLong(found.group("removed")) * loops;
      }
    }
    return rows;
  }
}
