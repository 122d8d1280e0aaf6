package lastinch.cases.catalogue.read;

import java.util.List;
import java.util.Map;

/**
 * What one materials file says.
 *
 * @param alloys metals
 * @param media mould media
 * @param steels flask steels
 * @param common figures that hold for every pour, by word
 */
public record MaterialsFile(
    List<Entry> alloys, List<Entry> media, List<Entry> steels, Map<String, Fact> common) {
  public MaterialsFile {
    alloys = List.copyOf(alloys);
    media = List.copyOf(media);
    steels = List.copyOf(steels);
  }
}
