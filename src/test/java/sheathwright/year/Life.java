package sheathwright.year;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
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
  private Set<String> crewFound = Set.of();
  private boolean isCrewOut;

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

  /** A file of it as it lies there. */
  byte[] bytes(String file) {
    try {
      return Files.readAllBytes(disk.path(folder + "/" + file));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private void type(String file, Typed table) {
    disk.type(folder + "/" + file, table.text());
  }

  /** What the office does by hand before the next command, and that command. */
  String[] next() {
    if (isCrewOut) {
      return new String[] {"take-in", folder, crew()};
    }
    return switch (stage) {
      case CALLED -> called();
      case QUOTED -> random.nextInt(4) == 0 ? requote() : dated("agree");
      case AGREED -> open();
      case OPENED -> onTheRoof();
      case CLOSED -> throw new IllegalStateException(folder);
    };
  }

  /** Takes note of what a command answered. */
  void answered(String[] words, Answer answer) {
    switch (words[0]) {
      case "quote" -> stage = List.of(words).contains("--issue") ? Stage.QUOTED : stage;
      case "agree" -> stage = Stage.AGREED;
      case "crew" -> {
        crewFound = CrewSheet.filled(disk.path(crew()), random, calendar.today());
        isCrewOut = true;
      }
      case "take-in" -> tookIn();
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

  private String[] dated(String command) {
    return new String[] {command, folder, "--on", calendar.today()};
  }

  /** A draft is for the eyes first, where there are documents. */
  private String[] called() {
    int chance = random.nextInt(5);
    return chance == 0
        ? new String[] {"check", folder}
        : chance < 3 && desk instanceof Commands
            ? new String[] {"quote", folder, "--force"}
            : quote();
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

  private String crew() {
    return folder + "/crew.xlsx";
  }

  /** What the crew found is among the marks, each once. */
  private void tookIn() {
    List<Map<String, String>> rows = table("marks.csv", "mark").named();
    List<String> taken =
        rows.stream()
            .filter(row -> row.get("by").equals(CrewSheet.BY))
            .map(row -> row.get("sheet"))
            .toList();
    if (!taken.containsAll(crewFound)) {
      throw new AssertionError("of " + crewFound + " the crew's marks are " + taken);
    }
    rows.forEach(row -> marks.add(row.get("mark")));
    disk.takeAway(crew());
    isCrewOut = false;
  }

  private String[] find() {
    if (desk instanceof Commands && !house.hasBoards() && random.nextBoolean()) {
      type("marks.csv", table("marks.csv", "mark", "plane", "finding", "sheet"));
      return new String[] {"crew", folder, "-o", crew(), "--force"};
    }
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
