package sheathwright.life.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.Deck;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.Leveling;
import sheathwright.job.life.Item;
import sheathwright.job.price.FoundFields;
import sheathwright.job.price.FoundPrices;
import sheathwright.job.price.Lumber;
import sheathwright.job.price.OfficeFields;
import sheathwright.job.price.SupplyFields;
import sheathwright.job.site.SiteFields;
import sheathwright.sheathing.patch.PatchPlan;

/**
 * What is bought for a job, as a supplier reads it. Lumber for the rafters is bought when nothing
 * stops their repair; until then it waits apart. What nothing is needed of keeps its line without a
 * name, so that a workbook follows when something is.
 */
public final class Supply {

  /** What a line of a list is called of which nothing is needed now. */
  public static final String NOT_NEEDED = SupplyLine.NOT_NEEDED;

  private static final Figure<Length> BLOCK_STICK =
      Figure.constant("block_stick_ft", Lumber.BLOCK_FEET, Units.FOOT, Source.COMMON_PRACTICE);
  private static final Figure<Length> SHEET_LENGTH = Figure.of(8, Units.FOOT);
  private static final Figure<Pieces> NO_PIECE = Figure.of(0, Units.PIECE);
  private static final Figure<Length> NO_LENGTH = Figure.of(0, Units.FOOT);
  private static final Figure<Pieces> ONE = Figure.of(1, Units.PIECE);
  private static final Figure<Sheets> SHEET = Figure.of(1, Units.SHEET);
  private static final Figure<Ratio> WHOLE = Figure.of(1, Units.RATIO);
  private static final Figure<Nails> NO_NAIL = Figure.of(0, Units.NAIL);

  private final Estimate estimate;
  private final Job job;
  private final Map<Item, Figure<?>> found;
  private final SheetsTaken sheets;
  private final Figure<Ratio> spare;
  private final Condition mayRepair;
  private final Choice<String> deckNail;
  private final List<SupplyLine> now = new ArrayList<>();
  private final List<SupplyLine> later = new ArrayList<>();

  /**
   * What a job takes.
   *
   * @param found how much of each item its marks lead to
   */
  public Supply(Estimate estimate, Map<Item, Figure<?>> found) {
    this.estimate = estimate;
    this.job = estimate.job();
    this.found = found;
    this.sheets = new SheetsTaken(estimate);
    this.spare = job.rateBook().fact(OfficeFields.ORDER_SPARE);
    this.deckNail =
        SupplyNames.withItsShank(SupplyNames.nail(job.word(SiteFields.NAIL), "deck"), job);
    this.mayRepair = estimate.framing().mayRepair().is(YesNo.YES);
    add(now, SupplyLine.spared(SupplyNames.panel(job), sheets.toBuy(), spare, "sheet"));
    add(now, nails(deckNail, deckNails()));
    add(now, SupplyLine.spared(Choice.literal("Panel clips"), clips(), spare, "piece"));
    add(
        now,
        SupplyLine.counted(
            Choice.literal("2x4 8 ft, for scabs and blocks"), blockSticks(), "stick"));
    add(now, nails(sisterNail(), besideNails()));
    add(
        now,
        SupplyLine.counted(Choice.literal("Sheet metal for holes"), pieces(Item.COVER), "piece"));
    if (!estimate.deck().ofBoards().isEmpty()) {
      add(
          now,
          SupplyLine.counted(Choice.literal("Deck boards, as wide as the old"), boards(), "ft"));
    }
    estimate.rafterLeveling().ifPresent(this::rafters);
  }

  /** Feet of board to buy, with what is lost to cuts and splits. */
  private Figure<Length> boards() {
    return feet(Item.BOARD)
        .times(WHOLE.plus(job.rateBook().fact(OfficeFields.WASTE)))
        .in(Units.FOOT)
        .roundedUp()
        .as("order_boards_ft", Units.FOOT);
  }

