package sheathwright.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.catalog.Card;
import sheathwright.catalog.TypedCell;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Traced;
import sheathwright.job.fill.FilledRow;
import sheathwright.job.table.Problem;

/**
 * What came of one case.
 *
 * @param certified the case
 * @param differences one for each result that it expects and that was given
 * @param problems what does not hold, each where it stands
 */
public record Outcome(
    CertifiedCase certified, List<Difference> differences, List<Problem> problems) {

  /** Holds what a function answers at a case against what the case expects. */
  public static Outcome of(Card card, CertifiedCase certified, FilledRow row) {
    List<Difference> differences = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    if (row.isRefused()) {
      problems.addAll(row.problems());
    } else {
      for (CertifiedCase.Expected expected : certified.expected()) {
        Traced given = row.results().get(card.results().indexOf(expected.result()));
        Optional<String> refused =
            given
                .refusal()
                .filter(refusal -> !refusal.isAnswer())
                .map(refusal -> "it was refused: " + refusal.reason());
        refused.ifPresentOrElse(
            reason -> problems.add(certified.problem(expected.result().column(), reason)),
            () -> differences.add(difference(certified, expected, given)));
      }
    }
    differences.stream()
        .filter(each -> !each.holds())
        .forEach(each -> problems.add(certified.problem(each.result().column(), said(each))));
    return new Outcome(certified, List.copyOf(differences), List.copyOf(problems));
  }

  /** Whether everything that the case expects was given. */
  public boolean holds() {
    return problems.isEmpty();
  }

  /** Whether an expected cell says in words that there is no number. */
  static boolean isSaid(String text) {
    return text.chars().noneMatch(Character::isDigit);
  }

  private static Difference difference(
      CertifiedCase certified, CertifiedCase.Expected expected, Traced given) {
    String plain = given.plain();
    boolean isNumber = given instanceof Figure<?> figure && !figure.isAbsent();
    if (!isNumber || isSaid(expected.text())) {
      boolean isSame = plain.equals(expected.text());
      return new Difference(
          expected.result(), expected.text(), plain, isSame ? 0 : Double.POSITIVE_INFINITY, 0);
    }
    double wanted =
        new TypedCell(expected.result().column(), expected.text())
            .number(expected.result().unit(), Limits.NONE);
    double number = Double.parseDouble(plain);
    return new Difference(
        expected.result(), expected.text(), plain, number - wanted, certified.allowed(wanted));
  }

  private static String said(Difference wrong) {
    return wrong.isOfNumbers()
        ? "%s was given, %s is expected; they differ by %s, and %s is allowed"
            .formatted(
                wrong.given(),
                wrong.expected(),
                wrong.sized(Math.abs(wrong.difference())),
                wrong.sized(wrong.allowed()))
        : "\"%s\" was given, \"%s\" is expected".formatted(wrong.given(), wrong.expected());
  }
}
