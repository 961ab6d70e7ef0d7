package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Dimension.Base;

/** How units are said, and what they measure, by hand. */
class UnitTextTest {

  private static List<String> spoken(Unit<?>... units) {
    return List.of(units).stream().map(Unit::spoken).toList();
  }

  @Test
  void spoken_followsANumberOf() {
    assertThat(spoken(Units.INCH, Units.FOOT, Units.USD))
        .containsExactly("inches", "feet", "dollars");
    assertThat(spoken(Units.SHEET, Units.NAIL, Units.SQUARE, Units.TON))
        .containsExactly("sheets", "nails", "squares", "tons");
    assertThat(spoken(Units.PSF, Units.HOUR, Units.PERCENT, Units.USD_PER_SHEET))
        .containsExactly("psf", "h", "%", "$/sheet");
    assertThat(Units.RATIO.spoken()).isEmpty();
  }

  @Test
  void onlyAWordThatTakesAPlural_counts() {
    assertThat(List.of(Units.SHEET, Units.PIECE, Units.SQUARE, Units.TON)).allMatch(Unit::isCount);
    assertThat(
            List.of(
                Units.RATIO, Units.HOUR, Units.NAILS_PER_SHEET, Units.HOURS_PER_SQUARE, Units.USD))
        .noneMatch(Unit::isCount);
    assertThat(Units.SQUARE_FOOT).hasToString("sq ft");
  }

  @Test
  void written_isFoundByItsSymbol() {
    assertThat(Units.written("sq ft")).contains(Units.SQUARE_FOOT);
    assertThat(Units.written("acre")).isEmpty();
  }

  /** psf is a force over a length squared; a rate by the sheet is money over sheets. */
  @Test
  void dimension_holdsThePowerOfEachBase() {
    Dimension pressure = Units.PSF.dimension();
    assertThat(pressure.power(Base.FORCE)).isEqualTo(1);
    assertThat(pressure.power(Base.LENGTH)).isEqualTo(-2);
    assertThat(pressure.power(Base.TIME)).isZero();
    Dimension rate = Units.USD_PER_SHEET.dimension();
    assertThat(rate.power(Base.MONEY)).isEqualTo(1);
    assertThat(rate.power(Base.SHEET)).isEqualTo(-1);
    assertThat(rate.raisedTo(3).power(Base.SHEET)).isEqualTo(-3);
    assertThat(rate.raisedTo(0)).isEqualTo(Dimension.NONE);
  }

  @Test
  void aRoot_isThereWhereEveryPowerCanBeDivided() {
    Dimension pressure = Units.PSF.dimension();
    assertThat(pressure.hasRoot(2)).isFalse();
    assertThat(pressure.raisedTo(2).hasRoot(2)).isTrue();
    assertThat(pressure.raisedTo(2).root(2)).isEqualTo(pressure);
    assertThat(pressure.raisedTo(3).hasRoot(3)).isTrue();
    assertThat(pressure.raisedTo(3).root(3)).isEqualTo(pressure);
    assertThat(Dimension.NONE.hasRoot(3)).isTrue();
    assertThat(Dimension.NONE.root(3)).isEqualTo(Dimension.NONE);
  }

  @Test
  void aBase_isItsOwnFirstPowerAndNoOthers() {
    for (Base base : Base.values()) {
      Dimension alone = Dimension.of(base);
      for (Base other : Base.values()) {
        assertThat(alone.power(other)).as("%s in %s", other, base).isEqualTo(other == base ? 1 : 0);
      }
    }
  }
}
