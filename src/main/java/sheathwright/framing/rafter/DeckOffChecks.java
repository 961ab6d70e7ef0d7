package sheathwright.framing.rafter;

import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Density;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Moment;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.wood.AdjustedWood;
import sheathwright.wood.LateralStability;
import sheathwright.wood.LoadDuration;
import sheathwright.wood.Nds;
import sheathwright.wood.RafterSection;
import sheathwright.wood.RepetitiveMember;
import sheathwright.wood.SimpleSpan;

/**
 * A rafter while the deck is off: nothing but battens or braces keeps its upper edge from rolling,
 * no deck shares a load with its neighbors, the old roof lies on it no more, and somebody stands on
 * it.
 */
final class DeckOffChecks {

  private static final Figure<Length> NOTHING = Figure.of(0, Units.INCH);
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Density> FRAMING =
      Figure.constant("framing_pcf", 35, Units.PCF, Source.COMMON_PRACTICE).symbol("35 pcf");
  private static final Figure<Length> COURSE =
      Figure.constant("course_in", 48, Units.INCH, Source.COMMON_PRACTICE).symbol("48 in");

  /** The middle one of three rafters under a stiff plank is taken to bear half of a person. */
  private static final Source PLANKS = Source.COMMON_PRACTICE;

  final Check bending;
  final Check slenderness;

  /** What lies on it for good: the framing itself, and what hangs from it. */
  final Figure<Pressure> dead;

  /** The greatest distance between braces at which the bending check passes; 0 where none is. */
  final Figure<Length> longestUnbraced;

  /** The same where the person stands on planks over three rafters; 0 where none is. */
  final Figure<Length> longestUnderPlanks;

  /**
   * The checks of one rafter.
   *
   * @param span counted as the height of the ties asks
   * @param tie of its pair, which knows the slope
   * @param state what holds the upper edge, and what lies on the rafter
   */
  DeckOffChecks(
      AdjustedWood wood,
      RafterSection section,
      Figure<Length> span,
      RafterTie tie,
      Figure<Length> spacing,
      DeckOff state) {
    var held = state.braceSpacing();
    var along = tie.alongTheSlope();
    Condition isOpen = held.isAtMost(NOTHING);
    var lu =
        Figure.choose(isOpen, along, held.min(along)).as("unbraced_in", Units.INCH).symbol("l_u");
    var cd = Nds.loadDuration("deck_off_duration_factor", LoadDuration.DURATION_ROOF_LIVE);
    var star =
        wood.bending
            .times(cd)
            .as("deck_off_bending_psi", Units.PSI, RepetitiveMember.NDS_2018.at("Table 4.3.1"))
            .symbol("F_b*");
    var stability =
        new LateralStability(lu, section.depth(), section.thickness(), wood.minModulus, star);

    var own =
        FRAMING
            .times(section.area())
            .times(tie.slopeFactor())
            .as("framing_lb_per_in", Units.POUND_PER_INCH, SimpleSpan.STATICS);
    var still =
        own.plus(state.hung().times(spacing))
            .as("deck_off_dead_lb_per_in", Units.POUND_PER_INCH, SimpleSpan.STATICS)
            .symbol("w_D");
    dead = still.dividedBy(spacing).as("deck_off_dead_psf", Units.PSF, SimpleSpan.STATICS);
    var evenly =
        moment("deck_off_even", still.plus(state.live().times(spacing)), span)
            .as("deck_off_even_in_lb", Units.INCH_POUND, SimpleSpan.STATICS);
    var stacked = moment("deck_off_stacked", still.plus(state.stack().times(spacing)), span);
    var standing =
        stress(
            "deck_off",
            section,
            evenly,
            stacked.plus(SimpleSpan.pointMoment(state.person(), span)));
    var onPlanks = state.person().dividedBy(TWO).as("on_planks_lb", Units.POUND, PLANKS);
    var planked =
        stress(
            "deck_off_planked",
            section,
            evenly,
            stacked.plus(SimpleSpan.pointMoment(onPlanks, span)));
    bending =
        Check.of(
            "bending while the deck is off",
            "deck_off_bending_ratio",
            standing,
            star.times(stability.factor)
                .as("deck_off_allowed_psi", Units.PSI, RepetitiveMember.NDS_2018.at("3.3.3")));
    slenderness =
        Check.of(
            "slenderness while the deck is off",
            "deck_off_slenderness_ratio",
            stability.slenderness,
            LateralStability.MOST_SLENDER);
    longestUnbraced =
        LateralStability.longestUnbraced(section, wood.minModulus, star, standing)
            .as("deck_off_brace_in", Units.INCH, RepetitiveMember.NDS_2018.at("3.3.3"));
    longestUnderPlanks =
        LateralStability.longestUnbraced(section, wood.minModulus, star, planked)
            .as("deck_off_plank_brace_in", Units.INCH, RepetitiveMember.NDS_2018.at("3.3.3"));
  }

  /** Whether it bears a person held as it is. */
  Choice<YesNo> ok() {
    return Condition.all(bending.ok(), slenderness.ok()).as("deck_off_ok");
  }

  /** What a crew does about it. */
  Choice<DeckOffWay> way(Choice<YesNo> asItStands) {
    Choice<DeckOffWay> planks =
        Choice.choose(
                longestUnderPlanks.isMoreThan(NOTHING),
                DeckOffWay.PLANKS_AND_BRACES,
                DeckOffWay.NOBODY_ON_IT)
            .as("deck_off_way_with_planks");
    Choice<DeckOffWay> braces =
        Choice.choose(longestUnbraced.isMoreThan(NOTHING), DeckOffWay.BRACES, planks)
            .as("deck_off_way_with_braces");
    Choice<DeckOffWay> held =
        Choice.choose(longestUnbraced.isAtLeast(COURSE), DeckOffWay.FEW_SHEETS_OR_BRACES, braces)
            .as("deck_off_way_if_held");
    return Choice.choose(asItStands.is(YesNo.YES), DeckOffWay.AS_IT_STANDS, held)
        .as("deck_off_way");
  }

  private static Figure<Moment> moment(String name, Figure<LineForce> load, Figure<Length> span) {
    return SimpleSpan.moment(
        load.as(name + "_load_lb_per_in", Units.POUND_PER_INCH, SimpleSpan.STATICS), span);
  }

  private static Figure<Stress> stress(
      String name, RafterSection section, Figure<Moment> evenly, Figure<Moment> person) {
    return evenly
        .max(person.as(name + "_person_in_lb", Units.INCH_POUND, SimpleSpan.STATICS))
        .dividedBy(section.sectionModulus())
        .as(name + "_stress_psi", Units.PSI, RepetitiveMember.NDS_2018.at("3.3.2"));
  }
}
