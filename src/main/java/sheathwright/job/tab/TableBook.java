package sheathwright.job.tab;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;

/** A workbook whose tabs hold tables. */
public final class TableBook {

  private static final String BOOK = "xl/workbook.xml";
  private static final String TARGETS = "xl/_rels/workbook.xml.rels";

  private final WorkbookParts parts;
  private final Map<String, String> sheets = new LinkedHashMap<>();
  private final List<String> shared;
  private final NumberForms forms;

  private TableBook(WorkbookParts parts) {
    this.parts = parts;
    Map<String, String> targets = targets();
    boolean countsFrom1904 = false;
    PartReader book = parts.part(BOOK);
    while (book.next()) {
      if (book.begins("workbookPr")) {
        countsFrom1904 =
            book.attribute("date1904").filter(said -> said.matches("1|true")).isPresent();
      } else if (book.begins("sheet")) {
        String target = targets.getOrDefault(book.attribute("id").orElse(""), "");
        sheets.put(book.attribute("name").orElse(""), target);
      }
    }
    shared = SheetCells.shared(parts);
    forms = new NumberForms(parts, countsFrom1904);
  }

  private Map<String, String> targets() {
    Map<String, String> targets = new HashMap<>();
    PartReader part = parts.part(TARGETS);
    while (part.next()) {
      if (part.begins("Relationship")) {
        String target = part.attribute("Target").orElse("");
        targets.put(
            part.attribute("Id").orElse(""),
            target.startsWith("/") ? target.substring(1) : "xl/" + target);
      }
    }
    return targets;
  }

  /**
   * Opens a workbook.
   *
   * @throws ProblemsException if it is none, or none that may be opened
   */
  public static TableBook in(Path file) {
    WorkbookParts parts = WorkbookParts.in(file);
    try {
      return new TableBook(parts);
    } catch (NumberFormatException | IndexOutOfBoundsException damaged) {
      throw WorkbookParts.refused(parts.name(), "it is damaged; save it anew");
    }
  }

  /** What the file is called. */
  public String name() {
    return parts.name();
  }

  /** The names of its tabs. */
  public Collection<String> tabs() {
    return List.copyOf(sheets.keySet());
  }

  /**
   * The table on a tab.
   *
   * @param known what its headings may be
   * @throws ProblemsException if the tab holds none
   */
  public Optional<SheetTable> table(String tab, Collection<String> known) {
    String name = "%s, tab %s".formatted(parts.name(), tab);
    return sheet(tab, name).map(cells -> SheetTable.on(name, cells, known));
  }

  /**
   * All lines of a tab that hold anything, each with as many texts as it takes.
   *
   * @throws ProblemsException if the tab is damaged
   */
  public List<List<String>> lines(String tab) {
    List<List<String>> lines = new ArrayList<>();
    sheet(tab, parts.name())
        .ifPresent(
            cells ->
                cells
                    .lines()
                    .values()
                    .forEach(
                        line -> {
                          List<String> texts = new ArrayList<>();
                          for (int column = 0; column <= line.lastKey(); column++) {
                            texts.add(line.containsKey(column) ? line.get(column).text() : "");
                          }
                          lines.add(texts);
                        }));
    return lines;
  }

  private Optional<SheetCells> sheet(String tab, String name) {
    Optional<String> part =
        sheets.entrySet().stream()
            .filter(sheet -> sheet.getKey().strip().equalsIgnoreCase(tab))
            .map(Map.Entry::getValue)
            .findFirst();
    try {
      return part.map(at -> new SheetCells(parts.part(at), shared, forms, name));
    } catch (NumberFormatException | IndexOutOfBoundsException damaged) {
      throw new ProblemsException(List.of(new Problem(name, 0, "", "it is damaged; save it anew")));
    }
  }
}
