package sheathwright.wood;

import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.published.Published;

/** What a stick of a nominal size really measures: by rule, or else by how it came to its size. */
public final class StockSection {

  private static final Source RE_SAWN = Source.secondHand("PS 20-25, 7.3.7");
  private static final Source BY_RULE = Source.derived("what is measured beats what is named");
  private static final Table OTHERS =
      Published.table("ps20/earlier/other-sizes.csv", "other_size", "sizes not dressed dry", 2);
  private static final Figure<Length> NOTHING = Figure.of(0, Units.INCH);

  private final Choice<LumberSize> size;
  private final Condition isDressed;
  private final Condition isMeasured;
  private final Condition isGraded;
  private final Choice<Stock> lookedUp;

  private StockSection(Choice<LumberSize> size, Choice<Stock> stock) {
    this.size = size;
    isDressed = stock.is(Stock.DRESSED);
    isMeasured = stock.is(Stock.MEASURED);
    Condition isListed =
        Condition.any(stock.is(Stock.GREEN), stock.is(Stock.PRE_1970), stock.is(Stock.FULL_SAWN));
    isGraded = Condition.any(isDressed, isMeasured, isListed);
    // The list is asked for a stock that it holds, whichever size is taken in the end.
    lookedUp = Choice.choose(isListed, stock, Stock.FULL_SAWN).as("stock_looked_up");
  }

  /** The section of a stick of this nominal size. */
  static RafterSection of(OneOf<LumberSize> size, ActualSize found) {
    var name = size.choice().argument("size");
    var section = new StockSection(name, found.stock().choice());
    return RafterSection.of(
        section.actual("thickness_in", found.thickness(), DressedSizes.thickness(name)),
        section.actual("width_in", found.depth(), DressedSizes.width(name)));
  }

  private Figure<Length> actual(String face, Figure<Length> byRule, Figure<Length> dressed) {
    var listed = OTHERS.number(Units.INCH, face, lookedUp, size).as("listed_" + face, Units.INCH);
    var named = Figure.choose(isDressed, dressed, listed).as("named_" + face, Units.INCH);
    var known = Figure.choose(isMeasured, NOTHING, named).as("known_" + face, Units.INCH);
    var taken =
        Figure.choose(byRule.isMoreThan(NOTHING), byRule, known)
            .as("taken_" + face, Units.INCH, BY_RULE);
    return taken
        .onlyIf(
            isGraded,
            "stock is ripped: sawing a stick lengthwise voids its grade and its design values until"
                + " it is graded again (%s); no value may be used for it".formatted(RE_SAWN))
        .as("graded_" + face, Units.INCH, RE_SAWN)
        .onlyIf(taken.isMoreThan(NOTHING), "measured stock needs both thickness_in and depth_in");
  }
}
