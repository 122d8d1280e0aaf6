package lastinch.cases.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import lastinch.cases.format.CaseText;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;
import lastinch.cases.format.SourceText;
import lastinch.cases.plan.assembly.Fields;
import lastinch.cases.schema.Documentation;
import lastinch.cases.schema.Kind;
import lastinch.cases.schema.Part;
import lastinch.cases.schema.PartCheck;
import lastinch.cases.schema.Single;
import lastinch.cases.schema.Vocabulary;
import lastinch.cases.schema.Word;
import org.junit.jupiter.api.Test;

/** Rows of the schema against what the checker takes and the reader reads: one row, one word. */
class EveryWordTest {

  /** A value that its kind must take. */
  private static String sample(Kind kind, String lead) {
    if (kind instanceof Kind.Amount amount) {
      var unit = amount.dimension().units().get(0);
      double middle =
          amount.low() + 0.5 * (Math.min(amount.high(), amount.low() + 1) - amount.low());
      return unit.fromSi(middle) + " " + unit.symbol();
    }
    if (kind instanceof Kind.Choice choice) {
      return choice.options().get(0);
    }
    if (kind instanceof Kind.Group group) {
      return "{" + members(group.part(), lead) + "}";
    }
    if (kind instanceof Kind.Named named) {
      return "[{" + members(named.part(), lead) + "}]";
    }
    if (kind instanceof Kind.ListOf list) {
      return "[" + sample(list.item(), lead) + "]";
    }
    if (kind instanceof Kind.Table table) {
      return table(table);
    }
    return single(kind);
  }

  private static String single(Kind kind) {
    if (kind == Single.RATE) {
      return "0.3 kg/s +- 30 %";
    } else if (kind == Single.STANDS) {
      return "'upright, tip down'";
    } else if (kind == Single.HEADING) {
      return "30 deg left";
    } else if (kind == Single.LIMB_END) {
      return "boss";
    } else if (kind == Single.DISTANCE) {
      return "12 mm";
    } else if (kind == Single.INTO) {
      return "boss";
    } else if (kind == Single.PIN) {
      return "18 to 14 mm";
    } else if (kind == Single.PAIR) {
      return "15 x 12 mm";
    } else if (kind == Single.HOLDS) {
      return "2 kg bronze";
    }
    return "some text";
  }

  private static String table(Kind.Table table) {
    List<String> keys = table.columns().stream().map(Kind.Column::key).toList();
    List<String> rows = new ArrayList<>();
    for (int row = 0; row < table.fewest(); row++) {
      List<String> cells = new ArrayList<>();
      for (Kind.Column column : table.columns()) {
        var unit = column.amount().dimension().units().get(0);
        double si = column.amount().low() + (row + 1) * 1e-3;
        cells.add(unit.fromSi(si) + " " + unit.symbol());
      }
      rows.add("[" + String.join(", ", cells) + "]");
    }
    return "{columns: [" + String.join(", ", keys) + "], rows: [" + String.join(", ", rows) + "]}";
  }

  private static String members(Part part, String lead) {
    Set<String> excluded = new HashSet<>();
    for (Part.Either either : part.eithers()) {
      for (int way = 1; way < either.ways().size(); way++) {
        excluded.addAll(either.ways().get(way));
      }
    }
    List<String> all = new ArrayList<>();
    for (Word word : part.words()) {
      if (!excluded.contains(word.key())) {
        all.add(word.key() + ": " + sample(word.kind(), lead + word.key() + "/"));
      }
    }
    return String.join(", ", all);
  }

  private static List<String> problems(Part part, String text) {
    Problems problems = new Problems();
    Node.Entries map = CaseText.parse(SourceText.of(Path.of("x"), text), problems).orElseThrow();
    new PartCheck(problems).check(part, map);
    return Bench.lines(problems.errors());
  }

