package sheathwright.workbook.home;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Roll;
import sheathwright.figure.Shown;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.JobTable;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.LifeFields;
import sheathwright.job.table.Dates;
import sheathwright.job.table.Row;
import sheathwright.workbook.book.Letter;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.told.OnceMore;
import sheathwright.workbook.told.Sheaf;
import sheathwright.workbook.told.Told;

/** The page with the price on top. */
final class QuotePage {

  /**
   * One line of the price.
   *
   * @param item what it is for
   * @param quantity how many
   * @param unit of what
   * @param price of each
   */
  private record Line(
      String item, Figure<?> quantity, String unit, Figure<?> price, Figure<Money> amount) {

    Line(String item, Figure<?> quantity, String unit, Figure<?> price) {
      this(item, quantity, unit, price, reckoned(quantity, price));
    }

    private static Figure<Money> reckoned(Figure<?> quantity, Figure<?> price) {
      return quantity.times(price).in(Units.USD).toCents();
    }
  }

  /** Something that the homeowner may choose, with what it adds. */
  private record Option(String words, Figure<Money> adds, Choice<YesNo> tick) {}

  private static final Figure<Money> NOTHING = Figure.of(0, Units.USD);
  private static final Figure<Length> ONE_FOOT = Figure.of(1, Units.FOOT);

  private final Letter letter;
  private final Tab tab;
  private final Estimate estimate;
  private final Job job;
  private final List<Line> lines;
  private final List<Option> options;
  private final Roll roll;
  private final Figure<Money> together;
  private final Figure<Money> chosen;
  private final Figure<Money> total;
  private final Figure<Per<Money, Sheets>> extra;
  private final Figure<Per<Money, Sheets>> credit;
  private final Figure<Sheets> most;
  private final Figure<Money> allExtra;
  private final Optional<? extends Figure<?>> board;
  private final Optional<Figure<Length>> mostBoards;
  private final Optional<Figure<Money>> allBoards;
  private final Figure<Money> atWorst;
  private final String document;
  private final LocalDate date;
  private int checkLine;

  QuotePage(Letter letter, Estimate estimate, String document, LocalDate date) {
    this.document = document;
    this.date = date;
    this.letter = letter;
    this.tab = letter.tab();
    this.estimate = estimate;
    this.job = estimate.job();
    lines = lines(estimate.quote().roll());
    options = options();
    roll =
        Roll.of(
            "lines",
            "the lines of the quote",
            lines,
            Roll.<Line>column("item", line -> Choice.literal(line.item())),
            Roll.column("quantity", Line::quantity),
            Roll.column("unit", line -> Choice.literal(line.unit())),
            Roll.column("price_usd", Line::price),
            Roll.column("amount_usd", Line::amount));
    together = roll.sum("amount_usd", Units.USD).as("lines_usd", Units.USD);
    chosen = options.isEmpty() ? NOTHING : chosen().as("chosen_usd", Units.USD);
    total = together.plus(chosen).as("quote_total_usd", Units.USD);
    extra = Told.of("extra_sheet_usd", estimate.quote().extraSheet());
    credit = Told.of("credit_usd", estimate.quote().credit());
    most = Told.of("most_extra_sheets", estimate.quote().mostExtraSheets());
    allExtra = most.times(extra).in(Units.USD).toCents().as("all_extra_usd", Units.USD);
    board =
        estimate
            .quote()
            .mostBoards()
            .map(any -> Told.of("foot_of_board_usd", estimate.quote().board().orElseThrow()));
    mostBoards = estimate.quote().mostBoards().map(feet -> Told.of("most_boards_ft", feet));
    allBoards =
        mostBoards.map(
            feet ->
                feet.times(board.orElseThrow())
                    .in(Units.USD)
                    .toCents()
                    .as("all_boards_usd", Units.USD));
    atWorst = total.plus(bad()).as("at_most_usd", Units.USD);
  }

