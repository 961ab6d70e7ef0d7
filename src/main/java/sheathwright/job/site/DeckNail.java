package sheathwright.job.site;

import sheathwright.fastening.strength.FastenerSizes;
import sheathwright.fastening.strength.Nail;
import sheathwright.fastening.strength.NailResistances;
import sheathwright.fastening.strength.NailType;
import sheathwright.fastening.strength.NailedPanel;
import sheathwright.fastening.strength.PanelGravities;
import sheathwright.fastening.strength.Shank;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.table.Facts;
import sheathwright.sheathing.panel.PanelKind;
import sheathwright.wood.LoadDuration;
import sheathwright.wood.ServiceConditions;
import sheathwright.wood.WoodGravity;

/**
 * One nail of a job's deck, and what it holds against the wind. A panel of which nobody says what
 * it is counts as the lighter of the two kinds.
 */
final class DeckNail {

  private static final Figure<Length> NO_RINGS = Figure.of(0, Units.INCH);
  private static final Figure<Length> USUAL_RINGS =
      Figure.constant("usual_rings_in", 1.5, Units.INCH, Source.COMMON_PRACTICE).symbol("1-1/2 in");

  private final Choice<NailType> nail;
  private final Choice<Shank> shank;
  private final Figure<Ratio> gravity;
  private final Figure<Force> holds;

  DeckNail(Facts said, Frame frame) {
    nail = said.word(SiteFields.NAIL);
    FastenerSizes.NailSize size = FastenerSizes.nailDimensions(nail);
    boolean isSaid = said.knows(SiteFields.RING_SHANK);
    Figure<Length> rings =
        isSaid
            ? Figure.choose(size.rings().isMoreThan(NO_RINGS), size.rings(), USUAL_RINGS)
                .as("rings_of_the_nail_in", Units.INCH)
            : size.rings();
    shank =
        Choice.choose(
                isSaid
                    ? said.word(SiteFields.RING_SHANK).is(YesNo.YES)
                    : rings.isMoreThan(NO_RINGS),
                Shank.RING,
                Shank.SMOOTH)
            .as("shank_of_the_nail");
    gravity = WoodGravity.woodGravity(frame.species()).as("rafter_gravity", Units.RATIO);
    holds =
        NailResistances.nailResistance(
                Nail.shank(shank)
                    .diameter(size.diameter())
                    .length(size.length())
                    .head(size.head())
                    .rings(rings),
                gravity,
                NailedPanel.thickness(said.figure(SiteFields.PANEL_THICKNESS))
                    .gravity(panelGravity(said)),
                LoadDuration.DURATION_TEN_MINUTES,
                ServiceConditions.of(frame.moisture()))
            .resistance()
            .as("deck_nail_holds_lb", Units.POUND);
  }

  private static Figure<Ratio> panelGravity(Facts said) {
    Figure<Ratio> lighter =
        PanelGravities.panelGravity(PanelGravities.HeldPanel.OTHER_PLYWOOD)
            .as("plywood_gravity", Units.RATIO);
    return said.knows(SiteFields.PANEL_KIND)
        ? Figure.choose(
                said.fact(SiteFields.PANEL_KIND).is(PanelKind.OSB),
                PanelGravities.panelGravity(PanelGravities.HeldPanel.ANY_OSB)
                    .as("osb_gravity", Units.RATIO),
                lighter)
            .as("panel_gravity", Units.RATIO)
        : lighter;
  }

  /** As the code calls it. */
  Choice<NailType> name() {
    return nail;
  }

  Choice<Shank> shank() {
    return shank;
  }

  /** Specific gravity of the rafters as it is counted. */
  Figure<Ratio> gravity() {
    return gravity;
  }

  /** Against uplift, in ten minutes of wind. */
  Figure<Force> holds() {
    return holds;
  }
}
