package sheathwright.fastening.count;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.roof.SupportSpacing;

/** Nails of a piece or a patch that begins anywhere between rafters. */
public final class NailPieces {

  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Ratio> NONE = Figure.of(0, Units.RATIO);
  private static final Figure<Length> ON_SUPPORT =
      Figure.constant(
              "on_support_in", NailPattern.ON_SUPPORT_IN, Units.INCH, Source.COMMON_PRACTICE)
          .symbol("3/4 in");

  private NailPieces() {}

  /**
   * How many nails hold one piece or patch over regular supports, wherever it begins.
   *
   * <pre>
   * supports = ⌊(length + 3/4 in − first support) ÷ spacing⌋ + 1
   * nails    = (⌈(width − 2 × 3/8 in) ÷ edge spacing⌉ + 1) on each end that lies on a support
   *          + (⌈(width − 2 × 3/8 in) ÷ field spacing⌉ + 1) on each other support
   *          + 2 × (⌈bay ÷ edge spacing⌉ − 1) in each bay, if the long edges are blocked
   * </pre>
   *
   * <p>Does not cover ends that hang between rafters, which must be blocked, slanted pieces, nails
   * lost or missed, or supports that stand irregularly: a job's deck counts those from what was
   * measured. Where two pieces share a rafter each has its own row: do not halve.
   *
   * <pre>{@code
   * nailsPerPiece(LaidPiece.length(in(48)).width(in(48)), in(24), Nailing.edge(in(6)).field(in(12))).nails() // 23 nails/piece
   * nailsPerPiece(LaidPiece.length(in(32)).width(in(24)).firstSupport(in(8)), in(16), Nailing.edge(in(6)).field(in(12))).nails() // 6 nails/piece
   * }</pre>
   *
   * @param piece how large it is, and where it begins
   * @param supportSpacing center to center of the rafters or trusses, 6 in to 96 in
   * @param nailing how far apart its nails stand
   * @return supports under the piece, and whole nails
   * @throws RefusedException if a number lies outside its range, or the first support lies further
   *     off than the spacing or past the piece
   * @see "common practice, no source: lines of nails at the stated spacing, 3/8 in from the piece's
   *     edges"
   */
  @LibraryFunction(words = {"patch", "small piece"})
  public static PieceNails nailsPerPiece(
      LaidPiece piece,
      @Column("support_spacing_in") Figure<Length> supportSpacing,
      Nailing nailing) {
    var first = piece.firstSupport();
    var spacing = SupportSpacing.within(supportSpacing);
    var edge = nailing.edge();
    var across = piece.length();

    var reached =
        first
            .onlyIf(
                Condition.all(first.isAtMost(spacing), first.isAtMost(across)),
                "the first support must lie under the piece and no further off than the spacing;"
                    + " measure from the piece's left end")
            .as("first_under_piece_in", Units.INCH);
    var bays =
        across
            .plus(ON_SUPPORT)
            .minus(reached)
            .dividedBy(spacing)
            .in(Units.RATIO)
            .roundedDown()
            .as("bays_between_supports", Units.RATIO);
    var lastBay =
        across.minus(reached).minus(bays.times(spacing)).as("beyond_last_support_in", Units.INCH);
    var onLeft =
        Figure.choose(reached.isAtMost(ON_SUPPORT), ONE, NONE).as("ends_left", Units.RATIO);
    var onRight =
        Figure.choose(lastBay.isAtMost(ON_SUPPORT), ONE, NONE).as("ends_right", Units.RATIO);
    var ends = onLeft.plus(onRight).as("ends_on_supports", Units.RATIO);
    var between = bays.plus(ONE).minus(ends).as("supports_between", Units.RATIO);

    var line = NailCounts.line(piece.width());
    var endLine = NailCounts.spaces(line, edge).plus(ONE).as("nails_on_an_end", Units.RATIO);
    var fieldLine =
        NailCounts.spaces(line, nailing.field()).plus(ONE).as("nails_on_a_support", Units.RATIO);
    var firstBay =
        Figure.choose(
                reached.isAtMost(ON_SUPPORT), NONE, NailCounts.spaces(reached, edge).minus(ONE))
            .as("nails_in_first_bay", Units.RATIO);
    var beyond =
        Figure.choose(
                lastBay.isAtMost(ON_SUPPORT), NONE, NailCounts.spaces(lastBay, edge).minus(ONE))
            .as("nails_beyond_last_support", Units.RATIO);
    var inBays = bays.times(NailCounts.spaces(spacing, edge).minus(ONE)).in(Units.RATIO);
    var onEdge = firstBay.plus(inBays).plus(beyond).as("nails_on_a_blocked_edge", Units.RATIO);
    var onLongEdges =
        Figure.choose(
                nailing.blockedEdges().choice().is(YesNo.YES),
                TWO.times(onEdge).in(Units.RATIO),
                NONE)
            .as("nails_on_long_edges", Units.RATIO);

    var nails =
        ends.times(endLine).in(Units.RATIO).plus(between.times(fieldLine)).plus(onLongEdges);
    return new PieceNails(
        bays.plus(ONE).counting(Units.PIECE).as("supports", Units.PIECE),
        nails
            .counting(Units.NAILS_PER_PIECE)
            .as("nails", Units.NAILS_PER_PIECE, Source.COMMON_PRACTICE));
  }
}
