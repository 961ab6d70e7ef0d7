package sheathwright.proof;

import java.util.List;
import java.util.stream.Stream;
import sheathwright.catalog.Result;

/** How well a function is checked, the least first. */
public enum Standing {
  UNCHECKED("no certified case"),
  FAILING("a case does not hold"),
  FROM_MEMORY("from memory"),
  PRACTICE("practice only"),
  PARTLY("partly"),
  VERIFIED("verified");

  /** Fewer cases say little of a function's range. */
  private static final int FEW = 25;

  private final String words;

  Standing(String words) {
    this.words = words;
  }

  /** In words. */
  public String words() {
    return words;
  }

  /**
   * That of a function: its own source's mark, or one of its cases' that has a mark, is never
   * upgraded.
   */
  public static Standing of(Tested tested) {
    if (!tested.hasCases()) {
      return UNCHECKED;
    }
    if (!tested.holds()) {
      return FAILING;
    }
    List<String> sources =
        Stream.concat(Stream.of(tested.card().text().source()), tested.sources().stream()).toList();
    if (sources.stream().anyMatch(source -> source.contains("from memory"))) {
      return FROM_MEMORY;
    }
    if (sources.stream().anyMatch(source -> source.contains("common practice"))) {
      return PRACTICE;
    }
    return tested.outcomes().size() < FEW || !isWhole(tested) ? PARTLY : VERIFIED;
  }

  /** Whether each of its results is expected by some case. */
  private static boolean isWhole(Tested tested) {
    List<String> held =
        tested.outcomes().stream()
            .flatMap(outcome -> outcome.differences().stream())
            .map(difference -> difference.result().column())
            .distinct()
            .toList();
    return tested.card().results().stream().map(Result::column).allMatch(held::contains);
  }
}
