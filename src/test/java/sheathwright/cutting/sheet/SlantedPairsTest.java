package sheathwright.cutting.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sheathwright.cutting.sheet.SlantedPiece.Hand;

/** Slanted pieces, by hand and against the trial of every pairing. */
class SlantedPairsTest {

  private static SlantedPairing pair(List<SlantedPiece> pieces, long kerf, double allowance) {
    return SlantedPairs.pair(pieces, 96, kerf, allowance);
  }

  /** 42 and 54 are 96. */
  @Test
  void sameHand_sharesASheet() {
    SlantedPiece piece = new SlantedPiece(42, 54, 48, Hand.RIGHT);
    SlantedPairing pairing = pair(List.of(piece, piece), 0, 0);
    assertThat(pairing.pairs()).containsExactly(new SlantedPair(0, 1, new SheetPiece(96, 48, 1)));
    assertThat(pairing.singles()).isEmpty();
  }

  @Test
  void mirrorHands_doNotNest() {
    SlantedPairing pairing =
        pair(
            List.of(
                new SlantedPiece(42, 54, 48, Hand.RIGHT), new SlantedPiece(42, 54, 48, Hand.LEFT)),
            0,
            0);
    assertThat(pairing.pairs()).isEmpty();
    assertThat(pairing.singles()).containsExactly(0, 1);
  }

  /** A half turn exchanges the ends and the edges; the piece is the same. */
  @Test
  void halfTurn_changesNothing() {
    SlantedPairing pairing =
        pair(
            List.of(
                new SlantedPiece(42, 54, 48, Hand.RIGHT), new SlantedPiece(54, 42, 48, Hand.LEFT)),
            0,
            0);
    assertThat(pairing.pairs()).hasSize(1);
  }

  /**
   * Lengths in 1/64 in. Bottom 3.5 ft and top 4.5 ft, 1/16 in less at each end for the gap, height
   * 4 ft: tan a = 4, sin a = 0.9701, so the slanted kerf is 0.1289 in and the pair 0.0039 in too
   * wide for the sheet.
   */
  @Test
  void slantedKerf_isForgivenWithinTheAllowance() {
    SlantedPiece piece = new SlantedPiece(42 * 64 - 8, 54 * 64 - 8, 48 * 64, Hand.RIGHT);
    List<SlantedPiece> both = List.of(piece, piece);
    long sheet = 96 * 64 - 8;
    assertThat(SlantedPairs.pair(both, sheet, 8, 0).pairs()).isEmpty();
    assertThat(SlantedPairs.pair(both, sheet, 8, 1).pairs())
        .containsExactly(new SlantedPair(0, 1, new SheetPiece(sheet, 48 * 64, 1)));
  }

  @Test
  void pairs_areAsManyAsTheTrialOfEveryPairingFinds() {
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      List<SlantedPiece> pieces = new ArrayList<>();
      int wanted = 1 + random.nextInt(8);
      for (int piece = 0; piece < wanted; piece++) {
        int shorter = 10 + random.nextInt(70);
        boolean up = random.nextInt(4) > 0;
        int longer = shorter + 12;
        pieces.add(
            new SlantedPiece(
                up ? shorter : longer,
                up ? longer : shorter,
                random.nextInt(4) > 0 ? 48 : 24,
                random.nextBoolean() ? Hand.LEFT : Hand.RIGHT));
      }
      SlantedPairing pairing = pair(pieces, 1, 0);
      assertThat(pairing.pairs().size())
          .as("seed %d", seed)
          .isEqualTo(mostPairs(pieces, new boolean[wanted], 0));
      assertThat(2 * pairing.pairs().size() + pairing.singles().size()).isEqualTo(wanted);
      pairing
          .pairs()
          .forEach(
              pair ->
                  assertThat(nest(pieces.get(pair.first()), pieces.get(pair.second()))).isTrue());
    }
  }

  private static int mostPairs(List<SlantedPiece> pieces, boolean[] used, int from) {
    if (from == pieces.size()) {
      return 0;
    }
    int most = mostPairs(pieces, used, from + 1);
    for (int other = from + 1; !used[from] && other < pieces.size(); other++) {
      if (!used[other] && nest(pieces.get(from), pieces.get(other))) {
        used[other] = true;
        most = Math.max(most, 1 + mostPairs(pieces, used, from + 1));
        used[other] = false;
      }
    }
    return most;
  }

  /** Both seen with the slanted end on the right; the edges lean by 12 to one side or the other. */
  private static boolean nest(SlantedPiece one, SlantedPiece other) {
    boolean oneRight = one.hand() == Hand.RIGHT;
    boolean otherRight = other.hand() == Hand.RIGHT;
    long lean = oneRight ? one.top() - one.bottom() : one.bottom() - one.top();
    long otherLean = otherRight ? other.top() - other.bottom() : other.bottom() - other.top();
    long bottom = oneRight ? one.bottom() : one.top();
    long otherTop = otherRight ? other.top() : other.bottom();
    double angle = Math.atan2(one.height(), 12);
    return one.height() == other.height()
        && lean == otherLean
        && bottom + otherTop + 1 / Math.sin(angle) <= 96;
  }

  @Test
  void rectangle_isRefused() {
    assertThatThrownBy(() -> new SlantedPiece(40, 40, 48, Hand.LEFT))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
