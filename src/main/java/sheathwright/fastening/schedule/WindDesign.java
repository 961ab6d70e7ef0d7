package sheathwright.fastening.schedule;

import sheathwright.figure.Option;

/** Whether a house may have to be designed for wind, and not only nailed by the code's table. */
public enum WindDesign implements Option<WindDesign> {
  NOT_BY_SPEED("not by this wind speed"),
  MAY_BE_REQUIRED("wind design may be required here, IRC R301.2.1.1 and its map");

  private final String word;

  WindDesign(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
