package sheathwright.life.bill;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sheathwright.catalog.Nearest;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.job.Estimate.Tie;
import sheathwright.job.JobTable;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.Item;
import sheathwright.job.life.TalkFields;
import sheathwright.job.table.Field;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.Row;
import sheathwright.sheathing.place.BillRule;

/**
 * What was agreed, as its table froze it. Everything that the owner pays afterwards is reckoned
 * from this and from nothing else: neither prices nor rates are read again.
 */
public final class Agreement {

  private static final Figure<Ratio> ONCE = Figure.of(1, Units.RATIO);

  private final Map<Item, AgreedItem> items = new EnumMap<>(Item.class);
  private final List<AgreedSum> lines = new ArrayList<>();
  private final List<AgreedSum> options = new ArrayList<>();
  private final List<AgreedStage> stages = new ArrayList<>();
  private final int rows;
  private BillRule billRule;
  private Figure<Money> total;
  private Figure<Ratio> reopen;
  private PreAgreed preAgreed;
  private final List<AgreedSince> since = new ArrayList<>();

  /** The agreement that the rows of the table {@code agreed} tell. */
  public static Agreement of(List<Row> rows) {
    return of(rows, List.of());
  }

  /**
   * The same, with what both sides agreed since.
   *
   * @param talks the rows of the table {@code talks}
   * @throws ProblemsException if a row is about nothing that can be agreed or stands there twice,
   *     or if the total is missing
   */
  public static Agreement of(List<Row> rows, List<Row> talks) {
    return new Agreement(rows, talks);
  }

  private Agreement(List<Row> rows, List<Row> talks) {
    this.rows = rows.size();
    RowProblems wrong = new RowProblems();
    Set<String> seen = new HashSet<>();
    for (Row row : rows) {
      String name = row.of(AgreedFields.ITEM).value();
      if (!seen.add(name)) {
        wrong.add(JobTable.AGREED, row, AgreedFields.ITEM, "\"" + name + "\" appears twice");
      } else if (!isTaken(row, name, wrong)) {
        wrong.add(
            JobTable.AGREED,
            row,
            AgreedFields.ITEM,
            "\"%s\" is not known%s; it must be one of %s; agree writes this table"
                .formatted(
                    name,
                    Nearest.asked(name, AgreedPart.allowed()),
                    String.join(", ", AgreedPart.allowed())));
      }
    }
    if (total == null) {
      wrong.add(JobTable.AGREED, "it has no row \"total\"; agree writes this table");
    }
    wrong.raise();
    TalkFields.inOrder(talks).forEach(this::takeSince);
  }

  /** A limit that both sides raised since, or a price for what had none. */
  private void takeSince(Row talk) {
    String name = talk.of(AgreedFields.ITEM).value();
    String cell = name.replace('-', '_') + "_since_" + (since.size() + 1);
    Optional<Figure<Ratio>> most = ifGiven(talk, AgreedFields.MOST, cell + "_most");
    Optional<Figure<Money>> usd = ifGiven(talk, AgreedFields.USD, cell + "_usd");
    Optional<Item> item = Words.of(Item.values(), name);
    if (item.isPresent()) {
      AgreedItem now =
          item(item.get())
              .map(agreed -> agreed.upTo(most))
              .orElseGet(() -> AgreedItem.since(item.get(), usd.orElseThrow()));
      items.put(item.get(), now);
    } else if (name.equals(TalkFields.REOPEN)) {
      reopen = most.orElse(reopen);
    } else {
      preAgreed =
          new PreAgreed(
              most.or(() -> preAgreed().flatMap(PreAgreed::sheets)),
              usd.or(() -> preAgreed().flatMap(PreAgreed::sum)));
    }
    since.add(AgreedSince.of(talk, item, most, usd));
  }

  private boolean isTaken(Row row, String name, RowProblems wrong) {
    Optional<Item> item = Words.of(Item.values(), name);
    item.ifPresent(known -> takeItem(row, known, wrong));
    Optional<AgreedPart> part = AgreedPart.of(name);
    part.ifPresent(known -> takePart(row, name.replace('-', '_'), known));
    return item.isPresent() || part.isPresent();
  }

