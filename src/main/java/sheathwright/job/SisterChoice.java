package sheathwright.job;

import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Units;
import sheathwright.framing.rafter.RafterLoad;
import sheathwright.framing.rafter.StruttedRafters;
import sheathwright.framing.sister.RafterPly;
import sheathwright.framing.sister.SisterLoad;
import sheathwright.framing.sister.SisterSizes;
import sheathwright.framing.sister.SisterSizing;
import sheathwright.framing.sister.SpanLoad;
import sheathwright.framing.sister.StickPrices;
import sheathwright.leveling.plan.Sisters;
import sheathwright.roof.Slopes;
import sheathwright.wood.DesignValues;
import sheathwright.wood.DesignValues.AdjustedValues;
import sheathwright.wood.GradeStamp;
import sheathwright.wood.LoadDuration;
import sheathwright.wood.LumberSize;
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
        prices(job));
  }

  /** What a stick of each size costs that reaches from bearing to bearing. */
  private static StickPrices prices(Job job) {
    Figure<Length> stick =
        Sisters.stickFor(fromBearingToBearing(job)).as("full_sister_stick_ft", Units.FOOT);
    return StickPrices.none()
        .price2x4(price(job, LumberSize.SIZE_2X4, stick))
        .price2x6(price(job, LumberSize.SIZE_2X6, stick))
        .price2x8(price(job, LumberSize.SIZE_2X8, stick))
        .price2x10(price(job, LumberSize.SIZE_2X10, stick))
        .price2x12(price(job, LumberSize.SIZE_2X12, stick));
  }

  private static Figure<Per<Money, Pieces>> price(Job job, LumberSize size, Figure<Length> stick) {
    return job.lumber()
        .onSale(Choice.literal(size), stick, "full_sister_%s_usd".formatted(size.word()));
  }

  /** As it is told with the readings; else the span along the slope. */
  private static Figure<Length> fromBearingToBearing(Job job) {
    if (job.knows(JobFields.SISTER_SPAN)) {
      return job.fact(JobFields.SISTER_SPAN);
    }
    return job.surveysRafters()
        ? job.fact(SurveyFields.UPPER_BEARING).minus(job.fact(SurveyFields.LOWER_BEARING))
        : job.fact(FramingFields.SPAN)
            .times(Slopes.slopeFactor(job.figure(FramingFields.RISE)))
            .in(Units.FOOT);
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
