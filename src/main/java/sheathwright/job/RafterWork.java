package sheathwright.job;

import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Gather;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.framing.Grade;
import sheathwright.framing.RafterCheck;
import sheathwright.framing.RafterLoad;
import sheathwright.framing.Rafters;
import sheathwright.framing.Species;
import sheathwright.framing.ValueSet;
import sheathwright.levelling.SisterStock;
import sheathwright.levelling.Sisters;
import sheathwright.pricing.PiecePrice;
import sheathwright.pricing.UnitPrices;
import sheathwright.published.LumberSize;

/** What the job's rafters can carry, and what it takes to bring them to the string line. */
final class RafterWork {

  private static final Figure<Pieces> ONE_RAFTER = Figure.of(1, Units.PIECE);
  private static final Figure<Pieces> NO_RAFTER = Figure.of(0, Units.PIECE);

  private RafterWork() {}

  /** What the screening of the existing rafters comes to. */
  public enum Verdict implements Option<Verdict> {
    WITHIN_THE_SCREENING_LIMITS("within the screening limits"),
    STOP("STOP: a licensed engineer decides before any repair");

    private final String word;

    Verdict(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  static RafterCheck check(Job job) {
    return Rafters.rafterCheck(
        job.<Species>word("species"),
        job.<Grade>word("grade"),
        job.<LumberSize>word("rafter_size"),
        job.fact("support_spacing_in", Units.INCH),
        job.fact("live_psf", Units.PSF),
        job.fact("dead_psf", Units.PSF),
        job.<RafterLoad>word("load"),
        job.fact("deflection_limit", Units.RATIO),
        job.<ValueSet>word("value_set"),
        job.fact("span_ft", Units.FOOT),
        job.fact("bearing_in", Units.INCH));
  }

  static Choice<Verdict> verdict(RafterCheck check) {
    Condition ok = check.ok().is(sheathwright.figure.YesNo.YES);
    return Choice.choose(ok, Verdict.WITHIN_THE_SCREENING_LIMITS, Verdict.STOP)
        .as("rafter_verdict", Source.COMMON_PRACTICE);
  }

  static Roll readings(Job job) {
    Figure<Length> sister = job.fact("sister_tolerance_in", Units.INCH);
    Figure<Length> shim = job.fact("shim_tolerance_in", Units.INCH);
    return Roll.of(
        "readings",
        "the string-line readings",
        job.readings(),
        Roll.<Map<String, Traced>>column("plane", row -> row.get("plane")),
        Roll.column("rafter", row -> row.get("rafter")),
        Roll.column("drop_in", row -> row.get("drop_in")),
        Roll.column("sister", row -> countedIf(drop(row).isMoreThan(sister))),
        Roll.column(
            "shim",
            row ->
                countedIf(Condition.all(drop(row).isMoreThan(shim), drop(row).isAtMost(sister)))));
  }

  private static Figure<Length> drop(Map<String, Traced> row) {
    return Job.figure(row, "drop_in", Units.INCH);
  }

  private static Figure<Pieces> countedIf(Condition condition) {
    return Figure.choose(condition, ONE_RAFTER, NO_RAFTER);
  }

  static SisterStock sisters(Job job, Roll readings) {
    Figure<Length> worst =
        readings
            .gathered(Gather.GREATEST, "drop_in", Units.INCH)
            .as("greatest_drop_in", Units.INCH);
    Figure<Pieces> count = readings.sum("sister", Units.PIECE).as("rafters_to_sister", Units.PIECE);
    return Sisters.sisterStock(
        worst,
        job.fact("sister_span_ft", Units.FOOT),
        job.fact("sister_tolerance_in", Units.INCH),
        job.fact("sister_lap_in", Units.INCH),
        count,
        job.<LumberSize>word("sister_size"),
        job.fact("sister_nail_spacing_in", Units.INCH),
        job.fact("sister_nail_rows", Units.RATIO));
  }

  static PiecePrice sisterPrice(Job job, SisterStock stock) {
    Figure<Pieces> atLeastOne = stock.pieces().orIfMore(ONE_RAFTER);
    return UnitPrices.pieceUnitPrice(
        job.price("sister_stick", Units.USD_PER_PIECE),
        stock.nails().dividedBy(atLeastOne).as("nails_in_a_sister", Units.NAILS_PER_PIECE),
        job.price("sister_nail", Units.USD_PER_NAIL),
        job.rate("tax_pct", Units.PERCENT),
        job.rate("sister_h", Units.HOURS_PER_PIECE),
        job.rate("labour_usd_per_h", Units.USD_PER_HOUR),
        job.rate("overhead_pct", Units.PERCENT),
        job.rate("margin_pct", Units.PERCENT));
  }

  static PiecePrice shimPrice(Job job) {
    return UnitPrices.pieceUnitPrice(
        job.price("shim", Units.USD_PER_PIECE),
        Figure.of(0, Units.NAILS_PER_PIECE),
        job.price("sister_nail", Units.USD_PER_NAIL),
        job.rate("tax_pct", Units.PERCENT),
        job.rate("shim_h", Units.HOURS_PER_PIECE),
        job.rate("labour_usd_per_h", Units.USD_PER_HOUR),
        job.rate("overhead_pct", Units.PERCENT),
        job.rate("margin_pct", Units.PERCENT));
  }
}
