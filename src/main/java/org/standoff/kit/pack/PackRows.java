package org.standoff.kit.pack;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standoff.kit.Sql;

/** The rows of packs. */
final class PackRows {

  private static final JsonMapper JSON = new JsonMapper();
  private static final TypeReference<Map<String, String>> TEXTS = new TypeReference<>() {};

  private PackRows() {}

  /** Revision of every pack, those that were taken back included. */
  static Map<String, Long> revisions(Connection connection) throws SQLException {
    Map<String, Long> revisions = new LinkedHashMap<>();
    Sql.list(
            connection,
            "select id, revision from pack order by id",
            row -> Map.entry(row.getString("id"), row.getLong("revision")))
        .forEach(head -> revisions.put(head.getKey(), head.getValue()));
    return revisions;
  }

  static List<HousePack> named(Connection connection, List<String> ids) throws SQLException {
    return Sql.list(
        connection,
        "select * from pack where id = any(?) order by id",
        PackRows::read,
        (Object) ids.toArray(String[]::new));
  }

  /** The pack, locked to the end of the transaction. */
  static Optional<HousePack> lock(Connection connection, String id) throws SQLException {
    return Sql.first(connection, "select * from pack where id = ? for update", PackRows::read, id);
  }

  /**
   * Puts a pack in the place of the one that was there, if one was; empty where another house has
   * it, and has not taken it back.
   *
   * @param files null to take it back
   */
  static Optional<HousePack> write(
      Connection connection, String id, String house, @Nullable Map<String, String> files)
      throws SQLException {
    return Sql.first(
        connection,
        """
            insert into pack (id, house, files) values (?, ?, ?::jsonb)
            on conflict (id) do update
            set house = excluded.house, files = excluded.files, revision = pack.revision + 1,
                changed_at = kit_now()
            where pack.house = excluded.house or pack.files is null
            returning *
            """,
        PackRows::read,
        id,
        house,
        files == null ? Optional.empty() : json(files));
  }

  private static HousePack read(ResultSet row) throws SQLException {
    @Nullable String files = row.getString("files");
    return new HousePack(
        row.getString("id"),
        row.getString("house"),
        files == null ? Map.of() : texts(files),
        files == null,
        row.getLong("revision"));
  }

  private static Map<String, String> texts(String json) {
    try {
      return JSON.readValue(json, TEXTS);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("texts that this service wrote", impossible);
    }
  }

  private static String json(Map<String, String> texts) {
    try {
      return JSON.writeValueAsString(texts);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("texts can always be written", impossible);
    }
  }
}
