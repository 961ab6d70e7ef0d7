package sheathwright.workbook.book;

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
}
