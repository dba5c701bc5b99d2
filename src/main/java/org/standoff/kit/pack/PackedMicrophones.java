package org.standoff.kit.pack;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standoff.catalogue.ItemId;
import org.standoff.kit.Sql;

/** The microphones that packs of houses have, by the paths of their files. */
public final class PackedMicrophones {

  private static final String FOLDER = "microphones/";
  private static final String EXTENSION = ".yaml";

  private PackedMicrophones() {}

  /** Path of the file of a microphone in its pack. */
  static String pathOf(ItemId microphone) {
    return FOLDER + microphone.item() + EXTENSION;
  }

  /** Ids of the microphones among the files of a pack. */
  static Stream<String> of(String pack, Collection<String> paths) {
    return paths.stream()
        .filter(path -> path.startsWith(FOLDER) && path.endsWith(EXTENSION))
        .map(
            path ->
                pack + "/" + path.substring(FOLDER.length(), path.length() - EXTENSION.length()));
  }

  /**
   * Those of some microphones of packs of houses that are not in them any more. The packs stay as
   * they are to the end of the transaction; one that is being changed is waited for.
   *
   * @param microphones ids
   */
  public static Set<String> lost(Connection connection, Set<String> microphones)
      throws SQLException {
    Set<String> packs =
        microphones.stream()
            .map(id -> ItemId.parse(id).orElseThrow().pack())
            .collect(Collectors.toCollection(TreeSet::new));
    List<String> kept =
        Sql.list(
                connection,
                """
                select id, array(select jsonb_object_keys(files)) as paths
                from pack
                where id = any(?) and files is not null
                order by id for share
                """,
                row ->
                    of(row.getString("id"), List.of((String[]) row.getArray("paths").getArray())),
                (Object) packs.toArray(String[]::new))
            .stream()
            .flatMap(ids -> ids)
            .toList();
    Set<String> lost = new TreeSet<>(microphones);
    lost.removeAll(Set.copyOf(kept));
    return lost;
  }
}
