package sheathwright.workbook.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;

/** A tab as it was read: its cells, and what else of it can hide or unlock something. */
final class Pane {

  private final String name;
  private final TreeMap<Integer, TreeMap<Integer, Held>> rows = new TreeMap<>();
  private final List<Rule> rules = new ArrayList<>();
  private final TreeSet<Integer> hiddenRows = new TreeSet<>();
  private final TreeSet<Integer> hiddenColumns = new TreeSet<>();
  private boolean isHidden;
  private boolean isProtected;
  private boolean isOpen;

  /**
   * What some cells are held to.
   *
   * @param cells their address, or several with blanks between
   * @param type list, whole or decimal
   * @param first the least, or the list
   * @param second the most
   */
  record Rule(String cells, String type, String first, String second) {}

  Pane(String name) {
    this.name = name;
  }

  String name() {
    return name;
  }

  /** The cells of each line, lines and columns counted from 0. */
  TreeMap<Integer, TreeMap<Integer, Held>> rows() {
    return rows;
  }

  void put(int row, int column, Held held) {
    rows.computeIfAbsent(row, none -> new TreeMap<>()).put(column, held);
  }

  Held at(int row, int column) {
    TreeMap<Integer, Held> cells = rows.get(row);
    return cells == null ? Held.NOTHING : cells.getOrDefault(column, Held.NOTHING);
  }

  List<Rule> rules() {
    return rules;
  }

  TreeSet<Integer> hiddenRows() {
    return hiddenRows;
  }

  TreeSet<Integer> hiddenColumns() {
    return hiddenColumns;
  }

  boolean isHidden() {
    return isHidden;
  }

  boolean isProtected() {
    return isProtected;
  }

  /** Whether it has more lines than it tells of. */
  boolean isOpen() {
    return isOpen;
  }

  void hide() {
    isHidden = true;
  }

  void protect() {
    isProtected = true;
  }

  void open() {
    isOpen = true;
  }
}
