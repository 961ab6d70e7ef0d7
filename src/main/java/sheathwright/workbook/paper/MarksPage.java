package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.job.Estimate.Tie;
import sheathwright.job.life.Item;
import sheathwright.job.life.View;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.bill.NextOrder;
import sheathwright.life.bill.Share;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.page.Sections;

/** The page of a change order that has one line a mark: where, why, its photographs, how much. */
final class MarksPage {

  private static final int[] WIDTHS = {8, 25, 40, 16, 9, 10};
  private static final double DUST = 1e-9;

  private final Tab tab;
  private final NextOrder order;
  private final Photos photos;
  private final List<Condition> sums = new ArrayList<>();

  MarksPage(Tab tab, NextOrder order, Photos photos) {
    this.tab = tab;
    this.order = order;
    this.photos = photos;
  }

  static Tab tab(Paper paper) {
    return paper.page("Marks", WIDTHS);
  }

  static boolean isAsked(Share share) {
    return Math.abs(share.now().value()) > DUST;
  }

  void write() {
    order.asked().forEach(this::marks);
    order.priceOpen().forEach(this::open);
    order.accounts().unpriced().forEach(
        found -> tab.paragraph("%s: %s. No price was agreed for it; we talk first.".formatted(found.key(), found.reason())));
    order.accounts().uncharged().stream().filter(found -> found.action().equals("stop")).forEach(
        found -> tab.caution("%s: %s. Separate order after the engineer.".formatted(found.key(), found.reason())));
  }

  private void marks(ItemAccount item) {
    String name = item.item().word();
    Roll roll =
        Roll.of(
            "asked_" + name,
            "the marks of " + item.item().label(),
            item.shares().stream().filter(MarksPage::isAsked).toList(),
            Paper.<Share>words("mark", Share::mark),
            Paper.words("place", share -> share.key() + ": " + Places.inWords(share.key())),
            Paper.words("why", Share::reason),
            Paper.words("photographs", share -> PhotoRows.keys(photos.of(share))),
            Roll.column("quantity", Share::now),
            Roll.column("price_usd", share -> item.agreed().price()));
    tab.heading(UnitWords.heading(item.agreed()));
    tab.list(
        roll,
        List.of("Mark", "Place", "Why", "Photographs", "How many", "Each"),
        Sections.units(null, null, null, null, Units.RATIO, Units.USD));
    Figure<Ratio> sum = roll.sum("quantity", Units.RATIO).as(name + "_of_marks", Units.RATIO);
    tab.listTotal("Together", sum, 4);
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
    List<String> unseen =
        order.asked().stream()
            .flatMap(item -> item.shares().stream())
            .filter(share -> share.now().value() > DUST && !isSeen(share))
            .map(Share::mark)
            .toList();
    Figure<Ratio> without =
        Figure.constant("marks_without_photographs", unseen.size(), Units.RATIO, Source.GIVEN);
    ties.add(
        new Tie(
            "Each billed mark has a photograph before and one when it was open"
                + (unseen.isEmpty() ? "" : "; without: " + String.join(", ", unseen)),
            without.isAtMost(Figure.of(0, Units.RATIO))));
    return ties;
  }

  private boolean isSeen(Share share) {
    List<Photo> all = photos.of(share);
    return List.of(View.BEFORE, View.OPEN).stream()
        .allMatch(
            view -> all.stream().anyMatch(photo -> photo.view() == view && photo.picture().isPresent()));
  }
}
