package sheathwright.framing.rafter;

import sheathwright.figure.Check;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Units;
import sheathwright.wood.AdjustedWood;
import sheathwright.wood.LateralStability;
import sheathwright.wood.LoadDuration;
import sheathwright.wood.Nds;
import sheathwright.wood.RafterSection;
import sheathwright.wood.RepetitiveMember;
import sheathwright.wood.SimpleSpan;

/**
 * A rafter while the deck is off: nothing but battens or braces keeps its upper edge from rolling,
 * no deck shares a load with its neighbors, and people work on it.
 */
final class DeckOffChecks {

  private static final Figure<Length> NOTHING = Figure.of(0, Units.INCH);

  final Check bending;
  final Check slenderness;

  /** The greatest distance between braces at which the bending check passes; 0 where none is. */
  final Figure<Length> longestUnbraced;

  /**
   * The checks of one rafter.
   *
   * @param span counted as the height of the ties asks
   * @param state what holds the upper edge, and what lies on the rafter
   */
  DeckOffChecks(
      AdjustedWood wood,
      RafterSection section,
      Figure<Length> span,
      Figure<Length> alongTheSlope,
      Figure<Length> spacing,
      Figure<Pressure> dead,
      DeckOff state) {
    var held = state.braceSpacing();
    Condition isOpen = held.isAtMost(NOTHING);
    var lu =
        Figure.choose(isOpen, alongTheSlope, held.min(alongTheSlope))
            .as("unbraced_in", Units.INCH)
            .symbol("l_u");
    var cd = Nds.loadDuration("deck_off_duration_factor", LoadDuration.DURATION_ROOF_LIVE);
    var star =
        wood.bending
            .times(cd)
            .as("deck_off_bending_psi", Units.PSI, RepetitiveMember.NDS_2018.at("Table 4.3.1"))
            .symbol("F_b*");
    var stability =
        new LateralStability(lu, section.depth(), section.thickness(), wood.minModulus, star);
    var w =
        dead.plus(state.live())
            .times(spacing)
            .as("deck_off_load_lb_per_in", Units.POUND_PER_INCH, SimpleSpan.STATICS);
    var stress =
        SimpleSpan.moment(w, span)
            .dividedBy(section.sectionModulus())
            .as("deck_off_stress_psi", Units.PSI, RepetitiveMember.NDS_2018.at("3.3.2"));
    bending =
        Check.of(
            "bending while the deck is off",
            "deck_off_bending_ratio",
            stress,
            star.times(stability.factor)
                .as("deck_off_allowed_psi", Units.PSI, RepetitiveMember.NDS_2018.at("3.3.3")));
    slenderness =
        Check.of(
            "slenderness while the deck is off",
            "deck_off_slenderness_ratio",
            stability.slenderness,
            LateralStability.MOST_SLENDER);
    longestUnbraced =
        LateralStability.longestUnbraced(section, wood.minModulus, star, stress)
            .as("deck_off_brace_in", Units.INCH, RepetitiveMember.NDS_2018.at("3.3.3"));
  }
}
