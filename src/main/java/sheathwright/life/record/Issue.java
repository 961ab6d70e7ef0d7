package sheathwright.life.record;

import sheathwright.job.table.Moment;

/**
 * One issue of a job's quote.
 *
 * @param quoteNumber as the job has it
 * @param number counted from 1
 * @param on when it goes out
 */
public record Issue(String quoteNumber, int number, Moment on) {

  /** What a change order is called behind the quote's number, and before its own. */
  public static final String CHANGE_ORDER = " change order ";

  /** What the last bill is called behind the quote's number. */
  public static final String INVOICE = " invoice";

  /** What the record of the deck is called behind the quote's number. */
  public static final String DECK_RECORD = " deck record";

  private static final String WORD = " issue ";

  /** What it is called in the list of what was sent. */
  public String document() {
    return quoteNumber + WORD + number;
  }

  /** What its estimate is called, which is kept beside it. */
  public String estimate() {
    return estimate(document());
  }

  static String estimate(String quote) {
    return quote + " estimate";
  }

  /** Its number among the issues of a quote; 0 where a document is something else. */
  static int numberOf(String document) {
    int at = document.lastIndexOf(WORD);
    String number = at < 0 ? "" : document.substring(at + WORD.length());
    return number.matches("[1-9]\\d{0,8}") ? Integer.parseInt(number) : 0;
  }
}
