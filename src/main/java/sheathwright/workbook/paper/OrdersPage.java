package sheathwright.workbook.paper;

import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.life.OrderFields;
import sheathwright.job.table.Moment;
import sheathwright.job.table.Row;
import sheathwright.life.bill.Order;
import sheathwright.life.bill.OrderLine;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.page.Sections;

/** The change orders of a job with what became of each, and the documents that went out before. */
final class OrdersPage {

  private static final int[] WIDTHS = {32, 12, 12, 14, 36};

  private final Tab tab;
  private final Job job;

  OrdersPage(Tab tab, Job job) {
    this.tab = tab;
    this.job = job;
  }

  static Tab tab(Paper paper) {
    return paper.page("Orders and documents", WIDTHS);
  }

  void write(List<Order> orders) {
    orders.forEach(this::order);
    if (orders.isEmpty()) {
      tab.heading("Change orders");
      tab.paragraph("None was written.");
    }
    documents(job.lines(JobTable.SENT));
    List<String> declined = Declined.sentences(job);
    if (!declined.isEmpty()) {
      tab.heading("What the owner decided otherwise");
      declined.forEach(tab::paragraph);
    }
  }

  private void order(Order order) {
    tab.heading(
        "Change order %s of %s: %s"
            .formatted(order.number(), Moment.spoken(order.on()), order.status().word()));
    if (!order.approvedBy().isEmpty()) {
      tab.paragraph(
          "Approved by %s on %s, %s."
              .formatted(
                  order.approvedBy(),
                  Moment.spoken(order.approvedOn()),
                  order.approvedHow().map(how -> how.word()).orElse("")));
    }
    tab.list(
        Roll.of(
            "order_" + order.number().replaceAll("\\W", "_"),
            "the lines of that order",
            order.lines(),
            Paper.<OrderLine>words("for", OrderLine::label),
            Paper.words("unit", OrderLine::unit),
            Roll.column("quantity", OrderLine::quantity),
            Roll.column("amount_usd", OrderLine::amount),
            Paper.words("marks", line -> line.parts().text())),
        List.of("For", "Counted by", "How many", "Amount", "Marks, and how much for each"),
        Sections.units(null, null, Units.RATIO, Units.USD, null));
    tab.shown("Its sum as it was written", order.usd(), "");
  }

  private void documents(List<Row> sent) {
    tab.heading("Documents that went out before");
    if (sent.isEmpty()) {
      tab.paragraph("None is in the record.");
      return;
    }
    tab.list(
        Roll.of(
            "sent",
            "documents that went out",
            sent,
            Paper.<Row>words("document", row -> row.of(OrderFields.DOCUMENT).value()),
            Paper.words(
                "on",
                row ->
                    row.has(OrderFields.ON) ? Moment.spoken(row.of(OrderFields.ON).value()) : ""),
            Roll.column("total_usd", OrdersPage::total)),
        List.of("Document", "On", "Total"),
        Sections.units(null, null, Units.USD));
  }

  /** What stood on a document that is out of the house: nobody changes it any more. */
  private static Figure<Money> total(Row row) {
    return row.has(OrderFields.TOTAL)
        ? Figure.constant("sent_usd", row.of(OrderFields.TOTAL).value(), Units.USD, Source.GIVEN)
        : Figure.none("–", Units.USD);
  }
}
