package lastinch.cases.plan;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import lastinch.cases.format.SourceText;

/** One number for the text of all files that made a plan. */
final class Digest {
  private Digest() {}

  /** SHA-256 over the lengths and bytes of all texts in order, in hexadecimal. */
  static String of(List<SourceText> sources) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      for (SourceText source : sources) {
        byte[] bytes = source.text().getBytes(StandardCharsets.UTF_8);
        sha.update(Integer.toString(bytes.length).getBytes(StandardCharsets.UTF_8));
        sha.update((byte) '\n');
        sha.update(bytes);
      }
      return HexFormat.of().formatHex(sha.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
