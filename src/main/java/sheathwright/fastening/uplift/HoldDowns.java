package sheathwright.fastening.uplift;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.fastening.uplift.HoldDown.Link;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

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
   * weakestLink(psf(57.3), StandingSeam.tested(psf(90), lb(250)).cover(in(16)), ScrewedClips.of(number(2), lb(71.6)).spacing(in(16)), NailedDeck.nail(lb(68.2)).spacing(in(6)).supports(in(24))).weakest() // nails
   * weakestLink(psf(57.3), StandingSeam.tested(psf(90), lb(250)).cover(in(16)), ScrewedClips.of(number(1), lb(71.6)).spacing(in(16)), NailedDeck.nail(lb(68.2)).spacing(in(6)).supports(in(24))).weakest() // screws
   * }</pre>
   *
   * @param uplift of the zone at ASD level, 1 psf to 500 psf
   * @param panel as its maker tested it, at this clip spacing
   * @param clips as they are screwed to the deck
   * @param nailing of the deck to the rafters
   * @return the part of each link's strength that the wind uses up, which may be 1 at most; what
   *     each chain holds; the weakest link; yes if all hold
   * @throws RefusedException if a number lies outside its range
   * @see "derived: strength over the area that one fastener holds"
   */
  @LibraryFunction(words = {"metal roof", "standing seam", "blow off", "hold down"})
  public static HoldDown weakestLink(
      @Column("uplift_psf") Figure<Pressure> uplift,
      StandingSeam panel,
      ScrewedClips clips,
      NailedDeck nailing) {
    var pull = UpliftArguments.uplift(uplift);
    var seamHolds = panel.seam().as("seam_holds_psf", Units.PSF);
    var clipArea = clips.spacing().times(panel.cover()).as("area_of_a_clip_sf", Units.SQUARE_FOOT);
    var clipHolds = holds("clip_holds_psf", panel.clip(), clipArea);
    var screwsHold = holds("screws_hold_psf", clips.hold(), clipArea);
    var deck = holds("deck_holds_psf", nailing.nail(), nailing.areaOfANail());

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
