package sheathwright.fastening.count;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Amounts;
import sheathwright.figure.YesNo;
import sheathwright.roof.SheetSize;

/** The count held against nails set down one by one. Independent; the same sheets each time. */
class NailPlacementTest {

  /** Sixteenths of an inch keep the brute force exact: it never divides. */
  private static final int SIXTEENTHS = 16;

  private static final int EDGE_DISTANCE = 6;
  private static final int SHEETS = 5_000;

  @Test
  void nailsPerSheet_agreesWithNailsSetDownOneByOne() {
    Random random = new Random(20_270_504);
    int irregular = 0;
    for (int i = 0; i < SHEETS; i++) {
      int support = between(random, 6, 96);
      int edge = between(random, 1, 24);
      int field = between(random, 1, 24);
      int length = between(random, 12, 192);
      int width = between(random, 4, 96);
      boolean blocked = random.nextBoolean();
      irregular += length % support == 0 ? 0 : 1;
      assertThat(answer(support, edge, field, blocked, length, width))
          .as(
              "sixteenths: supports %d, nails %d/%d, blocked %s, sheet %d by %d",
              support, edge, field, blocked, length, width)
          .isEqualTo(nailsSetDown(support, edge, field, blocked, length, width));
    }
    assertThat(irregular).as("sheets with a last bay of another width").isGreaterThan(SHEETS / 2);
  }

  @Test
  void nailsPerSheet_agreesWhereEverythingDividesEvenly() {
    for (int inches = 6; inches <= 24; inches++) {
      for (int bays = 1; bays <= 8; bays++) {
        int support = inches * SIXTEENTHS;
        int sheet = Math.max(12 * SIXTEENTHS, bays * support);
        int width = 12 * support / inches + 2 * EDGE_DISTANCE;
        int edge = support / 2;
        assertThat(answer(support, edge, 3 * SIXTEENTHS, true, sheet, width))
            .as("supports %d in, %d bays", inches, bays)
            .isEqualTo(nailsSetDown(support, edge, 3 * SIXTEENTHS, true, sheet, width));
      }
    }
  }

  private static double answer(
      int support, int edge, int field, boolean blocked, int length, int width) {
    return NailCounts.nailsPerSheet(
            Amounts.in(inches(support)),
            Nailing.edge(Amounts.in(inches(edge)))
                .field(Amounts.in(inches(field)))
                .blockedEdges(blocked ? YesNo.YES : YesNo.NO),
            SheetSize.length(Amounts.in(inches(length))).width(Amounts.in(inches(width))))
        .value();
  }

  private static int nailsSetDown(
      int support, int edge, int field, boolean blocked, int length, int width) {
    List<Integer> supports = new ArrayList<>();
    for (int at = 0; at < length; at += support) {
      supports.add(at);
    }
    supports.add(length);
    int nails = 0;
    for (int at : supports) {
      boolean isAnEnd = at == 0 || at == length;
      nails += inALine(width - 2 * EDGE_DISTANCE, isAnEnd ? edge : field);
    }
    for (int bay = 1; blocked && bay < supports.size(); bay++) {
      int open = supports.get(bay) - supports.get(bay - 1);
      int line = inALine(open, edge);
      nails += 2 * (line - 2); // the first and the last one stand on the supports
    }
    return nails;
  }

  /** Nails from the one end of a line to the other, none further apart than the spacing. */
  private static int inALine(int length, int spacing) {
    int nails = 1;
    for (int at = 0; at < length; at = Math.min(at + spacing, length)) {
      nails++;
    }
    return nails;
  }

  private static double inches(int sixteenths) {
    return sixteenths / (double) SIXTEENTHS;
  }

  private static int between(Random random, int least, int most) {
    return random.nextInt(least * SIXTEENTHS, most * SIXTEENTHS + 1);
  }
}
