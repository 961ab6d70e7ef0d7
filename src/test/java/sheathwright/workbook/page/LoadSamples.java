package sheathwright.workbook.page;

import java.util.Map;

/** Tables of cases for what is asked of the loads on a roof. */
final class LoadSamples {

  private LoadSamples() {}

  static void putInto(Map<String, String> tables) {
    tables.put(
        "roof_live_load",
        "tributary_sf,rise_in_12,edition\n260,3,7-16\n120,5,7-10\n700,8,7-22\n30,14,asce7-16\n");
    tables.put("code_roof_live", "tributary_sf,rise_in_12\n60,3\n300,8\n700,12\n200,4\n");
    tables.put("dead_on_projection", "slope_load_psf,rise_in_12\n12,4\n15,0\n8.5,12\n");
    tables.put(
        "layer_load",
        """
        material,layers,thickness_in
        plywood,,15/32
        gypsum-board,2,1/2
        wood-sheathing,1,25/32
        """);
    tables.put(
        "framing_load",
        "thickness_in,depth_in,spacing_in,density_pcf\n1.5,5.5,16,\n1-5/8,7-1/2,24,31.5\n");
    tables.put(
        "load_combinations",
        """
        dead_psf,roof_live_psf,snow_psf,uplift_psf,edition
        10,20,25,30,7-16
        15,20,40,0,7-22
        22,12,0,0,7-10
        8,20,0,120,7-16
        60,12,10,0,7-16
        """);
    putSnow(tables);
  }

  private static void putSnow(Map<String, String> tables) {
    tables.put(
        "roof_snow",
        """
        ground_snow_psf,exposure_factor,thermal_factor,importance,rise_in_12,slippery,edition
        40,1,1.1,1,6,no,7-16
        30,0.9,1,1.2,8,yes,7-10
        55,1,1.2,1,12,yes,7-16
        25,1.1,1.05,0.8,24,no,asce7-16
        0,1,1.3,1,0,yes,7-16
        """);
    tables.put(
        "snow_exposure_factor",
        "terrain,shelter\nb,sheltered\nd,fully-exposed\nabove-treeline,partially-exposed\n");
    tables.put(
        "snow_thermal_factor",
        "roof_warmth,edition\nheated,7-16\ncold-ventilated,7-22\nwarm-greenhouse,7-10\n");
    tables.put("snow_importance", "risk_category,edition\niii,7-16\nI,7-10\niv,7-22\n");
    tables.put(
        "minimum_snow",
        """
        ground_snow_psf,risk_category,rise_in_12,edition
        30,ii,0.5,7-10
        15,iv,2,7-16
        50,iii,1,7-22
        50,ii,6,7-22
        """);
    tables.put(
        "rain_on_snow",
        """
        ground_snow_psf,risk_category,rise_in_12,eave_to_ridge_ft,edition
        20,ii,0.25,80,7-16
        28,ii,0,30,7-22
        0,i,0,30,7-10
        20,ii,4,30,7-16
        """);
    tables.put(
        "unbalanced_snow",
        """
        ground_snow_psf,sloped_psf,rise_in_12,eave_to_ridge_ft,simple_rafters,winter_wind,edition
        40,30.8,6,14,,,7-16
        30,25,0.5,130,,,7-10
        60,42,4,16,no,0.45,7-22
        60,42,0,24,,,7-16
        150,110,5,40,,,7-22
        """);
  }
}
