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

  private static final String WORD = " issue ";

  /** What it is called in the list of what was sent. */
  public String document() {
    return quoteNumber + WORD + number;
  }

  /** Its number among the issues of a quote; 0 where a document is something else. */
  static int numberOf(String document) {
    int at = document.lastIndexOf(WORD);
    String number = at < 0 ? "" : document.substring(at + WORD.length());
    return number.matches("[1-9]\\d{0,8}") ? Integer.parseInt(number) : 0;
  }
}
