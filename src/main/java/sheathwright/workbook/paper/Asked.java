package sheathwright.workbook.paper;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.job.life.Item;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.bill.NextOrder;
import sheathwright.life.bill.Share;
import sheathwright.workbook.told.PhotoCount;
import sheathwright.workbook.told.Photos;
import sheathwright.workbook.told.Told;

/**
 * What one item of a change order comes to, as the owner can follow it: so many, counted mark by
 * mark, at the agreed price.
 *
 * @param account of the item
 * @param marks those that ask for it now, or give something back
 * @param quantity how many are asked for
 * @param price the agreed one
 * @param amount what they come to
 */
record Asked(
    ItemAccount account,
    List<Share> marks,
    Figure<Ratio> quantity,
    Figure<Money> price,
    Figure<Money> amount) {

  private static final double DUST = 1e-9;

  /**
   * An item.
   *
   * @param counted what its marks add up to
   */
  static Asked of(ItemAccount account, List<Share> marks, Figure<Ratio> counted) {
    String word = account.item().word();
    Figure<Ratio> quantity =
        goesByArea(account)
            ? Told.of(word + "_ordered", account.now())
            : counted.as(word + "_ordered", Units.RATIO);
    Figure<Money> price = Told.of("agreed_" + word + "_usd", account.agreed().price());
    return new Asked(
        account,
        marks,
        quantity,
        price,
        quantity.times(price).in(Units.USD).toCents().as(word + "_amount_usd", Units.USD));
  }

  /** Whether the sum of what was found goes up to the next quarter of a sheet. */
  static boolean goesByArea(ItemAccount account) {
    return account.item() == Item.SHEET && account.agreed().unit().equals("area");
  }

  /** The marks of an item that ask for something now. */
  static List<Share> marksOf(ItemAccount account) {
    return account.shares().stream().filter(Asked::isAsked).toList();
  }

  private static boolean isAsked(Share share) {
    return Math.abs(share.now().value()) > DUST;
  }

  /** The marks of an item that are in the agreed price. */
  static List<Share> includedOf(ItemAccount account) {
    return account.shares().stream().filter(share -> share.included().value() > DUST).toList();
  }

  /** The marks that an order asks for, and those in the agreed price. */
  static List<Share> seen(NextOrder order) {
    Set<Share> all = new LinkedHashSet<>();
    order.asked().forEach(item -> all.addAll(marksOf(item)));
    order.accounts().items().forEach(item -> all.addAll(includedOf(item)));
    return List.copyOf(all);
  }

  /** The photographs of the marks of an order; each that it bills is to be seen before and open. */
  static PhotoCount photographs(NextOrder order, Photos photos) {
    List<Share> billed =
        order.asked().stream()
            .flatMap(item -> marksOf(item).stream())
            .filter(share -> share.now().value() > DUST)
            .toList();
    return PhotoCount.of(photos.of(seen(order)), photos, billed);
  }

  /** Why a mark is asked for, or why something of it comes back. */
  static String why(Share share) {
    return share.now().value() < 0 ? "taken back; it was ordered before" : share.reason();
  }
}
