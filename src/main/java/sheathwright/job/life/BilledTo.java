package sheathwright.job.life;

import sheathwright.figure.Option;

/** Who pays for what a mark leads to. */
public enum BilledTo implements Option<BilledTo> {
  OWNER,
  INSURER,
  NONE
}
