package sheathwright.loads;

import static sheathwright.loads.LoadArguments.ONE;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.catalog.Narrowed;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Density;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.published.Published;
import sheathwright.wood.CrossSection;

/** What a roof weighs. */
public final class DeadLoads {

  private static final Source GEOMETRY = Source.derived("slope area over its projection");
  private static final Source WEIGHT = Source.derived("section times density, by spacing");
  private static final Figure<Density> NO_DENSITY = Figure.of(0, Units.PSF_PER_INCH);
  private static final Figure<Length> NO_THICKNESS = Figure.of(0, Units.INCH);
  private static final Source LAYERS = Source.derived("layers times weight");
  private static final Table WEIGHTS =
      Published.table("asce7/2010/dead-loads.csv", "dead_loads", "weights of materials", 1);
  private static final Table REMEMBERED =
      Published.table(
          "asce7/2010/dead-loads-from-memory.csv",
          "more_dead_loads",
          "weights of more materials",
          1);

  private static final double LEAST_THICKNESS = 0.5;
  private static final double MOST_THICKNESS = 8;
  private static final String THICKNESS_RULE = "1-1/2 for a dressed 2x";
  private static final Limits THICKNESS =
      Limits.between(LEAST_THICKNESS, MOST_THICKNESS, THICKNESS_RULE);
  private static final double LEAST_DEPTH = 2;
  private static final double MOST_DEPTH = 24;
  private static final String DEPTH_RULE = "5-1/2 for a dressed 2x6";
  private static final Limits DEPTH = Limits.between(LEAST_DEPTH, MOST_DEPTH, DEPTH_RULE);

  private DeadLoads() {}

  /**
   * What one covering, deck or ceiling weighs, for each square foot of its own surface.
   *
   * <pre>
   * load = layers × (weight of a layer + weight for each inch × thickness)
   * </pre>
   *
   * <p>Does not cover wet materials, or what the product at hand weighs: laminated asphalt shingles
   * may weigh twice what the table gives (2.3 psf to 4.5 psf, from memory), and what stands on the
   * bundle holds. The table has no OSB: see {@code panel_weight}. Screening only: local code and a
   * licensed engineer decide.
   *
   * <p>Boards, plywood, gypsum board, glass fiber and foam go by their thickness; everything else
   * by the layer, and then no thickness is taken.
   *
   * <pre>{@code
   * layerLoad(ASPHALT_SHINGLES, number(2), in(0)) // 4 psf
   * layerLoad(PLYWOOD_DECK, number(1), in("1/2")) // 1.6 psf
   * }</pre>
   *
   * @param material of the layer
   * @param layers of it, one on the other, 1 to 10
   * @param thickness of one layer where the material goes by thickness, 0 in to 24 in
   * @return pounds per square foot on the slope
   * @throws RefusedException if a number lies outside its range, a thickness is missing, or one is
   *     given for a material that goes by the layer
   * @see "ASCE 7-10, Table C3-1, secondary source; standing-seam metal from memory"
   */
  @LibraryFunction(words = {"shingle", "tile", "slate", "dead load"})
  @Column("load_psf")
  public static Figure<Pressure> layerLoad(
      @Column("material") OneOf<RoofMaterial> material,
      @Column(value = "layers", preset = "1") Figure<Ratio> layers,
      @Column(value = "thickness_in", preset = "0") Figure<Length> thickness) {
    var named = LoadArguments.word("material", material);
    var count =
        layers.within("layers", Units.RATIO, Limits.whole(1, 10, "look at the eave or a cut"));
    var given =
        thickness.within(
            "thickness_in", Units.INCH, Limits.between(0, 24, "of one layer; 1/2 for a ceiling"));

    var isRemembered = named.is(RoofMaterial.STANDING_SEAM);
    var listed =
        Choice.choose(isRemembered, RoofMaterial.ASPHALT_SHINGLES, named).as("listed_material");
    var printed = WEIGHTS.number(Units.PSF, "each_psf", listed).as("listed_layer_psf", Units.PSF);
    var remembered =
        REMEMBERED
            .number(Units.PSF, "each_psf", RoofMaterial.STANDING_SEAM)
            .as("standing_seam_psf", Units.PSF);
    var each = Figure.choose(isRemembered, remembered, printed).as("each_layer_psf", Units.PSF);
    var perInch =
        WEIGHTS
            .number(Units.PSF_PER_INCH, "per_inch", listed)
            .as("each_inch_psf_per_in", Units.PSF_PER_INCH);
    var goesByLayer = perInch.isTheSameAs(NO_DENSITY);
    var t =
        given
            .onlyIf(
                Condition.any(goesByLayer, given.isMoreThan(NO_THICKNESS)),
                "a thickness is missing; %s goes by its thickness, 1/2 in of gypsum board for one"
                    .formatted(named))
            .as("thickness_if_asked_for_in", Units.INCH)
            .onlyIf(
                Condition.any(perInch.isMoreThan(NO_DENSITY), given.isTheSameAs(NO_THICKNESS)),
                "thickness_in is %s; %s goes by the layer and takes none, leave it out"
                    .formatted(given, named))
            .as("counted_thickness_in", Units.INCH);
    return count.times(each.plus(perInch.times(t))).as("load_psf", Units.PSF, LAYERS);
  }

