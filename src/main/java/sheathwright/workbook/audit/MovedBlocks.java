package sheathwright.workbook.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Blocks of cells that were cut and put elsewhere on their tab. Each is told once; the workbook
 * with each block where it was, its formulas pointing where they would, is held against what was
 * written cell by cell.
 */
final class MovedBlocks {

  /** A single cell that stands elsewhere is told as one that was emptied and one that is new. */
  private static final int LEAST = 2;

  private record At(int row, int column) {}

  private final Reading was;
  private final List<Finding> findings = new ArrayList<>();
  private Reading now;

  /**
   * Looks for them.
   *
   * @param tabs what each tab that was written is called now
   */
  MovedBlocks(Reading was, Reading now, Map<String, String> tabs) {
    this.was = was;
    this.now = now;
    tabs.forEach(this::look);
  }

  /** A finding for each. */
  List<Finding> findings() {
    return findings;
  }

  /** The workbook with each of them where it was. */
  Reading back() {
    return now;
  }

  private void look(String tab, String other) {
    Pane written = was.panes().get(tab);
    Optional<Block> block = block(written, now.panes().get(other));
    while (block.isPresent()) {
      Block found = block.get();
      findings.add(
          Finding.of(
              tab,
              "block",
              found.from().address(),
              found.to().address(),
              "cells were moved; what points at them points there"));
      now =
          now.moved(
              pane -> pane.name().equals(other) ? found.back(pane) : pane,
              spot -> Optional.of(found.back(spot, other)));
      block = block(written, now.panes().get(other));
    }
  }

  private Optional<Block> block(Pane written, Pane stands) {
    Alignment lines = Alignment.of(written, stands);
    Map<At, Held> left = new HashMap<>();
    Map<At, Held> before = new HashMap<>();
    written
        .rows()
        .forEach(
            (row, cells) ->
                cells.forEach(
                    (column, held) -> {
                      if (lines.now(row) >= 0) {
                        At at = new At(lines.now(row), column);
                        before.put(at, held);
                        boolean isThere = says(held).equals(says(stands.at(at.row(), column)));
                        if (!held.isOpen() && !held.isEmpty() && !isThere) {
                          left.put(at, held);
                        }
                      }
                    }));
    if (left.size() < LEAST) {
      return Optional.empty();
    }
    Map<String, List<At>> come = new HashMap<>();
    stands
        .rows()
        .forEach(
            (row, cells) ->
                cells.forEach(
                    (column, held) -> {
                      At at = new At(row, column);
                      boolean isNew =
                          !says(before.getOrDefault(at, Held.NOTHING)).equals(says(held));
                      if (isNew && !held.isEmpty()) {
                        come.computeIfAbsent(says(held), none -> new ArrayList<>()).add(at);
                      }
                    }));
    Map<At, List<At>> moves = new HashMap<>();
    left.forEach(
        (at, held) ->
            come.getOrDefault(says(held), List.of())
                .forEach(
                    there ->
                        moves
                            .computeIfAbsent(
                                new At(there.row() - at.row(), there.column() - at.column()),
                                none -> new ArrayList<>())
                            .add(at)));
    return moves.entrySet().stream()
        .filter(move -> move.getValue().size() >= LEAST)
        .max(Comparator.comparingInt(move -> move.getValue().size()))
        .map(move -> block(written.name(), move.getValue(), move.getKey()))
        .filter(block -> block.isLeftBlank(stands) && isPartOfItsColumns(block, before, left));
  }

  /** Where all of its columns stands further across, a column was put in or taken out. */
  private static boolean isPartOfItsColumns(Block block, Map<At, Held> before, Map<At, Held> left) {
    Spot from = block.from();
    return before.entrySet().stream()
        .filter(cell -> !cell.getValue().isEmpty() && !cell.getValue().isOpen())
        .map(Map.Entry::getKey)
        .filter(at -> !left.containsKey(at) && !from.covers(at.row(), from.column()))
        .anyMatch(at -> from.covers(from.row(), at.column()));
  }

  private static String says(Held held) {
    return held.isFormula() ? "=" + FormulaText.shape(held.formula()) : held.said();
  }

  private static Block block(String tab, List<At> cells, At by) {
    IntSummaryStatistics rows = cells.stream().mapToInt(At::row).summaryStatistics();
    IntSummaryStatistics columns = cells.stream().mapToInt(At::column).summaryStatistics();
    Spot from = new Spot(tab, rows.getMin(), columns.getMin(), rows.getMax(), columns.getMax());
    return new Block(from, from.moved(by.row(), by.column()));
  }

  /**
   * Cells that were moved together.
   *
   * @param from where they were
   * @param to where they are
   */
  private record Block(Spot from, Spot to) {

    boolean isLeftBlank(Pane pane) {
      for (int row = from.row(); row <= from.lastRow(); row++) {
        for (int column = from.column(); column <= from.lastColumn(); column++) {
          if (!to.covers(row, column) && !pane.at(row, column).isEmpty()) {
            return false;
          }
        }
      }
      return true;
    }

    Pane back(Pane pane) {
      Pane back = pane.like();
      pane.rows()
          .forEach(
              (row, cells) ->
                  cells.forEach(
                      (column, held) -> {
                        if (to.covers(row, column)) {
                          back.put(
                              row - to.row() + from.row(),
                              column - to.column() + from.column(),
                              held);
                        } else if (!from.covers(row, column)) {
                          back.put(row, column, held);
                        }
                      }));
      return back;
    }

    Spot back(Spot spot, String tab) {
      boolean isMoved =
          spot.sheet().equals(tab)
              && to.covers(spot.row(), spot.column())
              && to.covers(spot.lastRow(), spot.lastColumn());
      return isMoved ? spot.moved(from.row() - to.row(), from.column() - to.column()) : spot;
    }
  }
}
