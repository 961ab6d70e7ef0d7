package sheathwright.cutting.sheet;

import java.util.Arrays;
import java.util.TreeSet;

/**
 * The places along one side of a sheet where a cut can be needed: sums of piece lengths, no more of
 * each than are wanted. Where there are too many, the axis is coarse: every length is scaled and
 * rounded down to one of equal steps. What fits together still fits then, so a value found on a
 * coarse axis is never too small.
 */
final class GuillotineAxis {

  /**
   * Places of longer axes are looked up by halving, with the same answer: a table of ints takes a
   * quarter of a megabyte, at double half of one.
   */
  private static final int TABLE = 1 << 16;

  private final long[] places;
  private final long longest;
  private final boolean exact;
  private final int[] table;
  private final int[][] rest;
  private final int[][] sum;
  private final int[] half;

  private GuillotineAxis(long[] places, long longest, boolean exact) {
    this.places = places;
    this.longest = longest;
    this.exact = exact;
    this.table = exact && longest < TABLE ? table() : new int[0];
    rest = new int[places.length][];
    sum = new int[places.length][];
    half = new int[places.length];
    for (int place = 0; place < places.length; place++) {
      rest[place] = new int[place + 1];
      for (int taken = 0; taken <= place; taken++) {
        rest[place][taken] = exact ? floor(places[place] - places[taken]) : place - taken;
      }
      sum[place] = sums(place);
      half[place] = lastInHalf(place);
    }
  }

  /**
   * @param lengths of the pieces
   * @param counts how many of each
   * @param longest the side of the largest stock
   * @param most places that an exact axis may have; else it is coarse with this many
   */
  static GuillotineAxis of(long[] lengths, int[] counts, long longest, int most) {
    TreeSet<Long> places = new TreeSet<>();
    places.add(0L);
    for (int kind = 0; kind < lengths.length && places.size() <= most; kind++) {
      for (int copy = 0; copy < counts[kind] && places.size() <= most; copy++) {
        if (!addOnce(places, lengths[kind], longest)) {
          break;
        }
      }
    }
    if (places.size() <= most) {
      return new GuillotineAxis(
          places.stream().mapToLong(Long::longValue).toArray(), longest, true);
    }
    long[] steps = new long[most];
    Arrays.setAll(steps, step -> step);
    return new GuillotineAxis(steps, longest, false);
  }

  private static boolean addOnce(TreeSet<Long> places, long length, long longest) {
    boolean grown = false;
    for (Long place : places.descendingSet().toArray(Long[]::new)) {
      grown |= place + length <= longest && places.add(place + length);
    }
    return grown;
  }

  private int[] table() {
    int[] floors = new int[(int) longest + 1];
    int place = 0;
    for (int length = 0; length <= longest; length++) {
      while (place + 1 < places.length && places[place + 1] <= length) {
        place++;
      }
      floors[length] = place;
    }
    return floors;
  }

  private int[] sums(int place) {
    int[] sums = new int[places.length];
    Arrays.fill(sums, -1);
    for (int other = 0; other < places.length; other++) {
      if (!exact) {
        sums[other] = place + other < places.length ? place + other : -1;
      } else if (places[place] + places[other] <= longest) {
        int found = floor(places[place] + places[other]);
        sums[other] = places[found] == places[place] + places[other] ? found : -1;
      }
    }
    return sums;
  }

  int size() {
    return places.length;
  }

  /** The last place not beyond this length, which is no longer than the axis. */
  int floor(long length) {
    if (!exact) {
      return (int) (length * (places.length - 1) / longest);
    }
    if (table.length > 0) {
      return table[(int) length];
    }
    int found = Arrays.binarySearch(places, length);
    return found >= 0 ? found : -found - 2;
  }

  /** The place that is left of {@code place} when {@code taken} is taken. */
  int rest(int place, int taken) {
    return rest[place][taken];
  }

  private int lastInHalf(int place) {
    int last = 0;
    while (last < place && rest[place][last + 1] > last) {
      last++;
    }
    return last;
  }

  /** The last place that fits twice into this one. */
  int half(int place) {
    return half[place];
  }

  /** The place of both lengths together, or -1 where that is none. */
  int sum(int place, int other) {
    return sum[place][other];
  }
}
