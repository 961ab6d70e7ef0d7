package sheathwright.job;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.life.Item;
import sheathwright.job.price.FoundPrice;
import sheathwright.job.price.FoundUnit;

/** The lines that the homeowner pays, their total, and the prices of what may be found besides. */
public final class QuoteLines {

  private static final String SHEETS = "Deck sheets taken out and replaced";
  private static final String SISTERS = "Rafters straightened with new wood beside them";
  private static final String SHIMS = "Rafters straightened with thin strips on top";
  private static final String LIFTS = "Deck sheets lifted over those rafters and laid again";
  private static final Figure<Sheets> NO_SHEETS = Figure.of(0, Units.SHEET);
  private static final Figure<Pieces> NONE = Figure.of(0, Units.PIECE);

  /**
   * One line.
   *
   * @param item what it is for
   * @param quantity how many
   * @param unit of what
   * @param price of each, as it stands in the line
   * @param quoted the price that it must be: worked out elsewhere, or as it was when the quote was
   *     issued
   */
  public record Line(
      String item, Figure<?> quantity, String unit, Figure<?> price, Figure<?> quoted) {

    /** A line of a price that is worked out elsewhere. */
    static Line of(String item, Figure<?> quantity, String unit, Figure<?> price) {
      return new Line(item, quantity, unit, named(price), price);
    }

    private static <Q extends Quantity> Figure<Q> named(Figure<Q> price) {
      return price.as("price_usd", price.unit());
    }

    Figure<Money> amount() {
      return quantity.times(price).in(Units.USD).toCents();
    }

    /** The amount once more, from the quantity and the price that it must be. */
    Figure<Money> reckoned() {
      return quantity.times(quoted).in(Units.USD).toCents();
    }
  }

  private final List<Line> lines;
  private final List<Line> held;
  private final Roll roll;
  private final Roll heldRoll;
  private final Figure<Money> total;
  private final Figure<Per<Money, Sheets>> extraSheet;
  private final Figure<Per<Money, Sheets>> credit;
  private final List<FoundPrice> extras;
  private final Figure<Sheets> mostExtraSheets;
  private final boolean hasSheets;
  private final Optional<Figure<Length>> mostBoards;
  private final Figure<Money> worstCase;

  /**
   * The lines of a job's quote.
   *
   * @param mayRepair whether the crew may repair the framing: if not, that work is not sold
   * @param found the prices of what may be found besides bad sheets
   */
  static QuoteLines of(Job job, SheetWork work, Choice<YesNo> mayRepair, List<FoundPrice> found) {
    Condition isSold = mayRepair.is(YesNo.YES);
    return new QuoteLines(
        linesOf(job, work, isSold, found),
        framing(work, isSold, found, false),
        work.extraPrice().quoted(),
        job.fact(JobFields.CREDIT),
        found,
        work);
  }

  private QuoteLines(
      List<Line> lines,
      List<Line> held,
      Figure<Per<Money, Sheets>> extraSheet,
      Figure<Per<Money, Sheets>> credit,
      List<FoundPrice> extras,
      SheetWork work) {
    this.lines = lines;
    this.held = held;
    this.extraSheet = extraSheet;
    this.credit = credit;
    this.extras = extras;
    roll = roll("lines", "the lines of the quote", lines);
    heldRoll = roll("held", "the lines that wait for the engineer", held);
    total = roll.sum("amount_usd", Units.USD).as("quote_total_usd", Units.USD);
    mostExtraSheets =
        work.atWorst().minus(work.planned()).max(NO_SHEETS).as("most_extra_sheets", Units.SHEET);
    hasSheets = work.hasSheets();
    mostBoards = work.boards().filter(any -> board().isPresent());
    worstCase = total.plus(allFound()).as("worst_case_usd", Units.USD);
  }

  private static Roll roll(String name, String title, List<Line> lines) {
    return Roll.of(
        name,
        title,
        lines,
        Roll.<Line>column("item", line -> Choice.literal(line.item())),
        Roll.column("quantity", Line::quantity),
        Roll.column("unit", line -> Choice.literal(line.unit())),
        Roll.column("price_usd", Line::price),
        Roll.column("amount_usd", Line::amount));
  }

