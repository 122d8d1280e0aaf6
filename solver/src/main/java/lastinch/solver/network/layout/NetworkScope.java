package lastinch.solver.network.layout;

import java.util.ArrayList;
import java.util.List;
import lastinch.solver.casting.Model;
import lastinch.solver.casting.PourCase;
import lastinch.solver.charge.MouldTemperature;
import lastinch.solver.filling.Need;
import lastinch.solver.network.flow.MetalInPlace;

/** What a network of channels cannot hold yet. */
public final class NetworkScope {
  private NetworkScope() {}

  /** Parts of a case that this solver does not have, in the order of the case. */
  public static List<Need> missing(PourCase job) {
    List<Need> parts = new ArrayList<>();
    job.piece().model().map(Model::form).ifPresent(f -> addForm(f, parts));
    if (!job.checking().startsWet().isEmpty() && !startsFit(job)) {
      parts.add(Need.STARTS_WET);
    }
    return List.copyOf(parts);
  }

  private static boolean startsFit(PourCase job) {
    List<ChannelShape> shapes = ChannelLayout.of(job, new MouldTemperature(job.mould())).channels();
    return job.checking().startsWet().stream().allMatch(m -> MetalInPlace.fits(m, shapes));
  }

  private static void addForm(Model.Form form, List<Need> parts) {
    switch (form) {
      case LONG -> {}
      case TOO_WIDE -> parts.add(Need.MODEL_TOO_WIDE);
      case TOO_BRANCHED -> parts.add(Need.MODEL_TOO_BRANCHED);
    }
  }
}
