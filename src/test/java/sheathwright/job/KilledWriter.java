package sheathwright.job;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** A process of its own that writes two files together, over and over, until it is killed. */
final class KilledWriter {

  private static final int LINES = 2_000;

  private KilledWriter() {}

  /** Writes into a folder; says on standard output that it has begun. */
  public static void main(String[] folder) {
    for (int turn = 1; ; turn++) {
      NewFile estimate = NewFile.at(Path.of(folder[0], "estimate.xlsx"), true);
      NewFile quote = NewFile.at(Path.of(folder[0], "quote.xlsx"), true);
      byte[] content =
          (ProcessHandle.current().pid() + " turn " + turn + "\n")
              .repeat(LINES)
              .getBytes(StandardCharsets.UTF_8);
      new NewFiles().with(estimate, content).with(quote, content).write();
      if (turn == 1) {
        System.out.println("begun");
      }
    }
  }
}
