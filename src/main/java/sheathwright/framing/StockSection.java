package sheathwright.framing;

import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.published.DressedSizes;
import sheathwright.published.LumberSize;
import sheathwright.published.Published;

/** What a stick of a nominal size really measures, by how it came to its size. */
final class StockSection {

  private static final Source RE_SAWN = Source.secondHand("PS 20-25, 7.3.7");
  private static final Table OTHERS =
      Published.table("ps20/earlier/other-sizes.csv", "other_size", "sizes not dressed dry", 2);
  private static final Figure<Length> NOTHING = Figure.of(0, Units.INCH);

  private final Choice<LumberSize> size;
  private final Condition isDressed;
  private final Condition isMeasured;
  private final Choice<Stock> lookedUp;
  private final Condition isGraded;
  private final Condition isToldOnce;

  private StockSection(
      Choice<LumberSize> size, Choice<Stock> stock, Figure<Length> b, Figure<Length> d) {
    this.size = size;
    isDressed = stock.is(Stock.DRESSED);
    isMeasured = stock.is(Stock.MEASURED);
    Condition isListed =
        Condition.any(stock.is(Stock.GREEN), stock.is(Stock.PRE_1970), stock.is(Stock.FULL_SAWN));
    // The list is asked for a stock that it holds, whichever size is taken in the end.
    lookedUp = Choice.choose(isListed, stock, Stock.FULL_SAWN).as("stock_looked_up");
    Choice<YesNo> byName =
        Condition.any(isDressed, isListed, stock.is(Stock.RIPPED)).as("size_by_name");
    isGraded = Condition.any(isMeasured, isDressed, isListed);
    isToldOnce =
        Condition.any(
            Condition.all(isMeasured, b.isMoreThan(NOTHING), d.isMoreThan(NOTHING)),
            Condition.all(byName.is(YesNo.YES), b.isAtMost(NOTHING), d.isAtMost(NOTHING)));
  }

  /**
   * Its section.
   *
   * @param thickness as measured, 0 in to 6 in; 0 unless the stock is measured
   * @param depth as measured, 0 in to 24 in; 0 unless the stock is measured
   */
  static RafterSection of(
      OneOf<LumberSize> size, OneOf<Stock> stock, Figure<Length> thickness, Figure<Length> depth) {
    var b =
        thickness.within(
            "thickness_in", Units.INCH, Limits.between(0, 6, "as measured; 0 if it was not"));
    var d =
        depth.within("depth_in", Units.INCH, Limits.between(0, 24, "as measured; 0 if it was not"));
    var name = size.choice().argument("size");
    var section = new StockSection(name, stock.choice().argument("stock"), b, d);
    return RafterSection.of(
        section.actual("thickness_in", b, DressedSizes.thickness(name)),
        section.actual("width_in", d, DressedSizes.width(name)));
  }

  private Figure<Length> actual(String face, Figure<Length> measured, Figure<Length> dressed) {
    var listed = OTHERS.number(Units.INCH, face, lookedUp, size).as("listed_" + face, Units.INCH);
    var byName = Figure.choose(isDressed, dressed, listed).as("named_" + face, Units.INCH);
    return Figure.choose(isMeasured, measured, byName)
        .as("chosen_" + face, Units.INCH)
        .onlyIf(
            isGraded,
            "stock is ripped: sawing a stick lengthwise voids its grade and its design values until"
                + " it is graded again (%s); nobody may give it any".formatted(RE_SAWN))
        .as("graded_" + face, Units.INCH, RE_SAWN)
        .onlyIf(
            isToldOnce,
            "measured stock, and no other, needs both thickness_in and depth_in: give both and say"
                + " measured, or leave both out");
  }
}
