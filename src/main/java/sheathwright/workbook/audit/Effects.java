package sheathwright.workbook.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;

/** What changes do to the total, each alone and all together, and what holds no more after them. */
final class Effects {

  private static final List<String> TOTALS =
      List.of("quote_total_usd", "invoice_total_usd", "new_total_usd");

  /** More figures than this that were not recalculated are counted, not listed. */
  private static final int LISTED = 5;

  /** Nobody reads more effects than this one by one; all together are worked out in any case. */
  private static final int SINGLE = 150;

  private static final double HALF_A_CENT = 0.005;

  private static final OptionalDouble NONE = OptionalDouble.empty();

  private final Reading was;
  private final Comparison comparison;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Finding> further = new ArrayList<>();
  private OptionalDouble joint = NONE;
  private boolean isEachToldApart = true;

  private Effects(Reading was, Comparison comparison) {
    this.was = was;
    this.comparison = comparison;
  }

  /**
   * Of what was found.
   *
   * @param recalculates whether formulas are worked out even where nothing was changed
   */
  static Effects of(Reading was, Comparison comparison, boolean recalculates) {
    Effects effects = new Effects(was, comparison);
    if (recalculates || !comparison.changes().isEmpty()) {
      try (Recalculation recalculation = new Recalculation(was)) {
        effects.workOut(recalculation);
      }
    } else {
      effects.findings.addAll(comparison.findings());
      List<Finding> stale = new ArrayList<>();
      comparison.unlike().forEach(change -> stale.add(effects.stale(change, change.was().said())));
      effects.listed(stale);
    }
    return effects;
  }

  /** What was found, each with its effect. */
  List<Finding> findings() {
    return Stream.concat(findings.stream(), further.stream()).toList();
  }

  /** What all changes together do to the total. */
  OptionalDouble joint() {
    return joint;
  }

  /** What the changes do one by one, added up; nothing where they are too many to be told apart. */
  OptionalDouble single() {
    return !isEachToldApart
        ? NONE
        : OptionalDouble.of(
            findings.stream().mapToDouble(finding -> finding.effect().orElse(0)).sum());
  }

  private void workOut(Recalculation recalculation) {
    Optional<Spot> total =
        TOTALS.stream()
            .filter(was.names()::containsKey)
            .findFirst()
            .flatMap(name -> Spot.of(was.names().get(name)));
    OptionalDouble before = total.map(spot -> number(recalculation, spot)).orElse(NONE);
    List<Change> all = new ArrayList<>();
    isEachToldApart = comparison.findings().size() <= SINGLE;
    for (Finding finding : comparison.findings()) {
      List<Change> changes = comparison.changes(finding);
      boolean isApplied = !changes.isEmpty() && finding.verdict() != Verdict.NOT_OPENED;
      if (isApplied && !isEachToldApart) {
        all.addAll(changes);
      }
      if (!isApplied || !isEachToldApart) {
        findings.add(finding);
        continue;
      }
      recalculation.change(changes);
      OptionalDouble after = total.map(spot -> number(recalculation, spot)).orElse(NONE);
      recalculation.restore(changes);
      all.addAll(changes);
      findings.add(
          before.isPresent() && after.isEmpty()
              ? finding.with("the total cannot be worked out with it")
              : finding.with(difference(before, after)));
    }
    recalculation.change(all);
    joint = difference(before, total.map(spot -> number(recalculation, spot)).orElse(NONE));
    if (isEachToldApart) {
      told(recalculation);
    }
    held(recalculation);
  }

  private static OptionalDouble number(Recalculation recalculation, Spot spot) {
    return recalculation
        .value(spot)
        .filter(Held::isNumber)
        .map(held -> OptionalDouble.of(held.number()))
        .orElse(NONE);
  }

  private static OptionalDouble difference(OptionalDouble before, OptionalDouble after) {
    if (before.isEmpty() || after.isEmpty()) {
      return NONE;
    }
    double difference = after.getAsDouble() - before.getAsDouble();
    return OptionalDouble.of(Math.abs(difference) < HALF_A_CENT ? 0 : difference);
  }

