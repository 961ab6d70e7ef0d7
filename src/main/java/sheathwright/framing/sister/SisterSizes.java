package sheathwright.framing.sister;

import java.util.List;
import sheathwright.catalog.Column;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.YesNo;
import sheathwright.framing.stop.RepairDecision.Decision;
import sheathwright.framing.stop.RepairStops;
import sheathwright.wood.LumberSize;

/**
 * Which full-length sisters do for a given rafter, span and load, and which is cheapest.
 *
 * @param alone bending of the old rafter before anything is done
 * @param decision what has to be said beside it
 * @param cheapest the cheapest size that passes, or that none does
 * @param price of one stick of it
 * @param ratio2x4 the greatest of its three ratios, of a 2x4
 * @param ratio2x6 of a 2x6
 * @param ratio2x8 of a 2x8
 * @param ratio2x10 of a 2x10
 * @param ratio2x12 of a 2x12
 * @param rank2x4 the cheapest that passes is 1, sizes of one price share a rank; of a 2x4
 * @param rank2x6 of a 2x6
 * @param rank2x8 of a 2x8
 * @param rank2x10 of a 2x10
 * @param rank2x12 of a 2x12
 * @param sizes all five, smallest first
 */
public record SisterSizes(
    @Column("alone_ratio") Check alone,
    @Column("decision") Choice<Decision> decision,
    @Column("cheapest") Choice<String> cheapest,
    @Column(value = "cheapest_usd", unit = "$/piece") Figure<Per<Money, Pieces>> price,
    @Column("ratio_2x4") Figure<Ratio> ratio2x4,
    @Column("ratio_2x6") Figure<Ratio> ratio2x6,
    @Column("ratio_2x8") Figure<Ratio> ratio2x8,
    @Column("ratio_2x10") Figure<Ratio> ratio2x10,
    @Column("ratio_2x12") Figure<Ratio> ratio2x12,
    @Column("rank_2x4") Figure<Ratio> rank2x4,
    @Column("rank_2x6") Figure<Ratio> rank2x6,
    @Column("rank_2x8") Figure<Ratio> rank2x8,
    @Column("rank_2x10") Figure<Ratio> rank2x10,
    @Column("rank_2x12") Figure<Ratio> rank2x12,
    List<SisterSize> sizes) {

  static SisterSizes of(
      Check alone,
      Choice<String> cheapest,
      Figure<Per<Money, Pieces>> price,
      List<SisterSize> sizes) {
    return new SisterSizes(
        alone,
        RepairStops.byStrength(alone.ok()),
        cheapest,
        price,
        sizes.get(0).ratio(),
        sizes.get(1).ratio(),
        sizes.get(2).ratio(),
        sizes.get(3).ratio(),
        sizes.get(4).ratio(),
        sizes.get(0).rank(),
        sizes.get(1).rank(),
        sizes.get(2).rank(),
        sizes.get(3).rank(),
        sizes.get(4).rank(),
        List.copyOf(sizes));
  }

  /** The five sizes as a table of a workbook, with what each piece is asked and the live rank. */
  public Roll roll() {
    return Roll.of(
        "sister_sizes",
        "the sizes of sisters",
        sizes,
        Roll.<SisterSize>column("size", SisterSize::size),
        Roll.column("rafter_ratio", size -> size.rafter().ratio()),
        Roll.column("sister_ratio", size -> size.sister().ratio()),
        Roll.column("sag_ratio", size -> size.deflection().ratio()),
        Roll.column("passes", SisterSize::passes),
        Roll.column("price", SisterSize::price),
        Roll.column("rank", SisterSize::rank));
  }

  /**
   * A full-length sister of one size beside a given rafter.
   *
   * @param size nominal
   * @param rafter bending of the old rafter beside it
   * @param sister bending of the sister
   * @param deflection sag of both under the live load
   * @param ratio the greatest of the three
   * @param price of one stick
   * @param passes whether it is sold and all three are within 1
   * @param place how many of those that pass are cheaper, and one
   * @param rank the same where it passes itself
   */
  public record SisterSize(
      Choice<LumberSize> size,
      Check rafter,
      Check sister,
      Check deflection,
      Figure<Ratio> ratio,
      Figure<Per<Money, Pieces>> price,
      Choice<YesNo> passes,
      Figure<Ratio> place,
      Figure<Ratio> rank) {}
}
