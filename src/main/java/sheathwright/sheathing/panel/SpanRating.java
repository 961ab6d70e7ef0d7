package sheathwright.sheathing.panel;

import sheathwright.figure.Option;

/**
 * The span rating on a panel's stamp: roof span with supported edges over floor span, or for a
 * single-floor panel its floor span alone. Old stamps print the same two numbers and call them the
 * identification index; a panel that nobody can read has none.
 */
public enum SpanRating implements Option<SpanRating> {
  RATING_16_0("16/0"),
  RATING_20_0("20/0", RATING_16_0),
  RATING_24_0("24/0", RATING_20_0),
  RATING_24_16("24/16", RATING_24_0),
  RATING_32_16("32/16", RATING_24_16),
  RATING_40_20("40/20", RATING_32_16),
  RATING_48_24("48/24", RATING_40_20),
  RATING_60_32("60/32", RATING_48_24),
  RATING_16_OC("16-oc", RATING_24_0),
  RATING_20_OC("20-oc", RATING_16_OC),
  RATING_24_OC("24-oc", RATING_20_OC),
  RATING_32_OC("32-oc", RATING_24_OC),
  RATING_48_OC("48-oc", RATING_32_OC),
  RATING_30_12("30/12", RATING_24_0, false),
  RATING_36_16("36/16", RATING_32_16, false),
  RATING_42_20("42/20", RATING_40_20, false),
  NONE("none", RATING_16_0, false);

  private final String word;
  private final SpanRating lower;
  private final boolean isPrinted;

  SpanRating(String word) {
    this.word = word;
    this.lower = this;
    this.isPrinted = true;
  }

  SpanRating(String word, SpanRating lower) {
    this(word, lower, true);
  }

  SpanRating(String word, SpanRating lower, boolean isPrinted) {
    this.word = word;
    this.lower = lower;
    this.isPrinted = isPrinted;
  }

  @Override
  public String word() {
    return word;
  }

  /** The next lower one that is printed; below the least there is only itself. */
  SpanRating lower() {
    return lower;
  }

  /** Whether the code prints it today. */
  boolean isPrinted() {
    return isPrinted;
  }
}
