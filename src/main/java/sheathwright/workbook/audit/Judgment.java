package sheathwright.workbook.audit;

import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** What is said of one cell that holds something else than what was written into it. */
final class Judgment {

  /** What some program could take for a formula, though it stands there as words. */
  private static final Pattern FORMULA = Pattern.compile("(?s)[=@].*|\\+[\\p{L}(].*");

  private final Allowed allowed;
  private final CellNames names;
  private final boolean isForOffice;

  Judgment(Reading was) {
    allowed = new Allowed(was);
    names = new CellNames(was);
    isForOffice = was.isForOffice().orElse(false);
  }

  /** What cells are called. */
  CellNames names() {
    return names;
  }

  /** What a changed cell is. */
  Finding of(Change change) {
    Held held = change.was();
    Held here = change.now();
    if (held.isFormula()) {
      return here.isFormula()
          ? finding(change, Verdict.OVERWRITTEN, "another formula stands there")
          : finding(
              change,
              Verdict.OVERWRITTEN,
              "%s stands where a formula was"
                  .formatted(here.isNumber() ? "a number" : "something typed"));
    }
    if (here.isFormula() || FORMULA.matcher(here.value()).matches()) {
      return finding(
          change,
          Verdict.NOT_OPENED,
          "a formula where a number or words belong; it is not worked out, and not taken");
    }
    if (held.isOpen()) {
      String takes = allowed.broken(change);
      return takes.isEmpty()
          ? finding(change, Verdict.FOLLOW, "")
          : finding(change, Verdict.OVERWRITTEN, "an input that takes " + takes);
    }
    if (held == Held.NOTHING) {
      return finding(change, Verdict.STRUCTURE, "something was added where nothing of ours stands");
    }
    if (held.isSolved()) {
      return finding(change, Verdict.OVERWRITTEN, "a solved figure, which no formula gives");
    }
    return isForOffice && held.isNumber()
        ? finding(change, Verdict.OVERWRITTEN, "a number that was not to be changed")
        : finding(change, Verdict.CHANGED_TERMS, "");
  }

  /** A finding about one cell. */
  Finding finding(Change change, Verdict verdict, String words) {
    return new Finding(
        change.sheet(),
        Spot.address(change.row(), change.column()),
        names.of(change.sheet(), change.row(), change.column()),
        kind(change),
        change.was().shown(),
        change.now().shown(),
        OptionalDouble.empty(),
        verdict,
        words);
  }

  private String kind(Change change) {
    Held held = change.was();
    if (held.isFormula()) {
      return "formula";
    }
    if (held.isSolved()) {
      return "solved";
    }
    if (held.isOpen()) {
      return allowed.isChoice(change) ? "choice" : "input";
    }
    return held == Held.NOTHING ? "new" : held.isNumber() ? "number" : "text";
  }
}
