package org.standoff.kit.stock;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.postgresql.PGConnection;
import org.postgresql.copy.PGCopyOutputStream;

/** Brings a kit to the database as a temporary table {@code told}, by its fastest way in. */
final class ToldUnits {

  private static final String TABLE =
      """
      create temporary table told (
          serial            text collate "C",
          microphone        text,
          matched_group     text,
          state             text,
          day_rate_minor    bigint,
          note              text,
          replacement_minor bigint,
          match_within_db   double precision
      ) on commit drop
      """;

  private static final String NOTHING = "\\N";

  private ToldUnits() {}

  static void load(Connection connection, List<KitUnit> kit) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(TABLE);
    }
    PGConnection server = connection.unwrap(PGConnection.class);
    try (Writer out =
        new OutputStreamWriter(new PGCopyOutputStream(server, "copy told from stdin"), UTF_8)) {
      for (KitUnit unit : kit) {
        write(unit, out);
      }
    } catch (IOException broken) {
      if (broken.getCause() instanceof SQLException refused) {
        throw refused;
      }
      throw new UncheckedIOException(broken);
    }
    try (Statement statement = connection.createStatement()) {
      statement.execute("analyze told");
    }
  }

  private static void write(KitUnit unit, Writer out) throws IOException {
    cell(unit.serial(), out);
    out.write('\t');
    cell(unit.microphone(), out);
    out.write('\t');
    cell(unit.matchedGroup(), out);
    out.write('\t');
    out.write(unit.state().word());
    out.write('\t');
    out.write(Long.toString(unit.dayRateMinor()));
    out.write('\t');
    cell(unit.note(), out);
    out.write('\t');
    number(unit.replacementMinor(), out);
    out.write('\t');
    number(unit.matchWithinDb(), out);
    out.write('\n');
  }

  private static void number(@Nullable Number number, Writer out) throws IOException {
    out.write(number == null ? NOTHING : number.toString());
  }

  /** As the text format of COPY wants it. */
  private static void cell(@Nullable String text, Writer out) throws IOException {
    if (text == null) {
      out.write(NOTHING);
      return;
    }
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '\\' -> out.write("\\\\");
        case '\n' -> out.write("\\n");
        case '\r' -> out.write("\\r");
        case '\t' -> out.write("\\t");
        default -> out.write(c);
      }
    }
  }
}
