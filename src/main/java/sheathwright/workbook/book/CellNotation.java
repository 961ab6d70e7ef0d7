package sheathwright.workbook.book;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import org.apache.poi.ss.util.CellReference;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Notation;
import sheathwright.figure.Roll;
import sheathwright.figure.Step;
import sheathwright.figure.Traced;
import sheathwright.figure.Written;

/**
 * Operands as a cell formula writes them: a neighbor in the same row, a named cell, or the formula
 * itself.
 */
public final class CellNotation implements Notation {

  /** Stands for the number of a row; no formula holds it otherwise. */
  static final String ROW = "\u0001";

  /** Longer than this a formula is not read; decision 031. */
  private static final int LONGEST = 255;

  private static final Set<Double> WRITTEN_OUT = Set.of(0d, 1d, 2d, 12d, 100d, 144d, 2000d);

  private final BiFunction<Traced, String, Place> places;
  private final Map<Step.Guarded, Guard> guards;
  private final BiFunction<Roll, String, String> ranges;
  private final List<Traced> neighbors;
  private final String row;
  private final String ownTab;

  /** Where a guard's limits stand. */
  public record Guard(String least, String most) {}

  private CellNotation(
      BiFunction<Traced, String, Place> places,
      Map<Step.Guarded, Guard> guards,
      BiFunction<Roll, String, String> ranges,
      List<Traced> neighbors,
      String row,
      String ownTab) {
    this.places = places;
    this.guards = guards;
    this.ranges = ranges;
    this.neighbors = neighbors;
    this.row = row;
    this.ownTab = ownTab;
  }

  /**
   * For a cell that stands alone.
   *
   * @param places where each value stands as a tab sees it; null for one that stands nowhere
   */
  static CellNotation alone(
      BiFunction<Traced, String, Place> places,
      Map<Step.Guarded, Guard> guards,
      BiFunction<Roll, String, String> ranges) {
    return new CellNotation(places, guards, ranges, List.of(), "", "");
  }

  /** For a cell of a list, whose row these are from the left. */
  CellNotation inRow(int rowOfList, List<Traced> neighbors) {
    return new CellNotation(
        places, guards, ranges, neighbors, String.valueOf(rowOfList + 1), ownTab);
  }

  /**
   * For every row of a list at once: a row's formula is this one with the row's number at each
   * {@link #ROW}.
   *
   * @param neighbors the first row, from the left
   * @param guardsOfRow where the limits of the row's guarded arguments stand
   */
  public CellNotation inEveryRow(List<Traced> neighbors, Map<Step.Guarded, Guard> guardsOfRow) {
    return new CellNotation(places, guardsOfRow, ranges, neighbors, ROW, ownTab);
  }

  /** The same for a cell of a tab, which points at its neighbors there without naming the tab. */
  CellNotation on(String tab) {
    return new CellNotation(places, guards, ranges, neighbors, row, tab);
  }

  /** The formula that this step is; one that is too long in names points at addresses. */
  public String formula(Traced traced) {
    String named = traced.step().cell(this).text();
    return named.length() <= LONGEST ? named : traced.step().cell(nameless()).text();
  }

  private CellNotation nameless() {
    BiFunction<Traced, String, Place> addresses =
        (value, tab) -> {
          Place place = places.apply(value, tab);
          return place == null ? null : place.nameless();
        };
    return new CellNotation(addresses, guards, ranges, neighbors, row, ownTab);
  }

  /** The first column of a row that holds a value; less than 0 if none does. */
  public static int column(List<Traced> row, Traced value) {
    for (int column = 0; column < row.size(); column++) {
      if (row.get(column) == value) {
        return column;
      }
    }
    return -1;
  }

  @Override
  public Written of(Traced operand) {
    int column = column(neighbors, operand);
    if (column >= 0) {
      return Written.whole(CellReference.convertNumToColString(column) + row);
    }
    Place place = places.apply(operand, ownTab);
    if (place != null) {
      return Written.whole(place.referenceFrom(ownTab));
    }
    if (operand.step().isGiven()) {
      boolean isText =
          operand instanceof Choice<?> || operand instanceof Figure<?> number && number.isAbsent();
      return Written.whole(isText ? quoted(operand.shown()) : operand.plain());
    }
    return operand.step().cell(this);
  }

  @Override
  public String range(Roll roll, String column) {
    return ranges.apply(roll, column);
  }

  @Override
  public String least(Step.Guarded guard) {
    return guards.get(guard).least();
  }

  @Override
  public String most(Step.Guarded guard) {
    return guards.get(guard).most();
  }

  /** Whether a formula writes this value out, instead of pointing at a cell that holds it. */
  static boolean isWrittenOut(Traced traced) {
    return traced.step().isLiteral()
        && (!(traced instanceof Figure<?> figure)
            || figure.isAbsent()
            || WRITTEN_OUT.contains(figure.value()));
  }

  private static String quoted(String text) {
    return "\"" + text.replace("\"", "\"\"") + "\"";
  }
}
