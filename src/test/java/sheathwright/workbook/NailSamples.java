package sheathwright.workbook;

import java.util.Map;

/** Tables of cases for what is asked of nails and screws. */
final class NailSamples {

  private NailSamples() {}

  static void putInto(Map<String, String> tables) {
    tables.put(
        "nail_withdrawal",
        "specific_gravity,diameter_in,shank\n0.42,0.131,smooth\n0.42,0.113,ring\n0.5,0.131,stainless\n");
    tables.put("screw_withdrawal", "specific_gravity,diameter_in\n0.5,0.164\n0.42,0.19\n");
    tables.put("lag_withdrawal", "specific_gravity,diameter_in\n0.5,1/2\n0.42,3/8\n");
    tables.put(
        "nail_pull_through",
        "specific_gravity,head_diameter_in,thickness_in\n0.5,0.281,7/16\n0.42,0.281,15/32\n0.5,0.281,3/4\n");
    tables.put(
        "nail_lateral",
        """
        diameter_in,length_in,side_thickness_in,side_gravity,main_gravity,bending_yield_psi
        0.148,3,1.5,0.5,0.5,90000
        0.192,4,1/2,0.42,0.55,80000
        0.1,3.2,0.1,0.36,0.5,250000
        """);
    tables.put(
        "nails_to_add",
        """
        sound_nails,support_spacing_in,edge_spacing_in,field_spacing_in,credit,blocked_edges
        24,16,6,12,yes,
        33,24,6,6,no,yes
        46,24,6,6,yes,no
        """);
  }
}
