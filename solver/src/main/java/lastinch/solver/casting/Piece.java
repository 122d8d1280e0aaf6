package lastinch.solver.casting;

import java.util.List;
import java.util.Optional;

/**
 * The piece to be cast, as the cavity it leaves in the mould.
 *
 * @param limbs at least one
 * @param boss thick block before the first station of the first limb, if any
 */
public record Piece(List<Limb> limbs, Optional<Boss> boss) {
  public Piece {
    limbs = List.copyOf(limbs);
    if (limbs.isEmpty()) {
      throw new IllegalArgumentException("a piece needs at least one limb");
    }
  }
}
