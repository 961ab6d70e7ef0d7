package sheathwright.workbook.audit;

import java.util.List;
import java.util.Map;
import sheathwright.job.file.Unpacked;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;

/** What is packed in a workbook's file. */
public final class PackedParts {

  private PackedParts() {}

  /**
   * All parts by name.
   *
   * @param name of the file, for messages
   * @throws ProblemsException if it is no workbook, or grows beyond all measure when unpacked
   */
  public static Map<String, byte[]> of(String name, byte[] file) {
    Map<String, byte[]> parts = Unpacked.parts(name, file, part -> true);
    if (!parts.containsKey("xl/workbook.xml")) {
      throw refused(
          name, "it holds no workbook; save it as .xlsx, without a password, and try again");
    }
    return parts;
  }

  static ProblemsException refused(String name, String message) {
    return new ProblemsException(List.of(new Problem(name, 0, "", message)));
  }
}
