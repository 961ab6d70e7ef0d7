package sheathwright.workbook.page;

import java.util.Map;

/** Tables of cases for what the framing can carry and what stops its repair. */
final class FramingSamples {

  private FramingSamples() {}

  static void putInto(Map<String, String> tables) {
    tables.put(
        "framing_stop",
        """
        worst_ratio,seen
        0.86,nothing
        2.783,nothing
        0.5,truss
        1.2,bearing-rot
        0.9,fire-retardant-panel
        1.1,live-wires
        0.2,exposed-planks
        """);
    tables.put("ridge_stop", "rise_in_12,ridge\n2,\n2.5,board\n1,beam\n3,unknown\n12,board\n");
    tables.put("covering_stop", "old_psf,new_psf\n2,2.1\n2,2.2\n9.5,1\n0,3\n");
    tables.put(
        "strutted_span",
        "span_ft,strut_ft,strut_on_bearing_wall\n14,8,yes\n14,5,yes\n14,8,\n16-6,7,no\n12,,yes\n");
  }
}
