package sheathwright.workbook.page;

import java.util.Map;

/** Tables of cases for what is asked of the wind and of what holds against it. */
final class WindSamples {

  private WindSamples() {}

  static void putInto(Map<String, String> tables) {
    tables.put(
        "velocity_pressure",
        """
        wind_mph,exposure,height_ft,kzt,kd,edition
        105,B,12.1,,,7-16
        150,c,33,1.2,1,asce7-10
        120,d,60,,0.85,7-22
        """);
    tables.put("allowable_pressure", "strength_psf\n50\n0\n133.33\n");
    tables.put(
        "overhang_uplift",
        """
        wind_mph,exposure,height_ft,rise_in_12,roof,zone,area_sf,edition
        130,b,30,4,gable,2e,,7-16
        150,c,18,12,hip,3,37,7-22
        110,d,9,5,gable,3,32,7-10
        """);
    tables.put(
        "sheathing_uplift",
        """
        wind_mph,exposure,height_ft,rise_in_12,roof,zone,area_sf,edition
        130,b,30,4,gable,1,,7-16
        150,c,18,12,hip,3,37,7-22
        110,d,9,1,gable,3,2,asce7-10
        """);
    tables.put(
        "cladding_pressure",
        """
        wind_mph,exposure,height_ft,rise_in_12,roof,zone,area_sf,edition,kzt,enclosure
        150,b,30,5,gable,1,,7-10,1.1,partially-enclosed
        95,c,48,7,hip,1,64,7-16,,enclosed
        """);
    tables.put("zone_width", "least_width_ft,height_ft\n28,20\n50,15\n120,12\n300,4\n");
    tables.put("mean_roof_height", "eave_height_ft,run_ft,rise_in_12\n10,16,6\n9-6,14,0\n");
    tables.put(
        "nail_spacing_for_uplift",
        "resistance_lb,uplift_psf,support_spacing_in\n68.2,57.3,24\n120,33.7,16\n");
    tables.put("practical_nail_spacing", "spacing_in,most_in\n7.14,\n10.71,6\n48,\n3.5,12\n");
    tables.put("tributary_area", "spacing_in,line_spacing_in\n12,24\n24,16\n");
    tables.put(
        "clip_spacing",
        "resistance_lb,screws_per_clip,uplift_psf,panel_cover_in\n71.6,2,80.3,16\n94.8,1,33,12\n");
    tables.put(
        "clip_spacing_limit",
        """
        resistance_lb,screws_per_clip,clip_lb,seam_psf,tested_spacing_in,maker_most_in,uplift_psf,panel_cover_in
        71.6,2,250,60,24,24,80.3,16
        94.8,2,250,60,24,24,80.3,16
        94.8,2,150,110,24,24,80.3,16
        94.8,2,250,110,24,12,80.3,16
        """);
    tables.put(
        "weakest_link",
        """
        uplift_psf,seam_psf,clip_lb,screw_lb,screws_per_clip,clip_spacing_in,panel_cover_in,nail_lb,nail_spacing_in,support_spacing_in
        57.3,90,250,71.6,2,16,16,68.2,6,24
        57.3,90,250,71.6,1,16,16,68.2,6,16
        57.3,55,110,94.8,2,18,16,120,4,16
        """);
  }
}
