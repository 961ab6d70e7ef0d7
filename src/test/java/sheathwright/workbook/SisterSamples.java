package sheathwright.workbook;

import java.util.Map;

/** Tables of cases for what is asked of sisters. */
final class SisterSamples {

  private SisterSamples() {}

  static void putInto(Map<String, String> tables) {
    tables.put(
        "sister_share",
        """
        rafter_size,sister_size,rafter_modulus_psi,sister_modulus_psi
        2x8,2x8,,
        2x6,2x8,1400000,1600000
        2x4,2x12,1200000,1900000
        """);
  }
}
