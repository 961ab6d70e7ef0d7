package sheathwright.workbook.letterhead;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.w3c.dom.Element;
import sheathwright.workbook.part.Ooxml;
import sheathwright.workbook.part.PartFile;

/**
 * Our document's tabs put behind the office's in one file. No part of the office's is written anew
 * but those that list what a workbook has; ours get names, numbers and looks that are still free.
 */
final class Joining {

  /** The order in which a workbook's part has its own (ECMA-376, part 1, 18.2.27). */
  private static final List<String> ORDER =
      List.of(
          "sheets",
          "functionGroups",
          "externalReferences",
          "definedNames",
          "calcPr",
          "oleSize",
          "customWorkbookViews",
          "pivotCaches",
          "smartTagPr",
          "smartTagTypes",
          "webPublishing",
          "fileRecoveryPr",
          "webPublishObjects",
          "extLst");

  /** What a workbook has one of: ours goes into the office's, or stays out. */
  private static final Set<String> ONE_ONLY = Set.of("styles", "sharedStrings", "theme");

  private final OfficeFile office;
  private final Ours ours;
  private final Map<String, String> renamed = new LinkedHashMap<>();
  private final Element workbook;
  private final Element links;
  private final Element types;

  Joining(OfficeFile office, Ours ours) {
    this.office = office;
    this.ours = ours;
    workbook = office.root(OfficeFile.WORKBOOK);
    links = office.root(Relation.part(OfficeFile.WORKBOOK));
    types = office.root(PartFile.KINDS);
  }

  /** Joins them; the office's parts are then those of the whole. */
  void join() {
    forgetOrderOfCalculation();
    name();
    Styles styles = styles();
    int texts = texts();
    Set<String> sheets = new HashSet<>(ours.sheets().values());
    renamed.forEach(
        (from, to) -> {
          if (sheets.contains(from)) {
            Element sheet = ours.root(from);
            styles.repoint(sheet);
            Xml.all(sheet, "c").stream()
                .filter(cell -> cell.getAttribute("t").equals("s"))
                .forEach(cell -> retext(cell, texts));
            office.put(to, sheet);
          } else {
            office.parts().put(to, ours.parts().get(from));
          }
          relink(from, to);
        });
    Map<String, String> ids = listLinks();
    listSheets(ids);
    office.put(OfficeFile.WORKBOOK, workbook);
    office.put(Relation.part(OfficeFile.WORKBOOK), links);
    listTypes();
    office.put(PartFile.KINDS, types);
  }

  /** A note of in which order cells were worked out; every program makes it anew. */
  private void forgetOrderOfCalculation() {
    for (Relation each : Relation.of(office.file(), office.parts(), OfficeFile.WORKBOOK)) {
      if (each.is("calcChain")) {
        office.parts().remove(each.target());
        Xml.children(links).stream()
            .filter(link -> link.getAttribute("Id").equals(each.id()))
            .forEach(links::removeChild);
        Xml.children(types, "Override").stream()
            .filter(type -> type.getAttribute("PartName").equals("/" + each.target()))
            .forEach(types::removeChild);
      }
    }
  }

  /** Gives each part of ours that goes along a name that is free. */
  private void name() {
    Set<String> left = new HashSet<>();
    ours.relations(OfficeFile.WORKBOOK).stream()
        .filter(each -> ONE_ONLY.stream().anyMatch(each::is))
        .forEach(each -> left.add(each.target()));
    for (String part : ours.parts().keySet()) {
      boolean goesAlong =
          (part.startsWith("xl/") || part.startsWith("customXml/"))
              && !part.equals(OfficeFile.WORKBOOK)
              && !part.endsWith(".rels")
              && !left.contains(part);
      if (goesAlong) {
        int cut = part.lastIndexOf('/') + 1;
        String free = part.substring(0, cut) + "document_" + part.substring(cut);
        while (office.parts().containsKey(free)) {
          free = free.substring(0, cut) + "document_" + free.substring(cut);
        }
        renamed.put(part, free);
      }
    }
  }

  private Styles styles() {
    String part =
        Relation.of(office.file(), office.parts(), OfficeFile.WORKBOOK).stream()
            .filter(each -> each.is("styles"))
            .findFirst()
            .orElseThrow()
            .target();
    Element theirs = office.root(part);
    Styles styles = Styles.joined(theirs, ours.root(ours.part("styles")));
    office.put(part, theirs);
    return styles;
  }

