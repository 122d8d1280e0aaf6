package lastinch.cases.format;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Puts a new text in a file's place, whole or not at all. */
public final class Saving {
  private final Sink sink;

  private Saving(Sink sink) {
    this.sink = sink;
  }

  /** Where the bytes go; a seam for tests of a full disk. */
  @FunctionalInterface
  interface Sink {
    /**
     * Writes all bytes to a new file and waits until they are on the disk.
     *
     * @throws IOException when not all of them could be written
     */
    void write(Path file, byte[] bytes) throws IOException;
  }

  /** Saving to the disk. */
  public static Saving toDisk() {
    return new Saving(Saving::throughTheChannel);
  }

  /** Saving through something that may fail. */
  static Saving through(Sink sink) {
    return new Saving(sink);
  }

  /**
   * Writes a new file beside the old one, waits for the disk, and puts it in the old one's place.
   *
   * @throws IOException when that fails; the old file then stands as it was and nothing lies beside
   */
  public void save(Path file, byte[] bytes) throws IOException {
    Path target = Files.isSymbolicLink(file) ? file.toRealPath() : file;
    Path folder = target.toAbsolutePath().getParent();
    Path fresh = Files.createTempFile(folder, "." + target.getFileName(), ".new");
    try {
      sink.write(fresh, bytes);
      keepRights(target, fresh);
      move(fresh, target);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }

  private static void throughTheChannel(Path file, byte[] bytes) throws IOException {
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
      ByteBuffer left = ByteBuffer.wrap(bytes);
      while (left.hasRemaining()) {
        channel.write(left);
      }
      channel.force(true);
    }
  }

  private static void keepRights(Path old, Path fresh) throws IOException {
    if (Files.exists(old) && old.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      Files.setPosixFilePermissions(fresh, Files.getPosixFilePermissions(old));
    }
  }

  private static void move(Path fresh, Path target) throws IOException {
    try {
      Files.move(
          fresh, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(fresh, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
