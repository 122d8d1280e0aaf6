package lastinch.cases.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lastinch.cases.Told;
import org.junit.jupiter.api.Test;

class CaseTextTest {
  private final Problems problems = new Problems();

  private Optional<Node.Entries> parse(String text) {
    return CaseText.parse(SourceText.of(Path.of("a.yaml"), text), problems);
  }

  private List<String> places() {
    return problems.errors().stream().map(p -> p.place() + " " + Told.message(p)).toList();
  }

  @Test
  void every_value_is_text_and_knows_its_place() {
    Node.Entries map =
        parse("a: 12:30\nb B:   no # x\nc: {wide: 3\", thick: 010}\nd:\n  - [1e3, -]\n")
            .orElseThrow();
    assertThat(problems.errors()).isEmpty();
    Node.Text a = (Node.Text) map.get("a").orElseThrow();
    assertThat(a.text()).isEqualTo("12:30");
    Node.Text b = (Node.Text) map.get("b b").orElseThrow();
    assertThat(b.text()).isEqualTo("no");
    assertThat(b.span().line()).isEqualTo(2);
    assertThat(b.span().column()).isEqualTo(8);
    assertThat(b.span().text()).isEqualTo("no");
    Node.Entries c = (Node.Entries) map.get("c").orElseThrow();
    assertThat(c.span().text()).isEqualTo("{wide: 3\", thick: 010}");
    assertThat(((Node.Text) c.get("wide").orElseThrow()).text()).isEqualTo("3\"");
    Node.Items d = (Node.Items) map.get("d").orElseThrow();
    assertThat(((Node.Items) d.items().get(0)).span().text()).isEqualTo("[1e3, -]");
  }

  @Test
  void characters_outside_the_basic_plane_count_as_one_column() {
    Node.Entries map = parse("\ufefft: {a: '\ud83d\udd25', b: x}\r\nu: y\r\n").orElseThrow();
    Node.Text b = (Node.Text) ((Node.Entries) map.get("t").orElseThrow()).get("b").orElseThrow();
    assertThat(b.span().text()).isEqualTo("x");
    assertThat(b.span().column()).isEqualTo(16);
    assertThat(((Node.Text) map.get("u").orElseThrow()).span().line()).isEqualTo(2);
  }

  @Test
  void a_broken_line_costs_only_its_own_block() {
    Node.Entries map = parse("a:\n  b: 1\n  c 2\n  d: 3\ne: 4\nf: \"5\ng: 6\n").orElseThrow();
    assertThat(places())
        .containsExactly(
            "3:3 A colon is missing here; lines have the form  word: value.",
            "6:4 A quote opens here and does not close. Inches can be written as in.");
    assertThat(map.entries().stream().map(Node.Entry::key)).containsExactly("a", "e", "g");
    Node.Entries a = (Node.Entries) map.get("a").orElseThrow();
    assertThat(a.damaged()).isTrue();
    assertThat(a.entries().stream().map(Node.Entry::key)).containsExactly("b", "d");
  }

  @Test
  void traps_of_the_format_are_explained() {
    parse("a:\n\tb: 1\n");
    parse("c: 1\n---\nd: 2\n");
    parse("e: {wide: 20,5 mm, thick: 3 mm}\n");
    parse("f: &x 1\ng: *x\n");
    parse("h: 1\nh: 2\n");
    parse("i: 'a\n  b'\n");
    assertThat(places())
        .containsExactlyInAnyOrder(
            "1:4 A value that starts with &, * or ! has a meaning of its own here; put it between"
                + " ' quotes.",
            "1:4 A quote opens here and does not close on this line. Inches can be written as in.",
            "1:11 Use a decimal point, not a comma. Did you mean: 20.5 mm",
            "2:1 Line 2 starts with a Tab; use spaces.",
            "2:1 This word appears twice, first on line 1.",
            "2:4 A value that starts with &, * or ! has a meaning of its own here; put it between"
                + " ' quotes.",
            "3:1 A second plan begins here; keep one in each file and take the line of dashes"
                + " out.");
  }

  @Test
  void what_is_no_case_file_is_refused_quietly() {
    assertThat(parse("")).isEmpty();
    assertThat(parse("# only a remark\n")).isEmpty();
    assertThat(parse("Dear caster,\nhow are you?\n")).isEmpty();
    assertThat(parse("PK\u0003\u0004")).isEmpty();
    assertThat(parse("[".repeat(500))).isEmpty();
    assertThat(problems.count()).isGreaterThan(3);
  }
}
