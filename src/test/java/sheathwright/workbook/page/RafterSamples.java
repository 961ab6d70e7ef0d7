package sheathwright.workbook.page;

import java.util.Map;

/** Tables of cases for what is asked of old rafters and their wood. */
final class RafterSamples {

  private RafterSamples() {}

  static void putInto(Map<String, String> tables) {
    tables.put(
        "section_properties",
        "size,stock,thickness_in,depth_in\n2x8,,,\n2x6,pre-1970,,\n2x10,measured,1-11/16,9-1/4\n2x4,green,,\n");
    tables.put(
        "beam_stability",
        """
        unbraced_in,depth_in,thickness_in,min_modulus_psi,bending_psi
        48,7.25,1.5,580000,1428.3
        240,30,6.75,690000,2400
        24,11.25,2,370000,600
        """);
    tables.put(
        "design_values",
        """
        species,grade,size,value_set,load_duration,spacing_in,stock,thickness_in,depth_in,moisture,temperature_f,incised,flatwise,bearing_in,end_distance_in,unbraced_in
        douglas-fir-larch,no-2,2x8,nds2018,roof-live,24,,,,dry,,,,,,
        spruce-pine-fir,no-3,2x6,nds2018,permanent,32,full-sawn,,,wet,140,yes,,3.5,12,96
        southern-pine,no-1,2x10,nds2018,snow,16,measured,1-11/16,9-5/8,gets-wet-later,110,,yes,1.5,3,60
        hem-fir,no-1,2x12,nds1997,ten-minutes,24,pre-1970,,,dries-later,100,no,no,6,2,0
        """);
    tables.put(
        "rafter_thrust",
        "span_ft,rise_in_12,spacing_in,load_psf,tie_height_in\n12,4,16,30,\n14-6,6,24,45.5,22\n");
    tables.put(
        "heel_nails",
        """
        span_ft,rise_in_12,tie_height_in,spacing_in,load_psf,adjusted_lb,nails_found,code_snow
        12,4,,16,30,138,5,
        10-6,8,12,48,42.5,120,,to-30
        9,12,,12,20,150,3,to-20
        14,5.5,12,16,45,138,9,to-50
        16,3,,24,40,120,20,over-70
        """);
    tables.put(
        "uplift_tie",
        """
        wind_mph,exposure,spacing_in,roof_span_ft,rise_in_12,tie_lb
        115,b,16,28,4,
        130,b,24,30,6,400
        140,b,12,48,5,300
        """);
    tables.put(
        "rafter_screening",
        """
        species,grade,size,spacing_in,roof_live_psf,snow_psf,dead_psf,deflection_limit,value_set,span_ft,bearing_in,stock,thickness_in,depth_in,moisture,temperature_f,incised,seasoned,total_deflection_limit,notch_in,notch_known,end_distance_in,rise_in_12,tie_height_in,brace_spacing_in,deck_off_live_psf,person_lb,stack_psf,hung_psf,strut_ft,strut_on_bearing_wall
        douglas-fir-larch,no-2,2x8,16,20,30,10,180,nds2018,12,,,,,dry,,,,,,,,,,,,,,,,
        hem-fir,no-1,2x6,24,20,50,20,240,nds1997,11-6,3.5,pre-1970,,,dry,,no,no,180,3/4,measured,12,6,14,48,30,,,,6,yes
        southern-pine,no-3,2x10,19.2,16,0,15,180,nds1997,16,3,measured,1-3/4,9-5/8,wet,120,yes,yes,240,2,unknown,0,12,48,24,20,300,10,4,,
        hem-fir,select-structural,2x12,12,20,5,60,360,nds2018,26,5,green,,11-3/8,dry,,,,,2-3/4,assumed,6,3,20,0,20,250,5,,12,no
        """);
  }
}
