package lastinch.cases.plan.assembly;

import java.util.List;

/** Parts that a gate, vent or sprue may enter by their own name. */
public final class PlaceWords {
  public static final List<String> PARTS = List.of("boss", "cup", "runner");

  private PlaceWords() {}
}
