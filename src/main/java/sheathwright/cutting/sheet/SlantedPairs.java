package sheathwright.cutting.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Slanted pieces that nest by a half turn along one slanted cut. */
public final class SlantedPairs {

  private SlantedPairs() {}

  /**
   * Pairs pieces so that the rectangles they are cut out of are as short as they can be in all.
   *
   * <pre>
   * width of a pair = bottom of one + top of the other + kerf ÷ sin a, a between slant and bottom
   * </pre>
   *
   * <p>Pieces nest if they have the same height and the same slant and are of the same hand; mirror
   * images do not. Every pair of one slant saves the same, so the most pairs save the most; and the
   * most pairs are found by giving the longest piece the shortest partner, and leaving it single
   * where even that is too long. This is exact for any number of pieces.
   *
   * @param sheetWidth that a pair must fit, 1 unit or more
   * @param kerf of the saw, 0 or more units
   * @param allowance by which a pair may be too wide for the sheet and still be cut out of it, 0 or
   *     more units; usual is 1/64 in, since a slanted kerf is a little wider than a square one
   * @throws IllegalArgumentException if a length is out of range
   */
  public static SlantedPairing pair(
      List<SlantedPiece> pieces, long sheetWidth, long kerf, double allowance) {
    if (sheetWidth < 1 || kerf < 0 || !(allowance >= 0)) {
      throw new IllegalArgumentException("sheet width, kerf or allowance out of range");
    }
    record Slant(long height, long lean) {}
    Map<Slant, List<Integer>> groups =
        new TreeMap<>(Comparator.comparingLong(Slant::height).thenComparingLong(Slant::lean));
    for (int index = 0; index < pieces.size(); index++) {
      SlantedPiece piece = pieces.get(index);
      groups
          .computeIfAbsent(new Slant(piece.height(), piece.lean()), slant -> new ArrayList<>())
          .add(index);
    }
    List<SlantedPair> pairs = new ArrayList<>();
    groups.forEach(
        (slant, members) -> {
          double slantedKerf = kerf * Math.hypot(slant.height(), slant.lean()) / slant.height();
          long lean = Math.abs(slant.lean());
          if (slantedKerf < lean + kerf) {
            double room = sheetWidth + allowance - lean - slantedKerf;
            pairs.addAll(pairs(pieces, members, room, lean + slantedKerf, sheetWidth));
          }
        });
    pairs.sort(Comparator.comparingInt(SlantedPair::first));
    List<Integer> singles =
        IntStream.range(0, pieces.size())
            .filter(
                index ->
                    pairs.stream()
                        .noneMatch(pair -> pair.first() == index || pair.second() == index))
            .boxed()
            .toList();
    return new SlantedPairing(pairs, singles);
  }

  /**
   * @param room for the shorter edges of both
   * @param between what a pair is wider than these
   */
  private static List<SlantedPair> pairs(
      List<SlantedPiece> pieces,
      List<Integer> members,
      double room,
      double between,
      long sheetWidth) {
    List<Integer> sorted =
        members.stream()
            .sorted(Comparator.comparingLong(index -> pieces.get(index).shorter()))
            .toList();
    List<SlantedPair> pairs = new ArrayList<>();
    int shortest = 0;
    int longest = sorted.size() - 1;
    while (shortest < longest) {
      int one = sorted.get(shortest);
      int other = sorted.get(longest);
      long edges = pieces.get(one).shorter() + pieces.get(other).shorter();
      if (edges <= room) {
        long width = Math.min(sheetWidth, (long) Math.ceil(edges + between - 1e-9));
        SheetPiece rectangle = new SheetPiece(width, pieces.get(one).height(), 1);
        pairs.add(new SlantedPair(Math.min(one, other), Math.max(one, other), rectangle));
        shortest++;
      }
      longest--;
    }
    return pairs;
  }
}
