package org.standoff.launch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * What stays behind of the PostgreSQL when the service, or both, are killed: the server, sessions
 * that are still at work, or a dead process that nobody has buried yet. Left alone each of them
 * holds the data folder, and the next start waits for nothing until it gives up.
 */
final class OrphanServer {

  private static final long END_LIMIT_S = 20;

  private OrphanServer() {}

  /**
   * Ends what holds this cluster folder. The caller owns the folder.
   *
   * @param programs where the server's programs lie; nobody else runs these
   */
  static void endIn(Path cluster, Path programs) throws IOException {
    noted(cluster)
        .filter(process -> isDead(process) || serves(process, cluster))
        .ifPresent(OrphanServer::end);
    ProcessHandle.allProcesses()
        .filter(process -> program(process).filter(path -> path.startsWith(programs)).isPresent())
        .forEach(OrphanServer::end);
  }

  /** The server that runs in this cluster folder, if one does. */
  static Optional<ProcessHandle> in(Path cluster) throws IOException {
    return noted(cluster).filter(process -> serves(process, cluster));
  }

  /** Whether a process is at work, and not one that only waits to be buried. */
  static boolean isRunning(ProcessHandle process) {
    return process.isAlive() && !isDead(process);
  }

  private static Optional<ProcessHandle> noted(Path cluster) throws IOException {
    Path note = cluster.resolve("postmaster.pid");
    if (!Files.exists(note)) {
      return Optional.empty();
    }
    List<String> lines = Files.readAllLines(note);
    return lines.isEmpty()
        ? Optional.empty()
        : ProcessHandle.of(Long.parseLong(lines.get(0).strip()));
  }

  /** PostgreSQL takes a process that nobody has waited for yet for one that runs. */
  private static boolean isDead(ProcessHandle process) {
    return program(process).isEmpty() && process.info().commandLine().isEmpty();
  }

  /** A number in a left-over file may meanwhile be that of any other process. */
  private static boolean serves(ProcessHandle process, Path cluster) {
    boolean postgres =
        program(process)
            .map(Path::getFileName)
            .map(Path::toString)
            .orElse("")
            .startsWith("postgres");
    return postgres
        && process.info().commandLine().map(line -> line.contains(cluster.toString())).orElse(true);
  }

  private static Optional<Path> program(ProcessHandle process) {
    return process.info().command().map(Path::of);
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
