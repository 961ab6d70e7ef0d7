package sheathwright.job.life;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Units;
import sheathwright.job.table.Field;

/** The columns of the tables of change orders, of the crew's log, and of what was sent. */
public final class OrderFields {

  public static final Field<Choice<String>> ORDER = Field.name("order", "Change order");

  public static final Field<Choice<String>> ON = Field.moment("on", "On");

  public static final Field<Figure<Ratio>> DAYS =
      Field.number("days", "Days more", Units.RATIO, 0, 1_000).ifKnown();

  public static final Field<Choice<OrderStatus>> STATUS =
      Field.word("status", "What became of it", OrderStatus.class);

  public static final Field<Choice<String>> APPROVED_BY =
      Field.line("approved_by", "Approved by").ifKnown();

  public static final Field<Choice<ApprovedHow>> APPROVED_HOW =
      Field.word("approved_how", "Approved how", ApprovedHow.class).ifKnown();

  public static final Field<Choice<String>> APPROVED_ON =
      Field.moment("approved_on", "Approved on").ifKnown();

  /** A change order each. */
  public static final List<Field<?>> ORDERS =
      List.of(
          ORDER,
          ON,
          AgreedFields.USD.ifKnown(),
          DAYS,
          STATUS,
          APPROVED_BY,
          APPROVED_HOW,
          APPROVED_ON);

  /** The item of a line for an option; under marks stands which. */
  public static final String OPTION_LINE = "option";

  public static final Field<Choice<String>> MARKS = Field.text("marks", "For these marks");

  /** A line of a change order each; written by us and never edited. */
  public static final List<Field<?>> ORDER_LINES =
      List.of(
          ORDER,
          AgreedFields.ITEM,
          AgreedFields.UNIT,
          AgreedFields.QUANTITY,
          AgreedFields.USD,
          MARKS);

  public static final Field<Choice<String>> DAY = Field.date("day", "Day");

  public static final Field<Choice<String>> TASK = Field.name("task", "Task");

  public static final Field<Figure<Time>> HOURS =
      Field.number("hours", "Hours of work", Units.HOUR, 0, 2_000);

  public static final Field<Figure<Ratio>> PEOPLE =
      Field.whole("people", "People", Units.RATIO, 1, 50).ifKnown();

  public static final Field<Choice<String>> VISIT = Field.name("visit", "Visit").ifKnown();

  /** What the crew did. */
  public static final List<Field<?>> LOG =
      List.of(DAY, TASK, AgreedFields.QUANTITY, HOURS, PEOPLE, VISIT);

  public static final Field<Choice<String>> DOCUMENT = Field.name("document", "Document");

  public static final Field<Choice<String>> FILE = Field.line("file", "File");

  public static final Field<Choice<String>> FILE_HASH = Field.line("file_sha256", "SHA-256 of it");

  public static final Field<Choice<String>> MANIFEST_HASH =
      Field.line("manifest_sha256", "SHA-256 of what it says was written").ifKnown();

  public static final Field<Choice<String>> RECORD_HASH =
      Field.line("record_sha256", "SHA-256 of what it was made from");

  public static final Field<Figure<sheathwright.figure.Quantity.Money>> TOTAL =
      Field.number("total_usd", "Its total", Units.USD, -1_000_000, 100_000_000).ifKnown();

  /** What left the house; written by us. */
  public static final List<Field<?>> SENT =
      List.of(DOCUMENT, FILE, FILE_HASH, RECORD_HASH, TOTAL, ON.ifKnown(), MANIFEST_HASH);

  public static final Field<Choice<String>> PHOTO = Field.line("photo", "Picture file");

  public static final Field<Choice<String>> OF_MARK = Field.name("mark", "Mark").ifKnown();

  public static final Field<Choice<String>> OF_REPORT = Field.name("report", "Report").ifKnown();

  public static final Field<Choice<String>> OF_SHEET = Field.name("sheet", "Place").ifKnown();

  public static final Field<Choice<View>> VIEW = Field.word("view", "It shows", View.class);

  public static final Field<Choice<String>> TAKEN = Field.date("taken", "Taken on").ifKnown();

  public static final Field<Choice<String>> CAPTION = Field.line("caption", "Caption").ifKnown();

  /** Written with the first document that shows it; a picture changed since is refused. */
  public static final Field<Choice<String>> PHOTO_HASH =
      Field.line("sha256", "SHA-256 of it, written by us").ifKnown();

  /** A picture each, of a mark, a report or a place. */
  public static final List<Field<?>> PHOTOS =
      List.of(PHOTO, OF_MARK, OF_REPORT, OF_SHEET, VIEW, TAKEN, CAPTION, PHOTO_HASH);

  private OrderFields() {}
}
