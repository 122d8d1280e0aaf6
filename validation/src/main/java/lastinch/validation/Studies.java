package lastinch.validation;

import java.util.List;
import lastinch.validation.flow.AirStudy;
import lastinch.validation.flow.CapillaryStudy;
import lastinch.validation.flow.FrictionStudy;
import lastinch.validation.flow.LossChainStudy;
import lastinch.validation.flow.SprueStudy;
import lastinch.validation.lengths.MeasuredLengthsStudy;
import lastinch.validation.metal.ContractionStudy;
import lastinch.validation.metal.FreezingCurveStudy;
import lastinch.validation.pour.DryPipeStudy;
import lastinch.validation.pour.FluidityStudy;
import lastinch.validation.pour.HandPourStudy;
import lastinch.validation.pour.HotRunStudy;
import lastinch.validation.pour.MeasuredPoursStudy;
import lastinch.validation.pour.MeasuredTrendsStudy;
import lastinch.validation.pour.ThinRimStudy;
import lastinch.validation.wall.ArrestStudy;
import lastinch.validation.wall.FlaskRodStudy;
import lastinch.validation.wall.FreezingFrontStudy;
import lastinch.validation.wall.FreezingRangeStudy;
import lastinch.validation.wall.HalfSpaceStudy;
import lastinch.validation.wall.ModulusStudy;
import lastinch.validation.wall.ThinPlateStudy;
import lastinch.validation.wall.TwoBodiesStudy;
import lastinch.validation.wall.UsualGridStudy;

/** All studies, in the order of the page. */
public final class Studies {
  private Studies() {}

  /** Fresh studies. */
  public static List<Study> all() {
    return List.of(
        new HalfSpaceStudy(),
        new TwoBodiesStudy(),
        new UsualGridStudy(),
        new ThinPlateStudy(),
        new FreezingFrontStudy(),
        new FreezingRangeStudy(),
        new ArrestStudy(),
        new ModulusStudy(),
        new FlaskRodStudy(),
        new SprueStudy(),
        new LossChainStudy(),
        new FrictionStudy(),
        new CapillaryStudy(),
        new AirStudy(),
        new DryPipeStudy(),
        new FluidityStudy(),
        new HotRunStudy(),
        new HandPourStudy(),
        new MeasuredPoursStudy(),
        new MeasuredLengthsStudy(),
        new MeasuredTrendsStudy(),
        new ThinRimStudy(),
        new FreezingCurveStudy(),
        new ContractionStudy());
  }
}
