package sheathwright.figure;

import java.util.List;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;

/** What steps of each kind are made from, where it is asked how they are written. */
final class StepParts {

  static final Figure<Ratio> A = ratio("a");
  static final Figure<Ratio> B = ratio("b");
  static final Figure<Ratio> C = ratio("c");
  static final Figure<Length> GAP =
      Figure.input("gap_in", 3, Units.INCH, Limits.NONE, Source.GIVEN);
  static final Choice<String> KIND = Choice.input("wood_kind", "oak", Source.GIVEN);
  static final Choice<String> OTHER = Choice.input("other_kind", "elm", Source.GIVEN);
  static final Choice<String> SIZE = Choice.input("stick_size", "2x4", Source.GIVEN);
  static final Choice<String> GOOD = Choice.literal("good");

  static final Table WOOD =
      new Table(
          "wood",
          "wood values",
          List.of("kind", "grade"),
          List.of("bending_psi", "2x4"),
          List.of(List.of("oak", "good", "900", "1.5")),
          Source.GIVEN,
          List.of());

  static final Roll PLANES =
      Roll.of(
          "planes",
          "the roof planes",
          List.of(Amounts.sqft(10), Amounts.sqft(20)),
          Roll.column("deck_area_sf", (Figure<Area> area) -> area),
          Roll.column("plane", area -> Choice.literal("front")),
          Roll.column("wet", area -> Amounts.number(1)));

  static Figure<Ratio> ratio(String name) {
    return Figure.input(name, 2, Units.RATIO, Limits.NONE, Source.GIVEN);
  }

  private StepParts() {}
}
