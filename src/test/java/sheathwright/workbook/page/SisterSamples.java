package sheathwright.workbook.page;

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
    tables.put(
        "sistered_rafter",
        """
        rafter_thickness_in,rafter_depth_in,sister_size,rafter_bending_psi,sister_bending_psi,spacing_in,span_ft,live_psf,dead_psf,existing_psf,jacked,deflection_limit
        ,3.5,2x6,1735.8,1504.3,24,10,38.5,10.8,10.8,yes,
        1-5/8,5-5/8,2x8,1100,1250,16,14-6,30,15,6,no,240
        ,3.5,2x8,1735.8,1388.6,24,10,38.5,10.8,0,,
        """);
    tables.put(
        "sister_reactions",
        """
        existing_lb,added_lb,rafter_share,sister_bears,rafter_depth_in,rafter_notch_in,sister_size,sister_notch_in,rafter_shear_psi,sister_shear_psi,rafter_bearing_psi,sister_bearing_psi,bearing_in
        60,433,0.205,yes,3.5,3/4,2x6,1,155,155,425,425,
        60,433,0.205,no,3.5,0,2x6,0,155,155,425,425,3
        """);
    tables.put(
        "adjusted_lateral",
        """
        lateral_lb,penetration_in,diameter_in,load_duration,moisture,temperature_f,penetration_counted
        118,1.5,0.148,,dry,,
        141,1.25,0.162,ten-minutes,stays-dry,120,no
        141,1.5,0.162,snow,gets-wet-later,110,yes
        """);
    putShort(tables);
    tables.put(
        "sister_sizes",
        """
        rafter_depth_in,rafter_bending_psi,sister_species,sister_grade,load,spacing_in,span_ft,live_psf,dead_psf,existing_psf,jacked,price_2x4_usd,price_2x6_usd,price_2x8_usd,price_2x10_usd,price_2x12_usd
        3.5,1735.8,spruce-pine-fir,no-2,snow,24,10,38.5,10.8,0,,8,11,17.10,24,31
        3.5,1735.8,southern-pine,no-1,snow,24,10,38.5,10.8,10.8,yes,9,12,11,,30
        3.5,400,hem-fir,no-3,roof-live,32,16,60,20,15,no,9,12,11,20,30
        5.5,1735.8,douglas-fir-larch,select-structural,roof-live,16,10,20,10,5,no,9,9,11,20,30
        """);
  }

  private static void putShort(Map<String, String> tables) {
    tables.put(
        "nails_along_sister",
        """
        sister_share,spacing_in,live_psf,dead_psf,span_ft,nail_spacing_in,lateral_lb,sister_bears
        0.5,24,30,10,13,9.23,135.7,yes
        0.9,24,60,20,14,16,60,no
        0,16,20,10,12,,100,no
        """);
    tables.put(
        "sister_splice",
        """
        span_ft,break_ft,spacing_in,live_psf,dead_psf,near_in,arm_in,end_distance_in,sisters,sister_size,sister_bending_psi,lateral_lb
        13,6.5,24,30,10,0,24.05,3,1,2x8,1428,135.7
        13,8,24,30,10,6,36.08,,2,2x10,1300,135.7
        """);
    tables.put(
        "part_sister_reach",
        """
        rafter_thickness_in,rafter_depth_in,rafter_bending_psi,spacing_in,span_ft,live_psf,dead_psf,support_ratio,development_in
        ,7.25,1000,24,13,30,10,0.5,
        1-5/8,5-5/8,900,16,12,30,10,0.8,16
        """);
    tables.put(
        "part_sister",
        """
        rafter_depth_in,sister_size,rafter_bending_psi,sister_bending_psi,rafter_modulus_psi,sister_modulus_psi,spacing_in,span_ft,live_psf,dead_psf,existing_psf,jacked,support_ratio,sister_length_ft,arm_in,lateral_lb,nail_stiffness_lb_per_in
        7.25,2x8,1428,1428,1600000,1600000,24,13,30,10,0,,0.5,9.75,24,135.7,6000
        5.5,2x8,1100,1300,,,16,12,30,10,8,no,0.5,11,18,117.3,
        """);
    tables.put(
        "part_sister_sag",
        """
        rafter_depth_in,sister_size,rafter_modulus_psi,sister_modulus_psi,spacing_in,span_ft,live_psf,sister_length_ft
        7.25,2x8,1600000,1600000,24,13,40,9.75
        7.25,2x8,1600000,1600000,24,13,40,6.5
        5.5,2x4,,,16,12,30,12
        """);
  }
}