  private static List<Line> lines(Roll quoted) {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < quoted.rows().size(); i++) {
      Figure<?> quantity = (Figure<?>) quoted.cellsOf("quantity").get(i);
      if (quantity.value() != 0) {
        lines.add(
            new Line(
                quoted.cellsOf("item").get(i).plain(),
                Told.of("quantity", quantity),
                Shown.many(quantity.value(), quoted.cellsOf("unit").get(i).plain()),
                Told.of("price_usd", (Figure<?>) quoted.cellsOf("price_usd").get(i))));
      }
    }
    return lines;
  }

  private List<Option> options() {
    List<Option> all = new ArrayList<>();
    for (Row row : job.lines(JobTable.OPTIONS)) {
      if (row.has(AgreedFields.USD)) {
        int number = all.size() + 1;
        all.add(
            new Option(
                row.of(AgreedFields.FOR).value(),
                Told.of("option_" + number + "_usd", AgreedFields.worth(row)),
                Choice.input(
                    "option_" + number + "_chosen",
                    row.has(AgreedFields.CHOSEN) ? row.of(AgreedFields.CHOSEN).value() : YesNo.NO,
                    Source.given("the homeowner's choice"))));
      }
    }
    return all;
  }

  /** What the options that are ticked come to. */
  private Figure<Money> chosen() {
    Figure<Money> all = NOTHING;
    for (Option option : options) {
      all = all.plus(Figure.choose(option.tick().is(YesNo.YES), option.adds(), NOTHING));
    }
    return all;
  }

  /** Writes the page. */
  void write() {
    tab.heading("What you pay");
    letter.figure(total, "for everything in the lines below");
    price();
    tab.heading("For");
    LocalDate until = date.plusDays((long) job.fact(JobFields.VALID_DAYS).value());
    letter.fact("Who", job.fact(JobFields.CUSTOMER).value());
    letter.fact("Where", job.fact(JobFields.SITE).value());
    letter.fact("What", job.fact(JobFields.JOB_NAME).value());
    if (!document.isEmpty()) {
      letter.fact("Number", document);
      tab.numbersTheDocument(1);
    }
    letter.fact("Good until", Dates.inWords(until));
    starts();
    tab.heading("Your rafters");
    RafterWords.of(estimate.framing(), heldBack()).write(letter);
    tab.heading("The price, line by line");
    tab.list(
        roll,
        List.of("What", "How many", "Of", "Each", "Amount"),
        Arrays.asList(null, Units.RATIO, null, Units.USD, Units.USD));
    letter.total("Together", together);
    checkLine = tab.line();
    choices();
    stages();
    FirmTerms.of(job).write(letter);
    tab.heading("Agreed");
    signatures();
  }

  private void price() {
    if (estimate.deck().hasSheets()) {
      sheets();
    }
    allBoards.ifPresent(this::boards);
    letter.sentence("So the deck can bring the price to this at most, and no higher", atWorst);
  }

  private void sheets() {
    letter.sentence(
        "%s in this price. Each further one that is bad, shown to you with a photo before it is covered, is"
            .formatted(SheetWords.included(estimate.plannedSheets())),
        extra);
    if (credit.value() > 0) {
      letter.sentence("Back to you for each of those sheets that is not needed", credit);
    }
    letter.sentence(
        "Sheets that could still turn out bad at most, and what all of them cost", most, allExtra);
  }

  /** What is bad of a deck of boards is counted by the foot, and none of it is in the price. */
  private void boards(Figure<Money> all) {
    letter.sentence(
        "%s of boards. Each foot of board that is bad, shown to you with a photo before it is covered, is"
            .formatted(estimate.deck().hasSheets() ? "Part of the deck is" : "The deck is"),
        board.orElseThrow());
    letter.sentence(
        "Feet of board that could turn out bad at most, and what all of them cost",
        mostBoards.orElseThrow(),
        all);
  }

  private void starts() {
    if (job.knows(LifeFields.START_ON)) {
      letter.fact("We start", Dates.inWords(Dates.read(job.fact(LifeFields.START_ON).value())));
    }
  }

  /** Work on rafters that is not sold before somebody has decided. */
  private boolean heldBack() {
    return estimate.quote().held().isPresent()
        && estimate.quote().held().get().cellsOf("quantity").stream()
            .anyMatch(quantity -> ((Figure<?>) quantity).value() > 0);
  }

  private void choices() {
    if (!options.isEmpty()) {
      tab.heading("Your choices: write yes or no");
      options.forEach(option -> letter.choice(option.words(), option.adds(), option.tick()));
      letter.total("What you chose", chosen);
    }
  }

  private void stages() {
    List<Row> stages = job.lines(JobTable.STAGES);
    if (stages.isEmpty()) {
      return;
    }
    tab.heading("When it is paid");
    Figure<Money> left = total;
    for (int i = 0; i < stages.size(); i++) {
      Row stage = stages.get(i);
      String name = "payment_" + (i + 1) + "_usd";
      String words =
          "%s, %s"
              .formatted(stage.of(AgreedFields.STAGE).value(), stage.of(AgreedFields.WHEN).value());
      if (i == stages.size() - 1) {
        letter.sentence(words, left.as(name, Units.USD));
      } else if (stage.has(AgreedFields.USD)) {
        Figure<Money> amount = Told.of(name, stage.of(AgreedFields.USD));
        letter.sentence(words, amount);
        left = left.minus(amount);
      } else {
        Figure<Ratio> part =
            Told.of("payment_" + (i + 1) + "_part_pct", stage.of(AgreedFields.PART));
        Figure<Money> amount = total.times(part).in(Units.USD).toCents().as(name, Units.USD);
        letter.share(words, part, amount);
        left = left.minus(amount);
      }
    }
  }

  private void signatures() {
    boolean mayBeSigned = estimate.framing().mayBeSigned().holds();
    if (mayBeSigned) {
      letter.signature("Homeowner, date");
      letter.signature("Contractor, date");
    } else {
      letter.box("Nothing is signed yet: it waits for what is said of your rafters above.", true);
    }
    tab.note(
        "Local law decides what a contract must say. This quote is not one until both have signed a contract that does.");
  }

  /** What was quoted, told a second time on another page, so that a changed number is seen. */
  void writeOnceMore(Sheaf other) {
    OnceMore again =
        new OnceMore()
            .amount("All lines together", together)
            .amount("Price without your choices", total.minus(chosen));
    if (estimate.deck().hasSheets()) {
      again.amount("Each further sheet", one(extra));
    }
    board.ifPresent(each -> again.amount("Each foot of board", each.times(ONE_FOOT).in(Units.USD)));
    if (estimate.deck().hasSheets() && credit.value() > 0) {
      again.amount("Back for each not needed", one(credit));
    }
    again
        .amount("All that could turn out bad", bad())
        .amount("The most, without choices", atWorst.minus(chosen));
    Choice<String> state =
        again.write(
            other,
            "The numbers once more, as they were quoted",
            "As quoted",
            "The amounts add up and are as quoted.",
            "A number was changed: ask us before you sign.");
    tab.value(checkLine, 0, state, Part.NOTE);
    tab.across(checkLine, 0, tab.columns() - 1);
  }

  /** Every sheet and every foot of board that could turn out bad. */
  private Figure<Money> bad() {
    Figure<Money> boards = allBoards.orElse(NOTHING);
    return !estimate.deck().hasSheets()
        ? boards
        : allBoards.isPresent() ? allExtra.plus(boards) : allExtra;
  }

  private static Figure<Money> one(Figure<Per<Money, Sheets>> price) {
    return price.times(Figure.of(1, Units.SHEET)).in(Units.USD);
  }
}
