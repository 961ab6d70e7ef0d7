package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.in;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/** What columns say is read when a thing is first seen, and kept. */
class ColumnsReadTest {

  /** A stick. */
  public record Stick(@Column("length_in") Figure<Length> length) {}

  /** Loads one class once more, which makes it a thing that nobody has seen. */
  private static final class Anew extends ClassLoader {

    private Anew() {
      super(Stick.class.getClassLoader());
    }

    Class<? extends Record> thing(Class<? extends Record> seen) {
      String file = seen.getName().replace('.', '/') + ".class";
      try (InputStream stream = getResourceAsStream(file)) {
        byte[] code = stream.readAllBytes();
        return defineClass(seen.getName(), code, 0, code.length).asSubclass(Record.class);
      } catch (IOException broken) {
        throw new UncheckedIOException(broken);
      }
    }
  }

  @Test
  void columns_areReadForEachThingAndKept() {
    Class<? extends Record> unseen = new Anew().thing(Stick.class);
    assertThat(unseen).isNotEqualTo(Stick.class);
    assertThat(Columns.of(unseen).let("length", in(5)).name()).isEqualTo("length_in");
    assertThat(Columns.of(unseen)).isSameAs(Columns.of(unseen));
  }
}