  /** Puts our texts behind theirs, and says how many theirs are. */
  private int texts() {
    Element own = ours.root(ours.part("sharedStrings"));
    Optional<Relation> theirs =
        Relation.of(office.file(), office.parts(), OfficeFile.WORKBOOK).stream()
            .filter(each -> each.is("sharedStrings"))
            .findFirst();
    if (theirs.isEmpty()) {
      String part = "xl/sharedStrings.xml";
      office.put(part, own);
      link(Xml.RELATIONS + "/sharedStrings", part);
      type(part, Ooxml.TEXTS);
      return 0;
    }
    Element all = office.root(theirs.get().target());
    int before = Xml.children(all, "si").size();
    Element behind = Xml.child(all, "extLst").orElse(null);
    Xml.children(own, "si")
        .forEach(text -> all.insertBefore(all.getOwnerDocument().importNode(text, true), behind));
    all.removeAttribute("count"); // both may be left out, and would have to be counted anew
    all.removeAttribute("uniqueCount");
    office.put(theirs.get().target(), all);
    return before;
  }

  private static void retext(Element cell, int more) {
    Element value = Xml.child(cell, "v").orElseThrow();
    value.setTextContent(String.valueOf(Integer.parseInt(value.getTextContent()) + more));
  }

  /** A part's own links, to the parts as they are called now. */
  private void relink(String from, String to) {
    byte[] written = ours.parts().get(Relation.part(from));
    if (written == null) {
      return;
    }
    Element all = ours.root(Relation.part(from));
    List<Relation> read = ours.relations(from);
    List<Element> each = Xml.children(all);
    for (int i = 0; i < each.size(); i++) {
      if (!read.get(i).isOutside()) {
        each.get(i).setAttribute("Target", "/" + renamed.get(read.get(i).target()));
      }
    }
    office.put(Relation.part(to), all);
  }

  /** Lists what our workbook points at, and says by which id each part is called. */
  private Map<String, String> listLinks() {
    Map<String, String> ids = new HashMap<>();
    for (Relation each : ours.relations(OfficeFile.WORKBOOK)) {
      if (renamed.containsKey(each.target())) {
        ids.put(each.target(), link(each.type(), renamed.get(each.target())));
      }
    }
    return ids;
  }

  private String link(String type, String part) {
    Set<String> taken = new HashSet<>();
    Xml.children(links).forEach(each -> taken.add(each.getAttribute("Id")));
    int number = taken.size() + 1;
    while (taken.contains("rId" + number)) {
      number++;
    }
    Element link = links.getOwnerDocument().createElementNS(Ooxml.PACKAGE_LINKS, "Relationship");
    link.setAttribute("Id", "rId" + number);
    link.setAttribute("Type", type);
    link.setAttribute("Target", "/" + part);
    links.appendChild(link);
    return "rId" + number;
  }

  private void listSheets(Map<String, String> ids) {
    Element sheets = Xml.section(workbook, "sheets", ORDER);
    List<Element> theirs = Xml.children(sheets, "sheet");
    int last = theirs.stream().mapToInt(each -> Xml.number(each, "sheetId")).max().orElse(0);
    for (var each : ours.sheets().entrySet()) {
      Element sheet = Xml.made(sheets, "sheet");
      sheet.setAttribute("name", each.getKey());
      sheet.setAttribute("sheetId", String.valueOf(++last));
      sheet.setAttributeNS(Xml.RELATIONS, "r:id", ids.get(each.getValue()));
      sheets.appendChild(sheet);
    }
    Element names = Xml.section(workbook, "definedNames", ORDER);
    Xml.child(ours.root(OfficeFile.WORKBOOK), "definedNames").stream()
        .flatMap(all -> Xml.children(all, "definedName").stream())
        .forEach(
            each -> {
              Element name = (Element) workbook.getOwnerDocument().importNode(each, true);
              if (name.hasAttribute("localSheetId")) {
                Styles.more(name, "localSheetId", theirs.size());
              }
              names.appendChild(name);
            });
    Xml.section(workbook, "calcPr", ORDER).setAttribute("fullCalcOnLoad", "1");
  }

  private void listTypes() {
    Map<String, String> byPart = new HashMap<>();
    Map<String, String> byEnding = new HashMap<>();
    for (Element each : Xml.children(ours.root(PartFile.KINDS))) {
      String type = each.getAttribute("ContentType");
      if (each.getLocalName().equals("Override")) {
        byPart.put(each.getAttribute("PartName").substring(1), type);
      } else {
        byEnding.put(each.getAttribute("Extension"), type);
      }
    }
    renamed.forEach(
        (from, to) ->
            type(
                to,
                byPart.getOrDefault(
                    from, byEnding.get(from.substring(from.lastIndexOf('.') + 1)))));
  }

  private void type(String part, String type) {
    Element override = types.getOwnerDocument().createElementNS(Ooxml.PACKAGE_KINDS, "Override");
    override.setAttribute("PartName", "/" + part);
    override.setAttribute("ContentType", type);
    types.appendChild(override);
  }
}