  @Test
  void every_row_of_the_schema_is_taken_by_the_checker_and_read_back() {
    for (Part file : List.of(Vocabulary.CASE, Vocabulary.SHOP)) {
      Set<Part> parts = new HashSet<>(Set.of(file));
      for (Documentation.Row row : Documentation.rows(file)) {
        row.word().kind().under().ifPresent(parts::add);
      }
      for (Part part : parts) {
        for (Word word : part.words()) {
          String text = word.key() + ": " + sample(word.kind(), "");
          assertThat(problems(part, text)).as(part.name() + ": " + text).isEmpty();
          Node.Entries map =
              CaseText.parse(SourceText.of(Path.of("x"), text), new Problems()).orElseThrow();
          Fields fields = new Fields(part, map);
          assertThat(readBack(fields, word)).as(text).isTrue();
        }
      }
    }
  }

  private static boolean readBack(Fields fields, Word word) {
    Kind kind = word.kind();
    if (kind instanceof Kind.Group) {
      return fields.group(word.key()).isPresent();
    }
    if (kind instanceof Kind.Named) {
      return fields.list(word.key()).size() == 1;
    }
    if (kind instanceof Kind.ListOf list) {
      return list.item() instanceof Kind.Group
          ? fields.list(word.key()).size() == 1
          : fields.values(word.key(), Object.class).size() == 1;
    }
    return fields.compound(word.key(), Object.class).isPresent();
  }

  @Test
  void do_not_know_is_taken_where_the_row_says_so_and_nowhere_else() {
    for (Documentation.Row row : Documentation.rows(Vocabulary.CASE)) {
      Word word = row.word();
      if (word.kind() instanceof Kind.Amount || word.kind() instanceof Kind.Choice) {
        Part alone = new Part("test", List.of(word), List.of());
        assertThat(problems(alone, word.key() + ": don't know").isEmpty())
            .as(row.path())
            .isEqualTo(word.unknown());
      }
    }
  }

  @Test
  void a_value_outside_its_limits_is_refused_for_every_amount() {
    int amounts = 0;
    for (Part file : List.of(Vocabulary.CASE, Vocabulary.SHOP)) {
      for (Documentation.Row row : Documentation.rows(file)) {
        if (row.word().kind() instanceof Kind.Amount amount) {
          Part alone = new Part("test", List.of(row.word()), List.of());
          var unit = amount.dimension().units().get(0);
          for (double si : new double[] {amount.low() - 1e-2, amount.high() * 1.01 + 1e-2}) {
            String text = row.word().key() + ": " + unit.fromSi(si) + " " + unit.symbol();
            assertThat(problems(alone, text)).as(text).hasSize(1);
          }
          amounts++;
        }
      }
    }
    assertThat(amounts).isGreaterThan(60);
  }

  @Test
  void every_word_is_documented_with_its_limits() {
    String table = Documentation.markdown(Vocabulary.CASE);
    for (Documentation.Row row : Documentation.rows(Vocabulary.CASE)) {
      assertThat(table)
          .contains("| `" + row.path().replace("/", ": ") + "` |")
          .contains(row.word().help());
    }
    assertThat(table).contains("0.1 to 600 s, +- allowed; may be: don't know");
  }

  @Test
  void a_word_is_found_by_itself_by_its_twins_and_with_all_under_it() {
    assertThat(Documentation.about(Vocabulary.CASE, " Crucible  empties in "))
        .extracting(Documentation.Row::path)
        .containsExactly("pour/crucible empties in");
    assertThat(Documentation.about(Vocabulary.CASE, "mold"))
        .extracting(Documentation.Row::path)
        .contains("mould", "mould/temperature", "mould/flask/inside")
        .allMatch(path -> path.startsWith("mould"));
    assertThat(Documentation.about(Vocabulary.CASE, "spoon")).isEmpty();
  }

  @Test
  void twins_never_hide_a_word_of_their_own_group() {
    Set<String> clashes = new TreeSet<>();
    for (Part file : List.of(Vocabulary.CASE, Vocabulary.SHOP)) {
      Set<Part> parts = new HashSet<>(Set.of(file));
      Documentation.rows(file).forEach(r -> r.word().kind().under().ifPresent(parts::add));
      for (Part part : parts) {
        List<String> seen = new ArrayList<>();
        for (Word word : part.words()) {
          seen.add(word.key());
          seen.addAll(word.twins());
        }
        seen.stream()
            .filter(k -> seen.indexOf(k) != seen.lastIndexOf(k))
            .forEach(k -> clashes.add(part.name() + ": " + k));
      }
    }
    assertThat(clashes).isEmpty();
  }
}
