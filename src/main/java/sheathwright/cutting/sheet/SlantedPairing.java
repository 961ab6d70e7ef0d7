package sheathwright.cutting.sheet;

import java.util.List;

/**
 * Which slanted pieces share a rectangle.
 *
 * @param pairs in rising order of their first piece
 * @param singles indexes of the pieces without a partner, rising
 */
public record SlantedPairing(List<SlantedPair> pairs, List<Integer> singles) {

  public SlantedPairing {
    pairs = List.copyOf(pairs);
    singles = List.copyOf(singles);
  }
}
