package lastinch.cases.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import lastinch.cases.catalogue.read.Index;
import lastinch.cases.catalogue.read.MaterialsFile;
import lastinch.cases.catalogue.read.MaterialsReader;
import lastinch.cases.catalogue.read.Sources;
import lastinch.cases.format.CaseText;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;
import lastinch.cases.format.SourceText;

/** The catalogue's own files; each is read when first asked for. */
final class Library {
  private static final Library ONLY = new Library();

  private final Map<String, MaterialsFile> files = new ConcurrentHashMap<>();
  private final Map<String, Index> index = new ConcurrentHashMap<>();
  private final Map<String, Sources> sources = new ConcurrentHashMap<>();

  private Library() {}

  static Library only() {
    return ONLY;
  }

  Index index() {
    return index.computeIfAbsent("index.yaml", file -> parsed(file, Index::read));
  }

  Sources sources() {
    return sources.computeIfAbsent("sources.yaml", file -> parsed(file, Sources::read));
  }

  MaterialsFile file(String file) {
    return files.computeIfAbsent(
        file, f -> parsed(f, (top, problems) -> new MaterialsReader(false, problems).read(top)));
  }

  private static <T> T parsed(String file, BiFunction<Node.Entries, Problems, T> reader) {
    Problems problems = new Problems();
    SourceText text =
        SourceText.decode(Path.of(file), bytes(file), problems)
            .orElseThrow(() -> broken(file, problems));
    Optional<Node.Entries> top = CaseText.parse(text, problems);
    if (top.isEmpty() || !problems.isEmpty()) {
      throw broken(file, problems);
    }
    T read = reader.apply(top.get(), problems);
    if (!problems.isEmpty()) {
      throw broken(file, problems);
    }
    return read;
  }

  private static byte[] bytes(String file) {
    try (InputStream in = Library.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("catalogue file missing: " + file);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static IllegalStateException broken(String file, Problems problems) {
    return new IllegalStateException("catalogue file " + file + ": " + problems.errors());
  }
}
