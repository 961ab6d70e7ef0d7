package sheathwright.published;

import sheathwright.figure.Option;

/**
 * The edition of ASCE 7 that loads follow. Spreadsheet programs take a bare {@code 7-16} for a
 * date, so that the long word stands in workbooks.
 */
public enum LoadEdition implements Option<LoadEdition> {
  ASCE7_10("7-10"),
  ASCE7_16("7-16"),
  ASCE7_22("7-22");

  private final String number;

  LoadEdition(String number) {
    this.number = number;
  }

  @Override
  public String word() {
    return "asce" + number;
  }

  @Override
  public String alsoWritten() {
    return number;
  }
}
