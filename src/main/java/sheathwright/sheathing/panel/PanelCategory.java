package sheathwright.sheathing.panel;

import sheathwright.figure.Option;

/**
 * The performance category on a panel's stamp. The word ends in the inch, so that no spreadsheet
 * program takes it for a date.
 */
public enum PanelCategory implements Option<PanelCategory> {
  CATEGORY_3_8("3/8-in"),
  CATEGORY_7_16("7/16-in"),
  CATEGORY_15_32("15/32-in"),
  CATEGORY_1_2("1/2-in"),
  CATEGORY_19_32("19/32-in"),
  CATEGORY_5_8("5/8-in"),
  CATEGORY_23_32("23/32-in"),
  CATEGORY_3_4("3/4-in");

  private final String word;

  PanelCategory(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
