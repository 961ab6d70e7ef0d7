package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.Estimate.Tie;
import sheathwright.job.life.Item;
import sheathwright.job.life.View;
import sheathwright.job.table.Moment;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.bill.LaterOption;
import sheathwright.life.bill.NextOrder;
import sheathwright.life.bill.Share;
import sheathwright.life.found.Found;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.page.Sections;

/** The page of a change order that has one line a mark: where, why, its photographs, how much. */
final class MarksPage {

  private static final int[] WIDTHS = {7, 22, 33, 17, 13, 9, 9};
  private static final int QUANTITY = 5;
  private static final String STOP = "stop";
  private static final double DUST = 1e-9;

  private final Tab tab;
  private final NextOrder order;
  private final Photos photos;
  private final Measured measured;
  private final List<String> causes;
  private final List<Condition> sums = new ArrayList<>();

  MarksPage(Tab tab, Estimate estimate, NextOrder order, Photos photos) {
    this.tab = tab;
    this.order = order;
    this.photos = photos;
    measured = new Measured(estimate);
    causes = Causes.sentences(estimate);
  }

  static Tab tab(Paper paper) {
    return paper.page("Marks", WIDTHS);
  }

  static boolean isAsked(Share share) {
    return Math.abs(share.now().value()) > DUST;
  }

  /** Why a mark is asked for, or why something of it comes back. */
  static String why(Share share) {
    return share.now().value() < 0 ? "taken back; it was ordered before" : share.reason();
  }

  /** Why an option is asked for, or given back. */
  static String why(LaterOption option) {
    return option.now().value() < 0
        ? "You gave it up; it was ordered before: %s.".formatted(option.what())
        : "You chose it on %s: %s.".formatted(Moment.spoken(option.chosenOn()), option.what());
  }

  void write() {
    order.asked().forEach(this::marks);
    if (!order.chosen().isEmpty()) {
      tab.heading("Chosen since it was agreed");
      order.chosen().forEach(option -> tab.paragraph(why(option)));
    }
    order.accounts().items().forEach(this::included);
    unseen(order, photos)
        .ifPresent(
            words -> {
              tab.heading("Photographs");
              tab.caution(words);
            });
    if (!causes.isEmpty()) {
      tab.heading("What comes back");
      causes.forEach(tab::paragraph);
    }
    order.priceOpen().forEach(this::open);
    for (Found found : order.accounts().unpriced()) {
      tab.paragraph(
          "%s: %s. No price was agreed for it; we talk first."
              .formatted(found.key(), found.reason()));
    }
    order.accounts().uncharged().stream()
        .filter(found -> found.action().equals(STOP))
        .forEach(
            found ->
                tab.caution(
                    "%s: %s. Separate order after the engineer."
                        .formatted(found.key(), found.reason())));
  }

  private void marks(ItemAccount item) {
    String name = item.item().word();
    Roll.Column<Share> each = Roll.column("price_usd", share -> item.agreed().price());
    Roll roll =
        roll(
            "asked_" + name,
            item.shares().stream().filter(MarksPage::isAsked).toList(),
            List.of(Roll.column("quantity", Share::now), each));
    tab.heading(UnitWords.heading(item.agreed()));
    tab.list(
        roll,
        List.of("Mark", "Place", "Why", "Measured", "Photographs", "How many", "Each"),
        Sections.units(null, null, null, null, null, Units.RATIO, Units.USD));
    Figure<Ratio> sum = roll.sum("quantity", Units.RATIO).as(name + "_of_marks", Units.RATIO);
    tab.listTotal("Together", sum, QUANTITY);
    boolean goesByArea = item.item() == Item.SHEET && item.agreed().unit().equals("area");
    if (!goesByArea) {
      sums.add(sum.isTheSameAs(item.now()));
    }
  }

  /** Marks that were found and are in the agreed price, so that the owner sees what it was for. */
  private void included(ItemAccount item) {
    List<Share> included =
        item.shares().stream().filter(share -> share.included().value() > DUST).toList();
    if (!included.isEmpty()) {
      tab.heading("In the agreed price: " + UnitWords.label(item.agreed()));
      tab.list(
          roll(
              "included_" + item.item().word(),
              included,
              List.of(Roll.column("quantity", Share::included))),
          List.of("Mark", "Place", "Why", "Measured", "Photographs", "How many"),
          Sections.units(null, null, null, null, null, Units.RATIO));
    }
  }

  private Roll roll(String name, List<Share> shares, List<Roll.Column<Share>> numbers) {
    List<Roll.Column<Share>> columns =
        new ArrayList<>(
            List.of(
                Paper.<Share>words("mark", Share::mark),
                Paper.<Share>words("place", share -> Places.inWords(share.key())),
                Paper.<Share>words("why", MarksPage::why),
                Paper.<Share>words("measured", measured::words),
                Paper.<Share>words("photographs", share -> PhotoRows.keys(photos.of(share)))));
    columns.addAll(numbers);
    return Roll.of(name, "marks of the change order", shares, columns);
  }

  private void open(ItemAccount item) {
    tab.heading("Price open: " + item.item().label());
    tab.paragraph(
        "More was found than was agreed to count before both sides talk again. At the agreed price it would come to what stands here; it is in no sum.");
    tab.shown("How many", item.open(), "");
    tab.shown("At the agreed price", item.openAmount(), "not in the sum");
  }

  /** What must hold of the marks: that they add up, and that each is seen before and open. */
  List<Tie> ties() {
    List<Tie> ties = new ArrayList<>();
    if (!sums.isEmpty()) {
      ties.add(Tie.all("The marks add up to how many are asked for", "marks_of_item_", sums));
    }
    Figure<Ratio> without =
        Figure.constant(
            "marks_without_photographs",
            unseenMarks(order, photos).size(),
            Units.RATIO,
            Source.GIVEN);
    ties.add(
        new Tie(
            "Each billed mark has a photograph before and one when open",
            without.isAtMost(Figure.of(0, Units.RATIO))));
    return ties;
  }

  /** Which billed marks nobody photographed before and open, in a sentence; nothing if all are. */
  static Optional<String> unseen(NextOrder order, Photos photos) {
    return Optional.of(unseenMarks(order, photos))
        .filter(marks -> !marks.isEmpty())
        .map(
            marks ->
                "Billed without a photograph before and one when it was open: "
                    + String.join(", ", marks));
  }

  private static List<String> unseenMarks(NextOrder order, Photos photos) {
    return order.asked().stream()
        .flatMap(item -> item.shares().stream())
        .filter(share -> share.now().value() > DUST && !isSeen(share, photos))
        .map(Share::mark)
        .toList();
  }

  private static boolean isSeen(Share share, Photos photos) {
    List<Photo> all = photos.of(share);
    return List.of(View.BEFORE, View.OPEN).stream()
        .allMatch(
            view ->
                all.stream()
                    .anyMatch(photo -> photo.view() == view && photo.picture().isPresent()));
  }
}
