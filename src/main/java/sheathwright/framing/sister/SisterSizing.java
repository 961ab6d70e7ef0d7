package sheathwright.framing.sister;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Check;
import sheathwright.figure.OneOf;
import sheathwright.figure.RefusedException;
import sheathwright.framing.rafter.RafterLoad;
import sheathwright.wood.GradeStamp;
import sheathwright.wood.LumberSize;

/** Full-length sisters to choose from. */
public final class SisterSizing {

  private SisterSizing() {}

  /**
   * Which sizes of full-length sisters do for a given rafter, span and load, and which of them is
   * the cheapest.
   *
   * <pre>
   * ratio = the greatest of both pieces' bending and their sag, as sistered_rafter has them
   * F_b' = F_b C_D C_F C_r of the sister
   * rank = 1 + how many of the sizes that pass are cheaper
   * cheapest = the size that passes with rank 1, of two at one price the smaller
   * </pre>
   *
   * <p>Does not cover shear and bearing (see {@code sister_reactions}), nails, whether the attic
   * leaves room for the depth, and ripped stock: a piece ripped from wider lumber has no grade and
   * nobody may give it a design value. A price of 0 means that the yard does not sell the size.
   * Screening only: local code and a licensed engineer decide, and where alone_ratio passes 1 the
   * engineer decides before any repair.
   *
   * <pre>{@code
   * sisterSizes(RafterPly.depth(in(3.5)).bending(psi(1735.78)), GradeStamp.of(SPRUCE_PINE_FIR, NO_2), SNOW, SisterLoad.of(SpanLoad.span(ft(10)).spacing(in(24)).live(psf(38.5)).dead(psf(10.81665))).existing(psf(0)), StickPrices.none().price2x4(usdPerPiece(8)).price2x6(usdPerPiece(11)).price2x8(usdPerPiece(17.1)).price2x10(usdPerPiece(24)).price2x12(usdPerPiece(31))).cheapest() // 2x8
   * sisterSizes(RafterPly.depth(in(3.5)).bending(psi(1735.78)), GradeStamp.of(SPRUCE_PINE_FIR, NO_2), SNOW, SisterLoad.of(SpanLoad.span(ft(10)).spacing(in(24)).live(psf(38.5)).dead(psf(10.81665))).existing(psf(0)), StickPrices.none().price2x4(usdPerPiece(8)).price2x6(usdPerPiece(11)).price2x8(usdPerPiece(17.1)).price2x10(usdPerPiece(24)).price2x12(usdPerPiece(31))).ratio2x8() // 0.7288
   * }</pre>
   *
   * @param rafter the old rafter
   * @param sister the stamp on the sister
   * @param load which live load it is; it sets how long the wood must bear it
   * @param loads on both; the repetitive factor is taken up to a spacing of 24 in
   * @param prices of sticks that are long enough
   * @return the old rafter's own ratio and what has to be said beside it; the cheapest size and its
   *     price, or that none passes; of each size its greatest ratio, which may be 1 at most, and
   *     its rank by price
   * @throws RefusedException if a number lies outside its range, or the existing load is more than
   *     the dead load
   * @see "derived: two pieces side by side bend to one curve; NDS 2018 with its supplement,
   *     secondary source"
   */
  @LibraryFunction(words = {"which sister", "choose a sister"})
  public static SisterSizes sisterSizes(
      @Column(prefix = "rafter_") RafterPly rafter,
      @Column(prefix = "sister_") GradeStamp sister,
      @Column("load") OneOf<RafterLoad> load,
      SisterLoad loads,
      StickPrices prices) {
    var old = rafter.bent();
    var loaded = new LineLoads(loads.load());
    var locked = loaded.locked(loads);
    var lockedMoment = loaded.middleMoment(locked, "locked");
    var addedMoment = loaded.middleMoment(loaded.addedTo(locked), "added");
    var sagAllowed = loaded.sagAllowed(loads.deflectionLimit());
    var wood = new SisterValues(sister, load, loads.load().load().spacing());

    var ranking = new SisterRanking();
    for (LumberSize nominal : LumberSize.values()) {
      var size = nominal.choice().as("sister_size_" + nominal.word());
      var whose = "sister_" + nominal.word();
      var beside = "_with_" + nominal.word();
      var section = PlySection.dressed(whose, size);
      var stiffnesses =
          new Stiffnesses(beside, old.stiffness(), section.stiffness(wood.modulus(whose, size)));
      var pair =
          new SisteredSpan(
              beside,
              loaded,
              lockedMoment,
              addedMoment,
              stiffnesses,
              stiffnesses.share(),
              old.capacity(),
              section.capacity(wood.bending(whose, size)),
              sagAllowed);
      ranking.add(size, pair, prices.of(nominal));
    }
    var alone =
        Check.of(
            "bending of the old rafter alone",
            "alone_ratio",
            loaded.middleMoment(loaded.total(), "whole"),
            old.capacity());
    var ranked = ranking.ranked();
    return SisterSizes.of(
        alone, SisterRanking.cheapest(ranked), SisterRanking.cheapestPrice(ranked), ranked);
  }
}
