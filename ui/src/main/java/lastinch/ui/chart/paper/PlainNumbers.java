package lastinch.ui.chart.paper;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;

/** Numbers on an axis, the same on every machine. */
final class PlainNumbers extends NumberFormat {
  private static final long serialVersionUID = 1L;
  private static final int DECIMALS = 3;

  @Override
  public StringBuffer format(double number, StringBuffer to, FieldPosition position) {
    BigDecimal rounded =
        BigDecimal.valueOf(number).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
    return to.append(rounded.signum() == 0 ? "0" : rounded.toPlainString());
  }

  @Override
  public StringBuffer format(long number, StringBuffer to, FieldPosition position) {
    return to.append(number);
  }

  @Override
  public Number parse(String source, ParsePosition position) {
    throw new UnsupportedOperationException("axes are only written");
  }
}
