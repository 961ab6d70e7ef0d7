package sheathwright.wood;

import sheathwright.figure.Option;

/** The edition that reference design values are taken from: it must fit the age of the wood. */
public enum ValueSet implements Option<ValueSet> {
  /** Today's values. */
  NDS2018("nds2018"),
  /** As NDS 2018, but for the four bending values that the IBC tables still take from 1997. */
  NDS1997("nds1997"),
  /** Southern pine before June 2013, for lumber already in the roof. */
  SOUTHERN_PINE_2012("southern-pine-2012");

  private final String word;

  ValueSet(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
