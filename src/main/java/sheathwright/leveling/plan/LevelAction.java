package sheathwright.leveling.plan;

import sheathwright.figure.Option;

/** What is done to a rafter, in the trade's words. */
public enum LevelAction implements Option<LevelAction> {
  /** It lies near enough to the target. */
  LEAVE,
  /** A strip goes on top of it. */
  SHIM,
  /** Straight lumber goes beside it, set to the target. */
  SISTER,
  /** It stands too high: its crown is planed down. */
  PLANE,
  /** Nothing is done before whoever must decide has decided. */
  STOP
}
