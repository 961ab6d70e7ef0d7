package sheathwright.life.found;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.job.Job;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.OldCovering;

/** Whether another covering may go over the one that lies there, before anybody has opened it. */
public final class MayCover {

  /** What is always said beside the answer. */
  public static final String HIDDEN =
      "What the covering hides is not known until it is off: no answer here speaks of the wood.";

  private static final Source RULE =
      Source.secondHand("IRC R908.3, and IBC's rule of the same words");

  private static final Figure<Ratio> MOST_LAYERS =
      Figure.constant("layers_that_ask_for_stripping", 2, Units.RATIO, RULE);

  private MayCover() {}

  /** The answer in a sentence, live. */
  public static Choice<String> answer(Job job) {
    Choice<OldCovering> covering =
        job.knows(LifeFields.OLD_COVERING)
            ? job.fact(LifeFields.OLD_COVERING)
            : Choice.literal(OldCovering.NOT_SEEN);
    Choice<String> sound =
        Choice.choose(covering.is(OldCovering.SOUND), byLayers(job), unseen(job))
            .as("covering_if_nothing_is_wrong");
    Choice<String> tile =
        Choice.choose(
                covering.is(OldCovering.TILE),
                Choice.literal(
                    "no: slate, clay, cement or asbestos-cement tile takes none over it; strip to the deck"),
                sound)
            .as("covering_if_it_is_whole");
    Choice<String> gone =
        Choice.choose(
                covering.is(OldCovering.DETERIORATED),
                Choice.literal(
                    "no: the covering has gone so far that it is no base for another; strip to the deck"),
                tile)
            .as("covering_if_it_is_dry");
    return Choice.choose(
            covering.is(OldCovering.WATER_SOAKED),
            Choice.literal("no: the covering is water-soaked; strip to the deck"),
            gone)
        .as("may_we_cover_it", RULE);
  }

  private static Choice<String> byLayers(Job job) {
    return unlessTwo(
        job,
        "covering_by_its_layers",
        "the code does not forbid it: ask the covering's maker and the building official, and look at the deck from below",
        "nobody knows yet: count the layers that lie there (layers_on)");
  }

  private static Choice<String> unseen(Job job) {
    String look =
        "nobody knows yet: look whether the covering is soaked or has gone bad (old_covering)";
    return unlessTwo(job, "covering_that_nobody_saw", look, look);
  }

  private static Choice<String> unlessTwo(
      Job job, String name, String otherwise, String notCounted) {
    return job.knows(LifeFields.LAYERS_ON)
        ? Choice.choose(
                job.fact(LifeFields.LAYERS_ON).isAtLeast(MOST_LAYERS),
                Choice.literal("no: two layers or more lie there; strip to the deck"),
                Choice.literal(otherwise))
            .as(name)
        : Choice.literal(notCounted);
  }
}
