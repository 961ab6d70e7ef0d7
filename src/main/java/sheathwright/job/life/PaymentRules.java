package sheathwright.job.life;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import sheathwright.figure.Figure;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.job.table.Field;
import sheathwright.job.table.ReadTable;
import sheathwright.job.table.Row;

/**
 * The payments of a job come to what the owner pays: parts to 100 %, dollars and parts to the
 * total; the last one takes the half cents that parts leave.
 */
public final class PaymentRules {

  private static final String TOTAL = "total";
  private static final BigDecimal WHOLE = BigDecimal.valueOf(100);
  private static final int CENTS = 2;
  private static final BigDecimal HALF_A_CENT = new BigDecimal("0.005");

  private final LifeTables tables;
  private final ReadTable stages;

  /**
   * What is wrong with the payments.
   *
   * @param stage the last of them
   * @param column in which it shows
   */
  public record Wrong(Row stage, Field<?> column, String message) {}

  PaymentRules(LifeTables tables) {
    this.tables = tables;
    this.stages = tables.stages();
  }

  void hold() {
    stages.rows().forEach(this::oneOfTwo);
    Optional<BigDecimal> agreed =
        tables.agreed(TOTAL).flatMap(row -> row.read(AgreedFields.USD)).map(PaymentRules::exact);
    List<BigDecimal> totals =
        agreed
            .map(total -> Stream.of(total, total.add(approved())).distinct().toList())
            .orElse(List.of());
    against(stages.rows(), totals)
        .ifPresent(wrong -> stages.problem(wrong.stage(), wrong.column(), wrong.message()));
  }

  private void oneOfTwo(Row stage) {
    boolean isPart = stage.has(AgreedFields.PART);
    if (isPart == stage.has(AgreedFields.USD)) {
      stages.problem(
          stage,
          AgreedFields.PART,
          isPart
              ? "part_pct is given beside usd; a payment is a part of the total or dollars: leave one of the two blank"
              : "it is empty, and usd too; a payment is a part of the total or dollars: give one of the two, such as part_pct 30");
    }
  }

  /** What was approved besides. */
  private BigDecimal approved() {
    return tables.orders().rows().stream()
        .filter(
            order ->
                order
                    .read(OrderFields.STATUS)
                    .filter(status -> status.value() == OrderStatus.APPROVED)
                    .isPresent())
        .flatMap(order -> order.read(AgreedFields.USD).stream())
        .map(PaymentRules::exact)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /**
   * What is wrong with payments, each of which is a part or dollars.
   *
   * @param totals what dollars may come to; empty, as long as nobody knows
   */
  public static Optional<Wrong> against(List<Row> stages, List<BigDecimal> totals) {
    boolean areRead =
        !stages.isEmpty()
            && stages.stream()
                .allMatch(
                    stage ->
                        stage.read(AgreedFields.PART).isPresent()
                            != stage.read(AgreedFields.USD).isPresent());
    if (!areRead) {
      return Optional.empty();
    }
    Row last = stages.get(stages.size() - 1);
    if (stages.stream().allMatch(stage -> stage.has(AgreedFields.PART))) {
      BigDecimal parts = sum(stages, AgreedFields.PART);
      return parts.compareTo(WHOLE) == 0
          ? Optional.empty()
          : Optional.of(
              new Wrong(
                  last,
                  AgreedFields.PART,
                  "the parts come to %s %%; all payments together are 100 %%: %s"
                      .formatted(
                          plain(parts),
                          lastWouldBe(
                              WHOLE.subtract(parts).add(exact(last.of(AgreedFields.PART))),
                              PaymentRules::plain))));
    }
    if (totals.isEmpty() || totals.stream().anyMatch(total -> isMet(stages, total))) {
      return Optional.empty();
    }
    BigDecimal total = totals.get(0);
    BigDecimal sum = sum(stages, total);
    return Optional.of(
        new Wrong(
            last,
            last.has(AgreedFields.PART) ? AgreedFields.PART : AgreedFields.USD,
            "the payments come to %s, but the owner pays %s; %s"
                .formatted(
                    money(sum),
                    money(total),
                    lastWouldBe(
                        total.subtract(sum).add(amount(last, total)), PaymentRules::money))));
  }

  private static String lastWouldBe(BigDecimal rest, Function<BigDecimal, String> shown) {
    return rest.signum() > 0
        ? "the last would be " + shown.apply(rest)
        : "those before the last leave nothing for it: make them smaller";
  }

  /** Whether payments come to a total, but for half a cent where a part was rounded. */
  private static boolean isMet(List<Row> stages, BigDecimal total) {
    long parts = stages.stream().filter(stage -> stage.has(AgreedFields.PART)).count();
    BigDecimal slack = HALF_A_CENT.multiply(BigDecimal.valueOf(parts));
    return sum(stages, total).subtract(total).abs().compareTo(slack) <= 0;
  }

  private static BigDecimal sum(List<Row> stages, BigDecimal total) {
    return stages.stream()
        .map(stage -> amount(stage, total))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** What a payment is of a total, to the cent. */
  private static BigDecimal amount(Row stage, BigDecimal total) {
    return stage.has(AgreedFields.USD)
        ? exact(stage.of(AgreedFields.USD))
        : exact(stage.of(AgreedFields.PART))
            .multiply(total)
            .divide(WHOLE, CENTS, RoundingMode.HALF_UP);
  }

  private static BigDecimal sum(List<Row> stages, Field<? extends Figure<?>> field) {
    return stages.stream()
        .flatMap(stage -> stage.read(field).stream())
        .map(PaymentRules::exact)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
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
