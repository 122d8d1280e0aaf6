package lastinch.ui.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All files or none. */
class OutFolderTest {
  @TempDir Path place;

  private long files() throws IOException {
    try (Stream<Path> all = Files.walk(place)) {
      return all.filter(p -> !p.equals(place)).count();
    }
  }

  @Test
  void aFullDiskHalfWayLeavesNothing() throws IOException {
    try (OutFolder folder = OutFolder.prepare(place.resolve("out"))) {
      folder.add("one.txt", f -> Files.writeString(f, "one"));
      assertThatThrownBy(
              () ->
                  folder.add(
                      "two.txt",
                      f -> {
                        Files.writeString(f, "half");
                        throw new IOException("No space left on device");
                      }))
          .isInstanceOfSatisfying(
              OutFolder.Unwritable.class,
              e -> assertThat(e.sentence()).isEqualTo("cli.cannot.full"));
    }
    assertThat(files()).isZero();
  }

  @Test
  void oldFilesStayUntilTheNewOnesAreComplete() throws IOException {
    Path old = place.resolve("one.txt");
    Files.writeString(old, "old");
    try (OutFolder folder = OutFolder.prepare(place)) {
      folder.add("one.txt", f -> Files.writeString(f, "new"));
      assertThat(old).hasContent("old");
      assertThat(folder.finish()).containsExactly("one.txt");
    }
    assertThat(old).hasContent("new");
    assertThat(files()).isEqualTo(1);
  }

  @Test
  void everyReasonHasItsOwnSentence() {
    Path p = Path.of("out");
    assertThat(new OutFolder.Unwritable(p, new AccessDeniedException("out")).sentence())
        .isEqualTo("cli.cannot.denied");
    assertThat(
            new OutFolder.Unwritable(
                    p, new FileSystemException("out", null, "No space left on device"))
                .sentence())
        .isEqualTo("cli.cannot.full");
    OutFolder.Unwritable other =
        new OutFolder.Unwritable(p, new FileSystemException("out", null, "Input/output error"));
    assertThat(other.sentence()).isEqualTo("cli.cannot.other");
    assertThat(other.reason()).isEqualTo("Input/output error");
  }
}