  /**
   * What the rafters themselves weigh, spread over the slope.
   *
   * <pre>
   * load = b × d ÷ spacing × density
   * </pre>
   *
   * <p>Does not cover ridge boards, hips, blocking, ceiling joists and sisters, or wet wood. A
   * density of 34 pcf goes with a specific gravity of 0.50, dry in air. Screening only: local code
   * and a licensed engineer decide.
   *
   * <pre>{@code
   * framingLoad(CrossSection.thickness(in(1.5)).depth(in(5.5)), in(16), pcf(34)) // 1.46 psf
   * }</pre>
   *
   * @param section of the rafter
   * @param spacing center to center, 4 in to 120 in
   * @param density of the wood, 15 pcf to 70 pcf
   * @return pounds per square foot on the slope
   * @throws RefusedException if a number lies outside its range
   * @see "derived: area of the section; 34 pcf is common practice, no source"
   */
  @LibraryFunction(words = {"dead load"})
  @Column("load_psf")
  public static Figure<Pressure> framingLoad(
      @Narrowed(
              column = "thickness_in",
              least = LEAST_THICKNESS,
              most = MOST_THICKNESS,
              rule = THICKNESS_RULE)
          @Narrowed(column = "depth_in", least = LEAST_DEPTH, most = MOST_DEPTH, rule = DEPTH_RULE)
          CrossSection section,
      @Column("spacing_in") Figure<Length> spacing,
      @Column(value = "density_pcf", preset = "34") Figure<Density> density) {
    var b = section.thickness().within("thickness_in", Units.INCH, THICKNESS);
    var d = section.depth().within("depth_in", Units.INCH, DEPTH);
    var s =
        spacing
            .within("spacing_in", Units.INCH, Limits.between(4, 120, "16 and 24 are usual"))
            .symbol("s");
    var weight =
        density.within("density_pcf", Units.PCF, Limits.between(15, 70, "34 for dry Douglas fir"));
    return b.times(d).dividedBy(s).times(weight).as("load_psf", Units.PSF, WEIGHT);
  }

  /**
   * A weight known for each square foot of the slope, as it is for each square foot of plan below.
   *
   * <pre>
   * on the projection = on the slope × √(1 + (rise ÷ 12)²)
   * </pre>
   *
   * <p>Does not cover snow and roof live load, which stand on the projection already. Screening
   * only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * deadOnProjection(psf(12), pitch(4)) // 12.65 psf
   * deadOnProjection(psf(15), pitch(4)) // 15.81 psf
   * }</pre>
   *
   * @param onSlope weight on the slope, 0 psf to 200 psf
   * @param rise rise in 12 of run, 0 in 12 to 48 in 12
   * @return pounds per square foot of horizontal projection
   * @throws RefusedException if either number lies outside its range
   * @see "derived: theorem of Pythagoras"
   */
  @LibraryFunction
  @Column("dead_psf")
  public static Figure<Pressure> deadOnProjection(
      @Column("slope_load_psf") Figure<Pressure> onSlope,
      @Column("rise_in_12") Figure<Ratio> rise) {
    var weight =
        onSlope.within(
            "slope_load_psf", Units.PSF, Limits.between(0, 200, "10 is a common light roof"));
    var pitch = LoadArguments.rise(rise).as("pitch", Units.RATIO);
    var longer = ONE.plus(pitch.squared()).squareRoot().as("slope_factor", Units.RATIO, GEOMETRY);
    return weight.times(longer).as("dead_psf", Units.PSF, GEOMETRY);
  }
}
