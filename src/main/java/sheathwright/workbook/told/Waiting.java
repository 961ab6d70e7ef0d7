package sheathwright.workbook.told;

import java.util.List;
import sheathwright.framing.stop.StopFinding;
import sheathwright.job.Estimate;

/** What was seen of the framing that somebody else decides about, in the words of an owner. */
public final class Waiting {

  private Waiting() {}

  /** A sentence each, with where it was seen; none where nothing stops the work. */
  public static List<String> sentences(Estimate estimate) {
    return estimate.framing().stops().toHomeowner().rows().stream()
        .filter(row -> !row.get(0).plain().equals(StopFinding.NOTHING.word()))
        .map(row -> "%s (%s)".formatted(row.get(1).plain(), row.get(2).plain()))
        .toList();
  }
}
