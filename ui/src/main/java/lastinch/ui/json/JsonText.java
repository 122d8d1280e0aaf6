package lastinch.ui.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalDouble;

/** Writes JSON with plain ASCII letters, so that no terminal or pipe can spoil it. */
final class JsonText {
  private static final int INDENT = 2;
  private static final int LAST_PLAIN = 126;

  private final StringBuilder out = new StringBuilder();
  private int depth;
  private boolean fresh = true;

  JsonText open(char bracket) {
    separate();
    return begin(bracket);
  }

  JsonText open(String key, char bracket) {
    key(key);
    return begin(bracket);
  }

  private JsonText begin(char bracket) {
    out.append(bracket);
    depth++;
    fresh = true;
    return this;
  }

  JsonText close(char bracket) {
    depth--;
    if (!fresh) {
      line();
    }
    out.append(bracket);
    fresh = false;
    return this;
  }

  JsonText put(String key, String value) {
    key(key);
    quote(value);
    return this;
  }

  JsonText put(String key, boolean value) {
    key(key);
    out.append(value);
    return this;
  }

  JsonText put(String key, int value) {
    key(key);
    out.append(value);
    return this;
  }

  /** A number to so many significant digits; null when there is none. */
  JsonText put(String key, double value, int digits) {
    key(key);
    out.append(number(value, digits));
    return this;
  }

  JsonText put(String key, OptionalDouble value, int digits) {
    return value.isPresent() ? put(key, value.getAsDouble(), digits) : nothing(key);
  }

  JsonText nothing(String key) {
    key(key);
    out.append("null");
    return this;
  }

  /** Nothing in a list. */
  JsonText nothing() {
    separate();
    out.append("null");
    return this;
  }

  /** A word in a list. */
  JsonText item(String value) {
    separate();
    quote(value);
    return this;
  }

  /** A number in a list, to so many significant digits. */
  JsonText item(double value, int digits) {
    separate();
    out.append(number(value, digits));
    return this;
  }

  String text() {
    return out.toString();
  }

  private static String number(double value, int digits) {
    if (!Double.isFinite(value)) {
      return "null";
    }
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits));
    if (rounded.signum() == 0) {
      return "0";
    }
    BigDecimal bare = rounded.stripTrailingZeros();
    boolean plain = bare.scale() < 10 && bare.precision() - bare.scale() < 16;
    return plain ? bare.toPlainString() : bare.toString();
  }

  private void key(String key) {
    separate();
    quote(key);
    out.append(": ");
  }

  private void separate() {
    if (depth == 0) {
      return;
    }
    if (!fresh) {
      out.append(',');
    }
    line();
    fresh = false;
  }

  private void line() {
    out.append('\n').append(" ".repeat(INDENT * depth));
  }

  private void quote(String text) {
    out.append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (c < ' ' || c > LAST_PLAIN) {
        out.append("\\u");
        String hex = Integer.toHexString(c);
        out.append("0".repeat(4 - hex.length())).append(hex);
      } else {
        out.append(c);
      }
    }
    out.append('"');
  }
}
