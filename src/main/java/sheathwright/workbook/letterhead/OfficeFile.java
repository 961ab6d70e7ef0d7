package sheathwright.workbook.letterhead;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.util.CellRangeAddress;
import org.w3c.dom.Element;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.workbook.audit.PackedParts;

/** An office's own workbook, as it is packed. */
final class OfficeFile {

  static final String WORKBOOK = "xl/workbook.xml";

  /** Whole text of a cell that is filled. */
  private static final Pattern BLANK = Pattern.compile("\\s*\\{\\s*([^{}]*?)\\s*}\\s*");

  private static final Pattern BRACES = Pattern.compile("\\{[^{}]*}");

  /** Parts that run or fetch something when a program opens the file. */
  private static final Map<String, String> RUNNING =
      Map.of(
          "vbaproject", "macros",
          "macrosheets/", "macros",
          "externallinks/", "links to other workbooks",
          "connections.xml", "connections to data elsewhere",
          "querytables/", "connections to data elsewhere",
          "activex/", "controls that run programs");

  private final String file;
  private final Map<String, byte[]> parts;
  private final Map<String, Sheet> sheets = new LinkedHashMap<>();
  private final List<Blank> blanks = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  /** A sheet of it. */
  record Sheet(String name, String part, Element root) {}

  /** A cell whose whole text is a word in braces. */
  record Blank(Sheet sheet, Cell cell, String word) {}

  private OfficeFile(String file, Map<String, byte[]> parts) {
    this.file = file;
    this.parts = parts;
  }

  /**
   * The workbook in a file's bytes.
   *
   * @param file its name, for messages
   * @throws ProblemsException if it cannot be read as one
   */
  static OfficeFile of(String file, byte[] bytes) {
    OfficeFile office = new OfficeFile(file, new LinkedHashMap<>(PackedParts.of(file, bytes)));
    Element workbook = office.root(WORKBOOK);
    if (!Xml.MAIN.equals(workbook.getNamespaceURI())) {
      throw new ProblemsException(
          List.of(
              office.problem(
                  "it is in the strict form of the format; save it as an ordinary .xlsx workbook")));
    }
    try {
      office.refuseWhatRuns();
      office.readSheets(workbook);
    } catch (IllegalArgumentException unreadable) {
      throw office.damaged(); // a number, an address or a reference in it is none
    }
    Xml.child(workbook, "workbookPr")
        .map(settings -> settings.getAttribute("date1904"))
        .filter(says -> says.equals("1") || says.equals("true"))
        .ifPresent(
            counted ->
                office.problems.add(
                    office.problem(
                        "it counts days from 1904, and our documents from 1900; turn the 1904 date system off and look its dates over")));
    return office;
  }

  private void refuseWhatRuns() {
    for (String part : parts.keySet()) {
      String small = part.toLowerCase(Locale.ROOT);
      RUNNING.forEach(
          (word, what) -> {
            if (small.contains(word)) {
              problems.add(problem("it has %s (%s); save it without them".formatted(what, part)));
            }
          });
      if (!small.endsWith(".rels")) {
        Relation.of(file, parts, part).stream()
            .filter(link -> link.isOutside() && !link.is("hyperlink"))
            .filter(link -> !small.contains("externallinks/"))
            .forEach(
                link ->
                    problems.add(
                        problem(
                            "%s is linked to %s, which no reader has; put it into the workbook itself"
                                .formatted(part, link.target()))));
      }
    }
  }

  private void readSheets(Element workbook) {
    Map<String, String> byId = new LinkedHashMap<>();
    List<Relation> relations = Relation.of(file, parts, WORKBOOK);
    relations.forEach(each -> byId.put(each.id(), each.target()));
    Texts texts = texts(relations);
    for (Element each :
        Xml.children(Xml.child(workbook, "sheets").orElseThrow(() -> damaged()), "sheet")) {
      String part = byId.remove(each.getAttributeNS(Xml.RELATIONS, "id")); // no part is two tabs
      if (part == null || !parts.containsKey(part)) {
        throw damaged();
      }
      Sheet sheet = new Sheet(each.getAttribute("name"), part, root(part));
      sheets.put(sheet.name(), sheet);
      if (Xml.child(sheet.root(), "sheetData").isPresent()) {
        readCells(sheet, texts);
        refuseHeadings(sheet);
      }
      readElsewhere(sheet);
    }
    if (blanks.isEmpty() && problems.isEmpty()) {
      problems.add(
          problem(
              "no cell of it is a word in braces, such as {customer}, so nothing could be filled in"));
    }
  }

