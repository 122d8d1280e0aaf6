package lastinch.cases.catalogue;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import lastinch.cases.schema.NearestWord;

/** Finds the names that someone may have meant. */
public final class NearestName {
  private static final int MOST = 4;

  private NearestName() {}

  /** Names that share a word with {@code typed}, else those a few letters away; nearest first. */
  public static List<String> of(String typed, Collection<String> names) {
    String plain = plain(typed);
    List<String> near = new ArrayList<>();
    for (String name : names) {
      if (sharesWord(plain, plain(name))) {
        near.add(name);
      }
    }
    if (near.isEmpty()) {
      int most = Math.max(1, plain.length() / 3);
      for (String name : names) {
        if (NearestWord.changes(plain, plain(name)) <= most) {
          near.add(name);
        }
      }
    }
    near.sort(Comparator.comparingInt(name -> NearestWord.changes(plain, plain(name))));
    return List.copyOf(near.subList(0, Math.min(MOST, near.size())));
  }

  private static String plain(String text) {
    return text.toLowerCase(Locale.ROOT).strip().replaceAll("[\\s-]+", " ");
  }

  private static boolean sharesWord(String a, String b) {
    List<String> others = List.of(b.split(" ", -1));
    for (String word : a.split(" ", -1)) {
      if (word.length() > 2 && others.contains(word)) {
        return true;
      }
    }
    return false;
  }
}
