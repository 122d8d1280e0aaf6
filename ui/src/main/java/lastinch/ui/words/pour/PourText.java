package lastinch.ui.words.pour;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import lastinch.solver.result.Spot;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Page;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.Point;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Scene;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.study.SpreadWords;

/** The printed answer of a dry pour: verdict first, what to do next last. Plain characters only. */
public final class PourText {
  private final Sentences sentences;
  private final Figures figures;

  public PourText(Sentences sentences, Figures figures) {
    this.sentences = Objects.requireNonNull(sentences, "sentences");
    this.figures = Objects.requireNonNull(figures, "figures");
  }

  /** The answer on one screen, line by line. */
  public List<String> brief(PouredPlan plan) {
    return plain(ShortAnswer.of(new Scene(plan, sentences, figures)));
  }

  /** The points of the short answer, below verdict and ruler. */
  public List<Point> points(PouredPlan plan) {
    return ShortAnswer.points(new Scene(plan, sentences, figures)).stream()
        .map(p -> new Point(p.label(), PlainLetters.of(p.text()), PlainLetters.of(p.command())))
        .toList();
  }

  /** The whole answer, line by line. */
  public List<String> full(PouredPlan plan) {
    Scene scene = new Scene(plan, sentences, figures);
    Page page = new Page();
    VerdictLines.add(page, scene);
    RulerStrip.add(page, scene);
    TimeLine.add(page, scene);
    WhatWasShort.add(page, scene);
    GateTable.add(page, scene);
    Remarks.add(page, scene);
    HowSure.add(page, scene);
    Closing.add(page, scene);
    return plain(page.lines());
  }

  /** The verdict alone. */
  public List<String> verdict(PouredPlan plan) {
    Scene scene = new Scene(plan, sentences, figures);
    Page page = new Page();
    if (plan.pourCase().checking().isOn()) {
      page.paragraph(scene.say("head.checking"));
    }
    page.paragraph(VerdictLines.sentence(scene));
    plan.spread().ifPresent(s -> page.paragraph(SpreadWords.of(scene, s)));
    return plain(page.lines());
  }

  /** The verdict as one line, for a picture. */
  public String headline(PouredPlan plan) {
    return PlainLetters.of(VerdictLines.bare(new Scene(plan, sentences, figures)));
  }

  /** Whether metal fell to the tip first and filled the piece from there. */
  public boolean fillsFromTip(PouredPlan plan) {
    return new Scene(plan, sentences, figures).fromTip();
  }

  /** Where and how the metal ended, in a few words. */
  public String ending(PouredPlan plan) {
    return PlainLetters.of(TimeLine.ending(new Scene(plan, sentences, figures)));
  }

  /** A place of a poured plan in words: {@code at 214 mm}. */
  public String place(PouredPlan plan, Spot spot) {
    return PlainLetters.of(new Scene(plan, sentences, figures).place(spot));
  }

  private static List<String> plain(List<String> lines) {
    List<String> out = new ArrayList<>();
    for (String line : lines) {
      out.add(PlainLetters.of(line));
    }
    return out;
  }
}
