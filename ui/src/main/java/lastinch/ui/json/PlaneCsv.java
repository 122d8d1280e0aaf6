package lastinch.ui.json;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.casting.GapMap;
import lastinch.solver.result.PlaneField;
import lastinch.ui.words.Figures;

/** What a pour over the plane left in every square, one line each. */
public final class PlaneCsv {
  private static final double MILLI = 1e3;
  private static final Figures METRIC = new Figures(DisplayUnits.METRIC);
  private static final String HEAD =
      "x_mm,y_mm,part,gap_mm,fill,arrival_s,arrival_degC,arrivalSolid,arrivalSpeed_m_s,"
          + "lapIndex,gate,line,againstMould_m_s\n";

  private PlaneCsv() {}

  /** Writes the open squares of a field, row by row from the lowest. */
  public static void write(PlaneField field, Path file) throws IOException {
    GapMap map = field.map();
    try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
      out.write(HEAD);
      for (int k = 0; k < map.grid().size(); k++) {
        if (map.isOpen(k)) {
          out.write(row(field, map, k));
        }
      }
    }
  }

  private static String row(PlaneField field, GapMap map, int k) {
    String arrival =
        field.reached(k)
            ? String.format(
                Locale.ROOT,
                "%.4f,%.1f,%.3f,%.3f,%.3f",
                field.time(k),
                METRIC.heatValue(field.temperature(k)),
                field.solid(k),
                field.speed(k),
                field.lap(k))
            : ",,,,";
    boolean known = field.gate(k) != PlaneField.NO_GATE;
    return String.format(
        Locale.ROOT,
        "%.2f,%.2f,%s,%.3f,%.3f,%s,%s,%s,%.3f%n",
        MILLI * map.grid().x(k % map.nx()),
        MILLI * map.grid().y(k / map.nx()),
        quoted(map.parts().get(map.part(k)).name()),
        MILLI * map.gap(k),
        field.fill(k),
        arrival,
        known ? quoted(field.gates().get(field.gate(k))) : "",
        field.isLine(k) ? ResultJson.camel(field.line(k)) : "",
        field.impact(k));
  }

  private static String quoted(String name) {
    return "\"" + name.replace("\"", "\"\"") + "\"";
  }
}
