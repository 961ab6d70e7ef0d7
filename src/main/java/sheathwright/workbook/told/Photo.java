package sheathwright.workbook.told;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sheathwright.job.life.View;
import sheathwright.job.table.Dates;
import sheathwright.workbook.draw.Photograph;

/**
 * One picture of a job's table of pictures.
 *
 * @param number among the pictures of the job, from 1: what lines and captions call it by
 * @param file its name
 * @param mark what it is of; empty if it is of none
 * @param sheet the place that it is of; empty if it names none
 * @param view what it shows
 * @param taken the day, as an ISO date; empty if nobody said
 * @param caption as the crew wrote it; empty if nobody did
 * @param picture itself; empty if the file is missing
 */
public record Photo(
    int number,
    String file,
    String mark,
    String sheet,
    View view,
    String taken,
    String caption,
    Optional<Photograph> picture) {

  private String day() {
    return taken.isEmpty() ? "" : Dates.inWords(Dates.read(taken));
  }

  /** How it is called where it is spoken of. */
  public String key() {
    return "photo " + number;
  }

  /** What stands below it. */
  public String words() {
    String says =
        Stream.of(key() + ", " + view.word(), day(), caption)
            .filter(said -> !said.isEmpty())
            .collect(Collectors.joining(", "));
    return picture.isPresent() ? says : says + ": missing, there is no file " + file;
  }

  /** Whether it is of this mark, or of the place that the mark lies in. */
  public boolean isOf(String wantedMark, String place) {
    return mark.equals(wantedMark) || mark.isEmpty() && !sheet.isEmpty() && sheet.equals(place);
  }
}
