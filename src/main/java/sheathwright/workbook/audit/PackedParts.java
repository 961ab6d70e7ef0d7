package sheathwright.workbook.audit;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;

/** What is packed in a workbook's file, unpacked up to what any workbook of ours could need. */
public final class PackedParts {

  private static final int MOST_PARTS = 5_000;
  private static final long MOST_BYTES = 200_000_000;

  private PackedParts() {}

  /**
   * All parts by name.
   *
   * @param name of the file, for messages
   * @throws ProblemsException if it is no workbook, or grows beyond all measure when unpacked
   */
  public static Map<String, byte[]> of(String name, byte[] file) {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    long left = MOST_BYTES;
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        byte[] bytes = zip.readNBytes((int) Math.min(left + 1, Integer.MAX_VALUE - 8));
        left -= bytes.length;
        if (left < 0 || parts.size() == MOST_PARTS) {
          throw refused(
              name,
              "it unpacks to more than %s parts or %s bytes, which no workbook of ours does; it is not opened"
                  .formatted(MOST_PARTS, MOST_BYTES));
        }
        String path = entry.getName().replace('\\', '/');
        parts.put(path.startsWith("/") ? path.substring(1) : path, bytes);
      }
    } catch (IOException | IllegalArgumentException broken) {
      throw refused(name, NO_WORKBOOK);
    }
    if (!parts.containsKey("xl/workbook.xml")) {
      throw refused(name, NO_WORKBOOK);
    }
    return parts;
  }

  private static final String NO_WORKBOOK =
      "it is no .xlsx workbook that can be read; save it as .xlsx, without a password, and try again";

  static ProblemsException refused(String name, String message) {
    return new ProblemsException(List.of(new Problem(name, 0, "", message)));
  }
}
