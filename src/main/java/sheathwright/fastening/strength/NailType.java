package sheathwright.fastening.strength;

import sheathwright.figure.Option;

/** A nail by the name that it is sold under. */
public enum NailType implements Option<NailType> {
  NAIL_6D_COMMON("6d-common"),
  NAIL_8D_COMMON("8d-common"),
  NAIL_10D_COMMON("10d-common"),
  NAIL_16D_COMMON("16d-common"),
  NAIL_6D_BOX("6d-box"),
  NAIL_8D_BOX("8d-box"),
  NAIL_10D_BOX("10d-box"),
  NAIL_8D_SINKER("8d-sinker"),
  NAIL_RSRS_01("rsrs-01"),
  NAIL_RSRS_02("rsrs-02"),
  NAIL_RSRS_03("rsrs-03"),
  NAIL_RSRS_04("rsrs-04"),
  NAIL_RSRS_05("rsrs-05"),
  NAIL_SHEATHING_2_3_8("sheathing-2-3/8"),
  NAIL_DEFORMED_2_1_2("deformed-2-1/2");

  private final String word;

  NailType(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
