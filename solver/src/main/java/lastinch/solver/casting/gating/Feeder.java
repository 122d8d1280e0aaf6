package lastinch.solver.casting.gating;

import java.util.Objects;
import lastinch.solver.casting.Place;
import lastinch.solver.material.Checks;

/**
 * Reservoir that makes up for shrinkage.
 *
 * @param name unique
 * @param place what it feeds
 * @param across diameter [m]
 * @param tall height [m]
 * @param neckAcross diameter of its neck [m]
 * @param open whether air reaches its top
 * @param sleeve whether an insulating sleeve surrounds it
 */
public record Feeder(
    String name,
    Place place,
    double across,
    double tall,
    double neckAcross,
    boolean open,
    boolean sleeve) {
  public Feeder {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(place, "place");
    Checks.within("across", across, 1e-3, 1.0, "m");
    Checks.within("tall", tall, 1e-3, 1.0, "m");
    Checks.within("neckAcross", neckAcross, 1e-3, across, "m");
  }
}
