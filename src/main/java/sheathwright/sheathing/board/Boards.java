package sheathwright.sheathing.board;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** Decks of boards: how far they span, how many a repair takes, and whether they can be covered. */
public final class Boards {

  private static final Source IRC = Source.read("IRC 2021, Table R803.1, as adopted by states");
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Length> NONE = Figure.of(0, Units.INCH);
  private static final Figure<Length> LEAST_BOARD =
      Figure.constant("least_board_in", 0.625, Units.INCH, IRC).symbol("5/8 in");
  private static final Figure<Length> BOARD_SPAN =
      Figure.constant("board_span_in", 24, Units.INCH, IRC).symbol("24 in");
  private static final Figure<Length> LEAST_PLANK =
      Figure.constant("least_plank_in", 1.5, Units.INCH, IRC).symbol("1-1/2 in");
  private static final PlankRow PLANK_48 = PlankRow.of(48, 270, 340_000);
  private static final PlankRow PLANK_60 = PlankRow.of(60, 420, 660_000);
  private static final PlankRow PLANK_72 = PlankRow.of(72, 600, 1_150_000);

  /** One printed row for tongue-and-groove planks. */
  private record PlankRow(Figure<Length> span, Figure<Stress> bending, Figure<Stress> modulus) {

    static PlankRow of(int span, double bending, double modulus) {
      String name = "plank_" + span;
      return new PlankRow(
          Figure.constant(name + "_span_in", span, Units.INCH, IRC).symbol(span + " in"),
          Figure.constant(name + "_bending_psi", bending, Units.PSI, IRC),
          Figure.constant(name + "_modulus_psi", modulus, Units.PSI, IRC));
    }

    /** This row's span if the wood is strong and stiff enough for it, else the other. */
    Figure<Length> or(
        Figure<Length> other, Condition isPlank, Figure<Stress> fb, Figure<Stress> e) {
      return Figure.choose(
          Condition.all(isPlank, fb.isAtLeast(bending), e.isAtLeast(modulus)), span, other);
    }
  }

  private Boards() {}

  /**
   * How far solid deck boards may span between rafters, and whether these rafters are near enough.
   *
   * <pre>
   * 5/8 in net or more: 24 in
   * tongue and groove, 1-1/2 in net or more: 48, 60 or 72 in if F_b is at least 270, 420 or 600 psi
   *                                          and E at least 340000, 660000 or 1150000 psi
   * </pre>
   *
   * <p>Does not cover boards laid diagonally (IBC 2021 asks for 3/4 in net at 24 in), spaced boards
   * under shakes, loads, split or decayed boards, or boards that end between rafters.
   *
   * <pre>{@code
   * boardSpan(in("3/4"), SQUARE, psi(0), psi(0), in(24)).ok() // yes
   * boardSpan(in(1.5), TONGUE_AND_GROOVE, psi(420), psi(700000), in(48)).maxSpan() // 60 in
   * }</pre>
   *
   * @param thickness net, measured at the thinnest board, 0.25 in to 6 in
   * @param boardEdge the boards' long edges
   * @param bending reference bending value F_b of the boards, 0 psi to 5000 psi; 0 if not known
   * @param modulus modulus of elasticity E of the boards, 0 psi to 3000000 psi; 0 if not known
   * @param supportSpacing center to center of the rafters, 6 in to 96 in
   * @return greatest span in inches, none for boards under 5/8 in, and yes or no
   * @throws RefusedException if a number lies outside its range
   * @see "IRC 2021 Table R803.1, read on state code pages; rows alike in 2015, 2018 and 2024"
   */
  @LibraryFunction
  public static BoardSpan boardSpan(
      @Column("thickness_in") Figure<Length> thickness,
      @Column(value = "board_edge", preset = "square") OneOf<BoardEdge> boardEdge,
      @Column(value = "bending_psi", preset = "0") Figure<Stress> bending,
      @Column(value = "modulus_psi", preset = "0") Figure<Stress> modulus,
      @Column("support_spacing_in") Figure<Length> supportSpacing) {
    Choice<BoardEdge> edge = boardEdge.choice().argument("board_edge");
    var net =
        thickness.within(
            "thickness_in", Units.INCH, Limits.between(0.25, 6, "net; a 1x board has 3/4"));
    var fb =
        bending.within("bending_psi", Units.PSI, Limits.between(0, 5000, "0 if it is not known"));
    var e =
        modulus.within(
            "modulus_psi", Units.PSI, Limits.between(0, 3_000_000, "0 if it is not known"));
    var spacing =
        supportSpacing.within(
            "support_spacing_in", Units.INCH, Limits.between(6, 96, "16 and 24 are usual"));

    Condition isPlank =
        Condition.all(edge.is(BoardEdge.TONGUE_AND_GROOVE), net.isAtLeast(LEAST_PLANK));
    var board =
        Figure.choose(net.isAtLeast(LEAST_BOARD), BOARD_SPAN, NONE).as("span_to_24_in", Units.INCH);
    var to48 = PLANK_48.or(board, isPlank, fb, e).as("span_to_48_in", Units.INCH);
    var to60 = PLANK_60.or(to48, isPlank, fb, e).as("span_to_60_in", Units.INCH);
    var maxSpan = PLANK_72.or(to60, isPlank, fb, e).as("max_span_in", Units.INCH, IRC);
    return new BoardSpan(maxSpan, spacing.isAtMost(maxSpan).as("ok"));
  }

