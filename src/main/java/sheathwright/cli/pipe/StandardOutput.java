package sheathwright.cli.pipe;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;
import sheathwright.job.file.FileTrouble;

/**
 * Standard output, which remembers what became of it: the JDK's writers swallow what a full disk or
 * a pipe says. Once lost, all of the rest is refused too.
 */
public final class StandardOutput extends OutputStream {

  private final OutputStream sink;
  private IOException lost;

  public StandardOutput(OutputStream sink) {
    this.sink = sink;
  }

  /** One step of writing. */
  private interface Step {
    void run() throws IOException;
  }

  @Override
  public void write(int octet) throws IOException {
    tried(() -> sink.write(octet));
  }

  @Override
  public void write(byte[] octets, int from, int count) throws IOException {
    tried(() -> sink.write(octets, from, count));
  }

  @Override
  public void flush() throws IOException {
    tried(sink::flush);
  }

  private synchronized void tried(Step step) throws IOException {
    if (lost != null) {
      throw lost;
    }
    try {
      step.run();
    } catch (IOException refused) {
      lost = refused;
      throw refused;
    }
  }

  /** What is to be said of a loss; nothing where the reader of a pipe has had enough. */
  public synchronized Optional<String> complaint() {
    return Optional.ofNullable(lost)
        .filter(loss -> !isBrokenPipe(loss))
        .map(loss -> "standard output could not be written: " + FileTrouble.of(loss));
  }

  /** Linux and macOS say that the pipe is broken, Windows that it is being closed or has ended. */
  private static boolean isBrokenPipe(IOException loss) {
    return String.valueOf(loss.getMessage()).toLowerCase(Locale.ROOT).contains("pipe");
  }
}
