package lastinch.cases.schema;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds the word or name a person probably meant. */
public final class NearestWord {
  private static final int MOST = 4;

  private NearestWord() {}

  /** The word that takes the fewest letters to change, if they are few. */
  public static Optional<String> of(String typed, Collection<String> words) {
    String best = null;
    int fewest = Integer.MAX_VALUE;
    for (String word : words) {
      int changes = changes(typed, word);
      if (changes < fewest && changes <= allowed(typed, word)) {
        fewest = changes;
        best = word;
      }
    }
    return Optional.ofNullable(best);
  }

  /** At most four names that share a word with {@code typed}, else those a few letters away. */
  public static List<String> names(String typed, Collection<String> names) {
    String plain = plain(typed);
    List<String> parts = List.of(plain.split(" ", -1));
    List<String> near =
        names.stream()
            .filter(n -> parts.stream().anyMatch(p -> p.length() > 2 && hasWord(n, p)))
            .toList();
    int most = near.isEmpty() ? Math.max(1, plain.length() / 3) : Integer.MAX_VALUE;
    return (near.isEmpty() ? names : near)
        .stream()
            .filter(n -> changes(plain, plain(n)) <= most)
            .sorted(Comparator.comparingInt(n -> changes(plain, plain(n))))
            .limit(MOST)
            .toList();
  }

  private static boolean hasWord(String name, String word) {
    return List.of(plain(name).split(" ", -1)).contains(word);
  }

  private static String plain(String text) {
    return text.toLowerCase(Locale.ROOT).strip().replaceAll("[\\s-]+", " ");
  }

  private static int allowed(String typed, String word) {
    int longer = Math.max(typed.length(), word.length());
    return longer <= 2 ? 0 : longer <= 4 ? 1 : longer <= 9 ? 2 : 3;
  }

  /** Letters to add, drop, change or swap with the next (Damerau 1964). */
  private static int changes(String a, String b) {
    int most = 100;
    if (a.length() > most || b.length() > most) {
      return Integer.MAX_VALUE;
    }
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = i + j;
          continue;
        }
        int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + same);
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        if (swapped) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
