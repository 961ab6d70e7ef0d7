package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.sqft;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Quantity.Area;

class RollTest {

  private record Plane(String name, double length, double width) {}

  private static final List<Plane> PLANES =
      List.of(new Plane("front", 40, 16.5), new Plane("back", 40, 14), new Plane("porch", 12, 6));

  private static Figure<Area> area(Plane plane) {
    return ft(plane.length()).times(ft(plane.width())).as("area_sf", Units.SQUARE_FOOT);
  }

  private static Roll roll(List<Plane> planes) {
    return Roll.of(
        "planes",
        "the roof planes",
        planes,
        Roll.column("plane", plane -> Choice.literal(plane.name())),
        Roll.column("area_sf", RollTest::area));
  }

  @Test
  void sum_isTheSumOfTheColumn() {
    assertThat(roll(PLANES).sum("area_sf", Units.SQUARE_FOOT).value())
        .isEqualTo(40 * 16.5 + 40 * 14 + 12 * 6);
  }

  @Test
  void gathered_isTheGreatestOrTheLeast() {
    assertThat(roll(PLANES).gathered(Gather.GREATEST, "area_sf", Units.SQUARE_FOOT).value())
        .isEqualTo(40 * 16.5);
    assertThat(roll(PLANES).gathered(Gather.LEAST, "area_sf", Units.SQUARE_FOOT).value())
        .isEqualTo(12 * 6);
  }

  @Test
  void gathered_findsTheGreatestOfNegativeNumbers() {
    Roll drops =
        Roll.of(
            "drops",
            "the drops",
            List.of(-3d, -1d, -2d),
            Roll.column("drop_in", (Double drop) -> Figure.of(drop, Units.INCH)));
    assertThat(drops.gathered(Gather.GREATEST, "drop_in", Units.INCH).value()).isEqualTo(-1);
    assertThat(drops.gathered(Gather.LEAST, "drop_in", Units.INCH).value()).isEqualTo(-3);
  }

  @Test
  void sum_ofNothingIsZero() {
    assertThat(roll(List.of()).sum("area_sf", Units.SQUARE_FOOT).value()).isZero();
  }

  @Test
  void sum_remembersEveryCell() {
    Roll roll = roll(PLANES);
    Figure<Area> sum = roll.sum("area_sf", Units.SQUARE_FOOT);
    assertThat(sum.step().operands()).isEqualTo(roll.cellsOf("area_sf")).hasSize(3);
    assertThat(Working.symbols(sum)).isEqualTo("the sum of area in the roof planes");
    assertThat(roll.range("area_sf")).isEqualTo("planes_area_sf");
  }

  @Test
  void sum_passesOnTheRefusalOfARow() {
    Roll roll =
        Roll.of(
            "planes",
            "the roof planes",
            List.of(sqft(10), sqft(-1)),
            Roll.column(
                "area_sf",
                (Figure<Area> area) ->
                    area.within(
                        "area_sf", Units.SQUARE_FOOT, Limits.between(0, 100, "one plane"))));
    assertThat(roll.sum("area_sf", Units.SQUARE_FOOT).refusal().map(Refusal::reason))
        .contains("area_sf is -1; it must be from 0 to 100, one plane");
  }

  @Test
  void sum_refusesAnotherUnitThanTheColumns() {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> roll(PLANES).sum("area_sf", Units.SQUARE))
        .withMessage("column area_sf of planes is in sq ft and cannot be gathered in square");
  }

  /** As a spreadsheet's MAX and MIN have it of cells without a number: ECMA-376 Part 1, 18.17.7. */
  @Test
  void theGreatestOfNothing_isZero() {
    assertThat(roll(List.of()).gathered(Gather.GREATEST, "area_sf", Units.SQUARE_FOOT).value())
        .isZero();
    assertThat(roll(List.of()).gathered(Gather.LEAST, "area_sf", Units.SQUARE_FOOT).value())
        .isZero();
  }

  @Test
  void only_keepsTheColumnsThatAreAskedForInTheirOrder() {
    Roll roll = roll(PLANES);
    Roll areas = roll.only(List.of("area_sf", "plane"));
    assertThat(roll.columns()).containsExactly("plane", "area_sf");
    assertThat(areas.columns()).containsExactly("area_sf", "plane");
    assertThat(areas.rows()).hasSize(3);
    assertThat(areas.rows().get(1)).extracting(Traced::plain).containsExactly("560", "back");
    assertThat(areas.name()).isEqualTo("planes");
    assertThat(areas.title()).isEqualTo("the roof planes");
    assertThat(areas.whole()).isSameAs(roll);
    assertThat(roll.whole()).isSameAs(roll);
  }
}
