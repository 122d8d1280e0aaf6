package lastinch.cases.plan.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.Checking;

/** Builds the options that hold a run against an exact solution. */
final class CheckingAssembly {
  private CheckingAssembly() {}

  static Checking of(Optional<Fields> said) {
    if (said.isEmpty()) {
      return Checking.NONE;
    }
    Fields f = said.get();
    return new Checking(
        yes(f, "mould stays at its heat", false),
        f.si("friction factor"),
        f.si("spreading"),
        f.si("entry loss"),
        yes(f, "pushes back", true),
        f.word("freezing follows").orElse("the alloy").equals("straight line"),
        f.si("cup kept at"),
        f.si("enters at"),
        wet(f),
        f.word("poured fluid").orElse("metal").equals("water")
            ? Checking.Fluid.WATER
            : Checking.Fluid.METAL,
        f.si("cell length"),
        f.si("front courant"),
        f.si("heat step"),
        f.si("share that freezes as mush"),
        yes(f, "gap conducts perfectly", false),
        f.word("wall curvature").orElse("on").equals("on"),
        !yes(f, "lip costs nothing", false),
        f.word("rims").orElse("on").equals("on"));
  }

  private static boolean yes(Fields f, String key, boolean otherwise) {
    return f.word(key).map(w -> w.equals("yes")).orElse(otherwise);
  }

  private static List<Checking.StartsWet> wet(Fields f) {
    List<Checking.StartsWet> all = new ArrayList<>();
    for (Fields w : f.list("starts wet")) {
      OptionalDouble speed = w.si("speed");
      all.add(
          new Checking.StartsWet(
              w.word("channel").orElseThrow(), w.need("from"), w.need("to"), speed.orElse(0.0)));
    }
    return all;
  }
}
