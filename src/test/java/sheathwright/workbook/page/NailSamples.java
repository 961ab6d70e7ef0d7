package sheathwright.workbook.page;

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
    tables.put("toe_nail", "length_in,side_thickness_in\n2-1/2,\n3,3/4\n");
    tables.put(
        "nails_to_add",
        """
        sound_nails,support_spacing_in,edge_spacing_in,field_spacing_in,credit,blocked_edges
        24,16,6,12,yes,
        33,24,6,6,no,yes
        46,24,6,6,yes,no
        """);
    putResistances(tables);
    putCounts(tables);
    putSchedules(tables);
  }

  private static void putResistances(Map<String, String> tables) {
    tables.put("nail_dimensions", "nail\n8d-common\nrsrs-01\n16d-common\n");
    tables.put("screw_dimensions", "screw\nno-8\nno-10\n");
    tables.put("wood_gravity", "species\nspruce-pine-fir\ndouglas-fir-larch\n");
    tables.put("panel_gravity", "panel\nany-osb\nother-plywood\n");
    tables.put("panel_holding_gravity", "shank,moisture\nring,stays-wet\nsmooth,stays-dry\n");
    tables.put(
        "nail_resistance",
        """
        diameter_in,length_in,head_diameter_in,shank,rings_in,specific_gravity,thickness_in,panel_gravity,shim_in,load_duration,moisture,temperature_f
        0.131,2.5,0.281,smooth,,0.42,7/16,0.5,,,dry,
        0.113,2-3/8,0.281,ring,1.5,0.42,15/32,0.42,3/8,snow,dries-later,110
        0.131,2.5,0.281,stainless,0,0.5,3/4,0.5,0,ten-years,dries-later,140
        """);
    tables.put(
        "screw_resistance",
        """
        screw_kind,diameter_in,length_in,thread_in,tip_in,specific_gravity,thickness_in,shim_in,load_duration,moisture,temperature_f
        lag-screw,1/2,4,2.5,5/16,0.55,1.5,,ten-years,dry,
        wood-screw,0.19,2.5,1-5/8,,0.42,7/16,1/4,,gets-wet-later,150
        """);
    tables.put(
        "panel_screw_withdrawal",
        """
        specific_gravity,diameter_in,thickness_in,point_in,load_duration,moisture,temperature_f
        0.42,0.19,15/32,,,dry,
        0.5,0.216,7/16,1/8,ten-years,stays-wet,120
        """);
  }

  private static void putCounts(Map<String, String> tables) {
    tables.put(
        "nails_per_piece",
        """
        first_support_in,support_spacing_in,edge_spacing_in,field_spacing_in,blocked_edges,piece_length_in,piece_width_in
        0,24,6,12,,48,48
        8,16,6,12,yes,96,24
        3/4,19.2,4,6,yes,40,30.5
        """);
    tables.put(
        "nail_order",
        "nails,waste_pct,nails_per_box,nails_per_pound,nails_per_coil\n2790,,2500,,\n589,5,1000,106,120\n");
    tables.put(
        "seam_length",
        "eave_ft,slope_length_ft,sheet_length_in,sheet_width_in\n24,12,,\n42,16-9 1/4,96,48\n3,5,,\n");
  }

  private static void putSchedules(Map<String, String> tables) {
    tables.put(
        "nailing_schedule",
        """
        code,thickness_in,nail,wind_mph,exposure,support_spacing_in,specific_gravity
        irc-2018,7/16,8d-common,115,b,24,0.42
        irc-2021,23/32,rsrs-01,120,c,16,0.5
        ibc-2024,0.47,deformed-2-1/2,105,c,,0.42
        irc-2015,1-1/8,10d-common,139,d,48,0.42
        """);
    tables.put(
        "alternate_schedule",
        """
        code,thickness_in,alternate,wind_mph,specific_gravity
        irc-2018,7/16,staple-16-ga,115,
        irc-2021,5/8,nail-0.113,105,0.5
        irc-2024,23/32,nail-0.097,110,0.42
        """);
    tables.put(
        "high_wind_schedule",
        "wind_mph,exposure,specific_gravity\n160,c,0.42\n115,b,0.5\n175,d,0.42\n");
    tables.put(
        "re_nailing",
        """
        old_nails_count,old_spacing_in,enough_spacing_in,sound_nails,support_spacing_in,edge_spacing_in,field_spacing_in
        yes,12,,33,24,,
        no,6,6,45,24,6,6
        yes,6,6,45,16,4,6
        """);
    tables.put("board_nails", "crossings,sound_nails,nails_each\n400,690,\n12,40,2\n");
  }
}
