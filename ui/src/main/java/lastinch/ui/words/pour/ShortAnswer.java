package lastinch.ui.words.pour;

import java.util.ArrayList;
import java.util.List;
import lastinch.ui.words.Care;
import lastinch.ui.words.Page;
import lastinch.ui.words.Point;
import lastinch.ui.words.Scene;
import lastinch.ui.words.study.GridWords;
import lastinch.ui.words.study.NextWords;

/**
 * The answer on one screen: verdict, ruler, what limits it, what to do next, what is least sure,
 * cautions. All of it fits {@value #LINES} lines; what matters least is left out first where a
 * plan's own names are long.
 */
public final class ShortAnswer {
  /** Lines that fit the smallest terminal in use beside the line a person types. */
  static final int LINES = 24;

  private final Scene scene;

  private ShortAnswer(Scene scene) {
    this.scene = scene;
  }

  public static List<String> of(Scene scene) {
    ShortAnswer answer = new ShortAnswer(scene);
    List<String> lines = List.of();
    for (Size size : Size.values()) {
      lines = answer.lines(size);
      if (lines.size() <= LINES) {
        return lines;
      }
    }
    return lines;
  }

  /** How much is said, the most first. */
  private enum Size {
    WHOLE,
    WITHOUT_NOTES,
    WITHOUT_WATCH,
    WITHOUT_HOW_TO_MEASURE,
    WITHOUT_GAPS;

    boolean keeps(Size leftOutFrom) {
      return compareTo(leftOutFrom) < 0;
    }
  }

  private List<String> lines(Size size) {
    Page page = new Page();
    VerdictLines.add(page, scene);
    RulerStrip.add(page, scene);
    points(size).forEach(point -> point.add(page));
    Care care = new Care(scene.sentences());
    care.damp(scene.pourCase()).ifPresent(text -> page.entry(scene.say("label.left"), text));
    page.entry(scene.say("label.care"), care.brief(scene.pourCase()));
    page.entry(scene.say("label.more"), scene.say("more.where"));
    return size.keeps(Size.WITHOUT_GAPS) ? page.lines() : withoutGaps(page.lines());
  }

  /** What it says below the ruler and above the cautions. */
  public static List<Point> points(Scene scene) {
    return new ShortAnswer(scene).points(Size.WHOLE);
  }

  private List<Point> points(Size size) {
    List<Point> points = new ArrayList<>();
    WhatWasShort.limit(scene).ifPresent(text -> points.add(new Point("", text)));
    if (size.keeps(Size.WITHOUT_WATCH)) {
      Remarks.worst(scene).ifPresent(t -> points.add(new Point(scene.say("label.watch"), t)));
    }
    NextWords.of(scene).ifPresent(points::add);
    HowSure.unsure(scene, size.keeps(Size.WITHOUT_HOW_TO_MEASURE))
        .or(() -> GridWords.unsure(scene))
        .ifPresent(text -> points.add(new Point(scene.say("label.unsure"), text)));
    if (size.keeps(Size.WITHOUT_NOTES)) {
      scene.plan().noted().forEach(n -> points.add(new Point(scene.say("label.noted"), n)));
    }
    return points;
  }

  private static List<String> withoutGaps(List<String> lines) {
    List<String> full = new ArrayList<>(lines);
    full.removeIf(String::isEmpty);
    return full;
  }
}
