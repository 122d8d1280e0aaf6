package lastinch.ui.json;

import java.util.List;
import lastinch.cases.catalogue.MaterialSheet;

/** Metals and mould materials, in the formats {@value #NAMES} and {@value #SHEET}. */
public final class MaterialJson {
  /** Name and version of the list. */
  public static final String NAMES = "last inch material names 2";

  /** Name and version of one material. */
  public static final String SHEET = "last inch material 2";

  private MaterialJson() {}

  /** The list as text, without a line end. */
  public static String names(List<String> names) {
    JsonText json = new JsonText();
    json.open('{').put("format", NAMES).open("names", '[');
    names.forEach(json::item);
    return json.close(']').close('}').text();
  }

  /** One material as text, without a line end; figures as written in its file. */
  public static String sheet(MaterialSheet sheet) {
    JsonText json = new JsonText();
    json.open('{')
        .put("format", SHEET)
        .put("name", sheet.name())
        .put("madeOf", sheet.madeOf())
        .put("note", sheet.note())
        .open("alsoCalled", '[');
    sheet.alsoCalled().forEach(json::item);
    json.close(']').open("rows", '[');
    for (MaterialSheet.Row row : sheet.rows()) {
      json.open('{')
          .put("property", row.property())
          .put("value", row.value())
          .put("low", row.low())
          .put("high", row.high())
          .put("unit", row.unit())
          .put("basis", ResultJson.camel(row.basis()))
          .put("source", row.source())
          .put("note", row.note());
      if (row.changed().isPresent()) {
        json.put("changed", row.changed().get());
      } else {
        json.nothing("changed");
      }
      json.close('}');
    }
    json.close(']').open("sources", '[');
    for (MaterialSheet.Source source : sheet.sources()) {
      json.open('{').put("mark", source.mark()).put("reference", source.reference()).close('}');
    }
    return json.close(']').close('}').text();
  }
}
