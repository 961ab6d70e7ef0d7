package sheathwright.workbook.paper;

import static java.util.stream.Collectors.joining;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Roll;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.life.OrderFields;
import sheathwright.job.table.Moment;
import sheathwright.job.table.Row;
import sheathwright.life.bill.AgreedSince;
import sheathwright.life.bill.Order;
import sheathwright.life.bill.OrderLine;
import sheathwright.workbook.book.Listing;
import sheathwright.workbook.page.Sections;
import sheathwright.workbook.told.Places;
import sheathwright.workbook.told.Sheaf;
import sheathwright.workbook.told.Told;

/** The change orders of a job with what became of each, and the documents that went out before. */
final class OrdersPage {

  private static final int[] WIDTHS = {36, 17, 12, 14, 44};
  private static final int AMOUNT = 3;

  private final Sheaf sheaf;
  private final Job job;
  private final Places places;
  private final Map<String, Figure<Money>> sums = new LinkedHashMap<>();

  OrdersPage(Paper paper, Job job, Places places) {
    sheaf = paper.sheaf("Orders and documents", WIDTHS);
    this.job = job;
    this.places = places;
  }

  void write(List<Order> orders, List<AgreedSince> since) {
    orders.forEach(this::order);
    if (orders.isEmpty()) {
      sheaf.heading("Change orders");
      sheaf.paragraph("None was written.");
    }
    if (!since.isEmpty()) {
      sheaf.heading("What both sides agreed since");
      since.forEach(each -> sheaf.paragraph(each.sentence()));
    }
    documents(job.lines(JobTable.SENT));
    List<String> declined = Declined.sentences(job);
    if (!declined.isEmpty()) {
      sheaf.heading("What the owner decided otherwise");
      declined.forEach(sheaf::paragraph);
    }
  }

  /** What each order comes to, by its number; known once the page is written. */
  Map<String, Figure<Money>> sums() {
    return sums;
  }

  private void order(Order order) {
    String name = "order_" + order.number().replaceAll("\\W", "_");
    String heading =
        "Change order %s of %s: %s"
            .formatted(order.number(), Moment.spoken(order.on()), order.status().word());
    List<Listing> parts =
        sheaf.list(
            heading,
            order.lines(),
            (lines, part) -> lines(Sheaf.named(name, part), lines),
            List.of(
                "For",
                "Counted in",
                "How many",
                "Amount",
                "Numbers of the marks, and how much for each"),
            Sections.units(null, null, Units.RATIO, Units.USD, null));
    Figure<Money> sum = Figure.of(0, Units.USD);
    for (Listing part : parts) {
      sum = sum.plus(part.roll().sum("amount_usd", Units.USD));
    }
    sum = sum.toCents().as(name + "_usd", Units.USD);
    sheaf.tab().listTotal("Together", sum, AMOUNT);
    sums.put(order.number(), sum);
    if (!order.approvedBy().isEmpty()) {
      sheaf.paragraph(
          "Approved by %s on %s, %s."
              .formatted(
                  order.approvedBy(),
                  Moment.spoken(order.approvedOn()),
                  order.approvedHow().map(how -> how.word()).orElse("")));
    }
  }

  private Roll lines(String name, List<OrderLine> lines) {
    return Roll.of(
        name,
        "the lines of that order",
        lines,
        Paper.<OrderLine>words("for", OrderLine::label),
        Paper.words(
            "unit",
            line ->
                line.item().map(item -> UnitWords.counted(item, line.unit())).orElse(line.unit())),
        Roll.column("quantity", line -> Told.of("quantity", line.quantity())),
        Roll.column("amount_usd", line -> Told.of("amount_usd", line.amount())),
        Paper.words("marks", this::marks));
  }

  /** How much of a line is for which mark; an option is no mark. */
  private String marks(OrderLine line) {
    return line.item().isEmpty()
        ? ""
        : line.parts().all().entrySet().stream()
            .map(
                part ->
                    "%s: %s"
                        .formatted(
                            places.called(part.getKey()), Shown.plain(part.getValue().quantity())))
            .collect(joining(", "));
  }

  private void documents(List<Row> sent) {
    if (sent.isEmpty()) {
      sheaf.heading("Documents that went out before");
      sheaf.paragraph("None is in the record.");
      return;
    }
    sheaf.list(
        "Documents that went out before",
        sent,
        (rows, part) ->
            Roll.of(
                Sheaf.named("sent", part),
                "documents that went out",
                rows,
                Paper.<Row>words("document", row -> row.of(OrderFields.DOCUMENT).value()),
                Paper.words(
                    "on",
                    row ->
                        row.has(OrderFields.ON)
                            ? Moment.spoken(row.of(OrderFields.ON).value())
                            : ""),
                Roll.column("total_usd", OrdersPage::total)),
        List.of("Document", "On", "Total"),
        Sections.units(null, null, Units.USD));
  }

  /** What stood on a document that is out of the house: nobody changes it any more. */
  private static Figure<Money> total(Row row) {
    return row.has(OrderFields.TOTAL)
        ? Told.of("sent_usd", row.of(OrderFields.TOTAL))
        : Figure.none("–", Units.USD);
  }
}
