package lastinch.ui.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import lastinch.cases.plan.Plan;
import lastinch.solver.diagnosis.Diagnosis;
import lastinch.solver.search.GatePlacement;
import lastinch.solver.search.OperatingMap;
import lastinch.solver.search.SmallestChange;
import lastinch.solver.uncertainty.FillProbability;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.chart.paper.Paper;
import lastinch.ui.chart.paper.Picture;
import lastinch.ui.chart.pour.BrokenOutPicture;
import lastinch.ui.chart.study.CausesChart;
import lastinch.ui.chart.study.ComparedFronts;
import lastinch.ui.chart.study.ComparedWords;
import lastinch.ui.chart.study.HeatBlocks;
import lastinch.ui.chart.study.LayoutsChart;
import lastinch.ui.chart.study.LeverRulers;
import lastinch.ui.chart.study.RoomChart;
import lastinch.ui.chart.study.SureChart;
import lastinch.ui.words.Figures;
import lastinch.ui.words.PlainLetters;
import lastinch.ui.words.PouredPlan;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.pour.Explained;
import lastinch.ui.words.study.BlameText;
import lastinch.ui.words.study.Compared;
import lastinch.ui.words.study.GatesText;
import lastinch.ui.words.study.GlanceWords;
import lastinch.ui.words.study.SureText;
import org.jfree.chart.text.TextUtils;

/** Charts of studies. */
public final class StudyCharts {
  private static final double LETTER = 22.0;

  private final Sentences sentences;
  private final Figures figures;

  public StudyCharts(Sentences sentences, Figures figures) {
    this.sentences = Objects.requireNonNull(sentences, "sentences");
    this.figures = Objects.requireNonNull(figures, "figures");
    // Otherwise words along an upright axis would be outlines, not text.
    TextUtils.setUseDrawRotatedStringWorkaround(false);
  }

  /** The map of room to move, {@code room}. */
  public ChartFiles room(Plan plan, OperatingMap room) {
    String answer =
        sentences.say(
            "room.chart.answer",
            "outcome",
            new GlanceWords(sentences, figures).outcome(room.plan()));
    return new ChartFiles(
        plan.title(),
        PlainLetters.of(answer),
        Map.of("room", RoomChart.of(room, sentences, figures)));
  }

  /** Ten dots, where it stops, what matters: {@code sure}. */
  public ChartFiles sure(Plan plan, FillProbability sure) {
    return new ChartFiles(
        plan.title(),
        PlainLetters.of(new SureText(sentences, figures).headline(sure)),
        Map.of("sure", SureChart.of(plan, sure, sentences, figures)));
  }

  /** Causes of what was found, {@code causes}. */
  public ChartFiles causes(Plan plan, Diagnosis blame) {
    return new ChartFiles(
        plan.title(),
        PlainLetters.of(new BlameText(sentences, figures).verdict(blame)),
        Map.of("causes", CausesChart.of(plan, blame, sentences, figures)));
  }

  /** Layouts of gates on the piece, {@code layouts}. */
  public ChartFiles gates(Plan plan, GatePlacement gates) {
    return new ChartFiles(
        plan.title(),
        PlainLetters.of(new GatesText(sentences, figures).verdict(gates)),
        Map.of("layouts", LayoutsChart.of(gates, sentences, figures)));
  }

  /** Every lever as a ruler, {@code levers}. */
  public ChartFiles least(Plan plan, SmallestChange least) {
    String answer =
        sentences.say(
            "room.chart.answer",
            "outcome",
            new GlanceWords(sentences, figures).outcome(least.base()));
    return new ChartFiles(
        plan.title(),
        PlainLetters.of(answer),
        Map.of("levers", LeverRulers.of(least, sentences, figures)));
  }

  /** Pictures of the plan that is explained, its heat as blocks, and its levers as rulers. */
  public ChartFiles explained(Explained why) {
    PouredPlan poured = why.poured();
    return new ChartFiles(poured, sentences, figures)
        .with("heat-eaten", HeatBlocks.of(why, sentences, figures))
        .with("levers", LeverRulers.of(why.changes(), sentences, figures));
  }

  /** Fronts of several plans over each other, and the pieces under each other. */
  public ChartFiles compared(Compared compared) {
    Map<String, Picture> pictures = new LinkedHashMap<>();
    pictures.put("fronts", ComparedFronts.of(compared, sentences, figures));
    pictures.put("broken-out", brokenOut(compared));
    return new ChartFiles(
        sentences.say("compare.chart.title"), ComparedWords.message(compared, sentences), pictures);
  }

  /** Every piece from above under its letter, title and result. */
  private Picture brokenOut(Compared compared) {
    List<Picture> each = new ArrayList<>();
    double tall = 0.0;
    for (Compared.Poured p : compared.plans()) {
      Picture picture = BrokenOutPicture.fromAbove(p.poured(), sentences, figures);
      each.add(picture);
      tall += LETTER + picture.tall();
    }
    Picture.Body body =
        (g, area) -> {
          double top = area.getMinY();
          for (int i = 0; i < each.size(); i++) {
            Compared.Poured p = compared.plans().get(i);
            double height = each.get(i).tall();
            named(g, area.getMinX(), top + LETTER - 6.0, p, each.get(i).message());
            each.get(i)
                .body()
                .draw(
                    g,
                    new Rectangle2D.Double(area.getMinX(), top + LETTER, area.getWidth(), height));
            g.setClip(null);
            top += LETTER + height;
          }
        };
    String caption =
        each.stream().map(Picture::caption).max(Comparator.comparingInt(String::length)).orElse("");
    return new Picture(
        each.get(0).heading(), ComparedWords.message(compared, sentences), caption, tall, body);
  }

  private static void named(Graphics2D g, double x, double y, Compared.Poured p, String message) {
    g.setPaint(Look.INK);
    g.setFont(Look.LABEL);
    String result = p.letter() + "  " + message;
    g.drawString(result, (float) x, (float) y);
    g.setFont(Look.TICK);
    g.setPaint(Look.FAINT_INK);
    float after = (float) (x + Paper.wide(result, Look.LABEL) + 14.0);
    g.drawString(PlainLetters.of(p.plan().title()), after, (float) y);
  }
}
