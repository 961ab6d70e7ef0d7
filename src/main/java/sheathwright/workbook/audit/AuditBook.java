package sheathwright.workbook.audit;

import java.util.List;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.file.Particulars;
import sheathwright.workbook.page.Sections;

/** What an audit found, as a workbook: in words first, then line by line. */
public final class AuditBook {

  private static final List<String> HEADINGS =
      List.of("Sheet", "Cell", "Name", "Kind", "Was", "Now", "Effect, $", "Verdict", "About it");

  private static final int EFFECT = 6;

  private AuditBook() {}

  /** The bytes of an .xlsx file. */
  public static byte[] of(Audit audit, String file) {
    Book book = new Book(Particulars.of("Audit of " + file, "What is not as it was written"));
    Tab words = Sections.titled(book.tab("In short", 60, 20, 20), file);
    words.heading("What was found");
    audit.words().forEach(words::paragraph);
    words.heading("How to read it");
    words.paragraph(
        "Each line of the next tab is one thing that is not as it was written. Its effect is what it alone does to the"
            + " total; what all of them do together stands above, and may be another sum where one rests on another.");
    words.paragraph(
        "Nothing of the file was worked out or run. Its formulas were read as text; effects are worked out from what was"
            + " written, with the changed cells set.");
    Tab rows = Sections.titled(book.tab("Line by line", 16, 7, 24, 9, 28, 28, 12, 22, 44), file);
    int head = rows.line();
    for (int column = 0; column < HEADINGS.size(); column++) {
      rows.text(
          head,
          column,
          HEADINGS.get(column),
          column == EFFECT ? Part.COLUMN_HEAD_RIGHT : Part.COLUMN_HEAD);
    }
    audit.findings().forEach(finding -> row(rows, finding));
    return book.finished();
  }

  private static void row(Tab tab, Finding finding) {
    List<String> cells =
        List.of(
            finding.sheet(),
            finding.cell(),
            finding.name(),
            finding.kind(),
            finding.was(),
            finding.now(),
            "",
            finding.verdict().words(),
            finding.words());
    int line = tab.line();
    for (int column = 0; column < cells.size(); column++) {
      tab.text(line, column, cells.get(column), Part.LISTED_TEXT);
    }
    finding.effect().ifPresent(effect -> tab.number(line, EFFECT, effect));
    tab.raiseTo(line, cells);
  }
}
