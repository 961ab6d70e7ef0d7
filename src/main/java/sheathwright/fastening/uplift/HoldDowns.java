package sheathwright.fastening.uplift;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.fastening.uplift.HoldDown.Link;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.loads.wind.WindArguments;

/** The two chains that hold a roof down: the covering to the deck, and the deck to the rafters. */
public final class HoldDowns {

  private static final Source SHARE = Source.derived("strength over the area that one holds");

  private HoldDowns() {}

  /**
   * Which link gives way first between the covering and the rafters, and whether all of them hold
   * against the wind.
   *
   * <pre>
   * clip   = clip strength ÷ (clip spacing × panel cover)
   * screws = screws per clip × resistance ÷ (clip spacing × panel cover)
   * nails  = resistance ÷ (nail spacing × support spacing)
   * covering to deck = the least of seam, clip and screws; deck to rafters = nails
   * </pre>
   *
   * <p>Does not cover the panel's bending between rafters, the rafters' own ties to the walls,
   * edges and overhangs. Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * weakestLink(psf(57.3), psf(90), lb(250), lb(71.6), number(2), in(16), in(16), lb(68.2), in(6), in(24)).weakest() // nails
   * weakestLink(psf(57.3), psf(90), lb(250), lb(71.6), number(1), in(16), in(16), lb(68.2), in(6), in(24)).weakest() // screws
   * }</pre>
   *
   * @param uplift of the zone at ASD level, 1 psf to 500 psf
   * @param seam tested uplift of panel and seam at this clip spacing, safety factor taken off, 1
   *     psf to 500 psf
   * @param clip tested strength of one clip, safety factor taken off, 1 lb to 5000 lb
   * @param screw one screw pulled out of this deck, allowable for wind, 1 lb to 2000 lb
   * @param screws in each clip, 1 to 6
   * @param clipSpacing from clip to clip, 1 in to 72 in
   * @param cover of the panel, seam to seam, 4 in to 48 in
   * @param nail one nail, the lesser of withdrawal and pull-through, allowable for wind, 1 lb to
   *     2000 lb
   * @param nailSpacing from nail to nail on a rafter, 1 in to 24 in
   * @param supportSpacing center to center of the rafters or trusses, 6 in to 96 in
   * @return the part of each link's strength that the wind uses up, which may be 1 at most; what
   *     each chain holds; the weakest link; yes if all hold
   * @throws RefusedException if a number lies outside its range
   * @see "derived: strength over the area that one fastener holds"
   */
  @LibraryFunction
  public static HoldDown weakestLink(
      @Column("uplift_psf") Figure<Pressure> uplift,
      @Column("seam_psf") Figure<Pressure> seam,
      @Column("clip_lb") Figure<Force> clip,
      @Column("screw_lb") Figure<Force> screw,
      @Column("screws_per_clip") Figure<Ratio> screws,
      @Column("clip_spacing_in") Figure<Length> clipSpacing,
      @Column("panel_cover_in") Figure<Length> cover,
      @Column("nail_lb") Figure<Force> nail,
      @Column("nail_spacing_in") Figure<Length> nailSpacing,
      @Column("support_spacing_in") Figure<Length> supportSpacing) {
    var pull = WindArguments.uplift(uplift);
    var seamHolds = WindArguments.seam(seam).as("seam_holds_psf", Units.PSF);
    var clips = ClipSpacings.spacing("clip_spacing_in", clipSpacing, "16 and 24 are usual");
    var clipArea =
        clips.times(WindArguments.cover(cover)).as("area_of_a_clip_sf", Units.SQUARE_FOOT);
    var clipHolds = holds("clip_holds_psf", WindArguments.clipStrength(clip), clipArea);
    var screwsHold =
        holds(
            "screws_hold_psf",
            ClipSpacings.clip(WindArguments.strength("screw_lb", screw), screws),
            clipArea);
    var nails =
        nailSpacing.within(
            "nail_spacing_in", Units.INCH, Limits.between(1, 24, "6 and 12 are usual"));
    var nailArea =
        nails
            .times(WindArguments.supports(supportSpacing))
            .as("area_of_a_nail_sf", Units.SQUARE_FOOT);
    var deck = holds("deck_holds_psf", WindArguments.strength("nail_lb", nail), nailArea);

    var metal = seamHolds.min(clipHolds).as("metal_holds_psf", Units.PSF);
    var covering = metal.min(screwsHold).as("covering_holds_psf", Units.PSF, SHARE);
    var inMetal =
        Choice.choose(seamHolds.isAtMost(clipHolds), Link.SEAM, Link.CLIP).as("weakest_in_metal");
    var inCovering =
        Choice.choose(metal.isAtMost(screwsHold), inMetal, Link.SCREWS).as("weakest_in_covering");

    var seamCheck = Check.of("seam", "seam_ratio", pull, seamHolds);
    var clipCheck = Check.of("clip", "clip_ratio", pull, clipHolds);
    var screwsCheck = Check.of("screws of the clip", "screws_ratio", pull, screwsHold);
    var nailsCheck = Check.of("nails of the deck", "nails_ratio", pull, deck);
    return new HoldDown(
        seamCheck,
        clipCheck,
        screwsCheck,
        nailsCheck,
        covering,
        deck,
        Choice.choose(covering.isAtMost(deck), inCovering, Link.NAILS).as("weakest"),
        Condition.all(seamCheck.ok(), clipCheck.ok(), screwsCheck.ok(), nailsCheck.ok()).as("ok"));
  }

  private static Figure<Pressure> holds(String name, Figure<Force> strength, Figure<?> area) {
    return strength.dividedBy(area).as(name, Units.PSF, SHARE);
  }
}
