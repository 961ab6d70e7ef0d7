package sheathwright.job.life;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.figure.Figure;
import sheathwright.figure.Shown;
import sheathwright.figure.Word;
import sheathwright.job.table.Field;
import sheathwright.job.table.Moment;
import sheathwright.job.table.ReadTable;
import sheathwright.job.table.Row;

/**
 * What both sides agreed since raises a limit that was agreed, or gives a price to what had none,
 * and says who said yes, how and when.
 */
final class TalkRules {

  private final LifeTables tables;
  private final ReadTable talks;

  TalkRules(LifeTables tables) {
    this.tables = tables;
    this.talks = tables.talks();
  }

  void hold() {
    if (talks.isThere() && !talks.rows().isEmpty() && tables.agreed().rows().isEmpty()) {
      talks.problem(
          "nothing is agreed yet, so nobody has talked again; what is to be agreed stands in job.csv: ceiling_sheets, reopen_sheets, pre_agreed_sheets, pre_agreed_usd");
      return;
    }
    List<Row> before = new ArrayList<>();
    for (Row talk : TalkFields.inOrder(talks.rows())) {
      saidInTime(talk);
      saidByThem(talk);
      talk.read(AgreedFields.ITEM).ifPresent(item -> holds(talk, item.value(), before));
      before.add(talk);
    }
  }

  private void saidInTime(Row talk) {
    String on = talk.of(TalkFields.ON).value();
    tables
        .day(LifeFields.AGREED_ON)
        .filter(agreed -> Moment.read(on).isBefore(Moment.read(agreed)))
        .ifPresent(
            agreed ->
                talks.problem(
                    talk,
                    TalkFields.ON,
                    "%s is given, but the job was agreed on %s (%s); give that or a later day"
                        .formatted(on, agreed, tables.job().place(LifeFields.AGREED_ON))));
  }

  private void saidByThem(Row talk) {
    talk.read(TalkFields.HOW)
        .filter(how -> how.value() == ApprovedHow.PRE_AGREED)
        .ifPresent(
            how ->
                talks.problem(
                    talk,
                    TalkFields.HOW,
                    "pre-agreed is given, but a limit is not raised by itself; ask who may say yes, then give signed or e-mail"));
  }

  private void holds(Row talk, String item, List<Row> before) {
    boolean isKnown = Arrays.stream(Item.values()).map(Word::word).anyMatch(item::equals);
    if (item.equals(TalkFields.PRE_AGREED)) {
      raised(talk, item, before, List.of(AgreedFields.MOST, AgreedFields.USD));
    } else if (item.equals(TalkFields.REOPEN) || item.equals(Item.SHEET.word())) {
      raised(talk, item, before, List.of(AgreedFields.MOST));
    } else if (isKnown) {
      priced(talk, item, before);
    } else {
      talks.problem(
          talk,
          AgreedFields.ITEM,
          "\"%s\" is not known; it must be %s, %s, %s for the ceiling, or what has no agreed price: %s"
              .formatted(
                  item,
                  TalkFields.REOPEN,
                  TalkFields.PRE_AGREED,
                  Item.SHEET.word(),
                  Arrays.stream(Item.values())
                      .map(Word::word)
                      .filter(word -> tables.agreed(word).isEmpty())
                      .collect(joining(", "))));
    }
  }

  /** A limit goes up, and was agreed to begin with. */
  private void raised(
      Row talk, String item, List<Row> before, List<Field<? extends Figure<?>>> limits) {
    List<Field<? extends Figure<?>>> given = limits.stream().filter(talk::has).toList();
    if (given.isEmpty()) {
      talks.problem(
          talk, limits.get(0), "it is empty; give what %s is from now on".formatted(item));
    }
    Stream.of(AgreedFields.MOST, AgreedFields.USD)
        .filter(field -> !limits.contains(field) && talk.has(field))
        .forEach(
            field ->
                talks.problem(
                    talk,
                    field,
                    "a price is given, but %s is a limit; what is billed is billed at the agreed price: leave it blank, or let the owner choose an option at another price (options.csv)"
                        .formatted(item)));
    for (Field<? extends Figure<?>> limit : given) {
      double now = talk.read(limit).map(Figure::value).orElse(0.0);
      Optional<Double> was = heldBefore(item, limit, before);
      if (was.isEmpty() && !item.equals(TalkFields.PRE_AGREED)) {
        talks.problem(
            talk,
            AgreedFields.ITEM,
            "%s is given, but nothing was agreed of that; there is no limit to raise: take the line away"
                .formatted(item));
      } else if (was.filter(old -> old >= now).isPresent()) {
        talks.problem(
            talk,
            limit,
            "%s is given, but %s held before; this table raises: give more"
                .formatted(talk.of(limit).plain(), Shown.plain(was.get())));
      }
    }
  }

  private Optional<Double> heldBefore(
      String item, Field<? extends Figure<?>> limit, List<Row> before) {
    return TalkFields.last(before, item, limit)
        .<Figure<?>>map(figure -> figure)
        .or(() -> tables.agreed(item).flatMap(row -> row.read(limit)))
        .map(Figure::value);
  }

  /** What has a price keeps it. */
  private void priced(Row talk, String item, List<Row> before) {
    if (!talk.has(AgreedFields.USD)) {
      talks.problem(
          talk, AgreedFields.USD, "it is empty; give the price of one %s".formatted(item));
    }
    if (talk.has(AgreedFields.MOST)) {
      talks.problem(
          talk, AgreedFields.MOST, "%s has no limit, only a price; leave it blank".formatted(item));
    }
    Optional<Figure<?>> price =
        TalkFields.last(before, item, AgreedFields.USD)
            .<Figure<?>>map(figure -> figure)
            .or(() -> tables.agreed(item).flatMap(row -> row.read(AgreedFields.USD)));
    price.ifPresent(
        old ->
            talks.problem(
                talk,
                AgreedFields.ITEM,
                "%s was agreed at %s, and that price stands; take the line away, or let the owner choose an option at another price (options.csv)"
                    .formatted(item, old)));
  }
}
