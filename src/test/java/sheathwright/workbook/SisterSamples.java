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
        lateral_lb,penetration_in,diameter_in,load_duration,wet,penetration_counted
        118,1.5,0.148,,,
        141,1.25,0.162,1.6,no,no
        141,1.5,0.162,1.15,yes,yes
        """);
  }
}
