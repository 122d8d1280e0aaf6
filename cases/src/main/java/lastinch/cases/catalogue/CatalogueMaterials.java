package lastinch.cases.catalogue;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import lastinch.cases.catalogue.read.Index;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;
import lastinch.cases.plan.Materials;
import lastinch.solver.material.Alloy;
import lastinch.solver.material.MouldMedium;

/** The catalogue as a case file asks for it. */
public final class CatalogueMaterials implements Materials {
  /** How a case calls for sand that a binder holds together; which sand it is the binder says. */
  private static final String BONDED = "bonded sand";

  private final Catalogue catalogue;

  /** Materials of a catalogue. */
  public CatalogueMaterials(Catalogue catalogue) {
    this.catalogue = Objects.requireNonNull(catalogue, "catalogue");
  }

  @Override
  public Optional<Alloy> alloy(String name) {
    return catalogue.findAlloy(name).map(catalogue::alloy);
  }

  @Override
  public Optional<MouldMedium> medium(String name, Make make) {
    return medium(name, make, MetalKind.COPPER);
  }

  @Override
  public Optional<MouldMedium> medium(String name, Make make, String alloy) {
    return medium(
        name, make, catalogue.findAlloy(alloy).map(catalogue::metalKind).orElse(MetalKind.COPPER));
  }

  @Override
  public Materials with(Node.Entries own, Problems problems) {
    return new CatalogueMaterials(catalogue.with(own, problems));
  }

  private Optional<MouldMedium> medium(String name, Make make, MetalKind kind) {
    return catalogue
        .findMedium(plainName(name, make))
        .map(found -> catalogue.medium(found, kind, ramming(make)));
  }

  private static String plainName(String name, Make make) {
    if (!Index.fold(name).equals(Index.fold(BONDED))) {
      return name;
    }
    return switch (make.binder().orElse("oil")) {
      case "resin" -> "resin-bonded sand";
      case "water glass" -> "water glass sand";
      case "clay" -> "green sand";
      default -> "oil-bonded sand";
    };
  }

  private static Ramming ramming(Make make) {
    String word = make.rammed().orElse("").toLowerCase(Locale.ROOT);
    for (Ramming r : Ramming.values()) {
      if (r.words().equals(word)) {
        return r;
      }
    }
    return Ramming.FIRM;
  }

  @Override
  public List<String> alloyNames() {
    return catalogue.alloyNames();
  }

  @Override
  public List<String> mediumNames() {
    List<String> names = new ArrayList<>();
    names.add(BONDED);
    names.addAll(catalogue.mediumNames());
    return names;
  }

  @Override
  public List<String> alloyAliases() {
    Set<String> all = new LinkedHashSet<>();
    for (String name : catalogue.alloyNames()) {
      all.add(name);
      all.addAll(catalogue.otherAlloyNames(name));
    }
    return List.copyOf(all);
  }

  @Override
  public List<String> mediumAliases() {
    Set<String> all = new LinkedHashSet<>();
    all.add(BONDED);
    for (String name : catalogue.mediumNames()) {
      all.add(name);
      all.addAll(catalogue.otherMediumNames(name));
    }
    return List.copyOf(all);
  }

  @Override
  public Optional<String> alloyNote(String name) {
    return catalogue.aliasNote(name);
  }

  @Override
  public Optional<Double> contraction(String alloy) {
    return catalogue.findAlloy(alloy).flatMap(catalogue::contraction);
  }

  @Override
  public Common common() {
    return catalogue.commonFigures();
  }

  @Override
  public Optional<FlaskSteel> flaskSteel(String name) {
    return catalogue.findSteel(name).map(catalogue::steel);
  }
}
