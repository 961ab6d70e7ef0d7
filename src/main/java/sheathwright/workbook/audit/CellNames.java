package sheathwright.workbook.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the cells of a workbook are called: by themselves, or as part of a list's column. */
final class CellNames {

  private final Map<String, String> single = new HashMap<>();
  private final Map<String, List<Map.Entry<Spot, String>>> columns = new HashMap<>();

  CellNames(Reading reading) {
    reading
        .names()
        .forEach(
            (name, formula) ->
                Spot.of(formula)
                    .ifPresent(
                        spot -> {
                          boolean isOfList = formula.contains(":");
                          if (!isOfList) {
                            single.putIfAbsent(key(spot.sheet(), spot.row(), spot.column()), name);
                          }
                          if (isOfList && spot.column() == spot.lastColumn()) {
                            columns
                                .computeIfAbsent(spot.sheet(), none -> new ArrayList<>())
                                .add(Map.entry(spot, name));
                          }
                        }));
  }

  private static String key(String sheet, int row, int column) {
    return sheet + "!" + row + "," + column;
  }

  /** The name of a cell, or of the column of a list that it stands in; empty if it has none. */
  String of(String sheet, int row, int column) {
    String own = single.get(key(sheet, row, column));
    return own != null ? own : column(sheet, row, column).map(Map.Entry::getValue).orElse("");
  }

  /** The column of a list that a cell stands in. */
  java.util.Optional<Map.Entry<Spot, String>> column(String sheet, int row, int column) {
    return columns.getOrDefault(sheet, List.of()).stream()
        .filter(each -> each.getKey().column() == column)
        .filter(each -> each.getKey().row() <= row && row <= each.getKey().lastRow())
        .findFirst();
  }
}
