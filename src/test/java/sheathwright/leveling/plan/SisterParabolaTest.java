package sheathwright.leveling.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Amounts;
import sheathwright.leveling.plan.Sisters.SisterStock;
import sheathwright.leveling.string.SaggedSpan;
import sheathwright.wood.LumberSize;

/**
 * Sisters found by walking along a sagged rafter with a tape. Independent; the same rafters each
 * time.
 */
class SisterParabolaTest {

  private static final int RAFTERS = 3_000;

  /** The walk finds a place to a thousand-millionth of an inch; the square root loses some. */
  private static final double FOUND = 1e-7;

  @Test
  void sisterStock_agreesWithAWalkAlongTheRafter() {
    Random random = new Random(20_270_615);
    int sisters = 0;
    for (int i = 0; i < RAFTERS; i++) {
      double sag = random.nextInt(0, 57) / 16.0; // up to 3-1/2 in
      double span = 12 * random.nextDouble(3, 20);
      double tolerance = random.nextInt(0, 17) / 16.0;
      double lap = random.nextInt(6, 40);
      int rafters = random.nextInt(1, 30);
      int spacing = random.nextInt(2, 25);
      int rows = random.nextInt(1, 5);
      SisterStock stock =
          Sisters.sisterStock(
              SaggedSpan.sag(Amounts.in(sag)).span(Amounts.in(span)),
              SisterPlan.size(LumberSize.SIZE_2X8)
                  .tolerance(Amounts.in(tolerance))
                  .lap(Amounts.in(lap))
                  .nailSpacing(Amounts.in(spacing))
                  .nailRows(Amounts.number(rows)),
              Amounts.pieces(rafters));
      String rafter = "sag %s, span %s, tolerance %s, lap %s".formatted(sag, span, tolerance, lap);
      double length = lengthWalked(sag, span, tolerance, lap);
      assertThat(12 * stock.length().value()).as(rafter).isCloseTo(length, within(FOUND));
      if (length == 0) {
        assertThat(stock.pieces().value()).as(rafter).isZero();
        continue;
      }
      sisters++;
      int stick = firstStickThatReaches(length);
      assertThat(stock.stock().value()).as(rafter).isEqualTo(stick);
      assertThat(stock.pieces().value()).as(rafter).isEqualTo(rafters);
      assertThat(stock.nails().value())
          .as(rafter + ", nails every %d", spacing)
          .isEqualTo((double) rows * nailsInARow(length, spacing) * rafters);
      assertThat(stock.endOffset().value())
          .as(rafter)
          .isCloseTo(drop(sag, span).applyAsDouble((span - length) / 2), within(FOUND));
      double lacking = length - 12.0 * (stick - 2);
      assertThat(stock.nearMiss().value())
          .as(rafter)
          .isCloseTo(stick > 8 && lacking < 1 ? lacking : 0, within(FOUND));
    }
    assertThat(sisters).isBetween(RAFTERS / 2, RAFTERS - 100);
  }

  /** How far below the string the rafter lies, so many inches from its lower bearing. */
  private static DoubleUnaryOperator drop(double sag, double span) {
    return at -> 4 * sag * at * (span - at) / (span * span);
  }

  private static double lengthWalked(double sag, double span, double tolerance, double lap) {
    if (sag <= tolerance) {
      return 0;
    }
    DoubleUnaryOperator drop = drop(sag, span);
    double outside = 0;
    double inside = span / 2;
    while (inside - outside > 1e-10) {
      double middle = (inside + outside) / 2;
      if (drop.applyAsDouble(middle) > tolerance) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return Math.min(span, span - 2 * inside + 2 * lap);
  }

  private static int firstStickThatReaches(double length) {
    for (int stick = 8; stick <= 20; stick += 2) {
      if (12.0 * stick >= length - 1e-6) {
        return stick;
      }
    }
    throw new AssertionError("no stick is " + length + " in long");
  }

  /** From 2 in off the one end to 2 in off the other, none further apart than the spacing. */
  private static int nailsInARow(double length, double spacing) {
    double last = length - 2;
    int nails = 1;
    for (double at = 2; at < last - 1e-6; at += spacing) {
      nails++;
    }
    return nails;
  }
}
