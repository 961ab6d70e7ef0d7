package sheathwright.workbook.book;

import java.io.OutputStream;
import java.util.List;
import sheathwright.figure.Traced;

/**
 * The lines of a sheet that has more of them than anyone would hold: each goes out as text, below
 * what stands on the tab, and is forgotten.
 */
public final class LongSheet {

  private final Tab tab;
  private final SheetText text;
  private final Fit fit;
  private List<String[]> formulas = List.of();

  LongSheet(Tab tab, OutputStream out) {
    this.tab = tab;
    this.text = SheetText.holding(out);
    this.fit = new Fit(tab);
  }

  /**
   * The formulas of all further lines.
   *
   * @param ofColumns with {@link CellNotation#ROW} for the row's number; empty where values stand
   *     by themselves
   */
  public void formulas(List<String> ofColumns) {
    formulas = ofColumns.stream().map(formula -> formula.split(CellNotation.ROW, -1)).toList();
  }

  /**
   * One more line.
   *
   * @param row counted from 0
   */
  public void line(int row, List<Traced> values) {
    String number = String.valueOf(row + 1);
    TabLine line = new TabLine();
    for (int column = 0; column < values.size(); column++) {
      Traced value = values.get(column);
      TabCell cell = line.cell(column);
      cell.style(tab.listedStyle(value, true));
      if (!value.step().isValueOnly()) {
        cell.formula(String.join(number, formulas.get(column)));
      }
      CellValue.write(value, cell);
    }
    fit.line(row, line);
    text.write(row, line);
  }
}
