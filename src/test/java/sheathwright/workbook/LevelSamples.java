package sheathwright.workbook;

import java.util.Map;

/** Tables of cases for what is asked of string lines, strips and sisters. */
final class LevelSamples {

  private LevelSamples() {}

  static void putInto(Map<String, String> tables) {
    tables.put(
        "string_sag", "string_ft,place_ft,line_lb_per_ft,tension_lb\n20,10,,\n16-6,4,0.003,12\n");
    tables.put("drop_below_string", "reading_in,block_in,string_sag_in\n2-1/8,,\n1/2,3/4,0.045\n");
    tables.put("sag_fraction", "sag_in,span_ft,fraction\n1-5/8,12-0 1/4,\n0,12,180\n1/2,15,180\n");
    tables.put(
        "chord_deviation",
        """
        first_in,first_drop_in,last_in,last_drop_in,place_in,drop_in
        0,1/4,120,3/4,60,7/8
        24,0,144,-1/2,48,1/8
        """);
    tables.put(
        "levelling_action",
        """
        build_up_in,leave_in,shim_in,truss
        1/8,,,
        3/8,,,no
        1/2,,,no
        1/2,,,yes
        -1/4,,,no
        -1/4,1/8,1/2,yes
        """);
    tables.put("shim_thickness", "build_up_in,step_in\n0.2,\n-1/4,\n3/8,1/8\n");
    tables.put(
        "shim_taper",
        "first_thickness_in,last_thickness_in,length_ft,most_in_12\n0,3/8,2,\n1/2,1/8,1,0.3\n");
    tables.put("shim_nail", "nail_in,shim_in\n2-1/2,3/8\n2,0\n");
    tables.put(
        "sister_lap",
        """
        build_up_in,sister_size,rafter_size,least_lap_in
        1-5/8,2x8,2x4,
        1-5/8,2x4,2x4,2-1/2
        4,2x4,2x6,3
        10,2x6,2x10,
        """);
  }
}
