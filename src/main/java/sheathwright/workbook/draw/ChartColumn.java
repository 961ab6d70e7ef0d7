package sheathwright.workbook.draw;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import sheathwright.figure.Figure;
import sheathwright.figure.Lengths;
import sheathwright.figure.Traced;
import sheathwright.workbook.book.Listing;
import sheathwright.workbook.part.ChartCells;

/**
 * What a chart draws of a list: some lines of a column. The chart points at the cells, and holds
 * what the library put into them, so that nothing is worked out again.
 *
 * @param listing the list, on whatever tab
 * @param first its first line to draw, from 0
 * @param last its last
 * @param column counted from 0
 */
record ChartColumn(Listing listing, int first, int last, int column) {

  ChartCells words() {
    return new ChartCells(cells(), cellsDrawn().stream().map(Traced::plain).toList());
  }

  ChartCells numbers() {
    return new ChartCells(cells(), values().stream().map(String::valueOf).toList());
  }

  /** The numbers themselves. */
  List<Double> values() {
    return cellsDrawn().stream().map(value -> ((Figure<?>) value).value()).toList();
  }

  /** From its least to its most. */
  String span() {
    DoubleSummaryStatistics all =
        values().stream().mapToDouble(Double::doubleValue).summaryStatistics();
    return "from %s to %s"
        .formatted(Lengths.inInches(all.getMin()), Lengths.inInches(all.getMax()));
  }

  private List<Traced> cellsDrawn() {
    return listing.roll().rows().subList(first, last + 1).stream()
        .map(row -> row.get(column))
        .toList();
  }

  private String cells() {
    int top = listing.firstLine();
    return new CellRangeAddress(top + first, top + last, column, column)
        .formatAsString(listing.tab().name(), true);
  }
}
