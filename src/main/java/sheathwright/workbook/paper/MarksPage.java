package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.bill.NextOrder;
import sheathwright.life.bill.Share;
import sheathwright.life.found.Found;
import sheathwright.workbook.book.Listing;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.page.Sections;
import sheathwright.workbook.told.PhotoCount;
import sheathwright.workbook.told.PhotoRows;
import sheathwright.workbook.told.Photos;
import sheathwright.workbook.told.Places;
import sheathwright.workbook.told.Sheaf;
import sheathwright.workbook.told.Told;
import sheathwright.workbook.told.Waiting;

/** The page of a change order that has one line a mark: where, why, its photographs, how much. */
final class MarksPage {

  private static final int[] WIDTHS = {30, 44, 19, 17, 7, 12};
  private static final int NUMBER = 5;
  private static final String STOP = "stop";

  /** Of the three lines below a list, in points. */
  private static final double FOOT = 54;

  private static final List<String> HEADINGS =
      List.of("Place", "Why", "Measured", "Photographs", "No.", "How many");
  private static final List<Unit<?>> UNITS =
      Sections.units(null, null, null, null, null, Units.RATIO);

  private final Sheaf sheaf;
  private final NextOrder order;
  private final Photos photos;
  private final Measured measured;
  private final Places places;
  private final List<String> causes;
  private final List<String> framing;
  private final List<Asked> asked = new ArrayList<>();
  private final List<Chosen> chosen;

  MarksPage(Paper paper, Estimate estimate, NextOrder order, Photos photos) {
    sheaf = paper.sheaf("What was found", WIDTHS);
    this.order = order;
    this.photos = photos;
    measured = new Measured(estimate);
    places = Places.of(estimate);
    causes = Causes.sentences(estimate);
    framing = Waiting.sentences(estimate);
    chosen = order.chosen().stream().map(Chosen::of).toList();
  }

  /** Its sheets of paper. */
  Sheaf sheaf() {
    return sheaf;
  }

  /** What each item comes to; known once the page is written. */
  List<Asked> asked() {
    return asked;
  }

  /** What each option comes to that was chosen since, or given up again. */
  List<Chosen> chosen() {
    return chosen;
  }

  void write() {
    order.asked().forEach(this::marks);
    chosenSince();
    order.accounts().items().forEach(this::included);
    order.priceOpen().forEach(this::open);
    waiting();
    PhotoCount count = Asked.photographs(order, photos).named(places::number);
    sheaf.heading("Photographs", sheaf.tab().tallOf(count.words()));
    if (count.missing().isEmpty()) {
      sheaf.paragraph(count.words());
    } else {
      caution(count.words());
    }
    if (!causes.isEmpty()) {
      sheaf.heading("What comes back", sheaf.tab().tallOf(causes.get(0)));
      causes.forEach(sheaf::paragraph);
    }
  }

  private void marks(ItemAccount item) {
    String name = item.item().word();
    List<Share> marks = Asked.marksOf(item);
    List<Listing> parts =
        sheaf.list(
            UnitWords.heading(item.agreed()),
            marks,
            (some, part) -> roll("asked_" + name, part, some, Share::now),
            HEADINGS,
            UNITS,
            FOOT);
    Asked all = Asked.of(item, marks, together(parts, name + "_of_marks"));
    foot(all);
    asked.add(all);
  }

  /** Options that the owner chose since he agreed, or gave up again, each at its own price. */
  private void chosenSince() {
    sheaf.list(
        "Chosen since it was agreed",
        chosen,
        (some, part) ->
            Roll.of(
                Sheaf.named("chosen", part),
                "options of the change order",
                some,
                Paper.<Chosen>words("what", each -> each.option().what()),
                Paper.words("why", Chosen::why),
                Paper.words("unit", each -> each.option().unit()),
                Roll.column("quantity", Chosen::quantity),
                Roll.column("price_usd", Chosen::price),
                Roll.column("amount_usd", Chosen::amount)),
        List.of("What", "Why", "Counted in", "How many", "Each", "In all"),
        Sections.units(null, null, null, Units.RATIO, Units.USD, Units.USD));
  }

