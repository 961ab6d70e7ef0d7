package sheathwright.wood;

import java.util.List;
import sheathwright.figure.Option;

/**
 * A species group as it stands on a grade stamp. Each has a specific gravity; those that house
 * framing is graded of most have design values too.
 */
public enum Species implements Option<Species> {
  DOUGLAS_FIR_LARCH("DF", "DFL", "DF-L"),
  DOUGLAS_FIR_LARCH_NORTH("DFL-N"),
  HEM_FIR("HF", "HEM"),
  HEM_FIR_NORTH("HF-N"),
  SOUTHERN_PINE("SYP", "SP"),
  SPRUCE_PINE_FIR("SPF"),
  SPRUCE_PINE_FIR_SOUTH("SPF-S"),
  PONDEROSA_PINE("PP"),
  EASTERN_HEMLOCK,
  REDWOOD,
  WESTERN_CEDARS,
  WESTERN_WOODS,
  /** No stamp was found: of each value the least that any group has. */
  UNKNOWN_SPECIES;

  private final List<String> inTheTrade;

  Species(String... inTheTrade) {
    this.inTheTrade = List.of(inTheTrade);
  }

  @Override
  public List<String> inTheTrade() {
    return inTheTrade;
  }

  @Override
  public String word() {
    return this == UNKNOWN_SPECIES ? "unknown" : Option.super.word();
  }
}