  private Figure<Length> feet(Item item) {
    return Optional.ofNullable(found.get(item)).map(each -> each.in(Units.FOOT)).orElse(NO_LENGTH);
  }

  private static void add(List<SupplyLine> lines, SupplyLine line) {
    if (line.isKnown()) {
      lines.add(line);
    }
  }

  /** Lumber, nails and strips for the rafters: now, or after the decision. */
  private void rafters(Leveling leveling) {
    leveling
        .atMiddle()
        .ifPresent(
            middle ->
                nowOrLater(
                    stick(middle.stock().stock()), middle.stock().pieces(), "sister_sticks"));
    leveling
        .survey()
        .flatMap(survey -> survey.cutting())
        .ifPresent(
            cutting ->
                cutting
                    .sticks()
                    .forEach(
                        sticks ->
                            nowOrLater(
                                stick(sticks.length()), sticks.count(), sticks.count().name())));
    Choice<String> nail = sisterNail();
    add(
        now,
        nails(
            nail,
            Figure.choose(mayRepair, leveling.nails(), NO_NAIL)
                .as("sister_nails_now", Units.NAIL)));
    add(
        later,
        nails(
            nail,
            Figure.choose(mayRepair, NO_NAIL, leveling.nails())
                .as("sister_nails_later", Units.NAIL)));
    strips(leveling);
  }

  private void strips(Leveling leveling) {
    if (leveling.survey().isPresent()) {
      nowOrLater(
          Choice.literal("Shim strips 1-1/2 in wide, ripped by the crew's pages"),
          leveling.survey().get().strips(),
          "shim_strips");
    } else {
      nowOrLater(Choice.literal("Shims for a rafter"), leveling.shims(), "shims");
    }
  }

  private Choice<String> stick(Figure<Length> length) {
    return Choice.sentence(
        estimate.sisterSize(), Choice.literal(" "), length.in(Units.FOOT), Choice.literal(" ft"));
  }

  private void nowOrLater(Choice<String> what, Figure<Pieces> count, String name) {
    String sold = what.plain().endsWith(" ft") ? "stick" : "piece";
    Figure<Pieces> bought =
        Figure.choose(mayRepair, count, NO_PIECE).as(name + "_now", Units.PIECE);
    Figure<Pieces> waits =
        Figure.choose(mayRepair, NO_PIECE, count).as(name + "_later", Units.PIECE);
    add(now, SupplyLine.counted(what, bought, sold));
    add(later, SupplyLine.counted(what, waits, sold));
  }

  private SupplyLine nails(Choice<String> what, Figure<Nails> count) {
    Figure<Nails> box = job.rateBook().fact(OfficeFields.NAILS_PER_BOX);
    return SupplyLine.of(
        what, count, spare, box, Choice.sentence(Choice.literal("box of "), box).as("box_name"));
  }

  /** The nail of the deck, by its name and size. */
  public Choice<String> deckNail() {
    return deckNail;
  }

  private Choice<String> sisterNail() {
    return SupplyNames.nail(job.word(SupplyFields.SISTER_NAIL), "sister");
  }

  /** As near roof edges, for new and lifted sheets; and those of refastened ones. */
  private Figure<Nails> deckNails() {
    Figure<Per<Nails, Sheets>> each = estimate.site().nailing().inASheetNearEdges();
    Figure<Nails> all =
        sheets
            .toBuy()
            .times(each)
            .as("new_sheet_nails", Units.NAIL)
            .plus(pieces(Item.LIFT).times(each).times(SHEET).dividedBy(ONE))
            .as("new_and_lifted_sheet_nails", Units.NAIL);
    if (job.rateBook().knows(FoundFields.REFASTEN_NAILS)) {
      all = all.plus(pieces(Item.REFASTEN).times(job.rateBook().fact(FoundFields.REFASTEN_NAILS)));
    }
    if (!estimate.deck().ofBoards().isEmpty()) {
      all =
          all.plus(
              feet(Item.BOARD)
                  .plus(feet(Item.RENAIL))
                  .times(FoundPrices.boardNails(estimate.supportSpacing()))
                  .in(Units.NAIL)
                  .roundedUp()
                  .as("board_nails", Units.NAIL));
    }
    return all.plus(pieces(Item.COVER).times(FoundPrices.COVER_NAILS))
        .as("order_deck_nails", Units.NAIL);
  }

