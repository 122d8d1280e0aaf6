package lastinch.solver.result;

import java.util.Optional;

/**
 * A pour with what every phase that was asked for has found.
 *
 * @param filling until the verdict; later phases change nothing of it
 * @param field what every square of the map saw, from a pour over the plane
 * @param toppedUp after the verdict
 */
public record Poured(PourResult filling, Optional<PlaneField> field, Optional<ToppedUp> toppedUp) {}
