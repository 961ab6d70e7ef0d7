package sheathwright.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import sheathwright.cutting.Patience;
import sheathwright.cutting.Stopwatch;
import sheathwright.sheathing.layout.CourseLayout;
import sheathwright.sheathing.layout.DeckLayout;
import sheathwright.sheathing.layout.LayoutAnswer;

/**
 * The deck of whole jobs laid out anew: processor seconds of the second time, and what ended the
 * search for the fewest sheets: its bound, patience, or its own count of work.
 */
final class LayoutBenchmark {

  private LayoutBenchmark() {}

  /** Takes the folders of jobs. */
  public static void main(String[] folders) {
    for (String folder : folders) {
      Path job = Path.of(folder);
      List<CourseLayout> planes =
          new Estimate(Job.in(job)).deck().parts().stream().map(Deck.Part::courses).toList();
      int[] asked = {0};
      Patience patience = Patience.asked(LayoutAnswer.PATIENCE);
      Patience counted =
          () -> {
            asked[0]++;
            return patience.secondsLeft();
          };
      Stopwatch watch = new Stopwatch();
      DeckLayout layout = LayoutAnswer.of(planes, counted);
      double seconds = watch.seconds();
      System.out.printf(
          Locale.ROOT,
          "%-20s %3.0f sheets, at least %3.0f, %5.2f s, asked %4d times of %d: ended by %s%n",
          job.getFileName(),
          layout.sheets().value(),
          layout.atLeast().value(),
          seconds,
          asked[0],
          LayoutAnswer.PATIENCE,
          asked[0] >= LayoutAnswer.PATIENCE
              ? "patience"
              : layout.sheets().value() == layout.atLeast().value()
                  ? "its bound"
                  : "its own count of work");
    }
  }
}
