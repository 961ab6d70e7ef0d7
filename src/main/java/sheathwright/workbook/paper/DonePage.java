package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.Estimate.Tie;
import sheathwright.job.table.Moment;
import sheathwright.life.bill.Accounts;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.bill.Share;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.page.Sections;

/** What was done to a deck, place by place: why, when, by whom, what was measured. */
final class DonePage {

  private static final int[] WIDTHS = {21, 34, 15, 20, 12, 7};
  private static final int QUANTITY = 5;

  private final Tab tab;
  private final Accounts accounts;
  private final Photos photos;
  private final Measured measured;
  private final Map<ItemAccount, Figure<Ratio>> sums = new LinkedHashMap<>();

  DonePage(Tab tab, Estimate estimate, Accounts accounts, Photos photos) {
    this.tab = tab;
    this.accounts = accounts;
    this.photos = photos;
    measured = new Measured(estimate);
  }

  static Tab tab(Paper paper) {
    return paper.page("Place by place", WIDTHS);
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
    String word = item.item().word();
    Roll roll =
        Roll.of(
            "done_" + word,
            "the places where that was done",
            done,
            Paper.<Share>words("place", Share::key),
            Paper.words("why", Share::reason),
            Paper.words("measured", measured::words),
            Paper.words("when", this::when),
            Paper.words("photographs", share -> PhotoRows.keys(photos.of(share))),
            Roll.column("quantity", share -> quantity(word, share)));
    tab.heading(UnitWords.heading(item.agreed()));
    tab.list(
        roll,
        List.of("Place", "Why", "Measured", "When, by whom", "Photographs", "How many"),
        Sections.units(null, null, null, null, null, Units.RATIO));
    Figure<Ratio> sum = roll.sum("quantity", Units.RATIO).as("done_" + word, Units.RATIO);
    tab.listTotal("Together", sum, QUANTITY);
    sums.put(item, sum);
  }

  /** What was counted on the roof and stands in the record: nobody changes it any more. */
  private static Figure<Ratio> quantity(String word, Share share) {
    String name = "done_%s_%s".formatted(word, share.mark().replaceAll("\\W", "_"));
    return Figure.constant(name, share.kept().value(), Units.RATIO, Source.GIVEN);
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

  /** That the places listed are all that were done. */
  List<Tie> ties() {
    List<Condition> all = new ArrayList<>();
    sums.forEach(
        (item, sum) -> {
          Figure<Ratio> counted =
              Figure.constant(
                  item.item().word() + "_counted",
                  item.found().value(),
                  Units.RATIO,
                  Source.derived("counted when this was written"));
          all.add(sum.isTheSameAs(counted));
        });
    return all.isEmpty()
        ? List.of()
        : List.of(Tie.all("The places listed are all that were done", "all_listed_", all));
  }
}
