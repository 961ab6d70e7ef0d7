package sheathwright.life.bill;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Condition;
import sheathwright.job.Estimate.Tie;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.Item;
import sheathwright.job.life.OrderFields;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;
import sheathwright.job.table.JobText;
import sheathwright.job.table.Row;
import sheathwright.job.table.TableReader;
import sheathwright.life.found.Found;

/**
 * The tables of one job's life in memory, written on as the commands do it: what was written is
 * read again from text. All of it is invented.
 */
final class Tables {

  private static final ItemHours HOURS = ItemHours.of(JobText.small().job());

  final List<Map<String, String>> agreed = new ArrayList<>();
  final List<Map<String, String>> orders = new ArrayList<>();
  final List<Map<String, String>> orderLines = new ArrayList<>();
  final List<Map<String, String>> stages = new ArrayList<>();
  final List<Map<String, String>> options = new ArrayList<>();
  final List<Found> marks = new ArrayList<>();

  /** One row under the headings of a table, its cells in their order; blanks may be left off. */
  static Map<String, String> row(List<Field<?>> fields, String... cells) {
    Map<String, String> row = new LinkedHashMap<>();
    for (int i = 0; i < cells.length; i++) {
      row.put(fields.get(i).name(), cells[i]);
    }
    return row;
  }

  Tables agreed(String... cells) {
    agreed.add(row(AgreedFields.AGREED, cells));
    return this;
  }

  Tables stage(String... cells) {
    stages.add(row(AgreedFields.STAGES, cells));
    return this;
  }

  Tables option(String... cells) {
    options.add(row(AgreedFields.OPTIONS, cells));
    return this;
  }

  Tables mark(String mark, String key, Item item, double quantity) {
    return mark(mark, key, item, quantity, "2027-06-01");
  }

  Tables mark(String mark, String key, Item item, double quantity, String on) {
    marks.add(
        new Found(mark, key, "done", "because", Optional.of(item), quantity, on, true, false));
    return this;
  }

  /** A mark that costs nothing. */
  Tables freeMark(String mark, String key, String action) {
    marks.add(
        new Found(mark, key, action, "because", Optional.empty(), 0, "2027-06-01", true, false));
    return this;
  }

  /** Somebody types the action of a mark, on a day. */
  void typeAction(String mark, String on) {
    marks.replaceAll(
        found ->
            found.mark().equals(mark)
                ? new Found(
                    mark,
                    found.key(),
                    found.action(),
                    found.reason(),
                    found.item(),
                    found.quantity(),
                    on,
                    true,
                    false,
                    true)
                : found);
  }

  void voidMark(int index) {
    Found found = marks.get(index);
    marks.set(
        index,
        new Found(
            found.mark(),
            found.key(),
            found.action(),
            found.reason(),
            found.item(),
            found.quantity(),
            found.on(),
            found.isOpened(),
            true));
  }

  /** Writes the next order, which then becomes this. */
  NextOrder order(String on, String status) {
    NextOrder next = next();
    Map<String, String> row = new LinkedHashMap<>(next.row(on));
    row.put("status", status);
    if (status.equals("approved")) {
      row.put("approved_by", "an owner");
      row.put("approved_how", "signed");
      row.put("approved_on", on);
    }
    orders.add(row);
    orderLines.addAll(next.lineRows());
    return next;
  }

  NextOrder next() {
    return NextOrder.of(accounts(), Optional.empty(), HOURS);
  }

  Agreement agreement() {
    return Agreement.of(rows("agreed", AgreedFields.AGREED, agreed));
  }

  Orders orders() {
    return Orders.of(
        rows("orders", OrderFields.ORDERS, orders),
        rows("order_lines", OrderFields.ORDER_LINES, orderLines));
  }

  Accounts accounts() {
    return Accounts.of(
        agreement(), orders(), marks, rows("options", AgreedFields.OPTIONS, options));
  }

  Invoice invoice() {
    return Invoice.of(accounts(), stageRows());
  }

  List<Row> stageRows() {
    return rows("stages", AgreedFields.STAGES, stages);
  }

  /** The rows that text in a table stands for. */
  static List<Row> rows(String table, List<Field<?>> fields, List<Map<String, String>> cells) {
    if (cells.isEmpty()) {
      return List.of();
    }
    String header = fields.stream().map(Field::name).collect(joining(","));
    String lines =
        cells.stream()
            .map(
                row ->
                    fields.stream()
                        .map(field -> "\"" + row.getOrDefault(field.name(), "") + "\"")
                        .collect(joining(",")))
            .collect(joining("\n"));
    TableReader reader = new TableReader();
    List<Row> rows = reader.rows(CsvFile.parse(table + ".csv", header + "\n" + lines), fields);
    reader.raiseProblems();
    return rows;
  }

  /** What does not hold, in words. */
  static List<String> broken(List<Tie> ties) {
    return ties.stream().filter(tie -> !holds(tie.holds())).map(Tie::what).toList();
  }

  private static boolean holds(Condition condition) {
    return condition.refusal().isEmpty() && condition.holds();
  }
}
