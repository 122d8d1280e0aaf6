package lastinch.ui.report;

import java.io.IOException;
import java.util.List;

/** Writes a page that is well-formed, letter by letter; every text is escaped. */
final class Html {
  private final StringBuilder out = new StringBuilder();

  /** Opens an element; attributes as name, value, name, value ... */
  Html open(String element, String... attributes) {
    out.append('<').append(element);
    for (int i = 0; i + 1 < attributes.length; i += 2) {
      out.append(' ').append(attributes[i]).append("=\"").append(escaped(attributes[i + 1]));
      out.append('"');
    }
    out.append('>');
    return this;
  }

  Html close(String element) {
    out.append("</").append(element).append(">\n");
    return this;
  }

  Html text(String text) {
    out.append(escaped(text));
    return this;
  }

  /** An element with a text in it. */
  Html element(String element, String text, String... attributes) {
    return open(element, attributes).text(text).close(element);
  }

  /** Something that is well-formed already. */
  Html raw(String wellFormed) {
    out.append(wellFormed);
    return this;
  }

  /** Something that is read when it is opened, and printed when it is open. */
  Html fold(String heading, Content content) throws IOException {
    open("details").element("summary", heading);
    content.write();
    return close("details");
  }

  /** Writes a part of the page. */
  interface Content {
    void write() throws IOException;
  }

  /** A table of a kind that the style knows. */
  Html table(String kind, List<String> head, List<List<String>> rows) {
    open("table", "class", kind).open("tr");
    for (String cell : head) {
      element("th", cell);
    }
    close("tr");
    for (List<String> row : rows) {
      open("tr");
      for (String cell : row) {
        element("td", cell);
      }
      close("tr");
    }
    return close("table");
  }

  /** Text with everything that means something to a browser written out. */
  static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
