package sheathwright.forecast;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;

/**
 * The sheets of a roof, how many of them somebody has seen, and how many of those were bad.
 *
 * @param sheets in the whole roof, whole or cut
 * @param seen of them, from below or with the covering off
 * @param bad of those seen
 */
public record DeckSeen(
    @Column(
            value = "sheets",
            unit = "sheet",
            allowed = Limits.Kind.WHOLE_ONLY,
            least = 1,
            most = MOST,
            rule = "the places of the whole roof; for a small house 44")
        Figure<Sheets> sheets,
    @Column(
            value = "seen",
            unit = "sheet",
            allowed = Limits.Kind.WHOLE_ONLY,
            least = 0,
            most = MOST,
            rule = "at most as many as there are; 0 where nobody has looked")
        Figure<Sheets> seen,
    @Column(
            value = "seen_bad",
            unit = "sheet",
            allowed = Limits.Kind.WHOLE_ONLY,
            least = 0,
            most = MOST,
            rule = "at most as many as were seen")
        Figure<Sheets> bad) {

  /** Sheets of the largest roof. */
  static final int MOST = 10_000;

  private static final Columns COLUMNS = Columns.of(DeckSeen.class);

  public DeckSeen {
    sheets = COLUMNS.let("sheets", sheets);
    seen = COLUMNS.let("seen", seen);
    bad = COLUMNS.let("bad", bad);
  }

  /** A roof of so many sheets; how many were seen is still to be said. */
  public static DeckSeen sheets(Figure<Sheets> all) {
    return new DeckSeen(all, null, null);
  }

  /** So many of them seen; how many of those were bad is still to be said. */
  public DeckSeen seen(Figure<Sheets> some) {
    return new DeckSeen(sheets, some, bad);
  }

  /** So many of those seen were bad. */
  public DeckSeen bad(Figure<Sheets> found) {
    return new DeckSeen(sheets, seen, found);
  }

  /**
   * The same as plain numbers.
   *
   * @throws RefusedException if more were seen than there are, or more are bad than were seen
   */
  Plain plain(Reading reading) {
    Plain plain =
        new Plain(
            (int) reading.number("sheets", sheets, Units.SHEET),
            (int) reading.number("sheets seen", seen, Units.SHEET),
            (int) reading.number("bad sheets seen", bad, Units.SHEET));
    refused(reading, "seen exceeds the sheets there are", plain.seen(), plain.sheets());
    refused(reading, "seen_bad exceeds the sheets seen", plain.bad(), plain.seen());
    return plain;
  }

  private static void refused(Reading reading, String what, int given, int most) {
    if (given > most) {
      throw new RefusedException(
          "%s: %s of %s; it must be at most as many".formatted(what, given, most),
          reading.values());
    }
  }

  /** Plain counts. */
  record Plain(int sheets, int seen, int bad) {

    int unseen() {
      return sheets - seen;
    }

    /** How many are bad in the whole roof, those seen included. */
    Chances chances(BadShare.Plain share) {
      return Chances.known(bad)
          .and(Chances.betaBinomial(unseen(), share.alpha() + bad, share.beta() + seen - bad));
    }
  }
}