  private Texts texts(List<Relation> relations) {
    return relations.stream()
        .filter(each -> each.is("sharedStrings"))
        .findFirst()
        .map(each -> Texts.of(root(each.target())))
        .orElse(new Texts(List.of()));
  }

  private void readCells(Sheet sheet, Texts texts) {
    for (Cell cell : Cell.of(sheet.root())) {
      String text = texts.of(cell);
      Matcher blank = BLANK.matcher(text);
      if (blank.matches()) {
        blanks.add(new Blank(sheet, cell, blank.group(1)));
      } else if (BRACES.matcher(text).find()) {
        problems.add(
            problem(
                sheet,
                cell,
                "\"%s\": braces stand inside other text; write the words in the cell beside it"
                    .formatted(text)));
      }
    }
  }

  /** The heading of a table's column must stay a text (ECMA-376, part 1, 18.5.1.3). */
  private void refuseHeadings(Sheet sheet) {
    for (Relation each : Relation.of(file, parts, sheet.part())) {
      if (each.is("table") && parts.containsKey(each.target())) {
        CellRangeAddress table = CellRangeAddress.valueOf(root(each.target()).getAttribute("ref"));
        blanks.stream()
            .filter(blank -> blank.sheet().equals(sheet))
            .filter(blank -> blank.cell().row() == table.getFirstRow())
            .filter(blank -> table.isInRange(blank.cell().row(), blank.cell().column()))
            .forEach(
                blank ->
                    problems.add(
                        problem(
                            sheet,
                            blank.cell(),
                            "{%s} stands in the heading of a table, which must be a text; write it into a cell outside"
                                .formatted(blank.word()))));
      }
    }
  }

  /** Text boxes, headers and footers are no cells. */
  private void readElsewhere(Sheet sheet) {
    List<Element> elsewhere = new ArrayList<>();
    Xml.child(sheet.root(), "headerFooter").map(Xml::children).ifPresent(elsewhere::addAll);
    Relation.of(file, parts, sheet.part()).stream()
        .filter(each -> each.is("drawing") && parts.containsKey(each.target()))
        .forEach(each -> elsewhere.addAll(Xml.all(root(each.target()), "t")));
    for (Element each : elsewhere) {
      if (BRACES.matcher(each.getTextContent()).find()) {
        problems.add(
            problem(
                "tab %s: \"%s\" stands in a text box, a header or a footer; words are filled into cells only"
                    .formatted(sheet.name(), each.getTextContent())));
      }
    }
  }

  ProblemsException damaged() {
    return new ProblemsException(List.of(problem("it is damaged; save it anew as .xlsx")));
  }

  Problem problem(String message) {
    return new Problem(file, 0, "", message);
  }

  /** What is wrong with a cell. */
  Problem problem(Sheet sheet, Cell cell, String message) {
    return new Problem(file, 0, "", message, sheet.name() + "!" + cell.address());
  }

  String file() {
    return file;
  }

  /** Its parts by name, which may be changed. */
  Map<String, byte[]> parts() {
    return parts;
  }

  Element root(String part) {
    byte[] bytes = parts.get(part);
    if (bytes == null) {
      throw damaged();
    }
    return Xml.root(file, bytes);
  }

  List<Sheet> sheets() {
    return List.copyOf(sheets.values());
  }

  List<Blank> blanks() {
    return blanks;
  }

  /** What is wrong with it, whatever document it is for. */
  List<Problem> problems() {
    return problems;
  }

  /** Puts a part in, or another in its place. */
  void put(String part, Element root) {
    parts.put(part, Xml.bytes(root));
  }

  void put(String part, String text) {
    parts.put(part, text.getBytes(StandardCharsets.UTF_8));
  }
}
