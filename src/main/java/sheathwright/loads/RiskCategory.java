package sheathwright.loads;

import java.util.Locale;
import sheathwright.figure.Option;

/** How much hangs on a building standing; houses are in II, sheds may be in I. */
public enum RiskCategory implements Option<RiskCategory> {
  RISK_I,
  RISK_II,
  RISK_III,
  RISK_IV;

  @Override
  public String word() {
    return name().substring("RISK_".length()).toLowerCase(Locale.ROOT);
  }
}