  /**
   * How many feet of board a part of a deck takes, and how many whole boards to buy for it.
   *
   * <pre>
   * linear feet = area ÷ (board face + gap)
   * boards      = ⌈linear feet × (1 + waste) ÷ stock length⌉
   * </pre>
   *
   * <p>Does not cover where the ends land: each end needs a rafter, so short scattered repairs take
   * more waste than a whole plane.
   *
   * <pre>{@code
   * boardsToReplace(sqft(100), in("7-1/4"), in(0), ft(16), pct(10)).laid() // 165' 6-3/16"
   * boardsToReplace(sqft(100), in("7-1/4"), in(0), ft(16), pct(10)).boards() // 12 pieces
   * }</pre>
   *
   * @param area of deck to replace, on the slope, 0 sq ft to 50000 sq ft
   * @param boardFace what one board covers, measured, without its tongue, 1 in to 24 in
   * @param gap left between boards, 0 in to 6 in
   * @param stock length of a board as bought, 2 ft to 24 ft
   * @param waste share lost to cuts and splits, 0 % to 100 %
   * @return feet of board on the deck, and whole boards to buy
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: arithmetic"
   */
  @LibraryFunction
  public static BoardCount boardsToReplace(
      @Column("deck_area_sf") Figure<Area> area,
      @Column("board_face_in") Figure<Length> boardFace,
      @Column(value = "gap_in", preset = "0") Figure<Length> gap,
      @Column("stock_ft") Figure<Length> stock,
      @Column("waste_pct") Figure<Ratio> waste) {
    var deck =
        area.within(
            "deck_area_sf", Units.SQUARE_FOOT, Limits.between(0, 50_000, "only what is replaced"));
    var face =
        boardFace.within(
            "board_face_in", Units.INCH, Limits.between(1, 24, "a 1x8 covers about 7-1/4"));
    var between = gap.within("gap_in", Units.INCH, Limits.between(0, 6, "0 for boards laid tight"));
    var length = stock.within("stock_ft", Units.FOOT, Limits.between(2, 24, "8 to 16 are usual"));
    var share =
        waste.within("waste_pct", Units.PERCENT, Limits.between(0, 100, "5 to 15 are usual"));

    var laid =
        deck.dividedBy(face.plus(between)).as("linear_ft", Units.FOOT, Source.COMMON_PRACTICE);
    var boards =
        laid.times(ONE.plus(share))
            .dividedBy(length)
            .in(Units.RATIO)
            .roundedUp()
            .counting(Units.PIECE)
            .as("boards", Units.PIECE, Source.COMMON_PRACTICE);
    return new BoardCount(laid, boards);
  }

  /**
   * Whether a covering can be laid straight on old boards: thick enough, no wide gap, no large knot
   * hole.
   *
   * <pre>
   * thinnest board ≥ 25/32 in, widest gap ≤ 1/4 in, widest hole ≤ 1 in
   * </pre>
   *
   * <p>Does not cover rot, split boards, loose nails, moisture, flatness, or what the maker of this
   * covering asks for: his limits take the place of these. A hole of 1 in or less still wants a
   * metal patch; where a limit fails, new panels over the boards are the usual way.
   *
   * <pre>{@code
   * boardBase(in("25/32"), in("1/8"), in(0), in("25/32"), in("1/4"), in(1)).ok() // yes
   * boardBase(in("3/4"), in("1/2"), in(0), in("25/32"), in("1/4"), in(1)).gapOk() // no
   * }</pre>
   *
   * @param thickness net, of the thinnest board, 0.25 in to 6 in
   * @param gap widest between two boards, 0 in to 12 in
   * @param hole widest across a knot hole or an old opening, 0 in to 48 in
   * @param minThickness least thickness that the covering wants, 0 in to 6 in
   * @param maxGap widest gap that the covering bears, 0 in to 12 in
   * @param maxHole widest hole that may be patched with metal, 0 in to 48 in
   * @return yes or no for thickness, gap and hole, and for all three
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: covering makers commonly ask for 25/32 in, 1/4 in and 1 in"
   */
  @LibraryFunction
  public static BoardBase boardBase(
      @Column("thickness_in") Figure<Length> thickness,
      @Column("gap_in") Figure<Length> gap,
      @Column(value = "hole_in", preset = "0") Figure<Length> hole,
      @Column(value = "min_thickness_in", preset = "25/32") Figure<Length> minThickness,
      @Column(value = "max_gap_in", preset = "1/4") Figure<Length> maxGap,
      @Column(value = "max_hole_in", preset = "1") Figure<Length> maxHole) {
    var thin =
        thickness.within(
            "thickness_in", Units.INCH, Limits.between(0.25, 6, "net; a 1x board has 3/4"));
    var wide = gap.within("gap_in", Units.INCH, Limits.between(0, 12, "the widest one"));
    var opening = hole.within("hole_in", Units.INCH, Limits.between(0, 48, "0 if there is none"));
    var least =
        minThickness.within(
            "min_thickness_in", Units.INCH, Limits.between(0, 6, "25/32 is commonly asked for"));
    var widest =
        maxGap.within("max_gap_in", Units.INCH, Limits.between(0, 12, "1/4 is commonly asked for"));
    var largest =
        maxHole.within("max_hole_in", Units.INCH, Limits.between(0, 48, "1 is commonly asked for"));

    Condition isThick = thin.isAtLeast(least);
    Condition isTight = wide.isAtMost(widest);
    Condition isWhole = opening.isAtMost(largest);
    return new BoardBase(
        isThick.as("thick_enough"),
        isTight.as("gap_ok"),
        isWhole.as("hole_ok"),
        Condition.all(isThick, isTight, isWhole).as("ok"));
  }
}
