package sheathwright.workbook.told;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import sheathwright.job.life.View;
import sheathwright.life.bill.Share;

/**
 * How many photographs a paper rests on, by what they show, and which of its marks nobody sees
 * before and open.
 *
 * @param count of those whose files are there
 * @param marks how many are to be seen
 * @param unseen the marks without one of each, by their numbers
 */
public record PhotoCount(Map<View, Integer> count, int marks, List<String> unseen) {

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
        marks.size(),
        marks.stream()
            .filter(share -> !all.areBeforeAndOpen(share))
            .map(Share::mark)
            .distinct()
            .toList());
  }

  /** The same, its marks called otherwise. */
  public PhotoCount named(UnaryOperator<String> names) {
    return new PhotoCount(count, marks, unseen.stream().map(names).toList());
  }

  /** How many there are. */
  public int together() {
    return count.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** How many there are, and of what. */
  public String counted() {
    List<String> kinds = new ArrayList<>();
    count.forEach((view, many) -> kinds.add(many + " " + SHOWN.get(view)));
    return together() == 0
        ? "No photograph"
        : "%s %s (%s)"
            .formatted(
                together(),
                together() == 1 ? "photograph" : "photographs",
                String.join(", ", kinds));
  }

  /** Which marks nobody sees before and open; nothing, if each is seen. */
  public Optional<String> missing() {
    return unseen.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "not seen both before and open: %s%s%s"
                .formatted(
                    unseen.size() == 1 ? "mark " : "marks ",
                    String.join(", ", unseen.subList(0, Math.min(unseen.size(), MOST_NAMED))),
                    unseen.size() > MOST_NAMED
                        ? " and %s more".formatted(unseen.size() - MOST_NAMED)
                        : ""));
  }

  /** In one sentence: how many, of what, and whether each mark is seen. */
  public String words() {
    String seen = marks == 0 ? "" : "; each mark is seen before and open";
    return counted() + missing().map(marks -> "; " + marks).orElse(seen) + ".";
  }
}
