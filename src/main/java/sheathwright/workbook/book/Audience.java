package sheathwright.workbook.book;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Step;
import sheathwright.figure.Table;
import sheathwright.figure.Traced;
import sheathwright.job.Job;

/**
 * Whom a workbook is for. The office sees everything. A homeowner sees nothing that was made from
 * what the contractor pays or reckons with, however far back, and no talk of how a source was had.
 */
public final class Audience {

  private static final String KEY_TO_MARKS =
      "Behind a source: secondary source, read in somebody else's copy and not on the page itself; from memory, not read again;"
          + " common practice, no source, what the trade does.";

  private final boolean isOffice;
  private final Set<Traced> secrets;
  private final Map<Traced, Boolean> told = new IdentityHashMap<>();
  private final Map<Solution, Boolean> toldOfSolutions = new IdentityHashMap<>();

  private Audience(boolean isOffice, Set<Traced> secrets) {
    this.isOffice = isOffice;
    this.secrets = secrets;
  }

  /** Whoever may see everything. */
  public static Audience office() {
    return new Audience(true, Set.of());
  }

  /** Whoever pays for the job. */
  public static Audience homeowner(Job job) {
    return withoutCosts(job);
  }

  /** Whoever works on the roof. */
  public static Audience crew(Job job) {
    return withoutCosts(job);
  }

  private static Audience withoutCosts(Job job) {
    Set<Traced> secrets = Collections.newSetFromMap(new IdentityHashMap<>());
    secrets.addAll(job.costs());
    return new Audience(false, secrets);
  }

  /** Whether everything may be told. */
  public boolean isOffice() {
    return isOffice;
  }

  /** Whether a value was made without anything that this reader is not to know. */
  public boolean maySee(Traced value) {
    if (secrets.isEmpty()) {
      return true;
    }
    if (value.step().isGiven()) {
      return !secrets.contains(value);
    }
    Boolean known = told.get(value);
    if (known == null) {
      known = !secrets.contains(value) && maySeeAllBehind(value.step());
      told.put(value, known);
    }
    return known;
  }

  /** What one solution found is all made from the same inputs: they are looked at once. */
  private boolean maySeeAllBehind(Step step) {
    Solution found = step.solution().orElse(null);
    if (found == null) {
      return maySeeAll(step.operands());
    }
    Boolean known = toldOfSolutions.get(found);
    if (known == null) {
      known = maySeeAll(step.operands());
      toldOfSolutions.put(found, known);
    }
    return known;
  }

  /** Whether all of these values were made without anything that this reader is not to know. */
  boolean maySeeAll(List<Traced> values) {
    for (Traced value : values) {
      if (!maySee(value)) {
        return false;
      }
    }
    return true;
  }

  /** The same value, which no page may write for a reader who is not to know it. */
  Traced allowed(Traced value) {
    if (!maySee(value)) {
      throw new IllegalStateException(
          "%s is made from costs, and the reader of this workbook is not to know them"
              .formatted(value.isNamed() ? value.name() : value.symbol()));
    }
    return value;
  }

  /** A source as it is named to this reader. */
  public String cited(Source source) {
    return isOffice ? source.toString() : source.plainly();
  }

  /** What is meant by the mark behind a source, for whoever is shown marks. */
  public Optional<String> keyToMarks() {
    return isOffice ? Optional.of(KEY_TO_MARKS) : Optional.empty();
  }

  /** What stands above a published table. */
  List<String> notes(Table table) {
    return isOffice ? table.notes() : List.of(table.source().plainly());
  }
}
