package org.standoff.launch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * The PostgreSQL that stays behind when the service is killed. Left alone it holds its data folder,
 * and the next start waits for nothing until it gives up.
 */
final class OrphanServer {

  private static final long END_LIMIT_S = 20;

  private OrphanServer() {}

  /** Ends the server that holds this cluster folder. The caller owns the folder. */
  static void endIn(Path cluster) throws IOException {
    Path note = cluster.resolve("postmaster.pid");
    if (!Files.exists(note)) {
      return;
    }
    List<String> lines = Files.readAllLines(note);
    if (lines.isEmpty()) {
      return;
    }
    ProcessHandle.of(Long.parseLong(lines.get(0).strip()))
        .filter(process -> serves(process, cluster))
        .ifPresent(OrphanServer::end);
  }

  /** A number in a left-over file may meanwhile be that of any other process. */
  private static boolean serves(ProcessHandle process, Path cluster) {
    ProcessHandle.Info info = process.info();
    boolean postgres =
        info.command()
            .map(Path::of)
            .map(Path::getFileName)
            .map(Path::toString)
            .orElse("")
            .startsWith("postgres");
    return postgres
        && info.commandLine().map(line -> line.contains(cluster.toString())).orElse(true);
  }

  private static void end(ProcessHandle server) {
    server.destroy();
    try {
      server.onExit().get(END_LIMIT_S, TimeUnit.SECONDS);
    } catch (TimeoutException stubborn) {
      server.destroyForcibly();
    } catch (ExecutionException failure) {
      throw new IllegalStateException("An orphaned PostgreSQL could not be awaited", failure);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
