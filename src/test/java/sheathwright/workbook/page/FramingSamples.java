package sheathwright.workbook.page;

import java.util.Map;

/** Tables of cases for what the framing can carry and what stops its repair. */
final class FramingSamples {

  private FramingSamples() {}

  static void putInto(Map<String, String> tables) {
    tables.put(
        "framing_stop",
        "worst_ratio,seen\n0.86,nothing\n2.783,nothing\n0.5,truss\n1.2,bearing-rot\n");
  }
}
