package sheathwright.fastening.count;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.catalog.Asked;
import sheathwright.figure.Amounts;
import sheathwright.figure.YesNo;
import sheathwright.roof.SheetSize;

class NailPatternTest {

  private static List<Double> supports(double first, double spacing, double beyond) {
    List<Double> centers = new ArrayList<>();
    for (int i = 0; first + i * spacing <= beyond; i++) {
      centers.add(first + i * spacing);
    }
    return centers;
  }

  private static double perSheet(
      double support, double edge, double field, boolean blocked, double length, double width) {
    return NailCounts.nailsPerSheet(
            Amounts.in(support),
            nailing(edge, field, blocked),
            SheetSize.length(Amounts.in(length)).width(Amounts.in(width)))
        .value();
  }

  private static Nailing nailing(double edge, double field, boolean blocked) {
    return Nailing.edge(Amounts.in(edge))
        .field(Amounts.in(field))
        .blockedEdges(blocked ? YesNo.YES : YesNo.NO);
  }

  /** Property: on whole sheets over regular supports it is the sheet's own count. */
  @ParameterizedTest
  @ValueSource(doubles = {12, 16, 19.2, 24})
  void nails_isTheCountOfAWholeSheet(double support) {
    for (double edge : new double[] {3, 4, 6}) {
      for (double field : new double[] {3, 4, 6, 12}) {
        for (double left : new double[] {0, 96, 480}) {
          for (boolean blocked : new boolean[] {false, true}) {
            assertThat(
                    NailPattern.nails(
                        left, left + 96, 48, supports(0, support, 700), edge, field, blocked))
                .isEqualTo((int) perSheet(support, edge, field, blocked, 96, 48));
          }
        }
      }
    }
  }

  /** Property: a sheet cut 1/8 in short for its gap takes no nail less. */
  @Test
  void nails_bearsWithGapsBetweenSheets() {
    assertThat(NailPattern.nails(0, 95.875, 48, supports(0, 16, 200), 6, 12, false)).isEqualTo(43);
    assertThat(NailPattern.nails(96.125, 191.9, 48, supports(0, 16, 200), 6, 12, false))
        .isEqualTo(43);
  }

  /**
   * By hand: rafters measured at 0, 24.5, 47.25, 72, 95 in; the sheet ends at 96 in, off the last.
   */
  @Test
  void nails_countsMeasuredRafters() {
    List<Double> measured = List.of(0.0, 24.5, 47.25, 72.0, 95.0, 121.0);
    assertThat(NailPattern.nails(0, 96, 48, measured, 6, 12, false)).isEqualTo(9 + 4 * 5);
    assertThat(NailPattern.nails(0, 95.5, 48, measured, 6, 12, false)).isEqualTo(2 * 9 + 3 * 5);
    // blocked: bays of 24.5, 22.75, 24.75, 23 and 1 in take 4, 3, 4, 3 and 0 between at 6 in
    assertThat(NailPattern.nails(0, 96, 48, measured, 6, 12, true)).isEqualTo(29 + 2 * 14);
  }

  /** Property: two pieces that share a rafter each have their row on it. */
  @Test
  void nails_givesEachPieceItsOwnRowOnASharedRafter() {
    List<Double> rafters = supports(0, 24, 100);
    int whole = NailPattern.nails(0, 96, 48, rafters, 6, 12, false);
    int halves =
        NailPattern.nails(0, 48, 48, rafters, 6, 12, false)
            + NailPattern.nails(48, 96, 48, rafters, 6, 12, false);
    assertThat(halves).isEqualTo(2 * 23);
    assertThat(halves - whole).isEqualTo(2 * 9 - 5); // two rows at 6 in for one at 12 in
  }

  /** Property: the traced count of a piece is the plain one, wherever the piece begins. */
  @Test
  void nailsPerPiece_agreesWithThePattern() {
    Random random = new Random(803);
    for (int i = 0; i < 4_000; i++) {
      double spacing = sixteenths(random, 6, 48);
      double length = sixteenths(random, 4, 192);
      double first = Math.min(sixteenths(random, 0, (int) spacing), length);
      double width = sixteenths(random, 4, 96);
      double edge = sixteenths(random, 1, 24);
      double field = sixteenths(random, 1, 24);
      boolean blocked = random.nextBoolean();
      List<Double> centers = supports(first, spacing, length + 300);
      double found =
          NailPieces.nailsPerPiece(
                  LaidPiece.length(Amounts.in(length))
                      .width(Amounts.in(width))
                      .firstSupport(Amounts.in(first)),
                  Amounts.in(spacing),
                  nailing(edge, field, blocked))
              .nails()
              .value();
      assertThat(found)
          .as("%s by %s from %s at %s, %s/%s", length, width, first, spacing, edge, field)
          .isEqualTo(NailPattern.nails(0, length, width, centers, edge, field, blocked));
    }
  }

  /**
   * By hand: rafters 16 in apart, the first 4 in from the end of a piece of 40 in: 4, 20 and 36.
   */
  @Test
  void nailsPerPiece_countsTheSupportsUnderIt() {
    Asked piece =
        Asked.line(
            "nails_per_piece: first_support_in=4, piece_length_in=40, piece_width_in=24,"
                + " support_spacing_in=16, edge_spacing_in=6, field_spacing_in=12");
    assertThat(piece.number("supports")).isEqualTo(3);
    assertThat(piece.with("first_support_in", "0").number("supports")).isEqualTo(3);
    assertThat(piece.with("piece_length_in", "10").number("supports")).isEqualTo(1);
  }

  private static double sixteenths(Random random, int least, int most) {
    return random.nextInt(least * 16, most * 16 + 1) / 16.0;
  }
}
