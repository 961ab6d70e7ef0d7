package sheathwright.wood;

import sheathwright.figure.Option;

/** How warm the wood stays, in degrees Fahrenheit. */
public enum WoodWarmth implements Option<WoodWarmth> {
  UP_TO_100_F,
  TO_125_F,
  TO_150_F
}
