package sheathwright.fastening.uplift;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.catalog.LibraryFunction;
import sheathwright.catalog.Marked;
import sheathwright.fastening.uplift.ClipSpacing.Governs;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** How close the clips of a standing-seam roof must stand. */
public final class ClipSpacings {

  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);

  private ClipSpacings() {}

  /**
   * How far apart the clips of a standing-seam panel may stand so that their screws do not pull out
   * of the deck, exactly.
   *
   * <pre>
   * spacing = screws per clip × resistance ÷ (uplift × panel cover)
   * </pre>
   *
   * <p>Does not cover the strength of clip, seam and panel, nor the maker's greatest spacing (see
   * {@code clip_spacing_limit}). Most tests of metal roofs were made on 15/32 in of plywood or
   * more: a thinner deck must be shown by test. Screening only: local code and a licensed engineer
   * decide.
   *
   * <pre>{@code
   * clipSpacing(lb(71.6), number(2), psf(80.3), in(16)) // 16.0498 in
   * }</pre>
   *
   * @param resistance of one screw pulled out of this deck, allowable for wind, 1 lb to 2000 lb
   * @param screws in each clip, 1 to 6
   * @param uplift of the zone at ASD level, 1 psf to 500 psf
   * @param cover of the panel, seam to seam, 4 in to 48 in
   * @return inches from clip to clip
   * @throws RefusedException if a number lies outside its range
   * @see "derived: load of the area that one clip holds"
   */
  @LibraryFunction(words = {"metal roof", "standing seam"})
  @Column(value = "spacing_in", marked = Marked.DOWN)
  public static Figure<Length> clipSpacing(
      @Column("resistance_lb") Figure<Force> resistance,
      @Column("screws_per_clip") Figure<Ratio> screws,
      @Column("uplift_psf") Figure<Pressure> uplift,
      @Column("panel_cover_in") Figure<Length> cover) {
    var seamToSeam = Columns.of(StandingSeam.class).let("cover", cover);
    return UpliftArguments.spacing(
        "spacing_in", clip(resistance, screws), UpliftArguments.uplift(uplift), seamToSeam);
  }

  /**
   * How far apart the clips of a standing-seam panel may stand by screws, clip, seam and maker, and
   * which of the four decides.
   *
   * <pre>
   * by screws = screws per clip × resistance ÷ (uplift × panel cover)
   * by clip   = clip strength ÷ (uplift × panel cover)
   * by seam   = tested spacing × tested pressure ÷ uplift, not over the tested spacing
   * spacing   = the least of these and the maker's greatest
   * </pre>
   *
   * <p>Does not cover panels that were never tested; a test value is divided by its safety factor
   * first, 2 in product approvals, and the maker's engineering decides. Screening only: local code
   * and a licensed engineer decide.
   *
   * <pre>{@code
   * clipSpacingLimit(lb(71.6), number(2), StandingSeam.tested(psf(60), lb(250)).cover(in(16)), MakerSpacing.tested(in(24)).most(in(24)), psf(80.3)).governs() // screws
   * clipSpacingLimit(lb(94.8), number(2), StandingSeam.tested(psf(60), lb(250)).cover(in(16)), MakerSpacing.tested(in(24)).most(in(24)), psf(80.3)).governs() // seam
   * }</pre>
   *
   * @param resistance of one screw pulled out of this deck, allowable for wind, 1 lb to 2000 lb
   * @param screws in each clip, 1 to 6
   * @param panel as its maker tested it
   * @param maker how far apart its maker lets clips stand
   * @param uplift of the zone at ASD level, 1 psf to 500 psf
   * @return inches from clip to clip, and screws, clip, seam or maker
   * @throws RefusedException if a number lies outside its range
   * @see "derived: load of the area that one clip holds; a test is not stretched to wider spacings"
   */
  @LibraryFunction(words = {"metal roof", "standing seam"})
  public static ClipSpacing clipSpacingLimit(
      @Column("resistance_lb") Figure<Force> resistance,
      @Column("screws_per_clip") Figure<Ratio> screws,
      StandingSeam panel,
      MakerSpacing maker,
      @Column("uplift_psf") Figure<Pressure> uplift) {
    var pull = UpliftArguments.uplift(uplift);
    var byScrews =
        UpliftArguments.spacing(
            "spacing_by_screws_in", clip(resistance, screws), pull, panel.cover());
    var byClip = UpliftArguments.spacing("spacing_by_clip_in", panel.clip(), pull, panel.cover());
    var share = panel.seam().dividedBy(pull).in(Units.RATIO).min(ONE).as("seam_share", Units.RATIO);
    var bySeam =
        maker
            .tested()
            .times(share)
            .as("spacing_by_seam_in", Units.INCH, Source.derived("same load on each clip"));

    var byTest = byClip.min(bySeam).as("spacing_by_test_in", Units.INCH);
    var onDeck = byScrews.min(byTest).as("spacing_by_strength_in", Units.INCH);
    var testGoverns =
        Choice.choose(byClip.isAtMost(bySeam), Governs.CLIP, Governs.SEAM).as("test_governs");
    var strengthGoverns =
        Choice.choose(byScrews.isAtMost(byTest), Governs.SCREWS, testGoverns)
            .as("strength_governs");
    return new ClipSpacing(
        onDeck
            .min(maker.most())
            .as("spacing_in", Units.INCH, Source.derived("least of all that limit it")),
        Choice.choose(maker.most().isAtMost(onDeck), Governs.MAKER, strengthGoverns).as("governs"));
  }

  private static Figure<Force> clip(Figure<Force> resistance, Figure<Ratio> screws) {
    return ScrewedClips.hold(UpliftArguments.resistance(resistance), screws);
  }
}
