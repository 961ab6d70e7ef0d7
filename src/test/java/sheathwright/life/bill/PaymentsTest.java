package sheathwright.life.bill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.figure.Figure;
import sheathwright.figure.Units;
import sheathwright.life.bill.Payments.Payment;

/** Payments come to whatever the total is, and none of them is less than nothing. */
class PaymentsTest {

  private static final int JOBS = 300;

  private static Figure<sheathwright.figure.Quantity.Money> usd(long cents) {
    return Figure.of(cents / 100.0, Units.USD);
  }

  private static List<Long> amounts(Payments payments) {
    return payments.list().stream()
        .map(payment -> Math.round(payment.amount().value() * 100))
        .toList();
  }

  /** Of 100, 300 and 200 dollars, of which the first is paid. */
  @ParameterizedTest
  @CsvSource({
    "600, '100, 300, 200'",
    "700.25, '100, 300, 300.25'",
    "450, '100, 300, 50'",
    "400, '100, 300, 0'",
    "250.10, '100, 150.10, 0'",
    "100, '100, 0, 0'",
    "60, '100, 0, 0, -40'",
  })
  void aCredit_isTakenOffTheLastPaymentFirst(double total, String expected) {
    Tables tables = new Tables();
    long cents = 0;
    for (String stage : List.of("deposit", "dry-in", "final")) {
      tables.stage(stage, "", "", "then", "", stage.equals("deposit") ? "100" : "");
    }
    tables.agreed("line-1", "job", "600.00", "1", "", "", "All work");
    tables.agreed("total", "", "600.00", "", "", "", "All of it");
    tables.agreed("stage-1", "", "100.00", "", "", "", "deposit");
    tables.agreed("stage-2", "", "300.00", "", "", "", "dry-in");
    tables.agreed("stage-3", "", "200.00", "", "", "", "final");
    Payments payments =
        Payments.of(tables.agreement(), tables.stageRows(), Figure.of(total, Units.USD));
    List<Long> wanted = new ArrayList<>();
    for (String amount : expected.split(", ")) {
      wanted.add(Math.round(Double.parseDouble(amount) * 100));
      cents += wanted.get(wanted.size() - 1);
    }
    assertThat(cents).as("the case itself").isEqualTo(Math.round(total * 100));
    assertThat(amounts(payments)).isEqualTo(wanted);
    assertThat(payments.due().value()).isEqualTo((Math.round(total * 100) - 10_000) / 100.0);
    assertThat(payments.tie().holds().holds()).isTrue();
    assertThat(payments.list().stream().map(Payment::stage).toList().contains("We owe you"))
        .isEqualTo(total < 100);
  }

  /** A payment of which a part was paid keeps that part. */
  @Test
  void whatWasPaidInPart_stays() {
    Tables tables = new Tables();
    tables.stage("all", "", "", "then", "", "70");
    tables.agreed("line-1", "job", "200.00", "1", "", "", "All work");
    tables.agreed("total", "", "200.00", "", "", "", "All of it");
    tables.agreed("stage-1", "", "200.00", "", "", "", "all");
    Payments payments = Payments.of(tables.agreement(), tables.stageRows(), usd(5_000));
    assertThat(amounts(payments)).containsExactly(7_000L, -2_000L);
  }

  /**
   * Random payments, paid, paid in part or open, and any total: their cents come to it; a payment
   * is less than agreed only where nothing is left open in those behind it; only what goes back to
   * the owner is less than nothing, and only if all that is open is used up.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void payments_comeToAnyTotal(long seed) {
    Random random = new Random(seed);
    for (int job = 0; job < JOBS; job++) {
      Tables tables = new Tables();
      int count = 1 + random.nextInt(5);
      long[] agreed = new long[count];
      long[] paid = new long[count];
      long all = 0;
      for (int i = 0; i < count; i++) {
        agreed[i] = random.nextInt(4) == 0 ? 0 : random.nextInt(2_000_000);
        paid[i] =
            switch (random.nextInt(4)) {
              case 0 -> agreed[i];
              case 1 -> random.nextInt(1 + (int) agreed[i]);
              case 2 -> agreed[i] + random.nextInt(10_000);
              default -> 0;
            };
        all += agreed[i];
        tables.agreed("stage-" + (i + 1), "", money(agreed[i]), "", "", "", "s" + i);
        tables.stage("s" + i, "", "", "then", "", paid[i] == 0 ? "" : money(paid[i]));
      }
      tables.agreed("total", "", money(all), "", "", "", "All of it");
      long total =
          random.nextInt(3) == 0 ? all + random.nextInt(500_000) : random.nextInt(1 + (int) all);
      Payments payments = Payments.of(tables.agreement(), tables.stageRows(), usd(total));

      List<Long> now = amounts(payments);
      String what = "seed %d, job %d".formatted(seed, job);
      assertThat(now.stream().mapToLong(Long::longValue).sum()).as(what).isEqualTo(total);
      assertThat(payments.tie().holds().holds()).as(what).isTrue();
      boolean isUsedUp = true;
      for (int i = count - 1; i >= 0; i--) {
        long least = Math.min(agreed[i], paid[i]);
        assertThat(now.get(i)).as(what).isGreaterThanOrEqualTo(least);
        if (now.get(i) < agreed[i]) {
          assertThat(isUsedUp).as(what + ": nothing is open behind it").isTrue();
        }
        assertThat(now.get(i) <= agreed[i] || i == count - 1).as(what).isTrue();
        isUsedUp &= now.get(i) == least;
      }
      assertThat(now.size()).as(what).isBetween(count, count + 1);
      if (now.size() > count) {
        assertThat(now.get(count)).as(what).isNegative();
        assertThat(isUsedUp).as(what).isTrue();
      }
    }
  }

  private static String money(long cents) {
    return java.math.BigDecimal.valueOf(cents, 2).toPlainString();
  }
}
