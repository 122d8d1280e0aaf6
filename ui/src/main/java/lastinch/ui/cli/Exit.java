package lastinch.ui.cli;

/** How a command ends. */
public final class Exit {
  public static final int SOLVED = 0;
  static final int OUR_FAULT = 1;
  public static final int BAD_INPUT = 2;
  static final int EXPECTATION_NOT_MET = 3;
  public static final int BROKE_DOWN = 4;
  public static final int CANCELLED = 130;

  private Exit() {}
}
