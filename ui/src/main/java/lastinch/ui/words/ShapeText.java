package lastinch.ui.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lastinch.cases.mesh.MeshChecks;
import lastinch.cases.mesh.MeshUnit;
import lastinch.cases.mesh.ModelLook;
import lastinch.cases.units.Dimension;
import lastinch.solver.casting.Model;
import lastinch.solver.geometry.solid.PartOrientation;
import lastinch.solver.geometry.solid.ShapeReport;
import lastinch.solver.geometry.solid.UndercutAnalysis;
import lastinch.solver.material.Alloy;

/** What is said about a model. */
public final class ShapeText {
  /** Shares below this are not worth a word. */
  private static final double SOME = 0.002;

  private static final double NARROW = 0.01;
  private static final double FAINT = 0.8e-3;
  private static final double DEEP = 60e-3;

  private final Sentences sentences;
  private final Figures figures;

  public ShapeText(Sentences sentences, Figures figures) {
    this.sentences = sentences;
    this.figures = figures;
  }

  /**
   * The whole answer.
   *
   * @param file as the person named it
   * @param look the model
   * @param locking where it locks its mould
   * @param alloy the metal it is weighed in
   */
  public List<String> full(String file, ModelLook look, UndercutAnalysis locking, Alloy alloy) {
    Page page = new Page();
    page.line(sentences.say("shape.head", "file", file));
    page.blank();
    page.paragraph(headline(look));
    page.blank();
    sizes(page, look, alloy);
    List<String> matters = matters(look, locking);
    page.blank();
    page.line(sentences.say(matters.isEmpty() ? "shape.sound" : "shape.matters"));
    for (String matter : matters) {
      page.wrapped("  - ", "    ", matter);
    }
    page.blank();
    page.paragraph(sentences.say("shape.next"));
    page.line(caseLine(file, look));
    List<String> plain = new ArrayList<>();
    page.lines().forEach(l -> plain.add(PlainLetters.of(l)));
    return plain;
  }

  /** The sentence on top. */
  public String headline(ModelLook look) {
    if (look.isTorn()) {
      return sentences.say("shape.torn");
    }
    String key =
        switch (look.drawn().model().form()) {
          case LONG -> "shape.long";
          case TOO_WIDE -> "shape.wide";
          case TOO_BRANCHED -> "shape.branched";
        };
    Model model = look.drawn().model();
    String open = look.isOpen() ? " " + sentences.say("shape.holes") : "";
    String along =
        figures.ruler(
            model.form() == Model.Form.LONG ? look.drawn().length() : look.pose().solid().high(0));
    return sentences.say(
            key,
            "along",
            along,
            "across",
            figures.ruler(
                model.form() == Model.Form.LONG
                    ? look.drawn().widest()
                    : look.pose().solid().high(1) - look.pose().solid().low(1)),
            "thick",
            figures.calipers(look.survey().thickest().value()))
        + open;
  }

  private void sizes(Page page, ModelLook look, Alloy alloy) {
    ShapeReport survey = look.survey();
    PartOrientation pose = look.pose();
    entry(page, "unit", sentences.say(unitKey(look), "unit", look.unit().word()));
    entry(
        page,
        "laid",
        pose.up().equals("slanted")
            ? sentences.say("shape.laid.slanted")
            : sentences.say("shape.laid", "up", pose.up()));
    entry(
        page,
        "parting",
        sentences.say(
            look.wish().parting().isPresent() ? "shape.parting.said" : "shape.parting",
            "height",
            figures.calipers(pose.parting()),
            "all",
            figures.calipers(pose.height())));
    double mass = look.volume() * alloy.densitySolid().value();
    entry(
        page,
        "weight",
        sentences.say(
            look.isOpen() ? "shape.weight.open" : "shape.weight",
            "volume",
            figures.shown(Dimension.VOLUME, look.volume()),
            "mass",
            figures.mass(mass),
            "alloy",
            alloy.name()));
    entry(page, "thinnest", place("shape.thinnest", survey.thinnest()));
    entry(page, "thickest", place("shape.thickest", survey.thickest()));
    entry(page, "last", place("shape.last", survey.heaviest()));
  }

  private String unitKey(ModelLook look) {
    return look.checks().mesh().unit().isPresent() ? "shape.unit.file" : "shape.unit.said";
  }

