package sheathwright.life.bill;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;
import sheathwright.life.bill.Reconciliation.Part;
import sheathwright.life.found.Found;

/** What becomes of each mark, part by part. */
final class MarkFates {

  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final String STOP = "stop";

  private final List<Part> parts = new ArrayList<>();
  private final Accounts accounts;

  private MarkFates(Accounts accounts) {
    this.accounts = accounts;
  }

  static List<Part> of(Accounts accounts) {
    return new MarkFates(accounts).all();
  }

  private List<Part> all() {
    accounts.items().forEach(this::addItem);
    accounts.unpriced().forEach(found -> add(found, Fate.PRICE_OPEN, "no price was agreed for it"));
    for (Found found : accounts.uncharged()) {
      add(
          found,
          found.action().equals(STOP) ? Fate.STOP : Fate.NO_CHARGE,
          found.action().equals(STOP) ? "separate order after the engineer" : found.action());
    }
    accounts
        .surveyed()
        .forEach(found -> add(found, Fate.NO_CHARGE, "seen before the covering was off"));
    accounts.found().stream()
        .filter(found -> found.isVoid() && !isInAnItem(found))
        .forEach(found -> add(found, Fate.VOID, "taken back"));
    return List.copyOf(parts);
  }

  private boolean isInAnItem(Found found) {
    String mark = MarkOrder.nameOf(found);
    return accounts.items().stream()
        .flatMap(item -> item.shares().stream())
        .anyMatch(share -> share.isVoid() && share.mark().equals(mark));
  }

  private void add(Found found, Fate fate, String where) {
    String item = found.item().map(known -> known.word()).orElse("");
    Figure<Ratio> quantity =
        found.item().isPresent() ? Figure.of(found.quantity(), Units.RATIO) : ONE;
    parts.add(new Part(MarkOrder.nameOf(found), found.key(), item, fate, where, quantity));
  }

  private void addItem(ItemAccount item) {
    for (Share share : item.shares()) {
      if (share.isVoid()) {
        parts.add(
            new Part(share.mark(), share.key(), item.item().word(), Fate.VOID, "taken back", ONE));
      }
      int before = parts.size();
      add(item, share, Fate.INCLUDED, "in the agreed price", share.included());
      for (Order order : accounts.orders().all()) {
        double part = order.part(item.item(), share.mark());
        if (order.isCounted() && !Same.isNothing(part)) {
          add(
              item,
              share,
              Fate.ORDERED,
              "change order " + order.number(),
              Figure.of(part, Units.RATIO));
        }
      }
      add(item, share, Fate.NO_CHARGE, "above the ceiling", share.uncharged());
      add(item, share, Fate.DECLINED, "the owner refused it", share.declined());
      add(item, share, Fate.PRICE_OPEN, "both sides talk again", share.open());
      if (parts.size() == before && !share.isVoid()) {
        parts.add(
            new Part(
                share.mark(),
                share.key(),
                item.item().word(),
                Fate.NO_CHARGE,
                "counted with another mark",
                share.found()));
      }
    }
  }

  private void add(ItemAccount item, Share share, Fate fate, String where, Figure<Ratio> quantity) {
    if (!Same.isNothing(quantity.value())) {
      parts.add(new Part(share.mark(), share.key(), item.item().word(), fate, where, quantity));
    }
  }

  static Roll roll(List<Part> parts) {
    return Roll.of(
        "reconciliation",
        "where every mark went",
        parts,
        Roll.<Part>column("mark", part -> Choice.literal(part.mark())),
        Roll.column("place", part -> Choice.literal(part.key())),
        Roll.column("item", part -> Choice.literal(part.item())),
        Roll.column("fate", part -> Choice.literal(part.fate().word())),
        Roll.column("where", part -> Choice.literal(part.where())),
        Roll.column("quantity", Part::quantity));
  }
}
