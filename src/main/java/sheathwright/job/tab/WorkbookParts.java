package sheathwright.job.tab;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.job.file.FileTrouble;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;

/**
 * The parts of a workbook's file (ECMA-376, Office Open XML), taken out with care: somebody else
 * may have sent it. No part is run, followed or fetched.
 */
final class WorkbookParts {

  private static final int MOST_BYTES = 64_000_000;
  private static final long MOST_UNPACKED = 100_000_000;
  private static final int MOST_PARTS = 4_000;

  /** Parts that do something, or fetch something, when a program opens them. */
  private static final Map<String, String> REFUSED =
      Map.of(
          "vbaproject", "macros",
          "macrosheets/", "macros",
          "externallinks/", "links to other workbooks",
          "connections.xml", "connections to data elsewhere",
          "querytables/", "connections to data elsewhere",
          "embeddings/", "other files inside it",
          "activex/", "controls that run programs");

  private final String name;
  private final Map<String, byte[]> parts;

  private WorkbookParts(String name, Map<String, byte[]> parts) {
    this.name = name;
    this.parts = parts;
  }

  /**
   * The parts of a file.
   *
   * @throws ProblemsException if there is no such file, or it is not a workbook that may be read
   */
  static WorkbookParts in(Path file) {
    String name = String.valueOf(file.getFileName());
    try (InputStream stream = Files.newInputStream(file)) {
      byte[] bytes = stream.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw refused(name, "it is longer than %s bytes, the most that is read", MOST_BYTES);
      }
      return of(name, bytes);
    } catch (NoSuchFileException missing) {
      throw refused(name, "there is no such file");
    } catch (IOException unreadable) {
      throw refused(name, "it cannot be read: " + FileTrouble.of(unreadable));
    }
  }

  private static WorkbookParts of(String name, byte[] bytes) {
    if (bytes.length < 2 || bytes[0] != 'P' || bytes[1] != 'K') {
      throw refused(
          name,
          "it is not an .xlsx workbook, or it has a password; save it as .xlsx without a password");
    }
    Map<String, byte[]> parts = new HashMap<>();
    long unpacked = 0;
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        String part = entry.getName().toLowerCase(Locale.ROOT);
        refuseWhatRuns(name, part);
        if (parts.size() == MOST_PARTS) {
          throw refused(name, "it has more than %s parts, the most that is read", MOST_PARTS);
        }
        byte[] held = zip.readNBytes((int) (MOST_UNPACKED - unpacked + 1));
        unpacked += held.length;
        if (unpacked > MOST_UNPACKED) {
          throw refused(
              name, "it unpacks to more than %s bytes, the most that is read", MOST_UNPACKED);
        }
        if (part.endsWith(".xml") || part.endsWith(".rels")) {
          if (parts.put(part, held) != null) {
            throw refused(name, "it has the part " + part + " twice; save it anew");
          }
        }
      }
    } catch (IOException | IllegalArgumentException broken) {
      throw refused(name, "it is damaged; save it anew");
    }
    return new WorkbookParts(name, parts);
  }

  private static void refuseWhatRuns(String name, String part) {
    REFUSED.forEach(
        (word, what) -> {
          if (part.contains(word)) {
            throw refused(
                name,
                "it has %s (%s), which are not opened; save it as .xlsx without them"
                    .formatted(what, part));
          }
        });
  }

  /** What the file is called. */
  String name() {
    return name;
  }

  /** Whether it has a part. */
  boolean has(String part) {
    return parts.containsKey(part.toLowerCase(Locale.ROOT));
  }

  /**
   * A part's XML.
   *
   * @throws ProblemsException if it has not the part
   */
  PartReader part(String part) {
    byte[] held = parts.get(part.toLowerCase(Locale.ROOT));
    if (held == null) {
      throw refused(name, "it has no part " + part + "; save it anew as .xlsx");
    }
    return new PartReader(name, held);
  }

  private static ProblemsException refused(String name, String message, long number) {
    return refused(name, message.formatted(Shown.with(Units.RATIO, number)));
  }

  static ProblemsException refused(String name, String message) {
    return new ProblemsException(List.of(new Problem(name, 0, "", message)));
  }
}
