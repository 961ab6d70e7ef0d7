package sheathwright.wood;

import java.util.Arrays;
import java.util.List;
import sheathwright.figure.Option;

/** A species group as it stands on a grade stamp. */
public enum Species implements Option<Species> {
  DOUGLAS_FIR_LARCH("DF", "DFL", "DF-L"),
  HEM_FIR("HF", "HEM"),
  HEM_FIR_NORTH("HF-N"),
  SOUTHERN_PINE("SYP", "SP"),
  SPRUCE_PINE_FIR("SPF"),
  SPRUCE_PINE_FIR_SOUTH("SPF-S");

  private final List<String> inTheTrade;

  Species(String... inTheTrade) {
    this.inTheTrade = List.of(inTheTrade);
  }

  @Override
  public List<String> inTheTrade() {
    return inTheTrade;
  }

  /** What the trade calls a group for short, by the group's word; nothing for any other wood. */
  public static List<String> inTheTrade(String word) {
    return Arrays.stream(values())
        .filter(species -> species.word().equals(word))
        .flatMap(species -> species.inTheTrade.stream())
        .toList();
  }
}
