package sheathwright.workbook;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.workbook.page.JobBooks;

/**
 * Both workbooks of a job laid out and written, beside a {@link BareWorkbook} of each, in one
 * process that is warm: pairs of seconds of the whole process, whatever threads it uses.
 */
final class WarmWorkbooks {

  private static final int WARM_UP = 12;

  private WarmWorkbooks() {}

  /** Usage: PAIRS JOB LISTING ... */
  public static void main(String[] arguments) throws IOException {
    int pairs = Integer.parseInt(arguments[0]);
    Path folder = Path.of(arguments[1]);
    List<List<String>> listings =
        List.of(
            Files.readAllLines(Path.of(arguments[2])), Files.readAllLines(Path.of(arguments[3])));
    for (int pair = -WARM_UP; pair < pairs; pair++) {
      Estimate estimate = new Estimate(Job.in(folder));
      double start = seconds();
      JobBooks.of(estimate);
      double between = seconds();
      for (List<String> listing : listings) {
        BareWorkbook.bytes(listing);
      }
      double end = seconds();
      if (pair >= 0) {
        System.out.printf(Locale.ROOT, "%.3f %.3f%n", between - start, end - between);
      }
    }
  }

  private static double seconds() {
    return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
            .getProcessCpuTime()
        / 1e9;
  }
}
