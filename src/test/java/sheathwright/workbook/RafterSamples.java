package sheathwright.workbook;

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
        douglas-fir-larch,no-2,2x8,nds2018,roof-live,24,,,,,,,,,,
        hem-fir-north,stud,2x6,nds2018,permanent,32,full-sawn,,,wet,140,yes,,3.5,12,96
        southern-pine,no-1,2x10,southern-pine-2012,snow,16,measured,1-11/16,9-5/8,wet,110,,yes,1.5,3,60
        hem-fir,no-1,2x12,nds1997,ten-minutes,24,pre-1970,,,dry,100,no,no,6,2,0
        """);
  }
}
