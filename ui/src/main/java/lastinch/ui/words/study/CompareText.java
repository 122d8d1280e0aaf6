package lastinch.ui.words.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import lastinch.solver.diagnosis.Difference;
import lastinch.solver.study.LookOut;
import lastinch.solver.study.RunSummary;
import lastinch.solver.study.VerdictWord;
import lastinch.ui.words.Care;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Page;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.Compared.Poured;

/** The printed comparison of plans: what differs, what came of it, what made the difference. */
public final class CompareText {
  private static final int LABEL = 21;
  private static final int NARROWEST = 18;

  /** Words in which the plans differ, on a screen. */
  private static final int INPUTS = 3;

  /** What came of the plans, on a screen. */
  private static final Set<CompareCells.Row> ON_SCREEN =
      EnumSet.of(
          CompareCells.Row.RESULT,
          CompareCells.Row.HEAT,
          CompareCells.Row.COLDEST,
          CompareCells.Row.MEETS,
          CompareCells.Row.LAPS,
          CompareCells.Row.NOISE);

  private final Sentences sentences;
  private final Figures figures;
  private final GlanceWords glances;
  private final CompareCells cells;

  public CompareText(Sentences sentences, Figures figures) {
    this.sentences = Objects.requireNonNull(sentences, "sentences");
    this.figures = Objects.requireNonNull(figures, "figures");
    this.glances = new GlanceWords(sentences, figures);
    this.cells = new CompareCells(sentences, figures);
  }

  /** The whole answer, line by line; commands in it pour the same way. */
  public List<String> full(Compared compared, HowPoured how) {
    return page(compared, how, true);
  }

  /** As much of it as fits a screen. */
  public List<String> screen(Compared compared, HowPoured how) {
    return page(compared, how, false);
  }

  private List<String> page(Compared compared, HowPoured how, boolean all) {
    Page page = new Page();
    pick(page, compared, how);
    page.blank();
    page.line(sentences.say("compare.title", "count", Integer.toString(compared.plans().size())));
    for (Poured p : compared.plans()) {
      page.wrapped(
          " " + p.letter() + "  ",
          "    ",
          all
              ? sentences.say("compare.plan", "title", p.plan().title(), "file", p.file())
              : p.file());
    }
    int most = (Page.WIDTH - LABEL) / NARROWEST;
    for (int from = 0; from < compared.plans().size(); from += most) {
      table(page, compared, from, Math.min(compared.plans().size(), from + most), all);
    }
    page.blank();
    page.line(sentences.say("compare.difference"));
    difference(page, compared, all);
    page.blank();
    new Care(sentences).add(page, compared.plans().stream().map(p -> p.plan().pourCase()).toList());
    return PlainLetters.all(page.lines());
  }

  /** The pick alone. */
  public List<String> brief(Compared compared, HowPoured how) {
    Page page = new Page();
    pick(page, compared, how);
    return PlainLetters.all(page.lines());
  }

  private void table(Page page, Compared compared, int from, int to, boolean all) {
    List<Poured> plans = compared.plans().subList(from, to);
    int wide = (Page.WIDTH - LABEL) / plans.size();
    page.blank();
    row(page, "", wide, plans.stream().map(Poured::letter).toList());
    int left = compared.differing().size();
    for (Map.Entry<String, List<Optional<String>>> word : compared.differing().entrySet()) {
      if (all || compared.differing().size() - left < INPUTS) {
        left--;
        row(
            page,
            label(compared, word.getKey()),
            wide,
            word.getValue().subList(from, to).stream().map(v -> v.orElse("-")).toList());
      }
    }
    if (left > 0) {
      page.line(" " + sentences.say("study.more", "count", Integer.toString(left)));
    }
    page.line(" " + "-".repeat(Page.WIDTH - 1));
    for (CompareCells.Row row : CompareCells.Row.values()) {
      List<String> texts = plans.stream().map(p -> cells.cell(row, p)).toList();
      boolean differs = texts.stream().distinct().count() > 1;
      if (all || row == CompareCells.Row.RESULT || (differs && ON_SCREEN.contains(row))) {
        row(page, sentences.say("compare.row." + row.name()), wide, texts);
      }
    }
  }

  /** A row whose cells may be broken into several lines. */
  private static void row(Page page, String label, int wide, List<String> texts) {
    List<List<String>> broken = new ArrayList<>();
    int tall = 1;
    for (String text : texts) {
      List<String> lines = broken(text, wide - 2);
      broken.add(lines);
      tall = Math.max(tall, lines.size());
    }
    List<String> labels = broken(label, LABEL - 2);
    tall = Math.max(tall, labels.size());
    for (int i = 0; i < tall; i++) {
      StringBuilder line = new StringBuilder();
      line.append(Page.pad(" " + (i < labels.size() ? labels.get(i) : ""), LABEL));
      for (List<String> cell : broken) {
        line.append(Page.pad(i < cell.size() ? cell.get(i) : "", wide));
      }
      page.line(line.toString());
    }
  }

