package sheathwright.job.life;

import static java.util.stream.Collectors.joining;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.job.table.Field;
import sheathwright.job.table.Moment;
import sheathwright.job.table.ReadTable;
import sheathwright.job.table.Row;

/** Change orders ask for what was agreed, and somebody who may has said yes to each. */
final class OrderRules {

  private static final List<Field<? extends Choice<?>>> APPROVAL =
      List.of(OrderFields.APPROVED_BY, OrderFields.APPROVED_HOW, OrderFields.APPROVED_ON);

  private final LifeTables tables;

  OrderRules(LifeTables tables) {
    this.tables = tables;
  }

  void hold() {
    ReadTable lines = tables.orderLines();
    lines.known(OrderFields.ORDER, "an order", tables.orders(), OrderFields.ORDER);
    for (Row line : lines.rows()) {
      if (isOption(line)) {
        isKnownOption(line);
      } else {
        isOfAnItem(line);
        marksAreKnown(line);
      }
    }
    tables.orders().rows().stream().filter(OrderRules::isApproved).forEach(this::saysWhoAndHow);
    tables.agreed().rows().forEach(this::isSensible);
    staysWithinWhatWasAgreedBefore();
  }

  private static boolean isApproved(Row order) {
    return order
        .read(OrderFields.STATUS)
        .filter(status -> status.value() == OrderStatus.APPROVED)
        .isPresent();
  }

  private static boolean isPreAgreed(Row order) {
    return order
        .read(OrderFields.APPROVED_HOW)
        .filter(how -> how.value() == ApprovedHow.PRE_AGREED)
        .isPresent();
  }

  private void saysWhoAndHow(Row order) {
    for (Field<?> field : APPROVAL) {
      if (!order.has(field)) {
        tables
            .orders()
            .problem(
                order,
                field,
                "it is empty, but the order is approved; an approved order says by whom, how and on which day: give %s, or offered in status"
                    .formatted(field.allowed()));
      }
    }
  }

  private static boolean isOption(Row line) {
    return is(line, AgreedFields.ITEM, OrderFields.OPTION_LINE);
  }

  private void isOfAnItem(Row line) {
    line.read(AgreedFields.ITEM)
        .filter(item -> TalkFields.about(tables.talks().rows(), item.value()).isEmpty())
        .flatMap(item -> tables.agreed().unknown(item.value(), "an item", AgreedFields.ITEM))
        .ifPresent(message -> tables.orderLines().problem(line, AgreedFields.ITEM, message));
  }

  /** The option of a line, written as {@code osb: 1}. */
  private void isKnownOption(Row line) {
    marks(line.read(OrderFields.MARKS).map(Choice::value).orElse("")).stream()
        .flatMap(name -> tables.options().unknown(name, "an option", AgreedFields.OPTION).stream())
        .map(
            message ->
                message
                    + "; an option that was ordered stays there, with no in chosen if it is given up: put it back")
        .forEach(message -> tables.orderLines().problem(line, OrderFields.MARKS, message));
  }

  private static Set<String> marks(String given) {
    try {
      return MarkParts.read(given).all().keySet();
    } catch (RefusedException writtenOtherwise) {
      return Set.of(); // that is said where the line is read
    }
  }

  /** The marks of a line, written as {@code 4: 1, 5: 0.5}. */
  private void marksAreKnown(Row line) {
    MarkNames names = MarkNames.of(tables.marks().rows());
    String given = line.read(OrderFields.MARKS).map(Choice::value).orElse("");
    marks(given).stream()
        .flatMap(mark -> names.problem(mark, tables.marks()).stream())
        .map(
            message ->
                message
                    + "; a mark that was ordered stays there, with yes in void if it is taken back: put it back")
        .forEach(message -> tables.orderLines().problem(line, OrderFields.MARKS, message));
  }

  /** No more comes back than was paid, and no more is included than is ever billed. */
  private void isSensible(Row item) {
    tables
        .agreed()
        .atMost(item, AgreedFields.CREDIT, AgreedFields.USD, "no more comes back than was paid");
    tables
        .agreed()
        .atMost(item, AgreedFields.INCLUDED, AgreedFields.MOST, "what is in the price counts too");
  }