  /** Says of each formula that was typed over what it would give, with the other changes made. */
  private void told(Recalculation recalculation) {
    for (int i = 0; i < findings.size(); i++) {
      Finding finding = findings.get(i);
      List<Change> changes = matching(finding);
      boolean isTypedOver =
          finding.verdict() == Verdict.OVERWRITTEN
              && changes.size() == 1
              && changes.get(0).was().isFormula();
      if (isTypedOver) {
        Change change = changes.get(0);
        recalculation.restore(changes);
        String gives =
            recalculation
                .value(change.sheet(), change.row(), change.column())
                .map(Held::said)
                .orElse("nothing");
        recalculation.change(changes);
        findings.set(i, finding.with("the formula gives " + gives));
      }
    }
  }

  private List<Change> matching(Finding finding) {
    return comparison.findings().stream()
        .filter(each -> each.sheet().equals(finding.sheet()) && each.cell().equals(finding.cell()))
        .filter(each -> !each.cell().isEmpty())
        .map(comparison::changes)
        .filter(changes -> !changes.isEmpty())
        .findFirst()
        .orElse(List.of());
  }

  /** Holds what the file says of its formulas against what they come to. */
  private void held(Recalculation recalculation) {
    List<Finding> stale = new ArrayList<>();
    for (Spot spot : recalculation.formulas()) {
      Held written = was.panes().get(spot.sheet()).at(spot.row(), spot.column());
      Held stands = comparison.stands(spot.sheet(), spot.row(), spot.column());
      Held comesTo = recalculation.value(spot).orElse(Held.NOTHING);
      Change change = new Change(spot.sheet(), spot.row(), spot.column(), written, stands);
      if (Comparison.isToSolve(written, comesTo.value())) {
        further.add(
            comparison
                .judgment()
                .finding(
                    new Change(spot.sheet(), spot.row(), spot.column(), written, comesTo),
                    Verdict.SOLVE_AGAIN,
                    comesTo.value()));
      }
      boolean isGone = stands.isEmpty() || !stands.isFormula();
      boolean isAsWorkedOut =
          stands.saysTheSameAs(written.isFormula() ? asResult(comesTo) : comesTo);
      if (!isGone && !isAsWorkedOut) {
        stale.add(stale(change, comesTo.said()));
      }
    }
    listed(stale);
  }

  private static Held asResult(Held value) {
    return new Held(value.type(), "result", value.value(), false, false);
  }

  private Finding stale(Change change, String recalculated) {
    Finding finding =
        comparison
            .judgment()
            .finding(
                change,
                change.now().isEmpty() || change.was().saysTheSameAs(change.now())
                    ? Verdict.STALE
                    : Verdict.UNTRUE,
                "stored %s; recalculated %s; ours %s"
                    .formatted(
                        change.now().value().isEmpty() ? "nothing" : change.now().said(),
                        recalculated,
                        change.was().said()));
    return new Finding(
        finding.sheet(),
        finding.cell(),
        finding.name(),
        finding.kind(),
        change.was().said(),
        change.now().said(),
        finding.effect(),
        finding.verdict(),
        finding.words());
  }

  /** The named ones first, as many as anybody reads. */
  private void listed(List<Finding> stale) {
    stale.sort(
        Comparator.comparing((Finding finding) -> finding.verdict() == Verdict.STALE)
            .thenComparing(finding -> !TOTALS.contains(finding.name())));
    further.addAll(stale.subList(0, Math.min(LISTED, stale.size())));
    if (stale.size() > LISTED) {
      further.add(
          Finding.of(
              Verdict.STALE,
              "formula",
              "%s more".formatted(stale.size() - LISTED),
              "so many formulas more hold what they do not come to: the file was saved by a program that does not recalculate"));
    }
  }

  /** A sum of money as it is said. */
  static String money(double dollars) {
    return Shown.with(Units.USD, dollars);
  }
}