  private static List<String> broken(String text, int wide) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > wide) {
        lines.add(line.toString());
        line = new StringBuilder();
      }
      line.append(line.length() > 0 ? " " : "").append(word);
      while (line.length() > wide) {
        lines.add(line.substring(0, wide));
        line.delete(0, wide);
      }
    }
    lines.add(line.toString());
    return lines;
  }

  /**
   * {@code gating/gates/end gate/wide} as {@code end gate wide}; a cell of a table by its row and
   * the name of its column.
   */
  String label(Compared compared, String path) {
    String[] words = path.split("/", -1);
    int last = words.length - 1;
    if (last >= 3 && words[last - 1].matches("\\d+") && words[last].matches("\\d+")) {
      int row = path.lastIndexOf("/rows/");
      String column = path.substring(0, Math.max(0, row)) + "/columns/" + words[last];
      String name =
          compared.plans().stream()
              .flatMap(p -> Optional.ofNullable(p.plan().typed().get(column)).stream())
              .findFirst()
              .orElse(words[last]);
      return sentences.say("compare.station", "number", words[last - 1], "what", name);
    }
    return last <= 1 ? words[last] : words[last - 1] + " " + words[last];
  }

  private void difference(Page page, Compared compared, boolean all) {
    String a = compared.plans().get(0).letter();
    for (int i = 0; i < compared.differences().size(); i++) {
      String b = compared.plans().get(i + 1).letter();
      Difference d = compared.differences().get(i);
      String lead = " ";
      List<String> said = sentencesOf(a, b, d);
      for (String sentence : all ? said : said.subList(0, Math.min(2, said.size()))) {
        page.wrapped(lead, lead + "  ", sentence);
        lead = "   ";
      }
    }
  }

  private List<String> sentencesOf(String a, String b, Difference d) {
    List<String> all = new ArrayList<>();
    all.add(
        sentences.say(
            "compare.ends",
            "a",
            a,
            "b",
            b,
            "first",
            glances.outcome(d.first()),
            "second",
            glances.outcome(d.second())));
    if (d.swaps().isEmpty()) {
      all.add(sentences.say("compare.same", "a", a, "b", b));
      return all;
    }
    Difference.Swap heaviest = d.swaps().get(0);
    all.add(
        sentences.say(
            "compare.kind." + d.kind().name(), "a", a, "b", b, "part", part(heaviest.key())));
    if (d.kind() == Difference.Kind.ALIKE) {
      return all;
    }
    List<String> nothing = new ArrayList<>();
    for (Difference.Swap swap : d.swaps()) {
      boolean counts =
          Math.abs(d.gain(swap)) >= Difference.WORTH
              || Math.abs(d.loss(swap)) >= Difference.WORTH
              || !swap.taken().answered();
      if (counts) {
        all.add(
            sentences.say(
                "compare.swap",
                "a",
                a,
                "b",
                b,
                "part",
                part(swap.key()),
                "taken",
                glances.outcome(swap.taken()),
                "givenBack",
                glances.outcome(swap.givenBack())));
      } else {
        nothing.add(part(swap.key()));
      }
    }
    if (!nothing.isEmpty()) {
      all.add(sentences.say("compare.nothing", "parts", String.join(", ", nothing)));
    }
    return all;
  }

  private String part(String key) {
    return sentences.say("part." + key);
  }

  private void pick(Page page, Compared compared, HowPoured how) {
    Optional<Poured> pick = compared.pick();
    if (pick.isEmpty()) {
      page.paragraph(sentences.say("compare.pick.none"));
      page.line(
          "  " + sentences.say("compare.pick.none.command", "file", how.typed(nearest(compared))));
      return;
    }
    RunSummary glance = pick.get().glance();
    String look = new LeverWords(sentences, figures).lookOuts(LookOut.of(glance));
    page.paragraph(
        sentences.say(
                "compare.pick", "letter", pick.get().letter(), "outcome", glances.outcome(glance))
            + (look.isEmpty() ? "" : " " + sentences.say("compare.pick.look", "what", look)));
    if (glance.heat() < VerdictWord.JUST) {
      page.paragraph(sentences.say("compare.pick.just"));
      page.line(
          "  " + sentences.say("compare.pick.none.command", "file", how.typed(pick.get().file())));
    }
  }

  private static String nearest(Compared compared) {
    return compared.plans().stream()
        .max(Comparator.comparingDouble(p -> p.glance().goodness()))
        .map(Poured::file)
        .orElseThrow();
  }
}