  /** Every sheet that could still turn out bad. */
  public Figure<Money> allExtra() {
    return mostExtraSheets.times(extraSheet).in(Units.USD).toCents();
  }

  /** What a foot of board costs, if it has a price. */
  public Optional<Figure<?>> board() {
    return Optional.ofNullable(extras().get(FoundUnit.BOARD));
  }

  /** The feet of board that could turn out bad, where any of the deck is boards. */
  public Optional<Figure<Length>> mostBoards() {
    return mostBoards;
  }

  /** Every foot of board that could turn out bad. */
  public Optional<Figure<Money>> allBoards() {
    return mostBoards.map(feet -> feet.times(board().orElseThrow()).in(Units.USD).toCents());
  }

  private Figure<Money> allFound() {
    return allBoards().map(allExtra()::plus).orElseGet(this::allExtra);
  }

  /**
   * What must hold of the lines. Each is worked out from quantities and from the prices that must
   * be, and never from the amounts that it holds to account.
   */
  public List<Estimate.Tie> ties() {
    List<Condition> prices = new ArrayList<>();
    List<Condition> amounts = new ArrayList<>();
    Figure<Money> sum = Figure.of(0, Units.USD);
    for (Figure<Money> reckoned : reckoned(lines, roll, prices, amounts)) {
      sum = sum.plus(reckoned);
    }
    reckoned(held, heldRoll, prices, amounts);
    return List.of(
        Estimate.Tie.all("Every price is as it was quoted", "price_stands_", prices),
        Estimate.Tie.all(
            "Every amount is its quantity times its price, to the cent", "amount_stands_", amounts),
        new Estimate.Tie("Quantities times prices add up to the total", total.isTheSameAs(sum)),
        new Estimate.Tie(
            "The worst case is the total and every sheet%s that could still turn out bad"
                .formatted(mostBoards.isPresent() ? " and foot of board" : ""),
            worstCase.isTheSameAs(sum.plus(allFound()))));
  }

  /** What each line comes to, and that its price and its amount stand. */
  private static List<Figure<Money>> reckoned(
      List<Line> lines, Roll roll, List<Condition> prices, List<Condition> amounts) {
    List<Figure<Money>> all = new ArrayList<>();
    List<Traced> standing = lines.isEmpty() ? List.of() : roll.cellsOf("amount_usd");
    for (int i = 0; i < lines.size(); i++) {
      Line line = lines.get(i);
      Figure<Money> reckoned = line.reckoned();
      prices.add(line.price().isTheSameAs(line.quoted()));
      amounts.add(reckoned.isTheSameAs((Figure<?>) standing.get(i)));
      all.add(reckoned);
    }
    return all;
  }

  private static List<Line> linesOf(
      Job job, SheetWork work, Condition isSold, List<FoundPrice> found) {
    List<Line> lines = new ArrayList<>();
    Figure<?> once = Figure.of(1, Units.RATIO);
    lines.add(Line.of("Roof covering", once, "job", job.fact(JobFields.BASE_ROOFING)));
    lines.add(Line.of("Permit", once, "job", job.fact(JobFields.PERMIT)));
    if (job.knows(JobFields.ENGINEER)) {
      lines.add(Line.of("Engineer's letter", once, "job", job.fact(JobFields.ENGINEER)));
    }
    if (work.hasSheets()) {
      lines.add(Line.of(SHEETS, work.planned(), "sheet", work.plannedPrice().quoted()));
    }
    lines.addAll(framing(work, isSold, found, true));
    return lines;
  }

