package sheathwright.workbook.paper;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;
import sheathwright.life.bill.Accounts;
import sheathwright.life.bill.Fate;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.bill.Reconciliation;
import sheathwright.life.bill.Reconciliation.Part;
import sheathwright.workbook.book.Listing;
import sheathwright.workbook.page.Sections;
import sheathwright.workbook.told.OnceMore;
import sheathwright.workbook.told.Places;
import sheathwright.workbook.told.Sheaf;
import sheathwright.workbook.told.Told;

/** Where every mark went: each part of it once, under the group that it went to, with its count. */
final class ReconciliationPage {

  private static final int[] WIDTHS = {44, 12, 56, 14};
  private static final int QUANTITY = 3;

  /** What was refused or taken back is not counted as found. */
  private static final Set<Fate> NOT_FOUND = EnumSet.of(Fate.VOID, Fate.DECLINED);

  private final Sheaf sheaf;
  private final Places places;
  private final Accounts accounts;
  private final Reconciliation reconciliation;
  private final Map<String, Figure<Ratio>> found = new LinkedHashMap<>();

  ReconciliationPage(Paper paper, Places places, Accounts accounts, Reconciliation reconciliation) {
    sheaf = paper.sheaf("Where every mark went", WIDTHS);
    this.places = places;
    this.accounts = accounts;
    this.reconciliation = reconciliation;
  }

  /** Its sheets of paper. */
  Sheaf sheaf() {
    return sheaf;
  }

  void write(OnceMore again) {
    sheaf.paragraph(
        "Every mark stands here once; one of which a part is in the price and a part is not, in both groups.");
    for (Fate fate : Fate.values()) {
      TreeMap<String, List<Part>> byItem =
          reconciliation.parts().stream()
              .filter(part -> part.fate() == fate)
              .collect(groupingBy(Part::item, TreeMap::new, toList()));
      byItem.forEach((item, parts) -> group(fate, item, parts, again));
    }
    for (ItemAccount item : accounts.items()) {
      Figure<Ratio> went = found.get(item.item().word());
      if (went != null) {
        again.count("Found: " + UnitWords.label(item.agreed()), went);
      }
    }
  }

  private void group(Fate fate, String item, List<Part> parts, OnceMore again) {
    String name = "went_%s_%s".formatted(fate.name().toLowerCase(Locale.ROOT), word(item));
    List<Listing> listings =
        sheaf.list(
            label(fate) + ": " + words(item),
            parts,
            (some, part) -> roll(Sheaf.named(name, part), some),
            List.of("Place", "No.", "Where it went", "How many"),
            Sections.units(null, null, null, Units.RATIO));
    Figure<Ratio> sum = Figure.of(0, Units.RATIO);
    for (Listing listing : listings) {
      sum = sum.plus(listing.roll().sum("quantity", Units.RATIO));
    }
    Figure<Ratio> together = sum.as(name + "_together", Units.RATIO);
    sheaf.tab().listTotal("Together", together, QUANTITY);
    if (item.isEmpty() || NOT_FOUND.contains(fate)) {
      again.count(label(fate) + ": " + words(item), together);
    } else {
      found.merge(item, together, Figure::plus);
    }
  }

  private Roll roll(String name, List<Part> parts) {
    return Roll.of(
        name,
        "the marks that went there",
        parts,
        Paper.<Part>words("place", part -> places.where(part.mark(), part.key())),
        Paper.words("number", part -> places.number(part.mark())),
        Paper.words("where", Part::where),
        Roll.column("quantity", part -> Told.of("quantity", part.quantity())));
  }

  private static String word(String item) {
    return item.isEmpty() ? "mark" : item;
  }

  /** An item as it stands on a bill. */
  private String words(String item) {
    return accounts.items().stream()
        .filter(account -> account.item().word().equals(item))
        .map(account -> UnitWords.label(account.agreed()))
        .findFirst()
        .orElse(word(item));
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
