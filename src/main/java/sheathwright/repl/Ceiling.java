package sheathwright.repl;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import sheathwright.figure.Shown;

/** Lets only so much through of what one line prints, and counts the rest. */
final class Ceiling extends FilterOutputStream {

  /** More than anybody pages through, less than a window takes seconds to draw. */
  private static final int MOST_LINES = 2_000;

  /** Two hundred for each of those lines. */
  private static final int MOST_BYTES = 400_000;

  private long lines;
  private long bytes;

  Ceiling(OutputStream out) {
    super(out);
  }

  @Override
  public synchronized void write(int b) throws IOException {
    if (isOpen()) {
      out.write(b);
    }
    bytes++;
    lines += b == '\n' ? 1 : 0;
  }

  @Override
  public synchronized void write(byte[] some, int from, int length) throws IOException {
    int passed = 0;
    while (passed < length && isOpen()) {
      bytes++;
      lines += some[from + passed++] == '\n' ? 1 : 0;
    }
    out.write(some, from, passed);
    for (int i = passed; i < length; i++) {
      lines += some[from + i] == '\n' ? 1 : 0;
    }
    bytes += length - passed;
  }

  private boolean isOpen() {
    return lines < MOST_LINES && bytes < MOST_BYTES;
  }

  /** What is said of that which was not let through since the last time; empty if all was. */
  synchronized String cut() {
    String said =
        isOpen() ? "" : Shown.text("(cut: it printed %,d lines, %,d characters)", lines, bytes);
    lines = 0;
    bytes = 0;
    return said;
  }
}