  /**
   * The work on the rafters: sold, or held back until somebody licensed has decided.
   *
   * @param isSold whether it may be sold
   * @param found what a sheet costs that is lifted for it, among others
   * @param inThePrice whether these are the lines of the price, or those that wait
   */
  private static List<Line> framing(
      SheetWork work, Condition isSold, List<FoundPrice> found, boolean inThePrice) {
    List<Line> lines = new ArrayList<>();
    work.leveling()
        .ifPresent(
            leveling -> {
              lines.add(
                  Line.of(
                      SISTERS,
                      counted(leveling.sisters(), isSold, inThePrice),
                      "rafter",
                      leveling.sisterPrice().quoted()));
              lines.add(
                  Line.of(
                      SHIMS,
                      counted(leveling.shims(), isSold, inThePrice),
                      "rafter",
                      leveling.shimPrice().quoted()));
            });
    work.lifted()
        .ifPresent(
            lifted ->
                found.stream()
                    .filter(price -> price.unit() == FoundUnit.LIFT)
                    .map(
                        price ->
                            Line.of(
                                LIFTS,
                                counted(lifted, isSold, inThePrice),
                                "sheet",
                                price.quoted()))
                    .forEach(lines::add));
    return lines;
  }

  /** What the line is for that sells so many of an item within the price; if there is one. */
  public static Optional<String> lineOf(Item item) {
    return switch (item) {
      case SHEET -> Optional.of(SHEETS);
      case SISTER -> Optional.of(SISTERS);
      case SHIM -> Optional.of(SHIMS);
      case LIFT -> Optional.of(LIFTS);
      case REFASTEN, RELIEF, BLOCK, SCAB, CLIP, COVER, BOARD, RENAIL -> Optional.empty();
    };
  }

  /** How many of an item the price holds; 0 where no line sells any. */
  public Figure<?> included(Item item) {
    return lines.stream()
        .filter(line -> lineOf(item).equals(Optional.of(line.item())))
        .<Figure<?>>map(Line::quantity)
        .findFirst()
        .orElse(NONE);
  }

  private static Figure<Pieces> counted(
      Figure<Pieces> pieces, Condition isSold, boolean inThePrice) {
    return (inThePrice ? Figure.choose(isSold, pieces, NONE) : Figure.choose(isSold, NONE, pieces))
        .as(pieces.name() + (inThePrice ? "_sold" : "_held"), Units.PIECE);
  }

  /**
   * What a homeowner is told and agrees to, by the names of the cells that say it: the lines
   * together, a sheet more, a sheet not needed, all sheets that could turn out bad, and what each
   * thing costs that may be found besides.
   */
  public Map<String, Figure<?>> told() {
    Map<String, Figure<?>> told = new LinkedHashMap<>();
    told.put("lines_usd", total);
    if (hasSheets) {
      told.put("extra_sheet_usd", extraSheet);
      told.put("credit_usd", credit);
      told.put("all_extra_usd", allExtra());
    }
    allBoards().ifPresent(all -> told.put("all_boards_usd", all));
    extras.forEach(price -> told.put(toldName(price.unit()), price.quoted()));
    return told;
  }

  /** The name of the cell that tells what something costs that may be found besides. */
  public static String toldName(FoundUnit unit) {
    return unit.word().replace('-', '_') + "_usd";
  }

  public Roll roll() {
    return roll;
  }

  /** What waits for the engineer's decision, with its prices and not in the total; if anything. */
  public Optional<Roll> held() {
    return Optional.of(heldRoll).filter(any -> !held.isEmpty());
  }

  public Figure<Money> total() {
    return total;
  }

  public Figure<Per<Money, Sheets>> extraSheet() {
    return extraSheet;
  }

  public Figure<Per<Money, Sheets>> credit() {
    return credit;
  }

  /** The prices of what may be found besides, each by what it is. */
  public Map<FoundUnit, Figure<?>> extras() {
    Map<FoundUnit, Figure<?>> all = new EnumMap<>(FoundUnit.class);
    extras.forEach(price -> all.put(price.unit(), price.quoted()));
    return all;
  }

  public Figure<Sheets> mostExtraSheets() {
    return mostExtraSheets;
  }

  public Figure<Money> worstCase() {
    return worstCase;
  }
}
