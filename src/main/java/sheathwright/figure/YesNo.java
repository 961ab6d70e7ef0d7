package sheathwright.figure;

/** A plain answer. */
public enum YesNo implements Option<YesNo> {
  YES,
  NO
}