  /** How many of an item the marks make together, what each costs, and what all cost. */
  private void foot(Asked all) {
    foot(
        Asked.goesByArea(all.account()) ? "Together, up to the next quarter" : "Together",
        all.quantity(),
        Part.LABEL,
        Part.RESULT);
    foot("Each, as agreed", all.price(), Part.LABEL, Part.RESULT);
    foot("In all", all.amount(), Part.TOTAL_LABEL, Part.TOTAL);
  }

  private void foot(String label, Traced value, Part beside, Part part) {
    Tab tab = sheaf.tab();
    int line = tab.line();
    for (int column = 0; column < NUMBER; column++) {
      tab.text(line, column, column == 0 ? label : "", beside);
    }
    tab.value(line, NUMBER, value, part);
  }

  /** What the parts of a list add up to in the column of how many. */
  private static Figure<Ratio> together(List<Listing> parts, String name) {
    Figure<Ratio> sum = null;
    for (Listing part : parts) {
      Figure<Ratio> more = part.roll().sum("quantity", Units.RATIO);
      sum = sum == null ? more : sum.plus(more);
    }
    return sum;
  }

  /** Marks that were found and are in the agreed price, so that the owner sees what it was for. */
  private void included(ItemAccount item) {
    sheaf.list(
        "In the agreed price: " + UnitWords.label(item.agreed()),
        Asked.includedOf(item),
        (some, part) -> roll("included_" + item.item().word(), part, some, Share::included),
        HEADINGS,
        UNITS);
  }

  private Roll roll(
      String name, int part, List<Share> shares, Function<Share, Figure<Ratio>> quantity) {
    return Roll.of(
        Sheaf.named(name, part),
        "marks of the change order",
        shares,
        Paper.<Share>words("place", share -> places.where(share.mark(), share.key())),
        Paper.words("why", share -> places.reason(Asked.why(share))),
        Paper.words("measured", measured::words),
        Paper.words("photographs", share -> PhotoRows.keys(photos.of(share.mark(), share.key()))),
        Paper.words("number", share -> places.number(share.mark())),
        Roll.column("quantity", share -> Told.of("quantity", quantity.apply(share))));
  }

  private void open(ItemAccount item) {
    String word = item.item().word();
    sheaf.heading("Price open: " + item.item().label(), 80);
    sheaf.paragraph(
        "More was found than was agreed to count before both sides talk again. At the agreed price it would come to what stands here; it is in no sum.");
    sheaf.tab().entry("How many", Told.of(word + "_open", item.open()), "");
    sheaf
        .tab()
        .entry(
            "At the agreed price",
            Told.of(word + "_open_usd", item.openAmount()),
            "not in the sum");
  }

  /** What was found and is not asked for: it has no price, or somebody else decides first. */
  private void waiting() {
    List<Found> unpriced = order.accounts().unpriced();
    List<Found> stopped =
        order.accounts().uncharged().stream().filter(found -> found.action().equals(STOP)).toList();
    if (unpriced.isEmpty() && stopped.isEmpty() && framing.isEmpty()) {
      return;
    }
    sheaf.heading("What waits", 30);
    for (Found found : unpriced) {
      sheaf.paragraph(
          "%s: %s. No price was agreed for it; we talk first."
              .formatted(places.told(found.mark(), found.key()), places.reason(found.reason())));
    }
    for (Found found : stopped) {
      caution(
          "%s: %s. Separate order after the engineer."
              .formatted(places.told(found.mark(), found.key()), places.reason(found.reason())));
    }
    framing.forEach(
        each -> caution(each + " It is in no sum; a separate order comes after that is decided."));
  }

  private void caution(String words) {
    sheaf.keep(sheaf.tab().tallOf(words));
    sheaf.tab().caution(words);
  }
}
