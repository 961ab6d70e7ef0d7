package sheathwright.framing.rafter;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import sheathwright.catalog.Asked;

/**
 * An old rafter reckoned in plain numbers, from the handbook's sentences. Its design values are
 * those of douglas fir-larch no. 2 and hem-fir no. 1 as printed in Table 4A, secondary source.
 */
record PlainRafter(
    boolean isLarch,
    int size,
    double spacing,
    double live,
    double snow,
    double dead,
    int limit,
    double span,
    double seat,
    double thickness,
    double depth,
    boolean isWet,
    double degrees,
    boolean isIncised,
    boolean isSeasoned,
    double totalLimit,
    double notch,
    double end,
    double rise,
    double tiePart,
    double braces,
    double working,
    double person,
    double stack,
    double hung) {

  private static final List<String> SIZES = List.of("2x4", "2x6", "2x8", "2x10", "2x12");
  private static final double[] SIZE_FACTORS = {1.5, 1.3, 1.2, 1.1, 1.0};

  static PlainRafter any(Random chance) {
    int size = chance.nextInt(5);
    double depth = 3.5 + 2 * size + chance.nextDouble();
    return new PlainRafter(
        chance.nextBoolean(),
        size,
        12 + chance.nextInt(30),
        12 + chance.nextInt(9),
        chance.nextInt(60),
        chance.nextInt(30),
        new int[] {180, 240, 360}[chance.nextInt(3)],
        48 + chance.nextInt(200),
        1 + chance.nextInt(14) / 2d,
        1.4 + chance.nextDouble(),
        depth,
        chance.nextBoolean(),
        60 + chance.nextInt(90),
        chance.nextBoolean(),
        chance.nextBoolean(),
        chance.nextInt(3) == 0 ? 0 : 60 + chance.nextInt(300),
        chance.nextInt(3) * depth / 10,
        chance.nextInt(8),
        2 + chance.nextInt(12),
        chance.nextInt(4) / 10d,
        chance.nextInt(5) * 24,
        1 + chance.nextInt(40),
        250 + chance.nextInt(100),
        chance.nextInt(3) * 5,
        chance.nextInt(3) * 4);
  }

  Asked asked() {
    return Asked.of("rafter_screening")
        .with("species", isLarch ? "douglas-fir-larch" : "hem-fir")
        .with("grade", isLarch ? "no-2" : "no-1")
        .with("size", SIZES.get(size))
        .with("spacing_in", text(spacing))
        .with("roof_live_psf", text(live))
        .with("snow_psf", text(snow))
        .with("dead_psf", text(dead))
        .with("deflection_limit", text(limit))
        .with("value_set", "nds2018")
        .with("span_ft", text(span / 12))
        .with("bearing_in", text(seat))
        .with("stock", "measured")
        .with("thickness_in", text(thickness))
        .with("depth_in", text(depth))
        .with("moisture", isWet ? "wet" : "dry")
        .with("temperature_f", text(degrees))
        .with("incised", isIncised ? "yes" : "no")
        .with("seasoned", isSeasoned ? "yes" : "no")
        .with("total_deflection_limit", text(totalLimit))
        .with("notch_in", text(notch))
        .with("notch_known", "measured")
        .with("end_distance_in", text(end))
        .with("rise_in_12", text(rise))
        .with("tie_height_in", text(tiePart * span * rise / 12))
        .with("brace_spacing_in", text(braces))
        .with("deck_off_live_psf", text(working))
        .with("person_lb", text(person))
        .with("stack_psf", text(stack))
        .with("hung_psf", text(hung));
  }

  /** Every ratio at a span in inches, under its column. */
  Map<String, Double> ratios(double length) {
    Map<String, Double> ratios = new LinkedHashMap<>();
    double counted = length / tieFactor();
    double[] loads = {dead, dead + live, dead + snow};
    double[] durations = {0.9, 1.25, 1.15};
    String[] names = {"dead", "roof_live", "snow"};
    double repetitive = spacing <= 24 ? 1.15 : 1;
    double over = depth - notch;
    for (int i = 0; i < 3; i++) {
      double w = loads[i] / 144 * spacing;
      double stress = w * counted * counted / 8 / (thickness * depth * depth / 6);
      ratios.put(names[i] + "_bending_ratio", stress / (bending() * repetitive * durations[i]));
      // NDS 2018 3.4.3.2, from memory: V' = (2/3 Fv' b dn) (dn/d)².
      double allowed =
          2 * shear() * durations[i] * thickness * over / 3 * Math.pow(over / depth, 2);
      ratios.put(names[i] + "_shear_ratio", w * length / 2 / allowed);
    }
    double passing = Math.max(live, snow) * spacing / 144;
    double creep = isSeasoned && !isWet ? 1.5 : 2;
    double stiffness = 384 * modulus(isLarch ? 1.6e6 : 1.5e6) * thickness * Math.pow(depth, 3) / 12;
    // IRC Table R301.7, secondary source: 180 for rafters of more than 3 in 12, 240 for any other.
    int least = rise > 3 ? limit : Math.max(limit, 240);
    ratios.put("deflection_ratio", 5 * passing * Math.pow(counted, 3) * least / stiffness);
    double all = passing + creep * dead * spacing / 144;
    ratios.put(
        "total_deflection_ratio", 5 * all * Math.pow(counted, 3) * sagUnderAll() / stiffness);
    double reaction = (dead + Math.max(live, snow)) * spacing / 144 * length / 2;
    ratios.put("bearing_ratio", reaction / (thickness * seat * bearing()));
    ratios.put("notch_ratio", notch / (depth / 4));
    double slope = length * Math.hypot(1, rise / 12);
    double[] off = deckOff(length, braces == 0 ? slope : Math.min(braces, slope));
    ratios.put("deck_off_bending_ratio", off[0]);
    ratios.put("deck_off_slenderness_ratio", off[1]);
    return ratios;
  }

  /** Bending and slenderness ratios with the deck off and braces at a distance. */
  double[] deckOff(double length, double unbraced) {
    return deckOff(length, unbraced, person);
  }

  /** The same with so many pounds of a person on one rafter. */
  double[] deckOff(double length, double unbraced, double standing) {
    double star = bending() * 1.25;
    double effective = unbraced / depth < 7 ? 2.06 * unbraced : 1.63 * unbraced + 3 * depth;
    double slenderness = Math.sqrt(effective * depth) / thickness;
    double f = 1.2 * modulus(isLarch ? 580e3 : 550e3) / slenderness / slenderness / star;
    double low = 0;
    double high = 1;
    for (int i = 0; i < 60; i++) {
      double x = (low + high) / 2;
      boolean isAbove = 0.95 * x * x - (1 + f) * x + f > 0;
      low = isAbove ? x : low;
      high = isAbove ? high : x;
    }
    return new double[] {deckOffStress(length, standing) / (star * low), slenderness / 50};
  }

  /** The rafter itself at 35 pcf, what hangs from it, and an even load, or stacks and a person. */
  double deckOffStress(double length, double standing) {
    double counted = length / tieFactor();
    double still =
        35 / 1728d * thickness * depth * Math.hypot(1, rise / 12)
            + Math.min(hung, dead) / 144 * spacing;
    double even = (still + working / 144 * spacing) * counted * counted / 8;
    double stacked = (still + stack / 144 * spacing) * counted * counted / 8;
    double moment = Math.max(even, stacked + standing * counted / 4);
    return moment / (thickness * depth * depth / 6);
  }

  private double tieFactor() {
    // Parts of 0, 0.1, 0.2 and 0.3: at most 1/7.5 twice, then exactly 1/5, then over 1/4.
    return tiePart > 0.25 ? 0.67 : tiePart > 0.15 ? 0.83 : 1;
  }

  private double bending() {
    double sized = (isLarch ? 900 : 975) * SIZE_FACTORS[size];
    return sized * (isWet && sized > 1150 ? 0.85 : 1) * heat() * (isIncised ? 0.8 : 1);
  }

  private double shear() {
    return (isLarch ? 180 : 150) * (isWet ? 0.97 : 1) * heat() * (isIncised ? 0.8 : 1);
  }

  private double bearing() {
    double spread = seat < 6 && end >= 3 ? (seat + 0.375) / seat : 1;
    return (isLarch ? 625 : 405) * (isWet ? 0.67 : 1) * heat() * spread;
  }

  private double modulus(double printed) {
    return printed * (isWet ? 0.9 : 1) * (degrees > 100 ? 0.9 : 1) * (isIncised ? 0.95 : 1);
  }

  private double heat() {
    double to125 = isWet ? 0.7 : 0.8;
    double to150 = isWet ? 0.5 : 0.7;
    return degrees <= 100 ? 1 : degrees <= 125 ? to125 : to150;
  }

  private static String text(double number) {
    return String.valueOf(number);
  }

  /**
   * IBC Table 1604.3, its pairs: 180/120 without a ceiling, 240/180 with one, 360/240 of plaster.
   */
  private double sagUnderAll() {
    return totalLimit != 0 ? totalLimit : Map.of(180, 120, 240, 180, 360, 240).get(limit);
  }
}
