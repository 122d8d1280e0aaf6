package lastinch.cases.schema;

import java.util.Optional;
import java.util.function.BiFunction;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;

/** Kinds of value that are the same wherever they stand. */
public enum Single implements Kind {
  /** A weight or a volume per time. */
  RATE("a weight or volume per time, 0.005 to 50 kg/s, +- allowed", Values::rate),
  /** Any text on one line. */
  FREE("text on one line", Values::text),
  /** A name, unique in its list. */
  NAME("a name, 1 to 80 characters", Values::name),
  /** A metal of the catalogue. */
  ALLOY("a metal; see: lastinch alloys", Values::text),
  /** A mould medium of the catalogue. */
  MEDIUM("a mould; see: lastinch moulds", Values::text),
  /** Another file, found from the folder of this one. */
  FILE("a file, found from this one's folder", Values::fileName),
  /** How the mould stands. */
  STANDS(
      "flat; tip up 15 deg; tip down 40 mm over 400 mm; upright, tip down; upright, tip up",
      Compounds::stands),
  /** Direction of a limb. */
  HEADING("straight on; 30 deg left; 30 deg right; straight back", Compounds::heading),
  /** Where a limb begins or ends. */
  LIMB_END("boss; LIMB tip; LIMB thick end", Compounds::limbEnd),
  /** A distance along the piece or one of its limbs. */
  DISTANCE("a length from the thick end; with limbs: LIMB at 120 mm", Compounds::along),
  /** A named part that something enters. */
  INTO("boss, cup, runner or the name of a limb", Values::text),
  /** A sprue pin. */
  PIN("18 to 14 mm; 20 mm straight", Compounds::pin),
  /** Two lengths. */
  PAIR("15 x 12 mm", Compounds::pair),
  /** A weight of a metal. */
  HOLDS("2 kg bronze", Compounds::holds);

  private final String words;

  @SuppressWarnings("ImmutableEnumChecker") // a method without a state
  private final BiFunction<Node, Problems, Optional<?>> reader;

  Single(String words, BiFunction<Node, Problems, Optional<?>> reader) {
    this.words = words;
    this.reader = reader;
  }

  @Override
  public String words() {
    return words;
  }

  @Override
  public Optional<?> read(Node value, Problems problems) {
    return reader.apply(value, problems);
  }
}
