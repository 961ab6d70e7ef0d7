package sheathwright.life.bill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.job.life.Item;
import sheathwright.life.found.Found;

/**
 * Random jobs, each from its seed: one to four items at whole-dollar prices (relief by the foot in
 * whole feet at cents), 0 to 6 included, a ceiling and a re-open count every other time, each bill
 * rule; then five rounds in which up to seven marks are found, some are taken back, and an order is
 * written that is offered, approved, refused or withdrawn; in some, actions are typed anew and
 * marks lead to another item. What is expected is reckoned by a plain loop over numbers.
 */
class RandomJobsTest {

  private static final List<Item> ITEMS =
      List.of(Item.SHEET, Item.REFASTEN, Item.RELIEF, Item.SCAB);

  /** One job and what its random numbers still are. */
  private static final class Life {
    final Random random;
    final Tables tables = new Tables();
    final String rule;
    final Map<Item, Double> included = new LinkedHashMap<>();
    final Map<Item, Double> most = new LinkedHashMap<>();
    final Map<Item, Double> price = new LinkedHashMap<>();
    double reopen = Double.POSITIVE_INFINITY;
    int marks;
    int day = 1;

    Life(long seed) {
      random = new Random(seed);
      rule = List.of("place", "half", "area").get(random.nextInt(3));
      double total = 1000 + random.nextInt(900_000) / 100.0;
      for (Item item : ITEMS.subList(0, 1 + random.nextInt(4))) {
        included.put(item, (double) random.nextInt(7));
        most.put(
            item,
            random.nextBoolean()
                ? included.get(item) + random.nextInt(12)
                : Double.POSITIVE_INFINITY);
        price.put(
            item, item == Item.RELIEF ? random.nextInt(500) / 100.0 : 1.0 + random.nextInt(200));
        tables.agreed(
            item.word(),
            item == Item.SHEET ? rule : item.unit(),
            Cells.money(price.get(item)),
            Cells.number(included.get(item)),
            Cells.money(random.nextInt(100)),
            most.get(item).isInfinite() ? "" : Cells.number(most.get(item)),
            item.label());
      }
      if (random.nextBoolean()) {
        reopen = included.get(Item.SHEET) + random.nextInt(8);
        tables.agreed("reopen", "", "0.00", "", "", Cells.number(reopen), "talk");
      }
      tables.agreed("line-1", "job", Cells.money(total), "1", "", "", "All work");
      tables.agreed("total", "", Cells.money(total), "", "", "", "All of it");
      double left = total;
      int stages = 1 + random.nextInt(4);
      for (int i = 1; i < stages; i++) {
        double part = Math.floor(total * 100 / stages * random.nextDouble()) / 100;
        left -= part;
        tables.agreed("stage-" + i, "", Cells.money(part), "", "", "", "stage " + i);
      }
      tables.agreed("stage-" + stages, "", Cells.money(left), "", "", "", "stage " + stages);
    }

    void find() {
      List<Item> items = new ArrayList<>(price.keySet());
      for (int i = random.nextInt(8); i > 0; i--) {
        Item item = items.get(random.nextInt(items.size()));
        tables.mark(String.valueOf(++marks), "A-1-" + marks, item, quantity(item), today());
      }
    }

    double quantity(Item item) {
      return switch (item) {
        case SHEET ->
            switch (rule) {
              case "place" -> 1;
              case "half" -> random.nextBoolean() ? 0.5 : 1;
              default -> 0.05 + random.nextInt(200) / 160.0;
            };
        case RELIEF -> 1 + random.nextInt(30);
        default -> 1;
      };
    }

    void takeBack() {
      for (int i = 0; i < tables.marks.size(); i++) {
        if (random.nextInt(12) == 0) {
          tables.voidMark(i);
        }
      }
    }

    /** Somebody decides anew about some marks, or they turn out to lead to something else. */
    void lookAgain() {
      List<Item> items = new ArrayList<>(price.keySet());
      for (Found found : List.copyOf(tables.marks)) {
        int what = random.nextInt(20);
        if (what == 0) {
          tables.typeAction(found.mark(), today());
        } else if (what == 1) {
          Item item = items.get(random.nextInt(items.size()));
          tables.marks.remove(found);
          tables.mark(found.mark(), found.key(), item, quantity(item), found.on());
        }
      }
    }

    String today() {
      return "2027-06-%02d".formatted(day);
    }

    NextOrder order(String status) {
      return tables.order(today(), status);
    }

    /** What the owner refused of a mark: every unit above nothing on an order that was refused. */
    double refused(Found mark) {
      double sum = 0;
      for (Map<String, String> line : tables.orderLines) {
        boolean isRefused =
            tables.orders.stream()
                .anyMatch(
                    order ->
                        order.get("order").equals(line.get("order"))
                            && order.get("status").equals("refused"));
        for (String part : line.get("marks").split(", ")) {
          double quantity = Double.parseDouble(part.substring(part.indexOf(' ') + 1));
          if (isRefused && part.startsWith(mark.mark() + ":") && quantity > 0) {
            sum += quantity;
          }
        }
      }
      return Math.min(sum, mark.quantity());
    }

