package sheathwright.workbook.audit;

import java.util.OptionalDouble;

/**
 * One thing that is not as it was written.
 *
 * @param sheet the tab; empty where the whole file is meant
 * @param cell its address there; empty where no single cell is meant
 * @param name what the cell is called; empty if it has no name
 * @param kind input, choice, formula, solved, text or number; or what else it is
 * @param was what was written
 * @param now what stands there
 * @param effect what it alone does to the total, in dollars, where that is known
 * @param words what to know about it
 */
public record Finding(
    String sheet,
    String cell,
    String name,
    String kind,
    String was,
    String now,
    OptionalDouble effect,
    Verdict verdict,
    String words) {

  /** Something about the whole file. */
  static Finding of(Verdict verdict, String kind, String now, String words) {
    return new Finding("", "", "", kind, "", now, OptionalDouble.empty(), verdict, words);
  }

  /** Something about a tab or some of its lines. */
  static Finding of(String sheet, String kind, String was, String now, String words) {
    return new Finding(
        sheet, "", "", kind, was, now, OptionalDouble.empty(), Verdict.STRUCTURE, words);
  }

  Finding with(OptionalDouble known) {
    return new Finding(sheet, cell, name, kind, was, now, known, verdict, words);
  }

  Finding with(String further) {
    String all = words.isEmpty() ? further : words + "; " + further;
    return new Finding(sheet, cell, name, kind, was, now, effect, verdict, all);
  }
}
