package sheathwright.workbook.page;

import java.util.Map;

/** Tables of cases for what is asked of panels and boards. */
final class DeckSamples {

  private DeckSamples() {}

  static void putInto(Map<String, String> tables) {
    tables.put(
        "panel_span",
        """
        span_rating,thickness_in,support_spacing_in,edge_support,dead_psf
        24/0,3/8,24,no,
        24/0,0.47,24,no,15
        32/16,15/32,16,yes,25
        20-oc,19/32,32,yes,12
        32/16,5/8,24,no,10
        none,1/2,16,no,
        """);
    tables.put(
        "panel_weight",
        "category,kind,sheet_length_in,sheet_width_in\n7/16-in,osb,,\n3/4-in,plywood,48,24\n");
    tables.put(
        "edge_clips",
        """
        span_rating,thickness_in,support_spacing_in,edge_ft,rafter_width_in
        24/0,3/8,16,444,
        24-oc,23/32,48,126.5,3
        """);
    tables.put(
        "piece_fit",
        """
        piece_length_in,piece_width_in,support_spacing_in,edges_supported,min_length_in
        47-7/8,24,24,no,
        32,12,16,yes,48
        """);
    tables.put(
        "board_span",
        """
        thickness_in,board_edge,bending_psi,modulus_psi,support_spacing_in
        3/4,square,,,24
        1.5,tongue-and-groove,420,700000,48
        1/2,,,,16
        """);
    tables.put(
        "boards_to_replace",
        "deck_area_sf,board_face_in,gap_in,stock_ft,waste_pct\n100,7-1/4,,16,10\n37.5,5-1/2,1/8,12,0\n");
    tables.put(
        "sheet_action",
        """
        finding,probe_in,moisture_pct,thickness_in,least_thickness_in,hump_in,joint_gap_in,bearing_in,edge_support,edge_needed,sound_nails,wanted_nails,hold_lb,wanted_lb,hole_in
        rot,3/8,24,,,,,,,,,,,,
        rot,,,,,,,,,,,,,,
        soft,0.13,12,15/32,7/16,3/16,1/32,3/8,no,yes,20,33,90,70,
        hole,,,,,,,,,,,,,,2-1/8
        thin,0,10,0.37,15/32,,,,,,,,,,
        pulled,,,,,,,1,yes,no,33,33,40,70.5,
        stain,,,,,,,,,,,,,,
        """);
    tables.put(
        "board_base", "thickness_in,gap_in,hole_in\n25/32,1/8,0\n3/4,1/4,1\n0.8,5/16,1-1/4\n");
  }
}
