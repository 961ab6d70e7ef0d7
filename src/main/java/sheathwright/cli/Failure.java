package sheathwright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.util.concurrent.CompletionException;
import picocli.CommandLine.ExitCode;
import sheathwright.figure.RefusedException;
import sheathwright.job.file.FileTrouble;
import sheathwright.job.table.ProblemsException;

/**
 * What ended a command early: what is said of it, and the exit status.
 *
 * @param line for standard error
 */
record Failure(String line, int status) {

  /** Of something that was thrown; only what nobody foresaw is a fault of the program's own. */
  static Failure of(Throwable thrown) {
    if (thrown instanceof RefusedException || thrown instanceof ProblemsException) {
      return new Failure(thrown.getMessage(), Main.REFUSED);
    }
    if (thrown instanceof FileSystemException file) {
      String line = file.getFile() + ": cannot be written or read: " + FileTrouble.of(file);
      return new Failure(line, Main.REFUSED);
    }
    if (thrown instanceof IOException input) {
      return new Failure("input cannot be read: " + FileTrouble.of(input), Main.REFUSED);
    }
    if (thrown instanceof OutOfMemoryError) {
      return new Failure(
          "there is not memory enough for this; split the input, or give more, for instance"
              + " JDK_JAVA_OPTIONS=-Xmx4g",
          Main.REFUSED);
    }
    if (thrown instanceof StackOverflowError) {
      return new Failure(
          "this is nested too deeply to be worked out; if it is not, that is a fault of"
              + " sheathwright's own; please report it with the command that you typed",
          ExitCode.SOFTWARE);
    }
    boolean isWrapped =
        thrown instanceof CompletionException || thrown instanceof UncheckedIOException;
    if (isWrapped && thrown.getCause() != null) {
      return of(thrown.getCause());
    }
    return new Failure(
        "a fault of sheathwright's own, not of your input: "
            + thrown
            + "; please report it with the command that you typed",
        ExitCode.SOFTWARE);
  }
}