  private void takeItem(Row row, Item item, RowProblems wrong) {
    String unit = text(row, AgreedFields.UNIT);
    if (item == Item.SHEET) {
      Optional<BillRule> rule = Words.of(BillRule.values(), unit);
      if (rule.isEmpty()) {
        wrong.add(
            JobTable.AGREED,
            row,
            AgreedFields.UNIT,
            "\"%s\" is given; a sheet is counted by one of place, half, area".formatted(unit));
      }
      billRule = rule.orElse(null);
    }
    items.put(
        item,
        new AgreedItem(
            item,
            unit,
            frozen(row, AgreedFields.USD, "agreed_" + item.word() + "_usd"),
            row.has(AgreedFields.INCLUDED)
                ? frozen(row, AgreedFields.INCLUDED, item.word() + "_included")
                : OrderLine.NONE,
            row.has(AgreedFields.CREDIT)
                ? frozen(row, AgreedFields.CREDIT, item.word() + "_credit_usd")
                : OrderLine.NOTHING,
            ifGiven(row, AgreedFields.MOST, item.word() + "_most"),
            row.of(AgreedFields.WORDS).value()));
  }

  private void takePart(Row row, String name, AgreedPart part) {
    String words = row.of(AgreedFields.WORDS).value();
    Figure<Money> usd = frozen(row, AgreedFields.USD, "agreed_" + name + "_usd");
    switch (part) {
      case LINE -> lines.add(sum(row, words, usd, name));
      case OPTION -> options.add(sum(row, words, usd, name));
      case STAGE -> stages.add(new AgreedStage(words, usd));
      case TOTAL -> total = usd;
      case REOPEN -> reopen = ifGiven(row, AgreedFields.MOST, "reopen_sheets").orElse(null);
      case PRE_AGREED ->
          preAgreed =
              new PreAgreed(
                  ifGiven(row, AgreedFields.MOST, "pre_agreed_sheets"),
                  Optional.of(usd).filter(any -> usd.value() > 0));
    }
  }

  private static AgreedSum sum(Row row, String words, Figure<Money> usd, String name) {
    Figure<Ratio> quantity = ifGiven(row, AgreedFields.INCLUDED, name + "_quantity").orElse(ONCE);
    return new AgreedSum(words, quantity, text(row, AgreedFields.UNIT), usd);
  }

  private static String text(Row row, Field<sheathwright.figure.Choice<String>> field) {
    return row.has(field) ? row.of(field).value() : "";
  }

  private static <Q extends Quantity> Optional<Figure<Q>> ifGiven(
      Row row, Field<Figure<Q>> field, String name) {
    return row.has(field) ? Optional.of(frozen(row, field, name)) : Optional.empty();
  }

  /** A number that nobody may change any more, with the cell that it stands in. */
  static <Q extends Quantity> Figure<Q> frozen(Row row, Field<Figure<Q>> field, String name) {
    Figure<Q> read = row.of(field);
    return Figure.constant(name, read.value(), read.unit(), read.source());
  }

  /** The price of an item and what goes with it; nothing where none was agreed. */
  public Optional<AgreedItem> item(Item item) {
    return Optional.ofNullable(items.get(item));
  }

  /** All of them. */
  public List<AgreedItem> items() {
    return List.copyOf(items.values());
  }

  /** The lines of the quote. */
  public List<AgreedSum> lines() {
    return List.copyOf(lines);
  }

  /** The options that the owner had chosen by then. */
  public List<AgreedSum> options() {
    return List.copyOf(options);
  }

  /** The payments that were agreed, in their order. */
  public List<AgreedStage> stages() {
    return List.copyOf(stages);
  }

  /** What all of it comes to. */
  public Figure<Money> total() {
    return total;
  }

  /** What one sheet is on the bill; nothing where no sheet was priced. */
  public Optional<BillRule> billRule() {
    return Optional.ofNullable(billRule);
  }

  /** Beyond so many sheets nothing is billed before both sides have talked again, if at all. */
  public Optional<Figure<Ratio>> reopen() {
    return Optional.ofNullable(reopen);
  }

  /** What may be done without a further yes, if that was agreed. */
  public Optional<PreAgreed> preAgreed() {
    return Optional.ofNullable(preAgreed)
        .filter(given -> given.sheets().isPresent() || given.sum().isPresent());
  }

  /** What both sides agreed since, in the order of their days. */
  public List<AgreedSince> since() {
    return List.copyOf(since);
  }

  /** How many rows it was read from. */
  int rows() {
    return rows;
  }

  /** That its lines and its payments each come to its total. */
  public List<Tie> ties() {
    Figure<Money> sum =
        OrderLine.together(
            java.util.stream.Stream.concat(lines.stream(), options.stream())
                .map(AgreedSum::amount)
                .toList(),
            OrderLine.NOTHING);
    Figure<Money> paid =
        OrderLine.together(stages.stream().map(AgreedStage::amount).toList(), OrderLine.NOTHING);
    return List.of(
        new Tie("The agreed lines add up to the agreed total", Same.money(sum, total)),
        new Tie("The agreed payments add up to the agreed total", Same.money(paid, total)));
  }
}
