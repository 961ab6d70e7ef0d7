package sheathwright.life.record;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import sheathwright.job.JobTable;
import sheathwright.job.office.FirmKeys;
import sheathwright.job.office.QuoteNumbers;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Keys;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;

/**
 * The next number of an office's quotes, which one run takes and writes on. Runs that take one at
 * the same time are told apart by a lock beside the firm's table; whoever comes second is refused,
 * and finds the number behind it when it is run again.
 *
 * @param table the firm's
 * @param number as the table had it
 */
record NextNumber(Path table, String number) {

  private static final Keys KEYS = JobTable.FIRM.keys().orElseThrow();

  /** Holds nothing; it stays, so that all runs lock the same file. */
  private static final String LOCK = ".firm.lock";

  /**
   * Writes everything with the number counted on, if nobody else has taken it.
   *
   * @throws ProblemsException if somebody has, or takes one now; then nothing is written
   */
  void take(Writing writing) {
    Path lock = table.resolveSibling(LOCK);
    try (FileChannel channel =
            FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock held = channel.tryLock()) {
      if (held == null) {
        throw taken("another run takes a number at this moment");
      }
      TableText text = TableText.of(table, List.of());
      if (!stands(text.parsed())) {
        throw taken("%s was taken or changed since this run read it".formatted(number));
      }
      String next = QuoteNumbers.after(number).orElseThrow();
      writing.before(table.getParent(), text.with(KEYS, FirmKeys.NEXT_QUOTE_NUMBER, next));
      writing.write();
    } catch (OverlappingFileLockException inThisProcess) {
      throw taken("another run takes a number at this moment");
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }

  private boolean stands(CsvFile now) {
    int key = now.header().indexOf(KEYS.key());
    int value = now.header().indexOf(KEYS.value());
    return now.lines().stream()
        .filter(line -> line.cells().get(key).strip().equals(FirmKeys.NEXT_QUOTE_NUMBER.name()))
        .anyMatch(line -> line.cells().get(value).strip().equals(number));
  }

  private ProblemsException taken(String what) {
    String message =
        "%s: %s; run the command again".formatted(FirmKeys.NEXT_QUOTE_NUMBER.name(), what);
    return new ProblemsException(List.of(new Problem(table.toString(), 0, "", message)));
  }
}
