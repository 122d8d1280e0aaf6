package lastinch.solver.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import lastinch.solver.casting.Metal;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.levers.JobParameter;
import lastinch.solver.levers.Owned;
import lastinch.solver.material.Band;
import lastinch.solver.material.Basis;
import lastinch.solver.material.Citation;
import lastinch.solver.run.SampleJob;
import lastinch.solver.study.Goal;
import lastinch.solver.study.RunCache;
import org.junit.jupiter.api.Test;

/** Gates on an even plate whose best layout follows from symmetry. */
class GatePlacementExactSolutionTest {
  private static final double LENGTH = 0.3;
  private static final Owned OWNED = Owned.nothing(InventedPours.marks());

  /** An even plate, the same from either end, gated at its end. */
  private static PourCase plate() {
    return SampleJob.strip(LENGTH, 0.03, 3e-3)
        .runner(0.06, 0.015, 0.012)
        .gateAt(Side.THICK_END, 0.02, 3e-3, 0.015)
        .build();
  }

  private static List<Double> places(PourCase job) {
    List<Double> all = new ArrayList<>();
    for (Gate gate : job.gating().gates()) {
      all.add(gate.place() instanceof Place.At at ? at.distance() : 0.0);
    }
    return all;
  }

  /** Heat left where metal has furthest to go, less what each gate drinks. */
  private static double heat(PourCase job) {
    List<Double> gates = places(job);
    double furthest = 0.0;
    for (int i = 0; i <= 300; i++) {
      double here = LENGTH * i / 300.0;
      double way = gates.stream().mapToDouble(g -> Math.abs(g - here)).min().orElseThrow();
      furthest = Math.max(furthest, way);
    }
    return 0.9 - 4.0 * furthest - 0.12 * gates.size();
  }

  private static GatePlacement search(int most) {
    try (RunCache studies = InventedPours.studies(InventedPours.by(j -> heat(j)))) {
      return GatePlacement.of(studies, plate(), OWNED, Goal.heat(0.2), most);
    }
  }

  @Test
  void oneGateGoesIntoTheMiddle() {
    GatePlacement gates = search(1);
    assertThat(gates.best().layout().places()).hasSize(1);
    // places fall on marks 5 mm apart
    assertThat(gates.best().layout().places().get(0)).isCloseTo(LENGTH / 2, within(5.1e-3));
  }

  @Test
  void twoGatesAtTheQuartersAreTheKnownBest() {
    // 0.9 - 4 * 0.075 - 0.24 = 0.36 beats one gate's 0.18 and three gates' 0.34
    GatePlacement gates = search(GatePlacement.MOST);
    GateLayout best = gates.best().layout();
    assertThat(best.number()).isEqualTo(2);
    assertThat(best.places().get(0)).isCloseTo(LENGTH / 4, within(5.1e-3));
    assertThat(best.places().get(1)).isCloseTo(3 * LENGTH / 4, within(5.1e-3));
    assertThat(gates.best().glance().heat()).isCloseTo(0.36, within(0.02));
    assertThat(gates.answers().get(0).why()).isEqualTo(GatePlacement.Loses.BEST);
  }

  @Test
  void beatsARandomSearchThatMayPourAsOften() {
    GatePlacement gates = search(GatePlacement.MOST);
    for (int seed = 0; seed < 5; seed++) {
      Random chance = new Random(seed);
      double most = Double.NEGATIVE_INFINITY;
      int poured = 0;
      while (poured < gates.runs()) {
        int number = 1 + chance.nextInt(GatePlacement.MOST);
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < number; i++) {
          places.add(LENGTH * chance.nextDouble());
        }
        places.sort(Comparator.naturalOrder());
        GateLayout layout = new GateLayout(chance.nextBoolean(), places, 0.012);
        if (layout.isSound(LENGTH)) {
          poured++;
          most = Math.max(most, heat(layout.on(plate(), OWNED)));
        }
      }
      assertThat(gates.best().glance().heat()).isGreaterThanOrEqualTo(most - 1e-9);
    }
  }

  @Test
  void ofLayoutsAsGoodTheOneWithFewestGatesWins() {
    try (RunCache studies = InventedPours.studies(InventedPours.by(j -> 0.5))) {
      GatePlacement gates =
          GatePlacement.of(studies, plate(), OWNED, Goal.heat(0.2), GatePlacement.MOST);
      assertThat(gates.best().layout().number()).isEqualTo(1);
      assertThat(gates.answers().subList(1, gates.answers().size()))
          .filteredOn(a -> a.layout().number() > 1)
          .isNotEmpty()
          .allMatch(a -> a.why() == GatePlacement.Loses.MORE_GATES);
    }
  }

  @Test
  void gatesKeepClearOfEachOtherAndOfTheEnds() {
    assertThat(new GateLayout(false, List.of(0.1, 0.139), 0.02).isSound(LENGTH)).isFalse();
    assertThat(new GateLayout(false, List.of(0.1, 0.14), 0.02).isSound(LENGTH)).isTrue();
    assertThat(new GateLayout(false, List.of(0.295), 0.02).isSound(LENGTH)).isFalse();
    for (GatePlacement.Answer a : search(GatePlacement.MOST).answers()) {
      assertThat(a.layout().isSound(LENGTH)).isTrue();
    }
  }

  @Test
  void whatRunnerAndGatesHoldIsMeltedTooAndPouredAsFast() {
    PourCase job = plate();
    PourCase gated = new GateLayout(false, List.of(0.1, 0.2), 0.02).on(job, OWNED);
    assertThat(gated.metal().melted()).isGreaterThan(job.metal().melted());
    assertThat(gated.pour().rate(gated.metal().melted(), 1.0))
        .isCloseTo(job.pour().rate(job.metal().melted(), 1.0), within(1e-9));
  }

  @Test
  void aGateAtTheThickEndIsNoWiderThanThatEnd() {
    PourCase gated = new GateLayout(true, List.of(0.2), 0.05).on(plate(), OWNED);
    assertThat(gated.gating().gates().stream().map(Gate::width)).containsExactly(0.03, 0.05);
  }

  @Test
  void moreMetalCoolsSlowerUnlessItsRateWasMeasured() {
    Citation practice = new Citation(Basis.PRACTICE, "common practice, no source", "");
    Metal m = plate().metal();
    Band loose = new Band(2.0, 1.5, 3.0, practice);
    Band typed = Band.typed(2.0, 0.1);
    PourCase job =
        plate().withMetal(new Metal(m.alloy(), 1.0, m.reading(), m.waiting(), loose, typed));
    Metal more = JobParameter.MELTED.move(job, 8.0).metal();
    // eight times the mass has half the surface over mass
    assertThat(more.coolingRate().value()).isCloseTo(1.0, within(1e-12));
    assertThat(more.coolingRate().high()).isCloseTo(1.5, within(1e-12));
    assertThat(more.lipLoss()).isEqualTo(typed);
  }

  @Test
  void theThickEndIsStarvedWhenItIsFedThroughThinnerMetal() {
    PourCase feather = SampleJob.featherInSand(6.0).build();
    assertThat(new GateLayout(true, List.of(), 0.02).starved(feather)).isEmpty();
    GateLayout.Starved starved = new GateLayout(false, List.of(0.16), 0.02).starved(feather).get();
    assertThat(starved.thick()).isEqualTo(18e-3);
    assertThat(starved.thin()).isCloseTo(3.6e-3, within(1e-12));
    assertThat(new GateLayout(false, List.of(0.15), 0.02).starved(plate())).isEmpty();
  }
}
