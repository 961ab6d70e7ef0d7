package sheathwright.pricing;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** What has to be hauled away, and in how many containers. */
public final class Haulage {

  private static final Figure<Pieces> ONE = Figure.of(1, Units.PIECE);
  private static final Figure<Force> NONE = Figure.of(0, Units.TON);

  private Haulage() {}

  /**
   * What the old covering and the old sheets weigh together.
   *
   * <pre>
   * weight = area × layers × weight of a layer + sheets × weight of a sheet
   * </pre>
   *
   * <p>Does not cover water: soaked covering weighs more, and underlayment, flashing and nails are
   * left out.
   *
   * <pre>{@code
   * disposalWeight(OldRoof.area(squares(38.85)).layers(number(2)).covering(psf(2.4)).sheets(sheets(121), lbPerSheet(45))) // 12.047 tons
   * }</pre>
   *
   * @param roof its area on the slope, the layers on it and what one weighs, and the old sheets
   * @return tons of 2,000 lb
   * @throws RefusedException if a number lies outside its range
   * @see "derived: arithmetic; weights by the bundle or the panel are the user's own"
   */
  @LibraryFunction(words = {"dump", "dumpster", "tear-off", "tons", "haul", "container"})
  @Column(value = "disposal_tons", unit = "ton")
  public static Figure<Force> disposalWeight(OldRoof roof) {
    var covering =
        roof.area().times(roof.layers()).times(roof.covering()).as("covering_lb", Units.POUND);
    var sheets = roof.sheets().times(roof.sheet()).as("sheets_lb", Units.POUND);
    return covering.plus(sheets).as("disposal_tons", Units.TON, Source.ARITHMETIC);
  }

  /**
   * How many containers to order where what is above their weight is paid by the ton.
   *
   * <pre>
   * full = whole containers that the weight fills, at least one
   * cost = the lesser of full containers with the rest by the ton, and one container more
   * </pre>
   *
   * <p>Does not cover volume: wood and metal can fill a container before they weigh it down, and a
   * road may carry less than its weight.
   *
   * <pre>{@code
   * containers(tons(12.0465), ContainerTerms.tons(tons(4)).price(usdPerPiece(465)).over(usdPerTon(82))).cost() // $1,398.81
   * }</pre>
   *
   * @param weight to haul, 0 ton to 5000 ton
   * @param terms what the hauler asks
   * @return containers and what they cost
   * @throws RefusedException if a number lies outside its range
   * @see "derived: arithmetic"
   */
  @LibraryFunction(words = {"dump", "dumpster", "haul", "how many containers"})
  public static Containers containers(
      @Column(value = "tons", unit = "ton") Figure<Force> weight, ContainerTerms terms) {
    var all = weight.within("tons", Units.TON, Limits.between(0, 5_000, "see disposal_weight"));
    var full =
        all.dividedBy(terms.tons())
            .as("containers_filled", Units.RATIO)
            .roundedDown()
            .counting(Units.PIECE)
            .max(ONE)
            .as("full_containers", Units.PIECE);
    var rest =
        all.minus(full.dividedBy(ONE).times(terms.tons())).max(NONE).as("tons_over", Units.TON);
    var withRest =
        full.times(terms.price()).plus(rest.times(terms.over())).as("full_usd", Units.USD);
    var more = full.plus(ONE).as("one_more", Units.PIECE);
    var withMore = more.times(terms.price()).as("one_more_usd", Units.USD);
    return new Containers(
        Figure.choose(withRest.isAtMost(withMore), full, more)
            .as("containers", Units.PIECE, Source.ARITHMETIC),
        withRest.min(withMore).as("cost_usd", Units.USD, Source.ARITHMETIC));
  }
}
