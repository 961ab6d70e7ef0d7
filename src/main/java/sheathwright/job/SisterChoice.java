package sheathwright.job;

import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.framing.rafter.RafterLoad;
import sheathwright.framing.rafter.StruttedRafters;
import sheathwright.framing.sister.RafterPly;
import sheathwright.framing.sister.SisterLoad;
import sheathwright.framing.sister.SisterSizes;
import sheathwright.framing.sister.SisterSizing;
import sheathwright.framing.sister.SpanLoad;
import sheathwright.framing.sister.StickPrices;
import sheathwright.wood.DesignValues;
import sheathwright.wood.DesignValues.AdjustedValues;
import sheathwright.wood.GradeStamp;
import sheathwright.wood.LoadDuration;
import sheathwright.wood.MemberUse;
import sheathwright.wood.RafterSections.SectionProperties;

/** Which sisters would do beside a job's rafters, and which of those is the cheapest. */
final class SisterChoice {

  private SisterChoice() {}

  static SisterSizes of(Job job, OldRafters rafters, Figure<Pressure> dead) {
    SectionProperties section = rafters.section();
    AdjustedValues old = values(job, rafters);
    RafterPly rafter =
        RafterPly.depth(section.depth())
            .thickness(section.thickness())
            .bending(old.bending())
            .modulus(old.modulus());
    SpanLoad load =
        SpanLoad.span(StruttedRafters.struttedSpan(job.fact(FramingFields.SPAN), rafters.strut()))
            .spacing(job.fact(JobFields.SUPPORT_SPACING))
            .live(rafters.live())
            .dead(dead);
    return SisterSizing.sisterSizes(
        rafter,
        GradeStamp.of(job.fact(FramingFields.SISTER_SPECIES), job.fact(FramingFields.SISTER_GRADE)),
        job.fact(FramingFields.LOAD),
        SisterLoad.of(load)
            .existing(job.fact(FramingFields.EXISTING))
            .jacked(job.fact(FramingFields.JACKED))
            .deflectionLimit(rafters.passingLimit()),
        StickPrices.none()
            .price2x4(job.price(FramingFields.STICK_2X4))
            .price2x6(job.price(FramingFields.STICK_2X6))
            .price2x8(job.price(FramingFields.STICK_2X8))
            .price2x10(job.price(FramingFields.STICK_2X10))
            .price2x12(job.price(FramingFields.STICK_2X12)));
  }

  private static AdjustedValues values(Job job, OldRafters rafters) {
    Condition isSnow = job.fact(FramingFields.LOAD).is(RafterLoad.SNOW);
    return DesignValues.designValues(
        rafters.member(),
        Choice.choose(isSnow, LoadDuration.DURATION_SNOW, LoadDuration.DURATION_ROOF_LIVE)
            .as("sistered_load_duration"),
        MemberUse.spacing(job.fact(JobFields.SUPPORT_SPACING)),
        rafters.seat());
  }
}
