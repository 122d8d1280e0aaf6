package lastinch.validation.metal;

import java.util.Locale;
import java.util.Optional;
import lastinch.cases.catalogue.Catalogue;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyKind;

/** Contraction from the catalogue's densities beside pattern makers' allowances. */
public final class ContractionStudy implements Study {

  @Override
  public String title() {
    return "Contraction of the catalogue beside pattern makers' allowances";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.TREND;
  }

  @Override
  public String source() {
    return "Dooley, Applied Science for Metal Workers: bronze 5/32, brass 3/16, aluminium 7/32 in per ft";
  }

  @Override
  public String setting() {
    return "1 - (density just frozen / density cold)^(1/3)";
  }

  @Override
  public String note() {
    return "Allowances hold back for restraint by the mould and are rounded; only the size, within a third, is looked at.";
  }

  @Override
  public void compare(Rows rows) {
    String[] alloy = {"tin bronze", "yellow brass", "A356"};
    double[] percent = {1.30, 1.56, 1.82};
    for (int i = 0; i < alloy.length; i++) {
      double got = 100.0 * Catalogue.builtIn().contraction(alloy[i]).orElseThrow();
      rows.trend(
          alloy[i],
          String.format(Locale.ROOT, "about %.2f %%", percent[i]),
          String.format(Locale.ROOT, "%.2f %%", got),
          Math.abs(got / percent[i] - 1.0) < 1.0 / 3.0);
    }
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.empty();
  }
}
