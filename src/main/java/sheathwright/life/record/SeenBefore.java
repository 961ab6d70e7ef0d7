package sheathwright.life.record;

import java.util.List;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Rounding;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.table.Field;
import sheathwright.job.table.Row;
import sheathwright.job.zone.ZoneFields;

/**
 * What was seen of a deck before the covering was off, over all its zones.
 *
 * @param places that were seen
 * @param bad of these
 */
record SeenBefore(double places, double bad) {

  private static final int DECIMALS = 1;

  /** What a job's zones say; nothing where none says how much of it was seen. */
  static Optional<SeenBefore> of(Job job) {
    List<Row> zones =
        job.lines(JobTable.ZONES).stream().filter(zone -> zone.has(ZoneFields.SEEN)).toList();
    return zones.isEmpty()
        ? Optional.empty()
        : Optional.of(new SeenBefore(sum(zones, ZoneFields.SEEN), sum(zones, ZoneFields.SEEN_BAD)));
  }

  private static double sum(List<Row> zones, Field<Figure<Ratio>> field) {
    return zones.stream()
        .flatMap(zone -> zone.read(field).stream())
        .mapToDouble(Figure::value)
        .sum();
  }

  /** What was to be expected of the whole deck by what was seen of it, against what was found. */
  String against(double deck, double found) {
    String seen =
        "seen before: %s of %s places, of which %s bad; found: %s bad"
            .formatted(plain(places), plain(deck), plain(bad), plain(found));
    return places > 0
        ? seen
            + ", where %s were to be expected if the rest were like what was seen"
                .formatted(rounded(bad / places * deck))
        : seen;
  }

  private static String plain(double number) {
    return Shown.with(Units.RATIO, number);
  }

  private static String rounded(double number) {
    return plain(Rounding.halfUp(number, DECIMALS));
  }
}