  private String place(String key, ShapeReport.Spot spot) {
    return sentences.say(
        key,
        "value",
        figures.calipers(spot.value()),
        "x",
        figures.rulerBare(spot.x()),
        "y",
        figures.ruler(spot.y()));
  }

  private void entry(Page page, String label, String text) {
    page.entry(sentences.say("shape.label." + label), text);
  }

  /** What a person should know before pouring, or put right. */
  public List<String> matters(ModelLook look, UndercutAnalysis locking) {
    List<String> all = new ArrayList<>();
    surface(look, all);
    ShapeReport survey = look.survey();
    locks(locking, UndercutAnalysis.Mark.UNDERCUT, "shape.undercut", all);
    locks(locking, UndercutAnalysis.Mark.OVERHANG, "shape.locks", all);
    if (survey.narrow() > NARROW) {
      all.add(
          sentences.say(
              "shape.narrow",
              "share",
              share(survey.narrow()),
              "wide",
              figures.calipers(3.0 * look.cell())));
    }
    if (survey.thinnest().value() < FAINT) {
      all.add(sentences.say("shape.thin", "thick", figures.calipers(survey.thinnest().value())));
    }
    if (survey.thickest().value() > DEEP) {
      all.add(sentences.say("shape.deep", "thick", figures.calipers(survey.thickest().value())));
    }
    likely(look).ifPresent(all::add);
    if (look.pose().evenEnds()) {
      all.add(sentences.say("shape.even"));
    }
    return all;
  }

  /** The squares that are hatched on the map, as a share of the piece. */
  private void locks(
      UndercutAnalysis locking, UndercutAnalysis.Mark mark, String key, List<String> all) {
    if (locking.share(mark) > 0.0) {
      all.add(sentences.say(key, "share", share(locking.share(mark))));
    }
  }

  private void surface(ModelLook look, List<String> all) {
    MeshChecks checks = look.checks();
    if (checks.openEdges() > 0) {
      all.add(count("shape.open", checks.openEdges()));
    }
    if (checks.crowdedEdges() > 0) {
      all.add(sentences.say("shape.crowded"));
    }
    if (checks.turnedFaces() > 0) {
      all.add(count("shape.turned", checks.turnedFaces()));
    }
    if (checks.insideOut()) {
      all.add(sentences.say("shape.insideOut"));
    }
    if (checks.bodies() > 1) {
      all.add(
          count(
              look.survey().crossing() > SOME ? "shape.bodies.cross" : "shape.bodies",
              checks.bodies()));
    } else if (look.survey().crossing() > SOME) {
      all.add(sentences.say("shape.crosses"));
    }
  }

  /** A hint when another unit makes a likelier size. */
  private Optional<String> likely(ModelLook look) {
    double inUnits = look.pose().solid().high(0) / look.unit().metres();
    Optional<MeshUnit> other = MeshUnit.plausible(inUnits);
    double size = look.pose().solid().high(0);
    boolean odd = size < 0.02 || size > 1.5;
    return odd && other.isPresent() && other.get() != look.unit()
        ? Optional.of(
            sentences.say("shape.size", "size", figures.ruler(size), "unit", other.get().word()))
        : Optional.empty();
  }

  private String count(String key, int count) {
    return sentences.say(key, "count", String.format(Locale.ROOT, "%d", count));
  }

  private String share(double share) {
    return share < 0.01 ? sentences.say("shape.less") : figures.percent(share);
  }

  /** What makes a case file read the model just so. */
  private String caseLine(String file, ModelLook look) {
    StringBuilder line = new StringBuilder("  model: {file: ").append(file);
    if (look.checks().mesh().unit().isEmpty()) {
      line.append(", unit: ").append(look.unit().word());
    }
    PartOrientation.Wish wish = look.wish();
    wish.up().ifPresent(up -> line.append(", up: ").append(up));
    wish.thickEnd().ifPresent(end -> line.append(", thick end: ").append(end));
    if (wish.otherEnd()) {
      line.append(", thick end: other end");
    }
    wish.parting()
        .ifPresent(
            h -> line.append(", parting at: ").append(figures.trimmed(1e3 * h, 3)).append(" mm"));
    return line.append('}').toString();
  }
}
