package sheathwright.workbook.letterhead;

import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.w3c.dom.Element;

/**
 * That a part of a workbook's file points at another (ECMA-376, part 2, 6.5).
 *
 * @param id by which the part calls it
 * @param type what the other is to it
 * @param target the other's name, or an address outside
 * @param isOutside whether it is an address outside
 */
record Relation(String id, String type, String target, boolean isOutside) {

  /** Where a part's own are written. */
  static String part(String of) {
    int cut = of.lastIndexOf('/') + 1;
    return of.substring(0, cut) + "_rels/" + of.substring(cut) + ".rels";
  }

  /** Those of a part. */
  static List<Relation> of(String file, Map<String, byte[]> parts, String part) {
    byte[] written = parts.get(part(part));
    if (written == null) {
      return List.of();
    }
    List<Relation> all = new ArrayList<>();
    for (Element each : Xml.children(Xml.root(file, written))) {
      boolean isOutside = each.getAttribute("TargetMode").equals("External");
      String target = each.getAttribute("Target");
      all.add(
          new Relation(
              each.getAttribute("Id"),
              each.getAttribute("Type"),
              isOutside ? target : resolved(part, target),
              isOutside));
    }
    return all;
  }

  private static String resolved(String part, String target) {
    return URI.create("/" + part.replace(" ", "%20"))
        .resolve(target.replace(" ", "%20"))
        .getPath()
        .substring(1);
  }

  /** Whether it is of a kind, whichever edition of the standard names it. */
  boolean is(String kind) {
    return type.endsWith("/" + kind);
  }
}
