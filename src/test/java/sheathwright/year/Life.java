package sheathwright.year;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheathwright.year.disk.Disk;

/**
 * One job, as the office leads it from the call to the invoice, and what the office knows of it.
 */
final class Life {

  /** How far it has come. */
  enum Stage {
    CALLED,
    QUOTED,
    AGREED,
    OPENED,
    CLOSED
  }

  private static final Pattern TALK =
      Pattern.compile("\"([a-z-]+),([^,\"]*),([^,\"]*),WHO,signed,DATE\"");
  private static final int ROUNDS = 2;

  final String folder;
  final House house;
  final Desk desk;
  final Set<String> marks = new LinkedHashSet<>();
  final Set<String> stops = new TreeSet<>();
  Stage stage = Stage.CALLED;

  private final Disk disk;
  private final Random random;
  private final Calendar calendar;
  private int rounds;

  Life(Disk disk, Random random, Calendar calendar, House house, String folder, Desk desk) {
    this.disk = disk;
    this.random = random;
    this.calendar = calendar;
    this.house = house;
    this.folder = folder;
    this.desk = desk;
    house.tables().forEach((file, text) -> disk.type(folder + "/" + file, text));
    Typed.of(house.tables().getOrDefault("reports.csv", "report,seen\n")).named().stream()
        .filter(row -> !row.get("seen").equals("nothing"))
        .forEach(row -> stops.add(row.get("report") + " " + row.get("seen")));
  }

  /** A table of it as it lies there now; one without rows if it does not. */
  Typed table(String file, String... columns) {
    String text = disk.text(folder + "/" + file);
    return text.isEmpty() ? Typed.with(columns) : Typed.of(text);
  }

  /** The day that it is. */
  String today() {
    return calendar.today();
  }

  private void type(String file, Typed table) {
    disk.type(folder + "/" + file, table.text());
  }

  /** What the office does by hand before the next command, and that command. */
  String[] next() {
    return switch (stage) {
      case CALLED -> random.nextInt(5) == 0 ? words("check") : quote();
      case QUOTED -> random.nextInt(4) == 0 ? requote() : dated("agree");
      case AGREED -> open();
      case OPENED -> onTheRoof();
      case CLOSED -> throw new IllegalStateException(folder);
    };
  }

  /** Takes note of what a command answered. */
  void answered(String[] words, Answer answer) {
    switch (words[0]) {
      case "quote" -> stage = Stage.QUOTED;
      case "agree" -> stage = Stage.AGREED;
      case "close" -> {
        if (answer.isDone()) {
          stage = Stage.CLOSED;
        } else {
          settle(answer.err());
        }
      }
      default -> answerOrders();
    }
  }

  private String[] words(String command) {
    return new String[] {command, folder};
  }

  private String[] dated(String command) {
    return new String[] {command, folder, "--on", calendar.today()};
  }

  private String[] quote() {
    return new String[] {"quote", folder, "--issue", "--on", calendar.today()};
  }

  /** The permit costs something else by now. */
  private String[] requote() {
    type("job.csv", table("job.csv").fact("permit_usd", House.money(random, 300, 900)));
    return quote();
  }

  private String[] open() {
    type("job.csv", table("job.csv").fact("opened_on", calendar.today()));
    stage = Stage.OPENED;
    return find();
  }

  private String[] onTheRoof() {
    rounds++;
    if (rounds <= ROUNDS) {
      return random.nextInt(3) == 0 ? takeBack() : find();
    }
    return rounds % 2 == 0 ? dated("change-order") : dated("close");
  }

  private String[] find() {
    Typed table = table("marks.csv", "mark", "plane", "finding");
    Marks found = new Marks(random, this, calendar.today());
    for (int i = random.nextInt(6); i > 0; i--) {
      Map<String, String> mark = found.mark("M-" + (marks.size() + 1));
      if (!mark.isEmpty()) {
        table.row(mark);
        marks.add(mark.get("mark"));
      }
    }
    type("marks.csv", table);
    return dated("change-order");
  }

  private String[] takeBack() {
    Typed table = table("marks.csv", "mark", "plane", "finding");
    if (!table.rows().isEmpty()) {
      table.set(random.nextInt(table.rows().size()), "void", "yes");
      type("marks.csv", table);
    }
    return dated("change-order");
  }

  /** What became of the orders that wait. */
  private void answerOrders() {
    Typed orders = table("orders.csv", "order", "status");
    List<Map<String, String>> rows = orders.named();
    boolean isAnswered = false;
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).get("status").equals("offered") && random.nextInt(4) > 0) {
        int how = random.nextInt(rounds > ROUNDS ? 8 : 10);
        orders.set(i, "status", how < 7 ? "approved" : how < 9 ? "refused" : "withdrawn");
        if (how < 7) {
          orders.set(i, "approved_by", house.owner());
          orders.set(i, "approved_how", random.nextBoolean() ? "signed" : "e-mail");
          orders.set(i, "approved_on", calendar.today());
        }
        isAnswered = true;
      }
    }
    if (isAnswered) {
      type("orders.csv", orders);
    }
  }

  /** Does what a refusal of the last bill asks for. */
  private void settle(String refusal) {
    Typed talks =
        table("talks.csv", "item", "most", "usd", "approved_by", "approved_how", "approved_on");
    Matcher talk = TALK.matcher(refusal);
    boolean isTalked = false;
    while (talk.find()) {
      boolean isSaid = talks.named().stream().anyMatch(is(talk.group(1)));
      if (isSaid) {
        continue;
      }
      talks.row(
          Map.of(
              "item", talk.group(1),
              "most", talk.group(2).isEmpty() ? "" : "500",
              "usd", talk.group(3),
              "approved_by", house.owner(),
              "approved_how", "signed",
              "approved_on", calendar.today()));
      isTalked = true;
    }
    if (isTalked) {
      type("talks.csv", talks);
    }
    answerOrders();
  }

  private static Predicate<Map<String, String>> is(String item) {
    return row -> row.get("item").equals(item);
  }

  /** The places of its deck, as the quote named them. */
  List<Map<String, String>> places() {
    return new ArrayList<>(table("places.csv", "key").named());
  }
}
