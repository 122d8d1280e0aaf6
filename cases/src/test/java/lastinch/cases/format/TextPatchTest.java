package lastinch.cases.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TextPatchTest {
  @TempDir private Path folder;

  private static TextPatch patch(String text) {
    return TextPatch.of(SourceText.of(Path.of("a.yaml"), text), new Problems()).orElseThrow();
  }

  private static List<String> at(String path) {
    return TextPatch.place(path);
  }

  static List<Path> demoFiles() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("demo"))) {
      return files.filter(p -> p.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("demoFiles")
  void a_file_that_is_not_changed_is_saved_byte_for_byte(Path file) throws IOException {
    for (String variant : List.of("lf", "crlf", "bom")) {
      String text = Files.readString(file);
      text = variant.equals("crlf") ? text.replace("\n", "\r\n") : text;
      text = variant.equals("bom") ? "\ufeff" + text : text;
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      Path copy = Files.write(folder.resolve(variant + file.getFileName()), bytes);
      SourceText source = SourceText.read(copy, new Problems()).orElseThrow();
      TextPatch.of(source, new Problems()).orElseThrow().save(Saving.toDisk());
      assertThat(Files.readAllBytes(copy)).isEqualTo(bytes);
    }
  }

  @ParameterizedTest
  @MethodSource("demoFiles")
  void setting_every_value_to_itself_changes_nothing(Path file) throws IOException {
    String text = "\ufeff" + Files.readString(file).replace("\n", "\r\n");
    TextPatch patch = patch(text);
    Node.Entries top = CaseText.parse(SourceText.of(file, text), new Problems()).orElseThrow();
    for (Node.Entry entry : top.entries()) {
      if (entry.value() instanceof Node.Text value && !value.quoted()) {
        assertThat(patch.set(List.of(entry.key()), value.text()).text()).isEqualTo(text);
      }
    }
  }

  @Test
  void a_value_changes_and_nothing_else() {
    String text = "a: {wide: 20 mm, thick: 3 mm}  # mine\r\nb:\r\n  c: 5 s   # fast\r\n";
    assertThat(patch(text).set(at("a/wide"), "32 mm").text())
        .isEqualTo("a: {wide: 32 mm, thick: 3 mm}  # mine\r\nb:\r\n  c: 5 s   # fast\r\n");
    assertThat(patch(text).set(at("b/c"), "3.1 s +- 30 %").text())
        .isEqualTo(
            "a: {wide: 20 mm, thick: 3 mm}  # mine\r\nb:\r\n  c: 3.1 s +- 30 %   # fast\r\n");
  }

  @Test
  void a_missing_word_is_added_where_its_group_ends() {
    String text = "b:\n  c: 5 s   # fast\nd: {e: 1}\nf: {}\n";
    assertThat(patch(text).set(at("b/g"), "2").text())
        .isEqualTo("b:\n  c: 5 s   # fast\n  g: 2\nd: {e: 1}\nf: {}\n");
    assertThat(patch(text).set(at("d/g"), "2").text())
        .isEqualTo("b:\n  c: 5 s   # fast\nd: {e: 1, g: 2}\nf: {}\n");
    assertThat(patch(text).set(at("f/g"), "2").text()).endsWith("f: {g: 2}\n");
    assertThat(patch("a: 1").set(at("b"), "2").text()).isEqualTo("a: 1\nb: 2");
  }

  @Test
  void items_are_found_by_name_or_number() {
    String text =
        "g:\n  - {name: end gate, wide: 20 mm}\n  - name: low\n    wide: 9 mm\n    long: 1\n";
    assertThat(patch(text).set(at("g/End gate/wide"), "25 mm").text()).contains("wide: 25 mm}");
    assertThat(patch(text).set(at("g/2/wide"), "8 mm").text()).contains("    wide: 8 mm\n");
    assertThat(patch(text).get(at("g/low/wide"))).hasValue("9 mm");
    assertThat(patch(text).get(at("g/high/wide"))).isEmpty();
  }

  @Test
  void a_word_or_an_item_is_taken_out_whole() {
    String text = "a: {b: 1, c: 2, d: 3}\ng:\n  - {name: x, w: 1}\n  - name: y\n    w: 2 # two\n";
    assertThat(patch(text).remove(at("a/b")).text()).startsWith("a: {c: 2, d: 3}\n");
    assertThat(patch(text).remove(at("a/c")).text()).startsWith("a: {b: 1, d: 3}\n");
    assertThat(patch(text).remove(at("a/d")).text()).startsWith("a: {b: 1, c: 2}\n");
    assertThat(patch(text).remove(at("g/x")).text()).endsWith("g:\n  - name: y\n    w: 2 # two\n");
    assertThat(patch(text).remove(at("g/y/w")).text()).endsWith("  - name: y\n");
    assertThat(patch(text).remove(at("g/y/name")).text()).endsWith("  - w: 2 # two\n");
    assertThat(patch(text).remove(at("a")).text()).startsWith("g:\n");
  }

  @Test
  void text_with_a_meaning_of_its_own_is_quoted() {
    TextPatch patch = patch("title: x\n").set(at("title"), "Feather #2: it's \"thin\"");
    assertThat(patch.text()).isEqualTo("title: 'Feather #2: it''s \"thin\"'\n");
    Node.Entries read =
        CaseText.parse(SourceText.of(Path.of("a"), patch.text()), new Problems()).orElseThrow();
    assertThat(((Node.Text) read.get("title").orElseThrow()).text())
        .isEqualTo("Feather #2: it's \"thin\"");
  }

  @Test
  void a_place_that_leads_nowhere_is_a_slip_of_the_program() {
    TextPatch patch = patch("a: 1\n");
    assertThatThrownBy(() -> patch.set(at("x/y"), "1"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> patch.remove(at("x"))).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_full_disk_leaves_the_old_file_and_nothing_beside_it() throws IOException {
    Path file = Files.writeString(folder.resolve("plan é.yaml"), "a: 1\n");
    TextPatch patch =
        TextPatch.of(SourceText.read(file, new Problems()).orElseThrow(), new Problems())
            .orElseThrow()
            .set(at("a"), "2");
    Saving full =
        Saving.through(
            (path, bytes) -> {
              Files.write(path, new byte[] {bytes[0]});
              throw new IOException("No space left on device");
            });
    assertThatThrownBy(() -> patch.save(full)).hasMessageContaining("No space");
    assertThat(Files.readString(file)).isEqualTo("a: 1\n");
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).containsExactly(file);
    }
    patch.save(Saving.toDisk());
    assertThat(Files.readString(file)).isEqualTo("a: 2\n");
  }
}