  /** In scabs and blocks. */
  private Figure<Nails> besideNails() {
    return scabs()
        .times(FoundPrices.SCAB_NAILS)
        .as("scab_nails", Units.NAIL)
        .plus(blocks().times(FoundPrices.BLOCK_NAILS))
        .roundedUp()
        .as("scab_and_block_nails", Units.NAIL);
  }

  /** One in each bay of a new sheet's long edge, where the span table wants it held. */
  private Figure<Pieces> clips() {
    Figure<Pieces> marked = pieces(Item.CLIP);
    if (estimate.site().edgesHeld().refusal().isPresent()) {
      return marked;
    }
    Figure<Pieces> each =
        SHEET_LENGTH
            .dividedBy(estimate.supportSpacing())
            .in(Units.RATIO)
            .roundedUp()
            .counting(Units.PIECE)
            .as("clips_of_a_sheet", Units.PIECE);
    Condition takesClips =
        Condition.all(
            estimate.site().edgesHeld().is(YesNo.YES), estimate.blockedEdges().is(YesNo.NO));
    Figure<Pieces> all =
        sheets.toBuy().dividedBy(SHEET).times(each).as("clips_of_all_sheets", Units.PIECE);
    return Figure.choose(takesClips, all, NO_PIECE)
        .as("clips_of_new_sheets", Units.PIECE)
        .plus(marked)
        .as("order_clips", Units.PIECE);
  }

  /** Two scabs from a stick, or blocks for as many feet of edge as it is long. */
  private Figure<Pieces> blockSticks() {
    return scabs()
        .times(Figure.of(4, Units.FOOT))
        .dividedBy(ONE)
        .in(Units.FOOT)
        .plus(blocks())
        .dividedBy(BLOCK_STICK)
        .in(Units.RATIO)
        .roundedUp()
        .counting(Units.PIECE)
        .as("block_sticks", Units.PIECE);
  }

  /** Under ends of patches and of old sheets. */
  Figure<Pieces> scabs() {
    Figure<Pieces> all = pieces(Item.SCAB);
    for (PatchPlan patches : patches()) {
      all = all.plus(patches.scabs());
    }
    return all.as("all_scabs", Units.PIECE);
  }

  /** Along edges of patches and of old sheets. */
  Figure<Length> blocks() {
    Figure<Length> all = feet(Item.BLOCK);
    for (PatchPlan patches : patches()) {
      all = all.plus(patches.blocking());
    }
    return all.as("all_blocks_ft", Units.FOOT);
  }

  private List<PatchPlan> patches() {
    return estimate.deck().parts().stream()
        .map(Deck.Part::patches)
        .flatMap(Optional::stream)
        .toList();
  }

  private Figure<Pieces> pieces(Item item) {
    return Optional.ofNullable(found.get(item)).map(each -> each.in(Units.PIECE)).orElse(NO_PIECE);
  }

  /** The order: what is bought now, a line for each thing that may be. */
  public Roll order() {
    return SupplyLine.roll("order", "the order", now);
  }

  /** What is bought once the engineer has decided; nothing if nothing could wait. */
  public Optional<Roll> waiting() {
    return later.isEmpty()
        ? Optional.empty()
        : Optional.of(SupplyLine.roll("waiting", "what waits for the engineer", later));
  }

  /** The sheets, and where their number comes from. */
  public SheetsTaken sheets() {
    return sheets;
  }
}
