package lastinch.solver.study;

import java.util.ArrayList;
import java.util.List;
import lastinch.solver.result.Finding;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.Meeting;

/** What else comes with an answer that fills. */
public enum LookOut {
  EDGE_ROUNDED(true),
  ABOVE_CEILING(true),
  TOO_LITTLE_METAL(true),
  GATE_SPLASHES(false),
  LINE_SHOWS(false),
  PLAIN_LAPS(false),
  FALLS(false),
  AIR_PUSHES_BACK(false);

  private final boolean serious;

  LookOut(boolean serious) {
    this.serious = serious;
  }

  /** Whether the piece is likely scrap with it. */
  public boolean serious() {
    return serious;
  }

  /** All that a run brings with it, worst first. */
  public static List<LookOut> of(RunSummary glance) {
    List<LookOut> all = new ArrayList<>();
    when(all, glance.edgesRounded(), EDGE_ROUNDED);
    when(all, glance.findings().contains(Finding.Kind.ABOVE_CEILING), ABOVE_CEILING);
    when(all, glance.findings().contains(Finding.Kind.TOO_LITTLE_METAL), TOO_LITTLE_METAL);
    when(all, glance.findings().contains(Finding.Kind.GATE_SPLASHES), GATE_SPLASHES);
    glance.meeting().filter(m -> m == Meeting.Kind.LAP).ifPresent(m -> all.add(LINE_SHOWS));
    when(all, glance.worstLap() >= LapStretch.PLAIN, PLAIN_LAPS);
    when(all, glance.findings().contains(Finding.Kind.FALLS), FALLS);
    when(all, glance.findings().contains(Finding.Kind.AIR_PUSHES_BACK), AIR_PUSHES_BACK);
    return List.copyOf(all);
  }

  private static void when(List<LookOut> all, boolean so, LookOut what) {
    if (so) {
      all.add(what);
    }
  }
}
