package sheathwright.workbook.book;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaError;
import sheathwright.figure.Figure;
import sheathwright.figure.Traced;

/** What a cell holds of a value: a text, a number, or {@code #N/A} where it is refused. */
interface CellValue {

  void text(String text);

  void number(double number);

  void refused();

  /** Writes a value alone; the caller knows what to make of one that is refused. */
  static void write(Traced value, CellValue into) {
    if (value instanceof Figure<?> figure && figure.isAbsent()) {
      into.text(CellText.of(figure.shown()));
    } else if (value.refusal().isPresent()) {
      into.refused();
    } else if (value instanceof Figure<?> figure) {
      into.number(figure.value());
    } else {
      into.text(CellText.of(value.plain()));
    }
  }

  /** A workbook's cell that takes a value. */
  static CellValue into(Cell cell) {
    return new CellValue() {
      @Override
      public void text(String text) {
        cell.setCellValue(text);
      }

      @Override
      public void number(double number) {
        cell.setCellValue(number);
      }

      @Override
      public void refused() {
        cell.setCellErrorValue(FormulaError.NA.getCode());
      }
    };
  }
}
