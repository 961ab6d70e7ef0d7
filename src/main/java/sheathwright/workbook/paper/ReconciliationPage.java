package sheathwright.workbook.paper;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;
import sheathwright.job.Estimate.Tie;
import sheathwright.life.bill.Accounts;
import sheathwright.life.bill.Fate;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.bill.Reconciliation;
import sheathwright.life.bill.Reconciliation.Part;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.page.Sections;

/** Where every mark went: each part of it once, under the group that it went to, with its count. */
final class ReconciliationPage {

  private static final int[] WIDTHS = {9, 28, 27, 32, 12};
  private static final int QUANTITY = 4;

  private record Group(Fate fate, String item, Figure<Ratio> sum) {}

  private final Tab tab;
  private final Accounts accounts;
  private final Reconciliation reconciliation;
  private final List<Group> groups = new ArrayList<>();

  ReconciliationPage(Tab tab, Accounts accounts, Reconciliation reconciliation) {
    this.tab = tab;
    this.accounts = accounts;
    this.reconciliation = reconciliation;
  }

  static Tab tab(Paper paper) {
    return paper.page("Where every mark went", WIDTHS);
  }

  void write() {
    tab.paragraph(
        "Every mark stands here once; one of which a part is in the price and a part is not, in both groups.");
    for (Fate fate : Fate.values()) {
      TreeMap<String, List<Part>> byItem =
          reconciliation.parts().stream()
              .filter(part -> part.fate() == fate)
              .collect(groupingBy(Part::item, TreeMap::new, toList()));
      byItem.forEach((item, parts) -> group(fate, item, parts));
    }
  }

  private void group(Fate fate, String item, List<Part> parts) {
    String name = "went_%s_%s".formatted(fate.name().toLowerCase(Locale.ROOT), word(item));
    Roll roll =
        Roll.of(
            name,
            "the marks that went there",
            parts,
            Paper.<Part>words("mark", Part::mark),
            Paper.words("place", Part::key),
            Paper.words("what", part -> word(part.item())),
            Paper.words("where", Part::where),
            Roll.column("quantity", Part::quantity));
    tab.heading(label(fate) + ": " + word(item));
    tab.list(
        roll,
        List.of("Mark", "Place", "What", "Where it went", "How many"),
        Sections.units(null, null, null, null, Units.RATIO));
    Figure<Ratio> sum = roll.sum("quantity", Units.RATIO).as(name + "_together", Units.RATIO);
    tab.listTotal("Together", sum, QUANTITY);
    groups.add(new Group(fate, item, sum));
  }

  private static String word(String item) {
    return item.isEmpty() ? "mark" : item;
  }

  /** That of each item as much went somewhere as was found; by area, a document's sum goes up. */
  List<Tie> ties() {
    List<Condition> all = new ArrayList<>();
    for (ItemAccount item : accounts.items()) {
      Figure<Ratio> went = Figure.of(0, Units.RATIO);
      for (Group group : groups) {
        boolean counts = group.fate() != Fate.VOID && group.fate() != Fate.DECLINED;
        if (counts && group.item().equals(item.item().word())) {
          went = went.plus(group.sum());
        }
      }
      if (!item.agreed().unit().equals("area")) {
        all.add(went.isTheSameAs(item.found()));
      }
    }
    return all.isEmpty()
        ? List.of()
        : List.of(Tie.all("Of each item as much went somewhere as was found", "all_went_of_", all));
  }

  private static String label(Fate fate) {
    return switch (fate) {
      case INCLUDED -> "In the agreed price";
      case ORDERED -> "On a change order";
      case NO_CHARGE -> "No charge";
      case DECLINED -> "Declined by the owner";
      case VOID -> "Taken back";
      case STOP -> "Waits for an engineer, a separate order";
      case PRICE_OPEN -> "Its price is open";
    };
  }
}
