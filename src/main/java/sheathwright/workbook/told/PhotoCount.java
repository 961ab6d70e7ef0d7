package sheathwright.workbook.told;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import sheathwright.job.life.View;
import sheathwright.life.bill.Share;

/**
 * How many photographs a paper rests on, by what they show, and which of its marks nobody sees
 * before and open.
 *
 * @param count of those whose files are there
 * @param unseen the marks without one of each, by their numbers
 */
public record PhotoCount(Map<View, Integer> count, List<String> unseen) {

  /** No more marks are named; how many there are besides is said. */
  private static final int MOST_NAMED = 12;

  /** A view in the words of a count. */
  private static final Map<View, String> SHOWN = new EnumMap<>(View.class);

  static {
    SHOWN.put(View.WIDE, "wide");
    SHOWN.put(View.BEFORE, "before");
    SHOWN.put(View.OPEN, "open");
    SHOWN.put(View.AFTER, "after");
    SHOWN.put(View.STAMP, "of a stamp");
    SHOWN.put(View.NAILS, "of nails");
    SHOWN.put(View.METER, "of a meter");
    SHOWN.put(View.STRING, "of the string");
  }

  /**
   * The count of some photographs.
   *
   * @param photos those that are there
   * @param all the job's
   * @param marks each of which is to be seen before and open
   */
  public static PhotoCount of(List<Photo> photos, Photos all, List<Share> marks) {
    Map<View, Integer> count = new EnumMap<>(View.class);
    photos.forEach(photo -> count.merge(photo.view(), 1, Integer::sum));
    return new PhotoCount(
        count,
        marks.stream()
            .filter(share -> !all.areBeforeAndOpen(share))
            .map(Share::mark)
            .distinct()
            .toList());
  }

  /** How many there are. */
  public int together() {
    return count.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** In one sentence: how many, of what, and whether each mark is seen. */
  public String words() {
    List<String> kinds = new ArrayList<>();
    count.forEach((view, many) -> kinds.add(many + " " + SHOWN.get(view)));
    String all =
        together() == 0
            ? "No photograph"
            : "%d %s (%s)"
                .formatted(
                    together(),
                    together() == 1 ? "photograph" : "photographs",
                    String.join(", ", kinds));
    if (unseen.isEmpty()) {
      return all + "; each mark is seen before and open.";
    }
    int more = unseen.size() - MOST_NAMED;
    return "%s; without one before and one open: %s%s."
        .formatted(
            all,
            (unseen.size() == 1 ? "mark " : "marks ")
                + String.join(", ", unseen.subList(0, Math.min(unseen.size(), MOST_NAMED))),
            more > 0 ? " and %d more".formatted(more) : "");
  }
}
