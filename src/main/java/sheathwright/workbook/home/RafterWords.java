package sheathwright.workbook.home;

import sheathwright.figure.YesNo;
import sheathwright.framing.stop.RepairDecision.Decision;
import sheathwright.job.Framing;
import sheathwright.workbook.book.Letter;

/**
 * What is said of the rafters to whoever lives below them.
 *
 * @param words in the words of a homeowner
 * @param isStop whether it must not be overlooked
 */
record RafterWords(String words, boolean isStop) {

  /**
   * What was decided.
   *
   * @param isHeldBack whether work on them waits outside the price
   */
  static RafterWords of(Framing framing, boolean isHeldBack) {
    Decision decision = framing.decision().value();
    boolean mayRepair = framing.mayRepair().is(YesNo.YES).holds();
    String waits =
        isHeldBack
            ? " Work on your rafters is not in this price: you get a price of its own after that."
            : "";
    return new RafterWords(said(decision) + (mayRepair ? "" : waits), !mayRepair);
  }

  private static String said(Decision decision) {
    return switch (decision) {
      case WITHIN ->
          "Checked: we looked at your rafters, and by the rules that we check by nothing stops the work.";
      case AS_ASSUMED ->
          "Checked in part: some of what we checked with is only assumed. We look before we work on them.";
      case NOT_INSPECTED ->
          "Not inspected: nobody has looked at your rafters well enough to say whether they are sound. Somebody has to before anything is done to them.";
      case NOT_CHECKED ->
          "Not checked: nothing was seen that stops the work, but nobody has checked how strong your rafters are.";
      case STOP_ENGINEER -> stop("a licensed engineer");
      case STOP_TRUSS -> stop("the designer of the trusses, or a licensed engineer,");
      case STOP_ELECTRICIAN -> stop("an electrician or the utility");
      case STOP_ENVIRONMENTAL -> stop("a firm for hazardous materials");
      case STOP_OFFICIAL -> stop("the building official");
      case STOP_MAKER -> stop("the covering's maker");
    };
  }

  private static String stop(String who) {
    return "Stop: %s has to decide before anything is done to your rafters. The next page says why."
        .formatted(who);
  }

  void write(Letter letter) {
    letter.box(words, isStop);
  }
}
