package sheathwright.workbook.paper;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.table.Moment;
import sheathwright.life.bill.Accounts;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.bill.Share;
import sheathwright.workbook.book.Listing;
import sheathwright.workbook.page.Sections;
import sheathwright.workbook.told.PhotoRows;
import sheathwright.workbook.told.Photos;
import sheathwright.workbook.told.Places;
import sheathwright.workbook.told.Sheaf;
import sheathwright.workbook.told.Told;

/** What was done to a deck, place by place: why, when, by whom, what was measured. */
final class DonePage {

  private static final int[] WIDTHS = {30, 36, 16, 20, 14, 6, 10};
  private static final int QUANTITY = 6;

  private final Sheaf sheaf;
  private final Accounts accounts;
  private final Photos photos;
  private final Measured measured;
  private final Places places;
  private final Map<ItemAccount, Figure<Ratio>> sums = new LinkedHashMap<>();

  DonePage(Paper paper, Estimate estimate, Accounts accounts, Photos photos) {
    sheaf = paper.sheaf("Place by place", WIDTHS);
    this.accounts = accounts;
    this.photos = photos;
    measured = new Measured(estimate);
    places = Places.of(estimate);
  }

  /** Its sheets of paper. */
  Sheaf sheaf() {
    return sheaf;
  }

  void write() {
    for (ItemAccount item : accounts.items()) {
      List<Share> done = item.shares().stream().filter(DeckRecordBook::isDone).toList();
      if (!done.isEmpty()) {
        item(item, done);
      }
    }
  }

  private void item(ItemAccount item, List<Share> done) {
    String name = "done_" + item.item().word();
    List<Listing> parts =
        sheaf.list(
            UnitWords.heading(item.agreed()),
            done,
            (some, part) -> roll(Sheaf.named(name, part), some),
            List.of("Place", "Why", "Measured", "When, by whom", "Photographs", "No.", "How many"),
            Sections.units(null, null, null, null, null, null, Units.RATIO));
    Figure<Ratio> sum = Figure.of(0, Units.RATIO);
    for (Listing part : parts) {
      sum = sum.plus(part.roll().sum("quantity", Units.RATIO));
    }
    sum = sum.as(name, Units.RATIO);
    sheaf.tab().listTotal("Together", sum, QUANTITY);
    sums.put(item, sum);
  }

  private Roll roll(String name, List<Share> done) {
    return Roll.of(
        name,
        "the places where that was done",
        done,
        Paper.<Share>words("place", share -> places.where(share.mark(), share.key())),
        Paper.words("why", share -> places.reason(share.reason())),
        Paper.words("measured", measured::words),
        Paper.words("when", this::when),
        Paper.words("photographs", share -> PhotoRows.keys(photos.of(share.mark(), share.key()))),
        Paper.words("number", share -> places.number(share.mark())),
        Roll.column("quantity", share -> Told.of("quantity", share.kept())));
  }

  private String when(Share share) {
    return Stream.of(Moment.spoken(share.on()), measured.by(share))
        .filter(said -> !said.isEmpty())
        .collect(Collectors.joining(", "));
  }

  /** How much of each item was done. */
  Map<ItemAccount, Figure<Ratio>> sums() {
    return sums;
  }
}
