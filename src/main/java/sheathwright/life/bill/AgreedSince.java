package sheathwright.life.bill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.Item;
import sheathwright.job.life.TalkFields;
import sheathwright.job.table.Moment;
import sheathwright.job.table.Row;

/**
 * What both sides agreed after the agreement, and who said yes to it.
 *
 * @param what in words, with what holds from then on
 * @param by who said yes
 * @param how signed or by e-mail
 * @param on when, as the table has it
 */
public record AgreedSince(String what, String by, String how, String on) {

  static AgreedSince of(
      Row talk, Optional<Item> item, Optional<Figure<Ratio>> most, Optional<Figure<Money>> usd) {
    return new AgreedSince(
        what(talk.of(AgreedFields.ITEM).value(), item, most, usd),
        talk.of(TalkFields.BY).value(),
        talk.of(TalkFields.HOW).value().word(),
        talk.of(TalkFields.ON).value());
  }

  private static String what(
      String name, Optional<Item> item, Optional<Figure<Ratio>> most, Optional<Figure<Money>> usd) {
    List<String> limits = new ArrayList<>();
    most.map(Item.SHEET::counted).ifPresent(limits::add);
    usd.map(Figure::shown).ifPresent(limits::add);
    String all = String.join(" and ", limits);
    if (item.filter(any -> any != Item.SHEET).isPresent()) {
      return "%s: %s for each %s".formatted(item.get().label(), all, item.get().unit());
    }
    return item.isPresent()
        ? "The ceiling is %s".formatted(all)
        : name.equals(TalkFields.REOPEN)
            ? "Up to %s are billed before we talk again".formatted(all)
            : "Up to %s need no further yes".formatted(all);
  }

  /** In one sentence, for whoever reads a document. */
  public String sentence() {
    return "%s: agreed with %s, %s, %s.".formatted(what, by, how, Moment.spoken(on));
  }
}