  /** What was agreed beforehand suffices for the orders that rest on it, one after the other. */
  private void staysWithinWhatWasAgreedBefore() {
    BigDecimal sheets = BigDecimal.ZERO;
    BigDecimal money = BigDecimal.ZERO;
    for (Row order : tables.orders().rows()) {
      if (!isApproved(order) || !isPreAgreed(order)) {
        continue;
      }
      List<Row> talks = talksUpTo(order);
      Optional<BigDecimal> mostSheets =
          agreedBefore(talks, AgreedFields.MOST, LifeFields.PRE_AGREED_SHEETS);
      Optional<BigDecimal> mostMoney =
          agreedBefore(talks, AgreedFields.USD, LifeFields.PRE_AGREED_SUM);
      sheets = sheets.add(sheetsOf(order));
      money =
          money.add(order.read(AgreedFields.USD).map(OrderRules::exact).orElse(BigDecimal.ZERO));
      List<String> beyond = new ArrayList<>();
      if (mostSheets.isPresent() && sheets.compareTo(mostSheets.get()) > 0) {
        beyond.add(
            "it comes to %s sheets in all, and pre_agreed_sheets is %s"
                .formatted(plain(sheets), plain(mostSheets.get())));
      }
      if (mostMoney.isPresent() && money.compareTo(mostMoney.get()) > 0) {
        beyond.add(
            "it comes to %s in all, and pre_agreed_usd is %s"
                .formatted(money(money), money(mostMoney.get())));
      }
      if (mostSheets.isEmpty() && mostMoney.isEmpty()) {
        beyond.add("nothing was agreed beforehand (pre_agreed_sheets, pre_agreed_usd)");
      }
      if (!beyond.isEmpty()) {
        tables
            .orders()
            .problem(
                order,
                OrderFields.APPROVED_HOW,
                "pre-agreed is given, but %s; ask who may say yes, then give signed or e-mail, or offered in status"
                    .formatted(beyond.stream().collect(joining(", and "))));
      }
    }
  }

  /** What both sides had agreed since by the day on which an order was approved. */
  private List<Row> talksUpTo(Row order) {
    Optional<Moment> approved =
        order.read(OrderFields.APPROVED_ON).map(Choice::value).map(Moment::read);
    return TalkFields.inOrder(tables.talks().rows()).stream()
        .filter(
            talk ->
                approved
                    .filter(on -> on.isBefore(Moment.read(talk.of(TalkFields.ON).value())))
                    .isEmpty())
        .toList();
  }

  /** As both sides said last, or the agreement has it, or else the job. */
  private Optional<BigDecimal> agreedBefore(
      List<Row> talks, Field<? extends Figure<?>> agreed, Field<? extends Figure<?>> fact) {
    Optional<BigDecimal> frozen =
        TalkFields.last(talks, TalkFields.PRE_AGREED, agreed)
            .<Figure<?>>map(figure -> figure)
            .or(() -> tables.agreed(TalkFields.PRE_AGREED).flatMap(row -> row.read(agreed)))
            .map(OrderRules::exact)
            .filter(most -> most.signum() > 0);
    return frozen.isEmpty() && tables.job().facts().knows(fact)
        ? Optional.of(exact(tables.job().facts().fact(fact)))
        : frozen;
  }

  private BigDecimal sheetsOf(Row order) {
    String number = order.read(OrderFields.ORDER).map(Choice::value).orElse("");
    return tables.orderLines().rows().stream()
        .filter(line -> is(line, OrderFields.ORDER, number))
        .filter(line -> is(line, AgreedFields.ITEM, Item.SHEET.word()))
        .flatMap(line -> line.read(AgreedFields.QUANTITY).stream())
        .map(OrderRules::exact)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static boolean is(Row row, Field<Choice<String>> field, String text) {
    return row.read(field).filter(given -> given.value().equals(text)).isPresent();
  }

  private static BigDecimal exact(Figure<?> figure) {
    return BigDecimal.valueOf(figure.value());
  }

  private static String plain(BigDecimal number) {
    return Shown.plain(number.doubleValue());
  }

  private static String money(BigDecimal dollars) {
    return Shown.with(Units.USD, dollars.doubleValue());
  }
}
