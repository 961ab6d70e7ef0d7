package sheathwright.job.file;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import sheathwright.figure.Shown;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;

/**
 * What is packed in a workbook's file (ECMA-376, Office Open XML), taken out with care: somebody
 * else may have sent it. It is read from its beginning to its end, so that parts which lie over
 * each other are not unpacked twice, and is given up as soon as it grows beyond all measure.
 */
public final class Unpacked {

  private static final int MOST_BYTES = 64_000_000;
  private static final int MOST_UNPACKED = 100_000_000;
  private static final int MOST_PARTS = 4_000;

  /** Sheets that repeat themselves pack to a thirtieth; a bomb to a thousandth. */
  private static final int MOST_TIMES = 100;

  /** So little may grow as it likes. */
  private static final int SMALL = 8_000_000;

  private static final String BROKEN =
      "it is no .xlsx workbook that can be read; save it as .xlsx, without a password, and try again";

  private final String name;
  private final byte[] file;
  private final Map<String, byte[]> held = new LinkedHashMap<>();
  private final Set<String> names = new HashSet<>();
  private long unpacked;

  private Unpacked(String name, byte[] file) {
    this.name = name;
    this.file = file;
  }

  /**
   * A file's bytes, still packed.
   *
   * @throws ProblemsException if there is no such file, or it is longer than any workbook
   */
  public static byte[] file(Path file) {
    String name = String.valueOf(file.getFileName());
    try (InputStream stream = Files.newInputStream(file)) {
      byte[] bytes = stream.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw refused(
            name, Shown.text("it is longer than %,d bytes, the most that is read", MOST_BYTES));
      }
      return bytes;
    } catch (NoSuchFileException missing) {
      throw refused(name, "there is no such file");
    } catch (IOException unreadable) {
      throw refused(name, "it cannot be read: " + FileTrouble.of(unreadable));
    }
  }

  /**
   * The parts of a file by name, in the order in which they are packed.
   *
   * @param name of the file, for messages
   * @param isWanted which of them are held; the others are only measured
   * @throws ProblemsException if it is no workbook, or one that does harm to whoever opens it
   */
  public static Map<String, byte[]> parts(String name, byte[] file, Predicate<String> isWanted) {
    Unpacked all = new Unpacked(name, file);
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        all.take(entry.getName(), zip, isWanted);
      }
    } catch (IOException | IllegalArgumentException broken) {
      throw refused(name, BROKEN);
    }
    if (all.names.isEmpty()) {
      throw refused(name, BROKEN);
    }
    return new LinkedHashMap<>(all.held);
  }

  private void take(String entry, InputStream content, Predicate<String> isWanted)
      throws IOException {
    String slashed = entry.replace('\\', '/');
    String part = slashed.startsWith("/") ? slashed.substring(1) : slashed;
    if (List.of(part.split("/")).contains("..") || part.contains(":")) {
      throw refused(
          name, "its part %s would lie outside of it; save it anew as .xlsx".formatted(part));
    }
    if (!names.add(part.toLowerCase(Locale.ROOT))) {
      throw refused(name, "it has the part %s twice; save it anew as .xlsx".formatted(part));
    }
    if (names.size() > MOST_PARTS) {
      throw refused(
          name, Shown.text("it has more than %,d parts, the most that is read", MOST_PARTS));
    }
    if (!isWanted.test(part)) {
      measure(content);
      return;
    }
    byte[] bytes = content.readNBytes((int) (most() - unpacked + 1));
    grow(bytes.length);
    refuseOwnEntities(part, bytes);
    held.put(part, bytes);
  }

  private void measure(InputStream content) throws IOException {
    byte[] piece = new byte[1 << 16];
    for (int read = content.read(piece); read >= 0; read = content.read(piece)) {
      grow(read);
    }
  }

  private void grow(int bytes) {
    unpacked += bytes;
    if (unpacked > most()) {
      throw refused(
          name,
          Shown.text(
              "it unpacks to more than %,d bytes, the most that is read of a file of %,d",
              most(), file.length));
    }
  }

  private long most() {
    return Math.min(MOST_UNPACKED, Math.max(SMALL, (long) MOST_TIMES * file.length));
  }

  /** No workbook needs a document type; with one, a few lines grow to gigabytes. */
  private void refuseOwnEntities(String part, byte[] bytes) {
    if (!part.endsWith(".xml") && !part.endsWith(".rels") && !part.endsWith(".vml")) {
      return;
    }
    boolean isOwn = false;
    try {
      XMLStreamReader xml = Manifest.reader(bytes);
      while (!isOwn && xml.hasNext() && !xml.isStartElement()) {
        isOwn = xml.next() == XMLStreamConstants.DTD;
      }
    } catch (XMLStreamException damaged) {
      return; // whoever reads the part says it
    }
    if (isOwn) {
      throw refused(name, "its part %s declares entities of its own; save it anew".formatted(part));
    }
  }

  private static ProblemsException refused(String name, String message) {
    return new ProblemsException(List.of(new Problem(name, 0, "", message)));
  }
}
