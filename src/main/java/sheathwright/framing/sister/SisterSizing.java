package sheathwright.framing.sister;

import java.util.List;
import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.rafter.RafterLoad;
import sheathwright.wood.Grade;
import sheathwright.wood.LumberSize;
import sheathwright.wood.Species;

/** Full-length sisters to choose from. */
public final class SisterSizing {

  private static final Choice<LumberSize> SISTER_2X4 = size(LumberSize.SIZE_2X4);
  private static final Choice<LumberSize> SISTER_2X6 = size(LumberSize.SIZE_2X6);
  private static final Choice<LumberSize> SISTER_2X8 = size(LumberSize.SIZE_2X8);
  private static final Choice<LumberSize> SISTER_2X10 = size(LumberSize.SIZE_2X10);
  private static final Choice<LumberSize> SISTER_2X12 = size(LumberSize.SIZE_2X12);

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
   * sisterSizes(in(1.5), in(3.5), psi(1735.78), psi(1400000), SPRUCE_PINE_FIR, NO_2, SNOW, in(24), ft(10), psf(38.5), psf(10.81665), psf(0), NO, number(180), usdPerPiece(8), usdPerPiece(11), usdPerPiece(17.1), usdPerPiece(24), usdPerPiece(31)).cheapest() // 2x8
   * sisterSizes(in(1.5), in(3.5), psi(1735.78), psi(1400000), SPRUCE_PINE_FIR, NO_2, SNOW, in(24), ft(10), psf(38.5), psf(10.81665), psf(0), NO, number(180), usdPerPiece(8), usdPerPiece(11), usdPerPiece(17.1), usdPerPiece(24), usdPerPiece(31)).ratio2x8() // 0.7288
   * }</pre>
   *
   * @param rafterThickness of the old rafter as measured, 0.5 in to 6 in
   * @param rafterDepth of the old rafter as measured, 2 in to 16 in
   * @param rafterBending F_b' of the old rafter, adjusted, 50 psi to 10000 psi
   * @param rafterModulus E of the old rafter, 100000 psi to 5000000 psi
   * @param sisterSpecies species group on the sister's grade stamp
   * @param sisterGrade visual grade on the sister's grade stamp
   * @param load which live load it is; it sets how long the wood must bear it
   * @param spacing center to center, 4 in to 48 in; the repetitive factor is taken up to 24 in
   * @param span clear span on the horizontal projection, 1 ft to 40 ft
   * @param live roof live load or snow on the horizontal projection, 1 psf to 300 psf
   * @param dead dead load on the horizontal projection, 0 psf to 100 psf
   * @param existing the part of the dead load that lies on the rafter when the sister is nailed, 0
   *     psf to 100 psf; it stays in the old rafter
   * @param jacked whether the rafter is jacked free of that load before nailing
   * @param deflectionLimit span divided by this is the sag allowed under live load, 120 to 480
   * @param price2x4 of a stick long enough, 0 $/piece to 1000 $/piece
   * @param price2x6 of a stick long enough, 0 $/piece to 1000 $/piece
   * @param price2x8 of a stick long enough, 0 $/piece to 1000 $/piece
   * @param price2x10 of a stick long enough, 0 $/piece to 1000 $/piece
   * @param price2x12 of a stick long enough, 0 $/piece to 1000 $/piece
   * @return the old rafter's own ratio and what has to be said beside it; the cheapest size and its
   *     price, or that none passes; of each size its greatest ratio, which may be 1 at most, and
   *     its rank by price
   * @throws RefusedException if a number lies outside its range, or the existing load is more than
   *     the dead load
   * @see "derived: two pieces side by side bend to one curve; NDS 2018 with its supplement,
   *     secondary source"
   */
  @LibraryFunction
  public static SisterSizes sisterSizes(
      @Column(value = "rafter_thickness_in", preset = "1.5") Figure<Length> rafterThickness,
      @Column("rafter_depth_in") Figure<Length> rafterDepth,
      @Column("rafter_bending_psi") Figure<Stress> rafterBending,
      @Column(value = "rafter_modulus_psi", preset = "1400000") Figure<Stress> rafterModulus,
      @Column("sister_species") OneOf<Species> sisterSpecies,
      @Column("sister_grade") OneOf<Grade> sisterGrade,
      @Column("load") OneOf<RafterLoad> load,
      @Column("spacing_in") Figure<Length> spacing,
      @Column("span_ft") Figure<Length> span,
      @Column("live_psf") Figure<Pressure> live,
      @Column("dead_psf") Figure<Pressure> dead,
      @Column("existing_psf") Figure<Pressure> existing,
      @Column(value = "jacked", preset = "no") OneOf<YesNo> jacked,
      @Column(value = "deflection_limit", preset = "180") Figure<Ratio> deflectionLimit,
      @Column(value = "price_2x4_usd", unit = "$/piece", preset = "0")
          Figure<Per<Money, Pieces>> price2x4,
      @Column(value = "price_2x6_usd", unit = "$/piece", preset = "0")
          Figure<Per<Money, Pieces>> price2x6,
      @Column(value = "price_2x8_usd", unit = "$/piece", preset = "0")
          Figure<Per<Money, Pieces>> price2x8,
      @Column(value = "price_2x10_usd", unit = "$/piece", preset = "0")
          Figure<Per<Money, Pieces>> price2x10,
      @Column(value = "price_2x12_usd", unit = "$/piece", preset = "0")
          Figure<Per<Money, Pieces>> price2x12) {
    var rafter = Ply.rafter(rafterThickness, rafterDepth);
    var rafterCapacity = rafter.capacity(SisterArguments.bending("rafter", rafterBending));
    var rafterStiffness = rafter.stiffness(SisterArguments.modulus("rafter", rafterModulus));
    var loaded = new SpanLoad(spacing, span, live, dead);
    var locked = loaded.locked(existing, jacked);
    var lockedMoment = loaded.middleMoment(locked, "locked");
    var addedMoment = loaded.middleMoment(loaded.addedTo(locked), "added");
    var sagAllowed = loaded.sagAllowed(deflectionLimit);
    var lumber = new SisterLumber(sisterSpecies, sisterGrade, load, loaded.spacing);

    var ranking = new SisterRanking();
    var prices = List.of(price2x4, price2x6, price2x8, price2x10, price2x12);
    var sizes = List.of(SISTER_2X4, SISTER_2X6, SISTER_2X8, SISTER_2X10, SISTER_2X12);
    for (int i = 0; i < sizes.size(); i++) {
      var size = sizes.get(i);
      var whose = "sister_" + size.plain();
      var beside = "_with_" + size.plain();
      var sister = Ply.dressed(whose, size);
      var stiffnesses =
          new Stiffnesses(beside, rafterStiffness, sister.stiffness(lumber.modulus(whose, size)));
      var pair =
          new SisteredSpan(
              beside,
              loaded,
              lockedMoment,
              addedMoment,
              stiffnesses,
              stiffnesses.share(),
              rafterCapacity,
              sister.capacity(lumber.bending(whose, size)),
              sagAllowed);
      ranking.add(size, pair, price(size, prices.get(i)));
    }
    var alone =
        Check.of(
            "bending of the old rafter alone",
            "alone_ratio",
            loaded.middleMoment(loaded.total, "whole"),
            rafterCapacity);
    var ranked = ranking.ranked();
    return SisterSizes.of(
        alone, SisterRanking.cheapest(ranked), SisterRanking.cheapestPrice(ranked), ranked);
  }

  private static Figure<Per<Money, Pieces>> price(
      Choice<LumberSize> size, Figure<Per<Money, Pieces>> price) {
    return price
        .within(
            "price_" + size.plain() + "_usd",
            Units.USD_PER_PIECE,
            Limits.between(0, 1000, "of one stick; 0 if it is not sold"))
        .as("stick_" + size.plain() + "_usd", Units.USD_PER_PIECE)
        .symbol("price of a " + size.plain());
  }

  private static Choice<LumberSize> size(LumberSize size) {
    return size.choice().as("sister_size_" + size.word());
  }
}
