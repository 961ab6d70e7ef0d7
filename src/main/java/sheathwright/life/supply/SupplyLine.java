package sheathwright.life.supply;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;

/**
 * One thing to buy.
 *
 * @param what it is, as a supplier reads it; no word where nothing of it is needed
 * @param needed how many
 * @param overage more, for what breaks or is lost
 * @param toBuy whole packs of both
 * @param sold what a pack is
 */
public record SupplyLine(
    Choice<String> what,
    Figure<?> needed,
    Figure<?> overage,
    Figure<Ratio> toBuy,
    Choice<String> sold) {

  /** What a line is called of which nothing is needed now; it may be later. */
  static final String NOT_NEEDED = "not needed";

  private static final Choice<String> NAMELESS = Choice.literal(NOT_NEEDED);
  private static final Figure<Ratio> NO_SPARE = Figure.of(0, Units.RATIO);

  /** Sold one by one, so many and no more: cut from a list. */
  static <Q extends Quantity> SupplyLine counted(
      Choice<String> what, Figure<Q> needed, String sold) {
    return spared(what, needed, NO_SPARE, sold);
  }

  /** Sold one by one, with something to spare. */
  static <Q extends Quantity> SupplyLine spared(
      Choice<String> what, Figure<Q> needed, Figure<Ratio> spare, String sold) {
    return of(what, needed, spare, Figure.of(1, needed.unit()), Choice.literal(sold));
  }

  /** Sold in packs. */
  static <Q extends Quantity> SupplyLine of(
      Choice<String> what,
      Figure<Q> needed,
      Figure<Ratio> spare,
      Figure<?> pack,
      Choice<String> sold) {
    Figure<Q> overage = needed.times(spare).in(needed.unit()).roundedUp();
    return new SupplyLine(
        Choice.choose(needed.isMoreThan(Figure.of(0, needed.unit())), what, NAMELESS),
        needed,
        overage,
        needed.plus(overage).dividedBy(pack).in(Units.RATIO).roundedUp(),
        sold);
  }

  /** Whether anybody can say how much of it is needed. */
  boolean isKnown() {
    return needed.refusal().isEmpty();
  }

  static Roll roll(String name, String title, List<SupplyLine> lines) {
    return Roll.of(
        name,
        title,
        lines,
        Roll.<SupplyLine>column("what", SupplyLine::what),
        Roll.column("sold", SupplyLine::sold),
        Roll.column("to_buy", SupplyLine::toBuy),
        Roll.column("needed", SupplyLine::needed),
        Roll.column("overage", SupplyLine::overage));
  }
}
