package lastinch.ui.json;

import java.util.List;
import lastinch.cases.mesh.ModelLook;
import lastinch.solver.geometry.solid.ShapeReport;
import lastinch.solver.geometry.solid.UndercutAnalysis;
import lastinch.solver.material.Alloy;

/** A model looked over, in the format {@value #FORMAT}. Sizes in metres, weights in kilograms. */
public final class ShapeJson {
  /** Name and version of the format. */
  public static final String FORMAT = "last inch shape 2";

  private static final int DIGITS = 6;

  private ShapeJson() {}

  /** The answer as text, without a line end. */
  public static String of(
      String file, ModelLook look, UndercutAnalysis locking, Alloy alloy, List<String> matters) {
    ShapeReport survey = look.survey();
    JsonText json = new JsonText();
    json.open('{').put("format", FORMAT).put("file", file);
    json.put("unit", look.unit().word()).put("up", look.pose().up());
    json.put("kind", ResultJson.camel(look.drawn().model().form()));
    json.put("partingM", look.pose().parting(), DIGITS)
        .put("highM", look.pose().height(), DIGITS)
        .put("longM", look.drawn().length(), DIGITS)
        .put("wideM", look.pose().solid().high(1) - look.pose().solid().low(1), DIGITS)
        .put("volumeM3", look.volume(), DIGITS)
        .put("mapVolumeM3", survey.map().totalVolume(), DIGITS)
        .put("wallM2", survey.area(), DIGITS)
        .put("massKg", look.volume() * alloy.densitySolid().value(), DIGITS)
        .put("alloy", alloy.name());
    spot(json, "thinnest", survey.thinnest());
    spot(json, "thickest", survey.thickest());
    spot(json, "freezesLast", survey.heaviest());
    json.put("cellM", look.cell(), DIGITS)
        .put("triangles", look.checks().mesh().triangles())
        .put("openEdges", look.checks().openEdges())
        .put("turnedFaces", look.checks().turnedFaces())
        .put("insideOut", look.checks().insideOut())
        .put("bodies", look.checks().bodies())
        .put("undercutShare", locking.share(UndercutAnalysis.Mark.UNDERCUT), DIGITS)
        .put("lockedShare", locking.share(UndercutAnalysis.Mark.OVERHANG), DIGITS)
        .put("tornShare", survey.torn(), DIGITS)
        .put("crossingShare", survey.crossing(), DIGITS)
        .put("narrowShare", survey.narrow(), DIGITS);
    json.open("matters", '[');
    matters.forEach(json::item);
    return json.close(']').close('}').text();
  }

  private static void spot(JsonText json, String key, ShapeReport.Spot spot) {
    json.open(key, '{')
        .put("valueM", spot.value(), DIGITS)
        .put("xM", spot.x(), DIGITS)
        .put("yM", spot.y(), DIGITS)
        .close('}');
  }
}
