package lastinch.solver.run;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import lastinch.solver.result.FillHistory;
import lastinch.solver.result.FrontTrack;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;

/** Digest of every number in a result, down to the last bit. */
final class Bits {
  private Bits() {}

  static String of(PourResult result) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(bytes)) {
      for (PassageRecord p : result.passages()) {
        passage(out, p);
      }
      FrontTrack track = result.track();
      for (int i = 0; i < track.size(); i++) {
        out.writeUTF(track.passage(i));
        out.writeDouble(track.time(i));
        out.writeDouble(track.at(i));
        out.writeDouble(track.speed(i));
        out.writeDouble(track.temperature(i));
      }
      course(out, result);
      // records print their doubles so that no two differ alike
      out.writeUTF(
          ""
              + result.outcome()
              + result.reach()
              + result.stops()
              + result.gates()
              + result.findings()
              + result.margin()
              + result.ledger()
              + result.accounts()
              + result.record());
      return HexFormat.of()
          .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes.toByteArray()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void course(DataOutputStream out, PourResult result) throws IOException {
    FillHistory course = result.course();
    for (int k = 0; k < course.size(); k++) {
      out.writeDouble(course.time(k));
      for (PassageRecord p : result.passages()) {
        for (int i = 0; i < p.size(); i++) {
          out.writeDouble(course.temperature(p.name(), k, i));
        }
      }
    }
    for (int k = 0; k < course.samples(); k++) {
      for (int g = 0; g < course.gates().size(); g++) {
        out.writeDouble(course.passed(g, k));
      }
    }
  }

  private static void passage(DataOutputStream out, PassageRecord p) throws IOException {
    out.writeUTF(p.name());
    for (int i = 0; i < p.size(); i++) {
      out.writeDouble(p.arrivalTime(i));
      out.writeDouble(p.arrivalTemperature(i));
      out.writeDouble(p.arrivalSolid(i));
      out.writeDouble(p.arrivalSpeed(i));
      out.writeDouble(p.freezeTime(i));
      out.writeDouble(p.finalTemperature(i));
      out.writeDouble(p.finalSolid(i));
      out.writeDouble(p.lapIndex(i));
    }
  }
}
