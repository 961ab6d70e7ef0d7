package sheathwright.workbook.letterhead;

import sheathwright.workbook.told.Sheaf;

/**
 * A word that a document offers to letterheads.
 *
 * @param text as it stands between braces
 * @param kind what it stands for
 * @param rows that a plain letterhead has for it
 * @param meaning for whoever reads
 */
record Word(String text, Kind kind, int rows, String meaning) {

  /** What a word stands for. */
  enum Kind {
    /** A fact of the job, as words. */
    TOLD,
    /** One cell of the document. */
    CELL,
    /** A line of one of its lists. */
    LIST
  }

  /** What the document calls the cells; the first of them, where a list stands in parts. */
  String name() {
    return name(1);
  }

  /** What it calls the cells of a part of a list, counted from 1. */
  String name(int part) {
    return kind == Kind.LIST ? Sheaf.named(list(), part) + "_" + column() : text;
  }

  /** The list that it is a column of. */
  String list() {
    return text.substring(0, text.indexOf('.'));
  }

  private String column() {
    return text.substring(text.indexOf('.') + 1);
  }
}
