package org.standoff.launch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The PostgreSQL that runs in a folder, and how to run it again. */
final class ServerProcess {

  private static final List<String> IN_A_USER_NAMESPACE = List.of("unshare", "-U");

  /** How long its own starter waits for it; one that recovers for longer is left to do so. */
  private static final String WAIT_S = "60";

  private final Path cluster;
  private final Path programs;
  private final List<String> starter;
  private Optional<ProcessHandle> server;

  /**
   * @param cluster where its data are; it runs
   * @param programs where its programs lie
   * @param asRoot whether root started it, whom PostgreSQL refuses outside of a user namespace
   * @throws IOException where no server is found there
   */
  ServerProcess(Path cluster, Path programs, boolean asRoot) throws IOException {
    this.cluster = cluster;
    this.programs = programs;
    this.server = OrphanServer.in(cluster);
    Path program =
        server
            .flatMap(process -> process.info().command())
            .map(Path::of)
            .orElseThrow(() -> new IOException("No server is found in " + cluster));
    List<String> words = new ArrayList<>(asRoot ? IN_A_USER_NAMESPACE : List.of());
    String name = String.valueOf(program.getFileName()).replace("postgres", "pg_ctl");
    words.addAll(
        List.of(
            program.resolveSibling(name).toString(), "-D", cluster.toString(), "-w", "-t", WAIT_S));
    // takes the arguments that the server noted when it was run first
    words.add("restart");
    this.starter = List.copyOf(words);
  }

  /** False once it ended, in whatever way. */
  boolean isRunning() {
    return server.filter(OrphanServer::isRunning).isPresent();
  }

  /**
   * Runs it again; returns when it has recovered, or can't.
   *
   * @throws IOException where its programs can't be run
   */
  void runAgain() throws IOException, InterruptedException {
    OrphanServer.endIn(cluster, programs);
    new ProcessBuilder(starter)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start()
        .waitFor();
    server = OrphanServer.in(cluster);
  }
}
