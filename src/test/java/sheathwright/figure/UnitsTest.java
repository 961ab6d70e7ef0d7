package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.IncommensurableException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.figure.Dimension.Base;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.UnitDimension;

/** Every unit, its dimension and every conversion, against the JSR 385 reference implementation. */
class UnitsTest {

  /** Both roads are exact ratios; what is left is the last bit or two of a double. */
  private static final double LAST_BITS = 1e-14;

  private static final double[] NUMBERS = {1, 0.1, 16.75, 1408.72, -3};

  static Stream<Unit<?>> everyUnit() {
    return Units.all().stream();
  }

  @Test
  void all_holdsEveryUnitOnceUnderASymbolOfItsOwn() {
    assertThat(Units.all()).extracting(Unit::symbol).doesNotHaveDuplicates();
    assertThat(Units.all()).hasSize(SecondRoad.size());
  }

  @ParameterizedTest(name = "[{0}]")
  @MethodSource("everyUnit")
  void dimension_isTheReferenceOne(Unit<?> ours) {
    assertThat(powers(ours.dimension())).isEqualTo(powers(SecondRoad.of(ours).getDimension()));
  }

  @ParameterizedTest(name = "[{0}]")
  @MethodSource("everyUnit")
  void measuresTheSameAs_agreesOnEveryPair(Unit<?> one) {
    for (Unit<?> other : Units.all()) {
      assertThat(one.measuresTheSameAs(other))
          .as("[%s] and [%s]", one, other)
          .isEqualTo(SecondRoad.of(one).isCompatible(SecondRoad.of(other)));
    }
  }

  @ParameterizedTest(name = "[{0}]")
  @MethodSource("everyUnit")
  void in_convertsAsTheReferenceDoes(Unit<?> from) throws IncommensurableException {
    for (Unit<?> to : Units.all()) {
      if (SecondRoad.of(from).isCompatible(SecondRoad.of(to))) {
        var reference = SecondRoad.of(from).getConverterToAny(SecondRoad.of(to));
        for (double number : NUMBERS) {
          double expected = reference.convert(number);
          assertThat(Figure.of(number, from).in(to).value())
              .as("[%s] in [%s]", from, to)
              .isCloseTo(expected, within(LAST_BITS * Math.abs(expected)));
        }
      }
    }
  }

  @ParameterizedTest(name = "[{0}]")
  @MethodSource("everyUnit")
  void productAndQuotient_haveTheReferenceUnit(Unit<?> left) {
    for (Unit<?> right : Units.all()) {
      Figure<?> product = Figure.of(6, left).times(Figure.of(2, right));
      assertThat(inSi(product))
          .as("[%s] times [%s]", left, right)
          .isCloseTo(
              12 * siOf(SecondRoad.of(left)) * siOf(SecondRoad.of(right)),
              within(1e-13 * inSi(product)));
      assertThat(powers(product.unit().dimension()))
          .isEqualTo(powers(SecondRoad.of(left).multiply(SecondRoad.of(right)).getDimension()));

      Figure<?> quotient = Figure.of(6, left).dividedBy(Figure.of(2, right));
      assertThat(inSi(quotient))
          .as("[%s] by [%s]", left, right)
          .isCloseTo(
              3 * siOf(SecondRoad.of(left)) / siOf(SecondRoad.of(right)),
              within(1e-13 * inSi(quotient)));
      assertThat(powers(quotient.unit().dimension()))
          .isEqualTo(powers(SecondRoad.of(left).divide(SecondRoad.of(right)).getDimension()));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "deck_area_sf,        sq ft",
    "labor_usd_per_h,    $/h",
    "disposal_usd_per_ton,$/ton",
    "rise_in_12,          in 12",
    "spacing_in,          in",
    "moment_in_lb,        in-lb",
    "withdrawal_lb_per_in,lb/in",
    "waste_pct,           %",
    "quote_total_usd,     $",
    "sheets,              ''",
    "within,              ''",
  })
  void endingOf_isTheLongestUnitThatTheNameEndsIn(String column, String symbol) {
    assertThat(Units.endingOf(column).symbol()).isEqualTo(symbol);
  }

  /** A figure's number in meters, newtons, seconds and counts. */
  private static double inSi(Figure<?> figure) {
    Unit<?> unit = figure.unit();
    return figure.value()
        * unit.factor().over()
        / unit.factor().under()
        * Math.pow(siOf(SecondRoad.INCH), unit.dimension().power(Base.LENGTH))
        * Math.pow(siOf(SecondRoad.POUND), unit.dimension().power(Base.FORCE))
        * Math.pow(siOf(SecondRoad.HOUR), unit.dimension().power(Base.TIME));
  }

  private static double siOf(javax.measure.Unit<?> unit) {
    return ((AbstractUnit<?>) unit).getSystemConverter().convert(1.0);
  }

  /** Ours in the bases of SI: a force is mass times length over time squared. */
  private static Map<String, Integer> powers(Dimension ours) {
    int force = ours.power(Base.FORCE);
    Map<String, Integer> powers = new TreeMap<>();
    powers.put(UnitDimension.LENGTH.toString(), ours.power(Base.LENGTH) + force);
    powers.put(UnitDimension.MASS.toString(), force);
    powers.put(UnitDimension.TIME.toString(), ours.power(Base.TIME) - 2 * force);
    powers.put(SecondRoad.MONEY.toString(), ours.power(Base.MONEY));
    powers.put(SecondRoad.SHEETS.toString(), ours.power(Base.SHEET));
    powers.put(SecondRoad.NAILS.toString(), ours.power(Base.NAIL));
    powers.put(SecondRoad.PIECES.toString(), ours.power(Base.PIECE));
    powers.put(SecondRoad.STRENGTH.toString(), ours.power(Base.STRENGTH));
    powers.values().removeAll(List.of(0));
    return powers;
  }

  private static Map<String, Integer> powers(javax.measure.Dimension reference) {
    Map<? extends javax.measure.Dimension, Integer> bases = reference.getBaseDimensions();
    if (bases == null) {
      return reference.equals(UnitDimension.NONE) ? Map.of() : Map.of(reference.toString(), 1);
    }
    return bases.entrySet().stream()
        .collect(
            Collectors.toMap(
                base -> base.getKey().toString(), Map.Entry::getValue, Integer::sum, TreeMap::new));
  }
}
