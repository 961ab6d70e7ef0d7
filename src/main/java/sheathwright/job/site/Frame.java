package sheathwright.job.site;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.YesNo;
import sheathwright.wood.Moisture;
import sheathwright.wood.Species;

/**
 * What the deck is nailed to, as a job tells it.
 *
 * @param spacing center to center of the rafters or trusses
 * @param blockedEdges whether the panels' long edges are blocked
 * @param species of the rafters; unknown where nobody knows it
 * @param moisture of the wood; refused where nobody says it
 */
public record Frame(
    Figure<Length> spacing,
    Choice<YesNo> blockedEdges,
    Choice<Species> species,
    Choice<Moisture> moisture) {}