    /** Beyond what is in the price, up to where it ends, without what was refused. */
    double due(Item item) {
      double found =
          tables.marks.stream()
              .filter(mark -> !mark.isVoid() && mark.item().equals(Optional.of(item)))
              .mapToDouble(mark -> mark.quantity() - refused(mark))
              .sum();
      double end = Math.min(most.get(item), item == Item.SHEET ? reopen : 1e9);
      double due = Math.max(0, Math.min(found, end) - included.get(item));
      return item == Item.SHEET && rule.equals("area")
          ? Math.ceil(Math.round(due * 4e6) / 1e6) / 4
          : due;
    }
  }

  private static final int JOBS = 60;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void ordersInAnySplit_comeToTheSameSum(long seed) {
    for (long job = seed * 1000; job < seed * 1000 + JOBS; job++) {
      Life life = new Life(job);
      double sum = 0;
      for (int round = 0; round < 5; round++) {
        life.find();
        life.takeBack();
        life.day++;
        sum += life.order(round % 2 == 0 ? "approved" : "offered").sum().value();
      }
      double once =
          life.price.keySet().stream()
              .mapToDouble(item -> life.due(item) * life.price.get(item))
              .sum();
      assertThat(sum).as("job " + job).isCloseTo(once, within(1e-6));
      life.tables.orders.clear();
      life.tables.orderLines.clear();
      assertThat(life.tables.next().sum().value()).as("job " + job).isCloseTo(once, within(1e-6));
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {4, 5, 6})
  void nothingIsBilledTwice_andWhatIsRefusedNever(long seed) {
    for (long job = seed * 1000; job < seed * 1000 + JOBS; job++) {
      Life life = new Life(job);
      for (int round = 0; round < 5; round++) {
        life.find();
        life.takeBack();
        life.day++;
        life.lookAgain();
        NextOrder next =
            life.order(
                List.of("approved", "offered", "refused", "withdrawn").get(life.random.nextInt(4)));
        assertThat(Tables.broken(next.ties())).as("job " + job).isEmpty();
        assertPayments(life, next);
      }
      life.order("approved");
      for (ItemAccount item : life.tables.accounts().items()) {
        for (Share share : item.shares()) {
          String what = "job %d, mark %s".formatted(job, share.mark());
          double billed = share.before().value();
          assertThat(billed).as(what).isBetween(-1e-9, share.found().value() + 1e-9);
          assertThat(billed + share.declined().value())
              .as(what)
              .isLessThanOrEqualTo(share.found().value() + 1e-9);
          if (share.isVoid()) {
            assertThat(billed).as(what).isCloseTo(0, within(1e-9));
          }
        }
      }
      assertThat(life.tables.next().isEmpty()).as("job " + job).isTrue();
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {9, 10, 11})
  void whatTheOwnerPays_isWhatWasNotRefused(long seed) {
    for (long job = seed * 1000; job < seed * 1000 + JOBS; job++) {
      Life life = new Life(job);
      double paid = 0;
      for (int round = 0; round < 5; round++) {
        life.find();
        life.takeBack();
        life.day++;
        String status =
            List.of("approved", "offered", "refused", "withdrawn").get(life.random.nextInt(4));
        double sum = life.order(status).sum().value();
        paid += status.equals("approved") || status.equals("offered") ? sum : 0;
      }
      paid += life.order("approved").sum().value();
      double due =
          life.price.keySet().stream()
              .mapToDouble(item -> life.due(item) * life.price.get(item))
              .sum();
      assertThat(paid).as("job " + job).isCloseTo(due, within(1e-6));
    }
  }

  /** Every payment but the last stays, and all come to the total. */
  private static void assertPayments(Life life, NextOrder next) {
    Payments payments = Payments.of(life.tables.agreement(), List.of(), next.newTotal());
    double sum = payments.list().stream().mapToDouble(payment -> payment.amount().value()).sum();
    assertThat(sum).isCloseTo(next.newTotal().value(), within(1e-6));
    for (Payments.Payment payment : payments.list().subList(0, payments.list().size() - 1)) {
      assertThat(payment.amount().value()).isEqualTo(payment.agreed().value());
    }
    assertThat(Math.rint(sum * 100) / 100).isCloseTo(sum, within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(longs = {7, 8})
  void whatIsTakenBack_comesBackToTheCent(long seed) {
    for (long job = seed * 1000; job < seed * 1000 + JOBS; job++) {
      Life life = new Life(job);
      life.find();
      life.find();
      double sum = life.order("approved").sum().value();
      for (int i = 0; i < life.tables.marks.size(); i++) {
        life.tables.voidMark(i);
      }
      life.day++;
      assertThat(life.order("approved").sum().value())
          .as("job " + job)
          .isCloseTo(-sum, within(1e-6));
    }
  }
}
