package sheathwright.forecast;

import java.util.ArrayList;
import java.util.List;

/**
 * Chances of bad sheets as a homeowner counts them, in houses like this one: {@code no bad sheet in
 * 1 house of 5; 1 to 3 in half; more than 6 in 1 of 10}. No average is said, since no house has 2.8
 * bad sheets.
 *
 * <p>Three parts: how often there is none, or else few; the counts from there up that come nearest
 * to half of the houses; and the count that 1 house of 10 exceeds. A chance is said as the nearest
 * of a few plain odds, nearest by the logarithm of the odds, so that 1 of 20 does not become none.
 */
public final class InHouses {

  /** Odds that people say. */
  private enum Odds {
    IN_100(1, 100),
    IN_50(1, 50),
    IN_20(1, 20),
    IN_10(1, 10),
    IN_5(1, 5),
    IN_4(1, 4),
    IN_3(1, 3),
    TWO_OF_5(2, 5),
    HALF(1, 2),
    THREE_OF_5(3, 5),
    TWO_OF_3(2, 3),
    THREE_OF_4(3, 4),
    FOUR_OF_5(4, 5),
    ALL_BUT_1_OF_10(9, 10),
    ALL_BUT_1_OF_20(19, 20),
    ALL_BUT_1_OF_50(49, 50),
    ALL_BUT_1_OF_100(99, 100);

    private final int some;
    private final int of;

    Odds(int some, int of) {
      this.some = some;
      this.of = of;
    }

    private double distance(double chance) {
      return Math.abs(logOdds(chance) - logOdds((double) some / of));
    }

    private static double logOdds(double chance) {
      return Math.log(chance / (1 - chance));
    }

    private String words(boolean isFirst) {
      if (this == HALF) {
        return isFirst ? "in half of the houses" : "in half";
      }
      return isFirst
          ? "in %s %s of %s".formatted(some, some == 1 ? "house" : "houses", of)
          : "in %s of %s".formatted(some, of);
    }
  }

  /** Rarer than this is hardly ever. */
  private static final double HARDLY = 1 / 200.0;

  /** A few houses have less than this many, and as few have more. */
  private static final double FEW = 0.1;

  private final Chances chances;
  private final List<String> parts = new ArrayList<>();

  private InHouses(Chances chances) {
    this.chances = chances;
  }

  /** Chances in a homeowner's words. */
  public static String words(Chances chances) {
    return new InHouses(chances).said();
  }

  private String said() {
    int most = chances.percentile(1 - FEW);
    int least = chances.percentile(FEW);
    if (chances.moreThan(most) < HARDLY && fewer(most) < HARDLY) {
      return most == 0 ? "hardly ever a bad sheet" : "%s, hardly ever more".formatted(sheets(most));
    }
    int from = 1;
    if (chances.of(0) >= HARDLY) {
      say("no bad sheet", chances.of(0));
    } else {
      from = Math.max(least, 1);
      if (from > 1 && fewer(from) >= HARDLY) {
        say("fewer than " + sheets(from), fewer(from));
      }
    }
    if (from <= most) {
      int to = nearestToHalf(from, most);
      say(range(from, to), chances.moreThan(from - 1) - chances.moreThan(to));
    }
    if (chances.moreThan(most) >= HARDLY) {
      say(most == 0 ? "any at all" : "more than " + most, chances.moreThan(most));
    }
    return String.join("; ", parts);
  }

  private double fewer(int count) {
    return 1 - chances.moreThan(count - 1);
  }

  /** The last count up to which, from the first, the chance comes nearest to one half. */
  private int nearestToHalf(int from, int most) {
    int best = from;
    double off = Double.POSITIVE_INFINITY;
    double sum = 0;
    for (int to = from; to <= most; to++) {
      sum += chances.of(to);
      if (Math.abs(sum - 0.5) < off) {
        off = Math.abs(sum - 0.5);
        best = to;
      }
    }
    return best;
  }

  private void say(String what, double chance) {
    parts.add(what + " " + odds(chance, parts.isEmpty()));
  }

  private static String odds(double chance, boolean isFirst) {
    if (chance < HARDLY) {
      return "hardly ever";
    }
    Odds nearest = Odds.HALF;
    for (Odds each : Odds.values()) {
      nearest = each.distance(chance) < nearest.distance(chance) ? each : nearest;
    }
    return nearest.words(isFirst);
  }

  private String range(int from, int to) {
    String counts = from == to ? sheetsOrOne(from) : from + (to == from + 1 ? " or " : " to ") + to;
    return parts.isEmpty() && from != to ? counts + " bad sheets" : counts;
  }

  private String sheetsOrOne(int count) {
    return parts.isEmpty() ? sheets(count) : count == 1 ? "one" : String.valueOf(count);
  }

  private static String sheets(int count) {
    return count == 1 ? "1 bad sheet" : count + " bad sheets";
  }
}
