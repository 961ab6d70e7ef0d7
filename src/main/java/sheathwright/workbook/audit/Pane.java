package sheathwright.workbook.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntUnaryOperator;
import java.util.function.UnaryOperator;

/** A tab as it was read: its cells, and what else of it can hide or unlock something. */
final class Pane {

  /** So many cells of a line or a column tell which it is. */
  private static final int TOLD = 8;

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
   * @param type list, whole or decimal; none where it is a line of help alone
   * @param first the least, or the list
   * @param second the most
   */
  record Rule(String cells, String type, String first, String second) {

    /** Whether it holds the cells to nothing, and only says beside them what they are for. */
    boolean isHelpAlone() {
      return first.isEmpty();
    }
  }

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

  /** How many columns hold anything, those between counted. */
  int columns() {
    return rows.values().stream()
        .flatMap(row -> row.entrySet().stream().filter(cell -> !cell.getValue().isEmpty()))
        .mapToInt(cell -> cell.getKey() + 1)
        .max()
        .orElse(0);
  }

  /** The cells of a column, from the top. */
  TreeMap<Integer, Held> column(int column) {
    TreeMap<Integer, Held> cells = new TreeMap<>();
    rows.forEach((row, each) -> cells.put(row, each.getOrDefault(column, Held.NOTHING)));
    return cells;
  }

  /** What stands in some cells, in a line; the first of them where they are many. */
  static String told(Map<Integer, Held> cells) {
    List<String> said =
        cells.values().stream().filter(held -> !held.isEmpty()).map(Held::said).toList();
    String told = String.join(" | ", said.subList(0, Math.min(TOLD, said.size())));
    return said.size() > TOLD ? told + " | and %d more".formatted(said.size() - TOLD) : told;
  }

  /**
   * The same with its columns elsewhere.
   *
   * @param place of each column; less than 0 where it is left out
   */
  Pane across(IntUnaryOperator place) {
    Pane pane = like();
    rows.forEach(
        (row, cells) ->
            cells.forEach(
                (column, held) -> {
                  int at = place.applyAsInt(column);
                  if (at >= 0) {
                    pane.put(row, at, held);
                  }
                }));
    pane.hiddenColumns.clear();
    hiddenColumns.stream().map(place::applyAsInt).forEach(pane.hiddenColumns::add);
    pane.hiddenColumns.removeIf(column -> column < 0);
    return pane;
  }

  /** The same with other formulas. */
  Pane with(UnaryOperator<String> formulas) {
    Pane pane = like();
    rows.forEach(
        (row, cells) ->
            cells.forEach(
                (column, held) ->
                    pane.put(row, column, held.isFormula() ? held.with(formulas) : held)));
    return pane;
  }

  /** A tab like it, without its cells. */
  Pane like() {
    Pane pane = new Pane(name);
    pane.rules.addAll(rules);
    pane.hiddenRows.addAll(hiddenRows);
    pane.hiddenColumns.addAll(hiddenColumns);
    pane.isHidden = isHidden;
    pane.isProtected = isProtected;
    pane.isOpen = isOpen;
    return pane;
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
