package sheathwright.job.life;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.job.table.Field;
import sheathwright.job.table.Moment;
import sheathwright.job.table.Row;

/** The columns of the table of what both sides agreed since, when they talked again. */
public final class TalkFields {

  /** The row of what was agreed beyond which both sides talk again. */
  public static final String REOPEN = "reopen";

  /** The row of what needs no further yes. */
  public static final String PRE_AGREED = "pre-agreed";

  public static final Field<Choice<String>> BY =
      Field.line(OrderFields.APPROVED_BY.name(), "Who said yes");

  public static final Field<Choice<ApprovedHow>> HOW =
      Field.word(OrderFields.APPROVED_HOW.name(), "How", ApprovedHow.class);

  public static final Field<Choice<String>> ON = Field.moment(OrderFields.APPROVED_ON.name(), "On");

  /** What a limit or a price is from a day on, a line each. */
  public static final List<Field<?>> TALKS =
      List.of(AgreedFields.ITEM, AgreedFields.MOST, AgreedFields.USD.ifKnown(), BY, HOW, ON);

  private TalkFields() {}

  /** The talks in the order of their days. */
  public static List<Row> inOrder(List<Row> talks) {
    return talks.stream()
        .filter(row -> row.read(ON).isPresent())
        .sorted(Comparator.comparing((Row row) -> Moment.read(row.of(ON).value()).toString()))
        .toList();
  }

  /** The talks about one thing, in the order of their days. */
  public static List<Row> about(List<Row> talks, String item) {
    return inOrder(talks).stream()
        .filter(
            row -> row.read(AgreedFields.ITEM).filter(it -> it.value().equals(item)).isPresent())
        .toList();
  }

  /** What was said last of one thing; nothing where nobody has talked about it. */
  public static <F extends Figure<?>> Optional<F> last(
      List<Row> talks, String item, Field<F> field) {
    return about(talks, item).stream()
        .flatMap(row -> row.read(field).stream())
        .reduce((earlier, later) -> later);
  }
}
