package sheathwright.workbook.book;

import sheathwright.workbook.part.CellStyle;

/**
 * A cell in the making: how it looks, its formula if it has one, and what it holds. A sheet of
 * thousands of them is no more than this much memory.
 */
public final class TabCell implements CellValue {

  /** What a cell holds, as its kind is told in the file. */
  enum Kind {
    EMPTY,
    TEXT,
    NUMBER,
    REFUSED
  }

  private CellStyle style;
  private String formula = "";
  private Kind kind = Kind.EMPTY;
  private String text = "";
  private double number;

  void style(CellStyle how) {
    style = how;
  }

  void formula(String written) {
    formula = written;
  }

  /** Says the same as another: by the same formula, with the same value. */
  void says(TabCell other) {
    formula = other.formula;
    kind = other.kind;
    text = other.text;
    number = other.number;
  }

  @Override
  public void text(String held) {
    kind = Kind.TEXT;
    text = held;
  }

  @Override
  public void number(double held) {
    kind = Kind.NUMBER;
    number = held;
  }

  @Override
  public void refused() {
    kind = Kind.REFUSED;
  }

  CellStyle style() {
    return style;
  }

  String formula() {
    return formula;
  }

  Kind kind() {
    return kind;
  }

  String text() {
    return text;
  }

  double number() {
    return number;
  }
}
