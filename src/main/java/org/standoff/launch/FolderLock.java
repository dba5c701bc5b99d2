package org.standoff.launch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Says that one process owns a data folder. The system gives the lock up when the process ends in
 * whatever way, so a PostgreSQL found under a free lock is an orphan and never somebody's server.
 */
final class FolderLock implements AutoCloseable {

  private final FileChannel channel;

  private FolderLock(FileChannel channel) {
    this.channel = channel;
  }

  /** Takes the folder, or says that somebody else has it. */
  static FolderLock on(Path folder) throws IOException {
    FileChannel channel =
        FileChannel.open(
            folder.resolve("owner.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    try {
      if (channel.tryLock() != null) {
        return new FolderLock(channel);
      }
    } catch (OverlappingFileLockException heldByThisProcess) {
      channel.close();
      throw DatabaseUnavailable.inUse(folder.toString());
    }
    channel.close();
    throw DatabaseUnavailable.inUse(folder.toString());
  }

  @Override
  public void close() {
    try {
      channel.close();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
