package sheathwright.job.file;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.locks.LockSupport;

/**
 * A process of its own that writes two files together, over and over, or one that never ends, until
 * it is killed.
 */
final class KilledWriter {

  private static final int LINES = 2_000;

  private KilledWriter() {}

  /** Writes into a folder, how as the second word says; says on standard output that it began. */
  public static void main(String[] words) {
    Path folder = Path.of(words[0]);
    if (words[1].equals("forever")) {
      NewFile.at(folder.resolve("estimate.xlsx"), true)
          .write(
              stream -> {
                System.out.println("begun");
                while (true) {
                  stream.write(0);
                  LockSupport.parkNanos(1_000_000);
                }
              });
    }
    for (int turn = 1; ; turn++) {
      NewFile estimate = NewFile.at(folder.resolve("estimate.xlsx"), true);
      NewFile quote = NewFile.at(folder.resolve("quote.xlsx"), true);
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
