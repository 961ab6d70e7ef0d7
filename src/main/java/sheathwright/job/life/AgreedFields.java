package sheathwright.job.life;

import java.util.List;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.table.Field;
import sheathwright.job.table.Row;

/** The columns of the tables that say what was agreed, what is paid when, and what is left open. */
public final class AgreedFields {

  public static final Field<Choice<String>> ITEM = Field.name("item", "What");

  public static final Field<Choice<String>> UNIT = Field.name("unit", "Counted in");

  public static final Field<Figure<Money>> USD =
      Field.number("usd", "Dollars", Units.USD, -1_000_000, 10_000_000);

  public static final Field<Figure<Ratio>> INCLUDED =
      Field.number("included", "So many in the price", Units.RATIO, 0, 100_000).ifKnown();

  public static final Field<Figure<Money>> CREDIT =
      Field.number("credit_usd", "Comes back for each not needed", Units.USD, 0, 100_000).ifKnown();

  public static final Field<Figure<Ratio>> MOST =
      Field.number("most", "At most so many", Units.RATIO, 0, 100_000).ifKnown();

  public static final Field<Choice<String>> WORDS = Field.text("words", "As it was agreed");

  /** What was agreed, a line each; written by us and never edited. */
  public static final List<Field<?>> AGREED =
      List.of(ITEM, UNIT.ifKnown(), USD, INCLUDED, CREDIT, MOST, WORDS);

  public static final Field<Choice<String>> STAGE = Field.name("stage", "Payment");

  public static final Field<Figure<Ratio>> PART =
      Field.number("part_pct", "Part of the total", Units.PERCENT, 0, 100).ifKnown();

  public static final Field<Choice<String>> WHEN = Field.line("when", "Due");

  public static final Field<Choice<String>> PAID_ON = Field.date("paid_on", "Paid on").ifKnown();

  public static final Field<Figure<Money>> PAID =
      Field.number("paid_usd", "Paid", Units.USD, 0, 10_000_000).ifKnown();

  /** What is paid when: a part of the total, or dollars. */
  public static final List<Field<?>> STAGES =
      List.of(STAGE, PART, USD.ifKnown(), WHEN, PAID_ON, PAID);

  public static final Field<Choice<String>> OPTION = Field.name("option", "Option");

  public static final Field<Choice<String>> FOR = Field.line("item", "What");

  public static final Field<Figure<Ratio>> QUANTITY =
      Field.number("quantity", "How many", Units.RATIO, -100_000, 100_000);

  public static final Field<Choice<YesNo>> CHOSEN =
      Field.word("chosen", "Chosen", YesNo.class).ifKnown();

  public static final Field<Choice<String>> CHOSEN_ON =
      Field.date("chosen_on", "Chosen on").ifKnown();

  /** What the owner decides. */
  public static final List<Field<?>> OPTIONS =
      List.of(OPTION, FOR, QUANTITY.ifKnown(), UNIT.ifKnown(), USD.ifKnown(), CHOSEN, CHOSEN_ON);

  private AgreedFields() {}

  /** The row of what was agreed that is about a thing; nothing where there is none. */
  public static Optional<Row> row(List<Row> agreed, String item) {
    return agreed.stream()
        .filter(row -> row.read(ITEM).filter(it -> it.value().equals(item)).isPresent())
        .findFirst();
  }

  /** What an option adds to the price: its dollars as often as it says, once if it does not. */
  public static Figure<Money> worth(Row option) {
    Figure<Money> each = option.or(USD, Figure.of(0, Units.USD));
    return option.has(QUANTITY) ? option.of(QUANTITY).times(each).in(Units.USD).toCents() : each;
  }

  /** What an option is called in what was agreed. */
  public static String agreedAs(Row option) {
    return "%s: %s".formatted(option.of(OPTION).value(), option.of(FOR).value());
  }

  /** Whether an option is among those that were agreed to, whatever its words are by now. */
  public static boolean isAgreed(Row option, List<String> agreed) {
    return agreed.stream().anyMatch(words -> words.startsWith(option.of(OPTION).value() + ": "));
  }

  /** Whether the owner chose it. */
  public static boolean isChosen(Row option) {
    return option.has(CHOSEN) && option.of(CHOSEN).value() == YesNo.YES;
  }
}
