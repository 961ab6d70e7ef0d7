package sheathwright.job.site;

import sheathwright.figure.Option;

/** Whether somebody read a grade stamp on the rafters: without one their species is a guess. */
public enum RafterStamp implements Option<RafterStamp> {
  READ,
  NONE_FOUND,
  NOT_LOOKED_FOR
}
