package lastinch.solver.plane.flow;

/** Metal that stands in the slices of a sprue, from its foot up, with its heat. */
final class StandingMetal {
  /** Share of its room up to which a slice counts as full [-]; numerical. */
  private static final double SLICE_FULL = 1.0 - 1e-9;

  /** Share of its room up to which the sprue counts as full [-]; numerical. */
  private static final double FULL = 1.0 - 1e-6;

  final SprueShape shape;

  /** By slice: metal [m3], and its heat over density [m3 J/kg]. */
  final double[] volume;

  final double[] content;
  private double overVolume;
  private double overContent;

  StandingMetal(SprueShape shape) {
    this.shape = shape;
    volume = new double[shape.slices];
    content = new double[shape.slices];
  }

  private void add(int slice, double v, double h) {
    volume[slice] += v;
    content[slice] += v * h;
  }

  /** Lays metal [m3] of an enthalpy [J/kg] on what stands. */
  void lay(double v, double h) {
    int i = 0;
    while (i < shape.slices - 1 && volume[i] >= shape.room[i] * SLICE_FULL) {
      i++;
    }
    add(i, v, h);
  }

  /** Adds metal [m3] of an enthalpy [J/kg] at the top. */
  void top(double v, double h) {
    add(shape.slices - 1, v, h);
  }

  /** Puts metal [m3] with its heat back at the foot. */
  void back(double v, double heat) {
    volume[0] += v;
    content[0] += heat;
  }

  /** Takes metal [m3] from the foot up; returns the heat that went with it. */
  double take(double wanted) {
    double left = wanted;
    double taken = 0.0;
    for (int i = 0; i < shape.slices && left > 0.0; i++) {
      double h = volume[i] > 0.0 ? content[i] / volume[i] : 0.0;
      double part = Math.min(left, volume[i]);
      volume[i] -= part;
      taken += volume[i] > 0.0 ? part * h : content[i];
      content[i] = volume[i] > 0.0 ? content[i] - part * h : 0.0;
      left -= part;
    }
    return taken;
  }

  /**
   * What is too much for a slice goes up; what is too much for the sprue is left in {@link
   * #overVolume} and {@link #overContent}.
   */
  void rise() {
    overVolume = 0.0;
    overContent = 0.0;
    for (int i = 0; i < shape.slices; i++) {
      double over = volume[i] - shape.room[i];
      if (over > 0.0) {
        double h = content[i] / volume[i];
        volume[i] -= over;
        content[i] -= over * h;
        if (i < shape.slices - 1) {
          add(i + 1, over, h);
        } else {
          overVolume = over;
          overContent = over * h;
        }
      }
    }
  }

  double overVolume() {
    return overVolume;
  }

  double overContent() {
    return overContent;
  }

  /** What stands higher sinks into what was drained below. */
  void sink() {
    for (int i = 0; i < shape.slices - 1; i++) {
      double lack = shape.room[i] - volume[i];
      int from = i + 1;
      while (lack > 0.0 && from < shape.slices) {
        double part = Math.min(lack, volume[from]);
        if (part > 0.0) {
          double h = content[from] / volume[from];
          volume[from] -= part;
          content[from] = volume[from] > 0.0 ? content[from] - part * h : 0.0;
          add(i, part, h);
          lack -= part;
        }
        from++;
      }
    }
  }

  /** All of it [m3]. */
  double held() {
    double sum = 0.0;
    for (double v : volume) {
      sum += v;
    }
    return sum;
  }

  /** Room for it [m3]. */
  double room() {
    double sum = 0.0;
    for (double v : shape.room) {
      sum += v;
    }
    return sum;
  }

  boolean isFull() {
    return held() >= room() * FULL;
  }

  /** Height of it [m]. */
  double height() {
    double h = 0.0;
    for (int i = 0; i < shape.slices; i++) {
      h += shape.tall / shape.slices * Math.min(1.0, volume[i] / shape.room[i]);
    }
    return h;
  }
}
