package lastinch.solver.material;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/**
 * What the mould is made of.
 *
 * @param name as printed
 * @param family kind of mould, decides which words of a case apply
 * @param conductivity [W/(m K)] against temperature [K]
 * @param conductivityFactor band on the whole conductivity curve [-], best 1
 * @param specificHeat [J/(kg K)] against temperature [K]
 * @param density bulk [kg/m3]
 * @param porosity [-], 0 to 1
 * @param permeability [m2], 0 for a tight mould
 * @param contactLiquid heat passed per degree while the metal is liquid at the wall [W/(m2 K)]
 * @param contactGap the same once a frozen skin has drawn back [W/(m2 K)]
 * @param skinFrees largest solid share at which contact is still that of liquid [-]
 * @param gapOpen solid share at which the gap is fully open [-]
 * @param roughness of its face, as grains of sand would make it [m]; 0 for a smooth one
 * @param ceiling hottest the medium is used at [K]
 * @param givesOff what it gives off that hurts, in the order of {@link Hazard}
 */
public record MouldMedium(
    String name,
    MouldFamily family,
    Curve conductivity,
    Band conductivityFactor,
    Curve specificHeat,
    Band density,
    double porosity,
    Band permeability,
    Band contactLiquid,
    Band contactGap,
    Band skinFrees,
    Band gapOpen,
    Band roughness,
    Band ceiling,
    List<Hazard> givesOff) {

  /** A medium with a smooth face that gives off nothing that hurts. */
  public MouldMedium(
      String name,
      MouldFamily family,
      Curve conductivity,
      Band conductivityFactor,
      Curve specificHeat,
      Band density,
      double porosity,
      Band permeability,
      Band contactLiquid,
      Band contactGap,
      Band skinFrees,
      Band gapOpen,
      Band ceiling) {
    this(
        name,
        family,
        conductivity,
        conductivityFactor,
        specificHeat,
        density,
        porosity,
        permeability,
        contactLiquid,
        contactGap,
        skinFrees,
        gapOpen,
        Band.typed(0.0),
        ceiling,
        List.of());
  }

  public MouldMedium {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(family, "family");
    Objects.requireNonNull(conductivity, "conductivity");
    Objects.requireNonNull(specificHeat, "specificHeat");
    givesOff = givesOff.stream().sorted().distinct().toList();
    Checks.within("conductivityFactor", conductivityFactor.value(), 0.05, 20.0, "-");
    Checks.within("density", density.value(), 100.0, 25000.0, "kg/m3");
    Checks.within("porosity", porosity, 0.0, 1.0, "-");
    Checks.within("permeability", permeability.value(), 0.0, 1e-6, "m2");
    Checks.within("contactLiquid", contactLiquid.value(), 1.0, 1e9, "W/(m2 K)");
    Checks.within("contactGap", contactGap.value(), 0.0, contactLiquid.value(), "W/(m2 K)");
    Checks.within("skinFrees", skinFrees.value(), 0.0, 1.0, "-");
    Checks.within("gapOpen", gapOpen.value(), skinFrees.value(), 1.0, "-");
    Checks.within("roughness", roughness.value(), 0.0, 1e-2, "m");
    Checks.within("ceiling", ceiling.value(), 300.0, 3000.0, "K");
  }

  /** Figures of a medium that carry a band and change how it takes heat and passes air. */
  @SuppressWarnings("ImmutableEnumChecker") // references to accessors hold nothing
  public enum Figure {
    CONDUCTIVITY_FACTOR(MouldMedium::conductivityFactor),
    DENSITY(MouldMedium::density),
    PERMEABILITY(MouldMedium::permeability),
    CONTACT_LIQUID(MouldMedium::contactLiquid),
    CONTACT_GAP(MouldMedium::contactGap),
    SKIN_FREES(MouldMedium::skinFrees),
    GAP_OPEN(MouldMedium::gapOpen),
    ROUGHNESS(MouldMedium::roughness);

    private final Function<MouldMedium, Band> of;

    Figure(Function<MouldMedium, Band> of) {
      this.of = of;
    }
  }

  /** A figure with its band. */
  public Band figure(Figure figure) {
    return figure.of.apply(this);
  }

  /**
   * The same medium with one figure changed. A gap passes no more heat than contact does, and is
   * open no sooner than the skin frees itself: the other figure of such a pair gives way.
   */
  public MouldMedium with(Figure changed, Band band) {
    Band contact = either(changed, Figure.CONTACT_LIQUID, band);
    Band gap = either(changed, Figure.CONTACT_GAP, band);
    Band frees = either(changed, Figure.SKIN_FREES, band);
    Band open = either(changed, Figure.GAP_OPEN, band);
    boolean gapGiven = changed == Figure.CONTACT_GAP;
    boolean openGiven = changed == Figure.GAP_OPEN;
    return new MouldMedium(
        name,
        family,
        conductivity,
        either(changed, Figure.CONDUCTIVITY_FACTOR, band),
        specificHeat,
        either(changed, Figure.DENSITY, band),
        porosity,
        either(changed, Figure.PERMEABILITY, band),
        gapGiven ? contact.at(Math.max(contact.value(), gap.value())) : contact,
        gapGiven ? gap : gap.at(Math.min(contact.value(), gap.value())),
        openGiven ? frees.at(Math.min(frees.value(), open.value())) : frees,
        openGiven ? open : open.at(Math.max(frees.value(), open.value())),
        either(changed, Figure.ROUGHNESS, band),
        ceiling,
        givesOff);
  }

  private Band either(Figure changed, Figure own, Band band) {
    return changed == own ? band : figure(own);
  }
}
