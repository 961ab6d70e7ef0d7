package sheathwright.repl.show;

import java.io.IOException;
import org.jline.terminal.Attributes;
import org.jline.terminal.Terminal;
import org.jline.utils.NonBlockingReader;

/**
 * The keys of a terminal while no line is edited, each as it is pressed. The terminal goes over to
 * single keys once and back once: between two keys it would gather a line and keep what is pressed
 * then to itself. Every key is waited for with an end to the waiting, since those come through one
 * thread; a wait without an end reads past that thread while it may be reading still, and the key
 * that it gets is lost.
 */
public final class Keyboard implements Pager.Keys {

  /** The thread of the keys is woken first. */
  private static final long MILLIS_TO_WAKE = 100;

  /** Each wait has an end, and is followed by the next: any number of seconds would do. */
  private static final long MILLIS_TO_WAIT = 60_000;

  private final Terminal terminal;
  private final Attributes before;

  /** Takes the keys of a terminal, which gets them back when this is closed. */
  public Keyboard(Terminal terminal) {
    this.terminal = terminal;
    before = terminal.enterRawMode();
  }

  @Override
  public boolean areWaiting() {
    try {
      return terminal.reader().peek(MILLIS_TO_WAKE) >= 0;
    } catch (IOException gone) {
      return false;
    }
  }

  @Override
  public int next() {
    try {
      int key;
      do {
        key = terminal.reader().read(MILLIS_TO_WAIT);
      } while (key == NonBlockingReader.READ_EXPIRED);
      return key;
    } catch (IOException gone) {
      return NonBlockingReader.EOF;
    }
  }

  @Override
  public void close() {
    terminal.setAttributes(before);
  }
}
