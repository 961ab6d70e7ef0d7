package sheathwright.life.firm;

import java.util.Collection;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A rate as all jobs of the firm have it.
 *
 * @param value nothing where no job says it, or not all say the same
 * @param shown as it is written
 */
record Old(Optional<Double> value, String shown) {

  static Old of(Collection<Double> said) {
    TreeSet<Double> all = new TreeSet<>(said);
    if (all.isEmpty()) {
      return new Old(Optional.empty(), "");
    }
    return all.size() == 1
        ? new Old(Optional.of(all.first()), Proposal.shown(all.first()))
        : new Old(Optional.empty(), Proposal.range(all.first(), all.last()));
  }

  /** Why there is no one value. */
  String lack(String key) {
    return shown.isEmpty()
        ? "no job's rates have %s: give one to weigh the log against".formatted(key)
        : "the jobs' rates differ: give one %s for all, above them".formatted(key);
  }
}
