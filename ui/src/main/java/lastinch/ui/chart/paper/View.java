package lastinch.ui.chart.paper;

/** From where the mould is looked at. */
public enum View {
  /** Square to the parting plane: across is along the piece, up is its left. */
  FACE,
  /** Along the parting plane, from the piece's right: across is along the piece, up is the cope. */
  EDGE
}
