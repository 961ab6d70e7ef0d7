package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sheathwright.figure.Choice;
import sheathwright.figure.Traced;
import sheathwright.framing.stop.StopFinding;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.JobTable;
import sheathwright.job.life.InspectionFields;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.View;
import sheathwright.job.site.Site;
import sheathwright.job.site.SiteFields;
import sheathwright.job.table.Field;
import sheathwright.job.table.Moment;
import sheathwright.job.table.Row;
import sheathwright.workbook.book.Letter;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.told.Photos;
import sheathwright.workbook.told.Sheaf;

/**
 * What a building official asks of an open deck: what the code wants, what was looked at and what
 * that showed, what nobody looked at; the planes with their places, labels and stamps. No prices.
 */
public final class InspectionRecordBook {

  private static final int[] WIDTHS = {28, 22, 24, 24, 14, 15, 9};

  /** What an official wants to see himself. */
  private static final Set<View> SHOWN = EnumSet.of(View.STAMP, View.NAILS, View.METER);

  private final Estimate estimate;
  private final Job job;
  private final Photos photos;
  private final Paper paper;

  private InspectionRecordBook(Estimate estimate, Photos photos) {
    this.estimate = estimate;
    this.photos = photos;
    job = estimate.job();
    paper = new Paper(estimate, "For the building official, without prices");
  }

  /** The record of a deck that lies open. */
  public static InspectionRecordBook of(Estimate estimate, Photos photos) {
    return new InspectionRecordBook(estimate, photos);
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
    Sheaf sheaf = paper.sheaf("Inspection record", WIDTHS);
    house(sheaf.tab());
    asked(sheaf);
    looked(sheaf);
    framing(sheaf);
    notChecked(sheaf);
    sheaf.keep(110);
    sheaf.tab().skip(1);
    Letter signed = Letter.on(sheaf.tab());
    signed.signature("Contractor, date");
    signed.signature("Building official, date");
    DeckPictures pictures = new DeckPictures(paper, estimate, photos);
    pictures.everyPlane();
    pictures.photographs(
        List.of(), photos.there().stream().filter(each -> SHOWN.contains(each.view())).toList());
  }

  private void house(Tab tab) {
    tab.heading("The house");
    for (Field<Choice<String>> fact :
        List.of(JobFields.SITE, JobFields.CUSTOMER, JobFields.JOB_NAME, JobFields.PREPARED_BY)) {
      Paper.fact(tab, fact.label(), job.fact(fact).value());
    }
    Paper.fact(
        tab,
        "Code and edition",
        job.knows(SiteFields.CODE)
            ? Spoken.word(job.fact(SiteFields.CODE).plain())
            : "nobody said");
    Paper.fact(
        tab,
        "Permit",
        job.fact(JobFields.PERMIT).value() > 0
            ? "applied for; number and date: ____________________"
            : "none is in the price; number and date, if there is one: ____________________");
    if (job.knows(LifeFields.OPENED_ON)) {
      Paper.fact(tab, "Opened", Moment.spoken(job.fact(LifeFields.OPENED_ON).value()));
    }
  }

  private void asked(Sheaf sheaf) {
    List<List<String>> rows = new ArrayList<>();
    for (Site.Inspected item : items()) {
      rows.add(List.of(item.what(), Spoken.of(item.value()), item.rule()));
    }
    if (!rows.isEmpty()) {
      Paper.table(
          sheaf,
          "asked",
          "What is asked for",
          List.of("What", "Required", "How it is meant"),
          rows);
    }
  }

  private List<Site.Inspected> items() {
    return estimate.site().inspected().stream()
        .filter(item -> item.value().refusal().isEmpty())
        .toList();
  }

  private void looked(Sheaf sheaf) {
    List<List<String>> rows =
        job.lines(JobTable.INSPECTIONS).stream().map(InspectionRecordBook::line).toList();
    if (rows.isEmpty()) {
      sheaf.heading("What was looked at");
      sheaf.paragraph("Nothing is in the record yet.");
      return;
    }
    Paper.table(
        sheaf,
        "looked",
        "What was looked at",
        List.of("What", "Required", "Found", "Evidence", "By", "On", "Result"),
        rows);
  }

  private static List<String> line(Row row) {
    String unit = said(row, InspectionFields.UNIT);
    String required =
        Stream.of(
                row.has(InspectionFields.SENSE)
                    ? row.of(InspectionFields.SENSE).plain().replace('-', ' ')
                    : "",
                measured(said(row, InspectionFields.REQUIRED), unit))
            .filter(words -> !words.isEmpty())
            .collect(Collectors.joining(" "));
    String code = said(row, InspectionFields.CODE);
    return List.of(
        said(row, InspectionFields.WHAT),
        code.isEmpty() ? required : required + "; " + code,
        measured(said(row, InspectionFields.FOUND), unit),
        said(row, InspectionFields.EVIDENCE),
        said(row, InspectionFields.BY),
        Moment.spoken(said(row, InspectionFields.ON)),
        row.has(InspectionFields.RESULT) ? row.of(InspectionFields.RESULT).plain() : "open");
  }

  private static String measured(String number, String unit) {
    return number.isEmpty() || unit.isEmpty() ? number : Spoken.of(number, unit);
  }

  private static String said(Row row, Field<Choice<String>> field) {
    return row.has(field) ? row.of(field).plain() : "";
  }

  /** What was seen of the framing that an official decides about. */
  private void framing(Sheaf sheaf) {
    List<List<String>> rows = new ArrayList<>();
    for (List<Traced> row : estimate.framing().stops().toInspector().rows()) {
      if (!row.get(0).plain().equals(StopFinding.NOTHING.word())) {
        rows.add(
            List.of(
                row.get(0).plain().replace('-', ' '), row.get(3).plain(), "", row.get(1).plain()));
      }
    }
    if (!rows.isEmpty()) {
      Paper.table(
          sheaf,
          "stopped",
          "What was seen of the framing",
          List.of("Found", "Report", "", "What it asks for"),
          rows);
    }
  }

  /** What nobody looked at, said as plainly as what somebody did. */
  private void notChecked(Sheaf sheaf) {
    Set<String> looked =
        job.lines(JobTable.INSPECTIONS).stream()
            .map(row -> said(row, InspectionFields.WHAT).toLowerCase(Locale.ROOT))
            .collect(Collectors.toSet());
    List<String> missing =
        items().stream()
            .map(Site.Inspected::what)
            .filter(what -> !looked.contains(what.toLowerCase(Locale.ROOT)))
            .toList();
    sheaf.heading("What was not checked");
    if (!missing.isEmpty()) {
      sheaf.paragraph(
          "Asked for, and not in the list of what was looked at: "
              + String.join(", ", missing)
              + ".");
    }
    if (job.knows(JobFields.NOT_LOOKED_AT)) {
      sheaf.paragraph(
          "Before the covering was off nobody saw: "
              + job.fact(JobFields.NOT_LOOKED_AT).value()
              + ".");
    }
    long unmarked = estimate.deck().parts().stream().filter(part -> part.marks().isEmpty()).count();
    if (unmarked > 0) {
      sheaf.paragraph(
          "Where nothing is marked on the planes that follow, nothing was recorded; that says neither sound nor unsound.");
    }
  }
}
