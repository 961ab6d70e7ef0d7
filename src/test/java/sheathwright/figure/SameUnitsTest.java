package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Quantity.Length;

/** Two units are the same where each of their parts is, as Java has it for records. */
class SameUnitsTest {

  private static final Dimension LENGTH = Units.INCH.dimension();

  private static Unit<Length> made(
      String symbol, String suffix, Factor factor, Dimension dimension, int decimals) {
    return new Unit<>(symbol, suffix, factor, dimension, decimals);
  }

  @Test
  void unitsOfTheSameParts_areTheSame() {
    Unit<Length> one = made("in", "in", new Factor(3, 2), LENGTH, 2);
    Unit<Length> other = made("in", "in", new Factor(3, 2), new Dimension(LENGTH.packed()), 2);
    assertThat(one).isEqualTo(other).hasSameHashCodeAs(other);
  }

  @Test
  void unitsThatDifferInOnePart_areNot() {
    Unit<Length> one = made("in", "in", new Factor(3, 2), LENGTH, 2);
    List<Object> others =
        List.of(
            made("ft", "in", new Factor(3, 2), LENGTH, 2),
            made("in", "ft", new Factor(3, 2), LENGTH, 2),
            made("in", "in", new Factor(5, 2), LENGTH, 2),
            made("in", "in", new Factor(3, 4), LENGTH, 2),
            made("in", "in", new Factor(3, 2), Dimension.NONE, 2),
            made("in", "in", new Factor(3, 2), LENGTH, 3),
            "in");
    assertThat(others).allSatisfy(other -> assertThat(one).isNotEqualTo(other));
    assertThat(others.subList(0, 6))
        .extracting(Object::hashCode)
        .doesNotContain(one.hashCode())
        .doesNotHaveDuplicates();
    assertThat(new Factor(1, 1)).isNotEqualTo("1");
    assertThat(Dimension.NONE).isNotEqualTo(LENGTH).isNotEqualTo("none");
  }
}
