package sheathwright.sheathing.panel;

import sheathwright.figure.Option;

/**
 * The span rating on a panel's stamp: roof span with supported edges over floor span, or for a
 * single-floor panel its floor span alone.
 */
public enum SpanRating implements Option<SpanRating> {
  RATING_16_0("16/0"),
  RATING_20_0("20/0"),
  RATING_24_0("24/0"),
  RATING_24_16("24/16"),
  RATING_32_16("32/16"),
  RATING_40_20("40/20"),
  RATING_48_24("48/24"),
  RATING_60_32("60/32"),
  RATING_16_OC("16-oc"),
  RATING_20_OC("20-oc"),
  RATING_24_OC("24-oc"),
  RATING_32_OC("32-oc"),
  RATING_48_OC("48-oc");

  private final String word;

  SpanRating(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
