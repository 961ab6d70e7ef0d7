package sheathwright.workbook.letterhead;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.poi.ss.util.CellReference;
import org.w3c.dom.Element;
import sheathwright.workbook.audit.PackedParts;
import sheathwright.workbook.draw.Drawing;

/** A document of ours, whose named cells a letterhead shows. */
final class Ours {

  private static final String NAME = "our document";

  private final Map<String, byte[]> parts;
  private final Map<String, String> sheets = new LinkedHashMap<>();
  private final Map<String, Area> names = new LinkedHashMap<>();
  private final Map<String, Map<String, Cell>> cells = new HashMap<>();
  private final Texts texts;

  /** Where a name points: one cell or the lines of one column. */
  private record Area(String sheet, int row, int column, int lines) {}

  /** A result as a cell holds it. */
  record Result(String type, String value) {}

  /**
   * What a cell of a letterhead shows of the document.
   *
   * @param formula that points there
   * @param result what it comes to
   */
  record Shown(String formula, Result result) {}

  Ours(byte[] bytes) {
    parts = PackedParts.of(NAME, bytes);
    Map<String, String> byId = new HashMap<>();
    relations(OfficeFile.WORKBOOK).forEach(each -> byId.put(each.id(), each.target()));
    Element workbook = root(OfficeFile.WORKBOOK);
    for (Element each : Xml.children(Xml.child(workbook, "sheets").orElseThrow(), "sheet")) {
      sheets.put(each.getAttribute("name"), byId.get(each.getAttributeNS(Xml.RELATIONS, "id")));
    }
    Xml.child(workbook, "definedNames").stream()
        .flatMap(all -> Xml.children(all, "definedName").stream())
        .filter(each -> !each.hasAttribute("localSheetId"))
        .forEach(each -> names.put(each.getAttribute("name"), area(each.getTextContent())));
    texts = Texts.of(root(textsPart()));
  }

  private static Area area(String points) {
    String[] ends = points.substring(points.lastIndexOf('!') + 1).split(":");
    CellReference first = new CellReference(points.split(":")[0]);
    CellReference last = new CellReference(ends[ends.length - 1]);
    return new Area(
        first.getSheetName(), first.getRow(), first.getCol(), last.getRow() - first.getRow() + 1);
  }

  Map<String, byte[]> parts() {
    return parts;
  }

  Element root(String part) {
    return Xml.root(NAME, parts.get(part));
  }

  List<Relation> relations(String part) {
    return Relation.of(NAME, parts, part);
  }

  /** The part of what a document has one of. */
  String part(String kind) {
    return relations(OfficeFile.WORKBOOK).stream()
        .filter(each -> each.is(kind))
        .findFirst()
        .orElseThrow()
        .target();
  }

  private String textsPart() {
    return part("sharedStrings");
  }

  /** Its sheets' parts, by name. */
  Map<String, String> sheets() {
    return sheets;
  }

  /** What its cells and lists are called. */
  Set<String> names() {
    return names.keySet();
  }

  /** How many lines a word has, on however many sheets they stand; none, if it is not there. */
  int lines(Word word) {
    return named(word).stream().mapToInt(name -> names.get(name).lines()).sum();
  }

  /** What the cells of a word are called, part by part. */
  private List<String> named(Word word) {
    return IntStream.iterate(1, part -> part + 1)
        .mapToObj(word::name)
        .takeWhile(names::containsKey)
        .limit(word.kind() == Word.Kind.LIST ? Long.MAX_VALUE : 1)
        .toList();
  }

  /** What stands in a line of a word; nothing, if that is empty or the list ends before. */
  Optional<Shown> shown(Word word, int line) {
    int within = line;
    for (String name : named(word)) {
      Area area = names.get(name);
      if (within < area.lines()) {
        String formula =
            word.kind() == Word.Kind.LIST ? "INDEX(%s,%s)".formatted(name, within + 1) : name;
        return result(area, within).map(result -> new Shown(formula, result));
      }
      within -= area.lines();
    }
    return Optional.empty();
  }

  private Optional<Result> result(Area area, int line) {
    return Optional.ofNullable(cells(area.sheet()).get(key(area.row() + line, area.column())))
        .map(this::result)
        .filter(result -> !result.value().isEmpty());
  }

  private Result result(Cell cell) {
    String type = cell.element().getAttribute("t");
    return switch (type) {
      case "s", "inlineStr" -> new Result("str", texts.of(cell));
      case "" -> new Result("n", Texts.value(cell.element()));
      default -> new Result(type, Texts.value(cell.element()));
    };
  }

  private Map<String, Cell> cells(String sheet) {
    return cells.computeIfAbsent(
        sheet,
        name -> {
          Map<String, Cell> all = new HashMap<>();
          Cell.of(root(sheets.get(name)))
              .forEach(cell -> all.put(key(cell.row(), cell.column()), cell));
          return all;
        });
  }

  /**
   * Something that is drawn on its tabs.
   *
   * @param word by which a letterhead asks for it
   * @param part the part that it is drawn in
   * @param shape what is drawn
   */
  record Drawn(String word, String part, Element shape) {}

  /** All maps and charts on its tabs, each by the word that asks for it. */
  List<Drawn> drawings() {
    List<Drawn> all = new ArrayList<>();
    for (String sheet : sheets.values()) {
      for (Relation each : relations(sheet)) {
        if (each.is("drawing")) {
          Xml.children(root(each.target()))
              .forEach(anchor -> drawing(each.target(), anchor).ifPresent(all::add));
        }
      }
    }
    return all;
  }

  private static Optional<Drawn> drawing(String part, Element anchor) {
    return Xml.child(anchor, "graphicFrame")
        .or(() -> Xml.child(anchor, "grpSp"))
        .flatMap(
            shape ->
                Drawing.asked(Xml.all(shape, "cNvPr").get(0).getAttribute("name"))
                    .map(word -> new Drawn(word, part, shape)));
  }

  private static String key(int row, int column) {
    return row + " " + column;
  }
}
