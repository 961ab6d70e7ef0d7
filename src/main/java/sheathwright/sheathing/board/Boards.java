package sheathwright.sheathing.board;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.roof.SupportSpacing;

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
   * boardSpan(DeckBoard.thickness(in("3/4")), in(24)).ok() // yes
   * boardSpan(DeckBoard.thickness(in(1.5)).edge(TONGUE_AND_GROOVE).bending(psi(420)).modulus(psi(700000)), in(48)).maxSpan() // 60 in
   * }</pre>
   *
   * @param board of the deck
   * @param supportSpacing center to center of the rafters, 6 in to 96 in
   * @return greatest span in inches, none for boards under 5/8 in, and yes or no
   * @throws RefusedException if a number lies outside its range
   * @see "IRC 2021 Table R803.1, read on state code pages; rows alike in 2015, 2018 and 2024"
   */
  @LibraryFunction(words = {"plank", "skip sheathing"})
  public static BoardSpan boardSpan(
      DeckBoard board, @Column("support_spacing_in") Figure<Length> supportSpacing) {
    var net = board.thickness();
    var fb = board.bending();
    var e = board.modulus();
    var spacing = SupportSpacing.within(supportSpacing);

    Condition isPlank =
        Condition.all(
            board.edge().choice().is(BoardEdge.TONGUE_AND_GROOVE), net.isAtLeast(LEAST_PLANK));
    var to24 =
        Figure.choose(net.isAtLeast(LEAST_BOARD), BOARD_SPAN, NONE).as("span_to_24_in", Units.INCH);
    var to48 = PLANK_48.or(to24, isPlank, fb, e).as("span_to_48_in", Units.INCH);
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
   * boardsToReplace(sqft(100), BoardStock.face(in("7-1/4")).stock(ft(16)), pct(10)).laid() // 165' 6-3/16"
   * boardsToReplace(sqft(100), BoardStock.face(in("7-1/4")).stock(ft(16)), pct(10)).boards() // 12 pieces
   * }</pre>
   *
   * @param area of deck to replace, on the slope, 0 sq ft to 50000 sq ft
   * @param boards as they are bought and laid
   * @param waste share lost to cuts and splits, 0 % to 100 %
   * @return feet of board on the deck, and whole boards to buy
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: arithmetic"
   */
  @LibraryFunction(words = {"plank", "buy boards", "cut list"})
  public static BoardCount boardsToReplace(
      @Column("deck_area_sf") Figure<Area> area,
      BoardStock boards,
      @Column("waste_pct") Figure<Ratio> waste) {
    var deck =
        area.within(
            "deck_area_sf", Units.SQUARE_FOOT, Limits.between(0, 50_000, "only what is replaced"));
    var share =
        waste.within("waste_pct", Units.PERCENT, Limits.between(0, 100, "5 to 15 are usual"));

    var laid =
        deck.dividedBy(boards.face().plus(boards.gap()))
            .as("linear_ft", Units.FOOT, Source.COMMON_PRACTICE);
    var bought =
        laid.times(ONE.plus(share))
            .dividedBy(boards.stock())
            .in(Units.RATIO)
            .roundedUp()
            .counting(Units.PIECE)
            .as("boards", Units.PIECE, Source.COMMON_PRACTICE);
    return new BoardCount(laid, bought);
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
   * boardBase(OldBoards.thickness(in("25/32")).gap(in("1/8")), COMMONLY_ASKED).ok() // yes
   * boardBase(OldBoards.thickness(in("3/4")).gap(in("1/2")), COMMONLY_ASKED).gapOk() // no
   * }</pre>
   *
   * @param boards as they are found
   * @param limits what the covering bears
   * @return yes or no for thickness, gap and hole, and for all three
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: covering makers commonly ask for 25/32 in, 1/4 in and 1 in"
   */
  @LibraryFunction(words = {"plank", "skip sheathing", "cover old boards"})
  public static BoardBase boardBase(OldBoards boards, CoveringLimits limits) {
    Condition isThick = boards.thickness().isAtLeast(limits.minThickness());
    Condition isTight = boards.gap().isAtMost(limits.maxGap());
    Condition isWhole = boards.hole().isAtMost(limits.maxHole());
    return new BoardBase(
        isThick.as("thick_enough"),
        isTight.as("gap_ok"),
        isWhole.as("hole_ok"),
        Condition.all(isThick, isTight, isWhole).as("ok"));
  }
}
