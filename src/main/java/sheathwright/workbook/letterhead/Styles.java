package sheathwright.workbook.letterhead;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.w3c.dom.Element;

/** The looks of our document put behind those of the office, which keep their numbers. */
final class Styles {

  /** The order in which a part has them (ECMA-376, part 1, 18.8.39). */
  private static final List<String> ORDER =
      List.of(
          "numFmts",
          "fonts",
          "fills",
          "borders",
          "cellStyleXfs",
          "cellXfs",
          "cellStyles",
          "dxfs",
          "tableStyles",
          "colors",
          "extLst");

  /** Number formats below this one are everybody's. */
  private static final int FIRST_OF_ONES_OWN = 164;

  private final Element theirs;
  private final Element ours;
  private final Map<Integer, Integer> formats = new HashMap<>();
  private int cells;
  private int changes;

  private Styles(Element theirs, Element ours) {
    this.theirs = theirs;
    this.ours = ours;
  }

  /** Puts ours behind theirs. */
  static Styles joined(Element theirs, Element ours) {
    Styles styles = new Styles(theirs, ours);
    styles.join();
    return styles;
  }

  private void join() {
    joinFormats();
    int fonts = append("fonts");
    Xml.children(section("fonts"), "font").stream()
        .skip(fonts)
        .forEach(
            font -> Xml.children(font, "scheme").forEach(font::removeChild)); // theirs is another
    int fills = append("fills");
    int borders = append("borders");
    int named = append("cellStyleXfs");
    point("cellStyleXfs", named, fonts, fills, borders, 0);
    cells = append("cellXfs");
    point("cellXfs", cells, fonts, fills, borders, named);
    changes = Xml.child(ours, "dxfs").isPresent() ? append("dxfs") : 0;
    Xml.child(theirs, "dxfs").stream()
        .flatMap(all -> Xml.children(all, "dxf").stream().skip(changes))
        .flatMap(each -> Xml.children(each, "numFmt").stream())
        .forEach(this::pointToFormat);
  }

  private void joinFormats() {
    List<Element> own =
        Xml.child(ours, "numFmts").map(all -> Xml.children(all, "numFmt")).orElse(List.of());
    if (own.isEmpty()) {
      return;
    }
    Element all = section("numFmts");
    int last =
        Xml.children(all, "numFmt").stream()
            .mapToInt(each -> Xml.number(each, "numFmtId"))
            .max()
            .orElse(0);
    int next = Math.max(FIRST_OF_ONES_OWN, last + 1);
    for (Element each : own) {
      formats.put(Xml.number(each, "numFmtId"), next);
      Element copy = copied(each);
      copy.setAttribute("numFmtId", String.valueOf(next++));
      all.appendChild(copy);
    }
    count(all);
  }

  private Element section(String name) {
    return Xml.section(theirs, name, ORDER);
  }

  private Element copied(Element each) {
    return (Element) theirs.getOwnerDocument().importNode(each, true);
  }

  /** Puts our section's elements behind theirs, and says how many theirs has. */
  private int append(String name) {
    Element all = section(name);
    int before = Xml.children(all).size();
    Xml.child(ours, name)
        .ifPresent(section -> Xml.children(section).forEach(each -> all.appendChild(copied(each))));
    count(all);
    return before;
  }

  private static void count(Element all) {
    all.setAttribute("count", String.valueOf(Xml.children(all).size()));
  }

  private void point(String name, int from, int fonts, int fills, int borders, int named) {
    for (Element each : Xml.children(section(name)).stream().skip(from).toList()) {
      pointToFormat(each);
      more(each, "fontId", fonts);
      more(each, "fillId", fills);
      more(each, "borderId", borders);
      if (each.hasAttribute("xfId")) {
        more(each, "xfId", named);
      }
    }
  }

  private void pointToFormat(Element each) {
    int format = Xml.number(each, "numFmtId");
    if (formats.containsKey(format)) {
      each.setAttribute("numFmtId", String.valueOf(formats.get(format)));
    }
  }

  static void more(Element element, String attribute, int more) {
    element.setAttribute(attribute, String.valueOf(Xml.number(element, attribute) + more));
  }

  /** Lets a sheet of ours point at the same looks in the joined part. */
  void repoint(Element sheet) {
    Xml.all(sheet, "c").forEach(cell -> more(cell, "s", cells));
    Xml.all(sheet, "row").stream()
        .filter(row -> row.hasAttribute("s"))
        .forEach(row -> more(row, "s", cells));
    Xml.all(sheet, "col").stream()
        .filter(column -> column.hasAttribute("style"))
        .forEach(column -> more(column, "style", cells));
    Xml.all(sheet, "cfRule").stream()
        .filter(rule -> rule.hasAttribute("dxfId"))
        .forEach(rule -> more(rule, "dxfId", changes));
    for (Element view : Xml.all(sheet, "sheetView")) {
      view.removeAttribute("tabSelected"); // theirs is the one that opens
    }
  }
}
