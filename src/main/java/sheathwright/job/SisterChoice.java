package sheathwright.job;

import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.rafter.RafterLoad;
import sheathwright.framing.sister.RafterPly;
import sheathwright.framing.sister.SisterLoad;
import sheathwright.framing.sister.SisterSizes;
import sheathwright.framing.sister.SisterSizing;
import sheathwright.framing.sister.SpanLoad;
import sheathwright.framing.sister.StickPrices;
import sheathwright.wood.DesignValues;
import sheathwright.wood.DesignValues.AdjustedValues;
import sheathwright.wood.Grade;
import sheathwright.wood.GradeStamp;
import sheathwright.wood.LoadDuration;
import sheathwright.wood.MemberUse;
import sheathwright.wood.RafterSections.SectionProperties;
import sheathwright.wood.Species;

/** Which sisters would do beside a job's rafters, and which of those is the cheapest. */
final class SisterChoice {

  private SisterChoice() {}

  static SisterSizes of(Job job, Figure<Pressure> dead) {
    SectionProperties section = OldRafters.section(job);
    AdjustedValues old = values(job);
    RafterPly rafter =
        RafterPly.depth(section.depth())
            .thickness(section.thickness())
            .bending(old.bending())
            .modulus(old.modulus());
    SpanLoad load =
        SpanLoad.span(job.fact("span_ft", Units.FOOT))
            .spacing(job.fact("support_spacing_in", Units.INCH))
            .live(job.fact("live_psf", Units.PSF))
            .dead(dead);
    return SisterSizing.sisterSizes(
        rafter,
        GradeStamp.of(job.<Species>word("sister_species"), job.<Grade>word("sister_grade")),
        job.<RafterLoad>word("load"),
        SisterLoad.of(load)
            .existing(job.fact("existing_psf", Units.PSF))
            .jacked(job.<YesNo>word("jacked"))
            .deflectionLimit(job.fact("deflection_limit", Units.RATIO)),
        StickPrices.none()
            .price2x4(stick(job, "2x4"))
            .price2x6(stick(job, "2x6"))
            .price2x8(stick(job, "2x8"))
            .price2x10(stick(job, "2x10"))
            .price2x12(stick(job, "2x12")));
  }

  private static AdjustedValues values(Job job) {
    Condition isSnow = job.<RafterLoad>word("load").is(RafterLoad.SNOW);
    return DesignValues.designValues(
        OldRafters.member(job),
        Choice.choose(isSnow, LoadDuration.DURATION_SNOW, LoadDuration.DURATION_ROOF_LIVE)
            .as("sistered_load_duration"),
        MemberUse.spacing(job.fact("support_spacing_in", Units.INCH)),
        OldRafters.seat(job));
  }

  private static Figure<Per<Money, Pieces>> stick(Job job, String size) {
    return job.price("stick_" + size, Units.USD_PER_PIECE);
  }
}
