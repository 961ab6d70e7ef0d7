package sheathwright.job.tab;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import sheathwright.job.file.Unpacked;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;

/** The parts of a workbook's file that hold tables; no part is run, followed or fetched. */
final class WorkbookParts {

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
    return of(String.valueOf(file.getFileName()), Unpacked.file(file));
  }

  private static WorkbookParts of(String name, byte[] bytes) {
    if (bytes.length < 2 || bytes[0] != 'P' || bytes[1] != 'K') {
      throw refused(
          name,
          "it is not an .xlsx workbook, or it has a password; save it as .xlsx without a password");
    }
    Map<String, byte[]> parts = new HashMap<>();
    Unpacked.parts(name, bytes, part -> isRead(name, part.toLowerCase(Locale.ROOT)))
        .forEach((part, held) -> parts.put(part.toLowerCase(Locale.ROOT), held));
    return new WorkbookParts(name, parts);
  }

  private static boolean isRead(String name, String part) {
    refuseWhatRuns(name, part);
    return part.endsWith(".xml") || part.endsWith(".rels");
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

  static ProblemsException refused(String name, String message) {
    return new ProblemsException(List.of(new Problem(name, 0, "", message)));
  }
}
