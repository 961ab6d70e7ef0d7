package sheathwright.job.life;

import sheathwright.figure.Option;

/** How somebody said yes. */
public enum ApprovedHow implements Option<ApprovedHow> {
  SIGNED,
  E_MAIL,
  PRE_AGREED
}
