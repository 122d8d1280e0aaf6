package lastinch.cases.plan;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lastinch.cases.Told;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.CatalogueMaterials;
import lastinch.cases.format.Problem;

/** Cases for tests: the demo's texts with something changed in them. */
final class Bench {
  static final Materials MATERIALS = new CatalogueMaterials(Catalogue.builtIn());
  static final Path DEMO = Path.of("demo");

  private final Path folder;

  /** A folder of files to read. */
  Bench(Path folder) {
    this.folder = folder;
  }

  /** The flat feather without a shop file. */
  static String flat() {
    return text("feather-sand-flat.yaml").replace("shop: shop.yaml", "#");
  }

  /** A text that stands beside this class and stays when the demo changes. */
  static String text(String name) {
    try (InputStream in = Bench.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String demo(String name) {
    try {
      return Files.readString(DEMO.resolve(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Reads one of the texts beside this class, which are all written out first. */
  ReadResult readText(String name) {
    for (String each :
        List.of(
            "shop.yaml",
            "feather-sand-flat.yaml",
            "feather-sand-upright.yaml",
            "feather-investment-hot.yaml")) {
      write(each, text(each));
    }
    return CaseReader.read(folder.resolve(name), MATERIALS);
  }

  Path write(String name, String text) {
    try {
      return Files.write(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  ReadResult read(String text) {
    return CaseReader.read(write("plan.yaml", text), MATERIALS);
  }

  /** Reads the flat feather with one text put in place of another, which must be there. */
  ReadResult readChanged(String from, String to) {
    if (!flat().contains(from)) {
      throw new IllegalArgumentException("not in the demo: " + from);
    }
    return read(flat().replace(from, to));
  }

  static List<String> lines(List<Problem> problems) {
    return problems.stream().map(p -> p.place() + " " + Told.message(p)).toList();
  }

  /** Problems as lines of place and message; none for a sound plan. */
  static List<String> problems(ReadResult result) {
    return result instanceof ReadResult.Unsound unsound ? lines(unsound.problems()) : List.of();
  }

  static Plan plan(ReadResult result) {
    if (result instanceof ReadResult.Sound sound) {
      return sound.plan();
    }
    throw new AssertionError(problems(result).toString());
  }
}
