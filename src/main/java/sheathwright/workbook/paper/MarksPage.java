package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.List;
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
import sheathwright.life.bill.ItemAccount;
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

  void write() {
    order.asked().forEach(this::marks);
    if (!unseen().isEmpty()) {
      tab.heading("Photographs");
      tab.caution(
          "Billed without a photograph before and one when it was open: "
              + String.join(", ", unseen()));
    }
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
    Roll roll =
        Roll.of(
            "asked_" + name,
            "the marks of " + item.item().label(),
            item.shares().stream().filter(MarksPage::isAsked).toList(),
            Paper.<Share>words("mark", Share::mark),
            Paper.words("place", share -> Places.inWords(share.key())),
            Paper.words("why", MarksPage::why),
            Paper.words("measured", measured::words),
            Paper.words("photographs", share -> PhotoRows.keys(photos.of(share))),
            Roll.column("quantity", Share::now),
            Roll.column("price_usd", share -> item.agreed().price()));
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
    List<String> unseen = unseen();
    Figure<Ratio> without =
        Figure.constant("marks_without_photographs", unseen.size(), Units.RATIO, Source.GIVEN);
    ties.add(
        new Tie(
            "Each billed mark has a photograph before and one when open",
            without.isAtMost(Figure.of(0, Units.RATIO))));
    return ties;
  }

  private List<String> unseen() {
    return order.asked().stream()
        .flatMap(item -> item.shares().stream())
        .filter(share -> share.now().value() > DUST && !isSeen(share))
        .map(Share::mark)
        .toList();
  }

  private boolean isSeen(Share share) {
    List<Photo> all = photos.of(share);
    return List.of(View.BEFORE, View.OPEN).stream()
        .allMatch(
            view ->
                all.stream()
                    .anyMatch(photo -> photo.view() == view && photo.picture().isPresent()));
  }
}
