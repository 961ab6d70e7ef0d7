package sheathwright.proof;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.job.table.Problem;

/**
 * A function and what came of all its certified cases.
 *
 * @param card the function
 * @param outcomes one for each case; none where it has no case
 */
public record Tested(Card card, List<Outcome> outcomes) {

  /** What shipped cases came to: neither they nor the program change while it runs. */
  private static final Map<String, Tested> SHIPPED = new ConcurrentHashMap<>();

  /** A function with those cases of its own that ship with the program. */
  public static Tested of(Card card) {
    return SHIPPED.computeIfAbsent(
        card.name(),
        name ->
            new Tested(card, CertifiedCases.of(card).map(CaseTable::outcomes).orElse(List.of())));
  }

  /** Every function with those cases, by room and name. */
  public static List<Tested> all() {
    return Catalog.shipped().cards().stream().map(Tested::of).toList();
  }

  /** Whether there is any case of it. */
  public boolean hasCases() {
    return !outcomes.isEmpty();
  }

  /** How many of its cases hold. */
  public int holding() {
    return (int) outcomes.stream().filter(Outcome::holds).count();
  }

  /** How many of its cases do not hold. */
  public int failing() {
    return outcomes.size() - holding();
  }

  /** Whether every case holds. */
  public boolean holds() {
    return holding() == outcomes.size();
  }

  /** What does not hold. */
  public List<Problem> problems() {
    return outcomes.stream().flatMap(outcome -> outcome.problems().stream()).toList();
  }

  /** How many cases there are of each kind, without those of which there are none. */
  public Map<CaseKind, Integer> kinds() {
    Map<CaseKind, Integer> kinds = new EnumMap<>(CaseKind.class);
    outcomes.forEach(outcome -> kinds.merge(outcome.certified().kind(), 1, Integer::sum));
    return kinds;
  }

  /** How many cases lie where, without those of which there are none. */
  public Map<CaseClass, Integer> classes() {
    Map<CaseClass, Integer> classes = new EnumMap<>(CaseClass.class);
    outcomes.forEach(outcome -> classes.merge(outcome.certified().lies(), 1, Integer::sum));
    return classes;
  }

  /** Who says what is expected, each once. */
  public List<String> sources() {
    return outcomes.stream().map(outcome -> outcome.certified().source()).distinct().toList();
  }

  /** The result that uses most of what it may be off; none where only words are held. */
  public Optional<Difference> worst() {
    return differences()
        .filter(each -> each.result().unit() != null)
        .max(Comparator.comparingDouble(Difference::share));
  }

  /** How far the results of one column are off in the mean, those above and below against it. */
  public double meanDifference(Difference of) {
    return differences()
        .filter(each -> each.result().column().equals(of.result().column()))
        .filter(Difference::isOfNumbers)
        .mapToDouble(Difference::difference)
        .average()
        .orElse(0);
  }

  private Stream<Difference> differences() {
    return outcomes.stream().flatMap(outcome -> outcome.differences().stream());
  }
}
