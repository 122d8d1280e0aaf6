package lastinch.cases.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;
import lastinch.solver.casting.ModelCoefficients;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.MouldMedium;

/** Metals and mould media that a case may name. Names and aliases are compared folded. */
public interface Materials {

  /** The alloy of a name or alias. */
  Optional<Alloy> alloy(String name);

  /**
   * The mould medium of a name or alias.
   *
   * @param name as a case writes it: {@code bonded sand}, {@code green sand}, {@code gypsum
   *     investment}, {@code phosphate investment}, {@code ceramic shell}, {@code graphite}, {@code
   *     steel}, or a name of the person's own
   * @param make what a case says about how it was made
   */
  Optional<MouldMedium> medium(String name, Make make);

  /**
   * The mould medium as it meets an alloy; how hard a mould pulls heat while the metal is liquid
   * depends on the metal.
   *
   * @param alloy name or alias of the alloy poured
   */
  default Optional<MouldMedium> medium(String name, Make make, String alloy) {
    return medium(name, make);
  }

  /**
   * These materials with a person's own file laid over them.
   *
   * @param own the words of the file, its format line among them
   * @param problems takes all that is wrong with it
   * @return these materials unchanged where anything is wrong
   */
  default Materials with(Node.Entries own, Problems problems) {
    problems.add(own.span(), "wrong.materialsOnesOwnCannot");
    return this;
  }

  /** Names of all alloys, as printed, in the order of the catalogue. */
  List<String> alloyNames();

  /** Names of all mould media as a case may write them, in the order of the catalogue. */
  List<String> mediumNames();

  /** Every spelling under which an alloy is found, names included. */
  List<String> alloyAliases();

  /** Every spelling under which a mould medium is found, names included. */
  List<String> mediumAliases();

  /** What an alias has to say for itself, when it stands for another alloy. */
  default Optional<String> alloyNote(String name) {
    return Optional.empty();
  }

  /** Linear contraction from freezing to room temperature, common practice [-]. */
  default Optional<Double> contraction(String alloy) {
    return Optional.empty();
  }

  /** Steel that flasks are made of, by name; figures for an investment flask. */
  Optional<FlaskSteel> flaskSteel(String name);

  /** Figures that hold for every pour until a case says otherwise. */
  Common common();

  /**
   * Figures that hold for every pour until a case says otherwise.
   *
   * @param partingCrack width of the leak along the parting outline [m]
   * @param coolingRate lost from the reading to the lip, crucible of 1 to 2 kg [K/s]
   * @param lipLoss lost over the lip and in the stream, crucible of 1 to 2 kg [K]
   * @param laws figures in the laws themselves
   */
  record Common(Band partingCrack, Band coolingRate, Band lipLoss, ModelCoefficients laws) {
    public Common {
      Objects.requireNonNull(partingCrack, "partingCrack");
      Objects.requireNonNull(coolingRate, "coolingRate");
      Objects.requireNonNull(lipLoss, "lipLoss");
      Objects.requireNonNull(laws, "laws");
    }
  }

  /**
   * How a mould was made, as far as the case says.
   *
   * @param binder {@code oil}, {@code resin}, {@code water glass} or {@code clay}; empty when not
   *     said
   * @param rammed {@code soft}, {@code firm} or {@code hard}; empty when not said
   */
  record Make(Optional<String> binder, Optional<String> rammed) {
    public static final Make NOT_SAID = new Make(Optional.empty(), Optional.empty());
  }

  /**
   * Flask steel.
   *
   * @param density [kg/m3]
   * @param specificHeat [J/(kg K)]
   * @param emissivity [-]
   */
  record FlaskSteel(String name, double density, double specificHeat, double emissivity) {}
}
