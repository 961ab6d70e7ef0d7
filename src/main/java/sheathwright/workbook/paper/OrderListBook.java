package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.price.SupplyFields;
import sheathwright.life.found.FoundWork;
import sheathwright.life.supply.Supply;
import sheathwright.workbook.book.Letter;
import sheathwright.workbook.page.Sections;
import sheathwright.workbook.told.Sheaf;
import sheathwright.workbook.told.Told;

/** What is ordered for a job, as a supplier reads it: no price, and no word of what it is for. */
public final class OrderListBook {

  private static final int[] WIDTHS = {60, 24, 16};

  private final Estimate estimate;
  private final Supply supply;
  private final Paper paper;

  private OrderListBook(Estimate estimate) {
    this.estimate = estimate;
    supply = new Supply(estimate, FoundWork.of(estimate).quantities());
    paper = new Paper(estimate, "For the supplier, without prices");
  }

  /** The list of a job as it stands. */
  public static OrderListBook of(Estimate estimate) {
    return new OrderListBook(estimate);
  }

  /**
   * The bytes of an .xlsx file.
   *
   * @throws sheathwright.job.table.ProblemsException if a cell of it would hold no value
   */
  public byte[] bytes() {
    return paper.bytes(this::pages);
  }

  private void pages() {
    Job job = estimate.job();
    Sheaf sheaf = paper.sheaf("Order list", WIDTHS);
    sheaf.tab().heading("For");
    Paper.fact(sheaf.tab(), "Ordered by", job.fact(JobFields.PREPARED_BY).value());
    Paper.fact(sheaf.tab(), "For the job", job.fact(JobFields.JOB_NAME).value());
    Paper.fact(
        sheaf.tab(),
        "Deliver to",
        job.knows(SupplyFields.DELIVER_TO)
            ? job.fact(SupplyFields.DELIVER_TO).value()
            : job.fact(JobFields.SITE).value());
    if (job.knows(SupplyFields.RETURNS)) {
      Paper.fact(sheaf.tab(), "What comes back", job.fact(SupplyFields.RETURNS).value());
    }
    list(sheaf, "ordered", "What we order", lines(supply.order()));
    supply
        .waiting()
        .ifPresent(waiting -> list(sheaf, "waiting", "Not ordered yet", lines(waiting)));
    sheaf.keep(90);
    sheaf.tab().skip(1);
    Letter signed = Letter.on(sheaf.tab());
    signed.signature("Ordered, date");
    signed.signature("Taken, date");
  }

  /** Something to buy. */
  private record Line(String what, String sold, Figure<?> many) {}

  private static void list(Sheaf sheaf, String name, String heading, List<Line> lines) {
    sheaf.list(
        heading,
        lines,
        (some, part) ->
            Roll.of(
                Sheaf.named(name, part),
                heading,
                some,
                Paper.<Line>words("what", Line::what),
                Paper.words("sold", Line::sold),
                Roll.column("many", Line::many)),
        List.of("What", "Sold as", "How many"),
        Sections.units(null, null, Units.PIECE));
  }

  /** The lines of which somebody needs any. */
  private static List<Line> lines(Roll order) {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < order.rows().size(); i++) {
      Traced many = order.cellsOf("to_buy").get(i);
      if (many.refusal().isEmpty() && many instanceof Figure<?> count && count.value() > 0) {
        lines.add(
            new Line(
                order.cellsOf("what").get(i).plain(),
                order.cellsOf("sold").get(i).plain(),
                Told.of("many", count)));
      }
    }
    return lines;
  }
}
