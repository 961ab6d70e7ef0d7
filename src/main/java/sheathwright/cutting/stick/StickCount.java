package sheathwright.cutting.stick;

/**
 * A set of patterns that branching counts: those that cut at least so many of one length and so
 * many of another, which may be the same.
 */
record StickCount(int one, int least, int other, int leastOther) {

  boolean isIn(StickPattern pattern) {
    return pattern.countOf(one) >= least && pattern.countOf(other) >= leastOther;
  }
}
