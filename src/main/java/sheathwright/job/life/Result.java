package sheathwright.job.life;

import sheathwright.figure.Option;

/** How an inspection ended. */
public enum Result implements Option<Result> {
  PASS,
  FAIL,
  OPEN
}
