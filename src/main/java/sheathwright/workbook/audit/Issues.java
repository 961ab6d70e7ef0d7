package sheathwright.workbook.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;

/** Two issues of one job side by side: what changed in marks, quantities, prices and dollars. */
public final class Issues {

  /** What every document comes to, each number by the names that it has in one or another. */
  private static final Map<String, List<String>> HEADLINES = new LinkedHashMap<>();

  static {
    HEADLINES.put("The price", List.of("quote_total_usd", "new_total_usd", "invoice_total_usd"));
    HEADLINES.put("The most it can come to", List.of("at_most_usd", "worst_case_usd"));
    HEADLINES.put("Each further sheet", List.of("extra_sheet_usd", "extra_sheet_quoted_usd"));
    HEADLINES.put("Back for each sheet not needed", List.of("credit_usd"));
    HEADLINES.put("Sheets in the price", List.of("planned_sheets"));
    HEADLINES.put("Sheets that could still turn out bad", List.of("most_extra_sheets"));
    HEADLINES.put("Still due", List.of("due_usd"));
  }

  /** Lists whose lines are told one by one, each with the column that names a line. */
  private static final Map<String, String> LISTS =
      Map.of("lines", "item", "held", "item", "marks", "mark", "change", "item");

  private static final double SAME = 1e-9;

  /**
   * One thing that differs.
   *
   * @param before as the first file says it; empty if it says nothing of it
   * @param after as the second says it
   * @param by how much more it is, where that can be said
   */
  public record Row(String what, String before, String after, String by) {}

  private final Reading first;
  private final Reading second;
  private final List<Row> rows = new ArrayList<>();
  private final List<String> words = new ArrayList<>();

  private Issues(Reading first, Reading second) {
    this.first = first;
    this.second = second;
  }

  /**
   * Compares two files.
   *
   * @throws sheathwright.job.table.ProblemsException if either is no workbook of ours that says
   *     what something comes to, or both are not of one job
   */
  public static Issues of(String name, byte[] file, String otherName, byte[] other) {
    Issues issues = new Issues(read(name, file), read(otherName, other));
    String one = issues.first.document();
    String two = issues.second.document();
    if (!one.isEmpty() && !two.isEmpty() && !quoteOf(one).equals(quoteOf(two))) {
      throw PackedParts.refused(
          otherName,
          "it is %s, and %s is %s; name two issues of one job".formatted(two, name, one));
    }
    issues.compare();
    return issues;
  }

  private static Reading read(String name, byte[] file) {
    Reading reading = BookReading.of(name, file);
    boolean isOurs =
        HEADLINES.values().stream()
            .flatMap(List::stream)
            .anyMatch(headline -> reading.named(headline).isPresent());
    if (!isOurs) {
      throw PackedParts.refused(
          name,
          "none of its cells has a name such as quote_total_usd; name a quote, an estimate, a change order or an invoice of ours");
    }
    return reading;
  }

  private static String quoteOf(String document) {
    return document.replaceAll(" (issue|change order|invoice|deck record)\\b.*", "");
  }

  /** What differs, a row each. */
  public List<Row> rows() {
    return List.copyOf(rows);
  }

  /** The same in sentences. */
  public List<String> words() {
    return List.copyOf(words);
  }

  private void compare() {
    HEADLINES.forEach(
        (what, names) -> {
          Optional<Named> before = named(first, names);
          Optional<Named> after = named(second, names);
          if (before.isPresent() || after.isPresent()) {
            compare(what, before, after);
          }
        });
    LISTS.keySet().stream().sorted().forEach(this::compareList);
    inputs();
    if (rows.isEmpty()) {
      words.add("both say the same of marks, quantities, prices and dollars");
    }
  }

  private record Named(String name, Held held) {}

  private static Optional<Named> named(Reading reading, List<String> names) {
    return names.stream()
        .flatMap(name -> reading.named(name).map(held -> new Named(name, held)).stream())
        .findFirst();
  }

  private void compare(String what, Optional<Named> before, Optional<Named> after) {
    String name = before.or(() -> after).orElseThrow().name();
    Held one = before.map(Named::held).orElse(Held.NOTHING);
    Held two = after.map(Named::held).orElse(Held.NOTHING);
    if (isSame(one, two)) {
      return;
    }
    rows.add(new Row(what, shown(name, one), shown(name, two), by(name, one, two)));
    if (one.isEmpty() || two.isEmpty()) {
      words.add(
          "%s: only the %s says it, %s"
              .formatted(
                  what,
                  two.isEmpty() ? "first" : "second",
                  shown(name, two.isEmpty() ? one : two)));
    } else {
      words.add(
          "%s: %s before, %s now%s"
              .formatted(what, shown(name, one), shown(name, two), more(name, one, two)));
    }
  }

  private static boolean isSame(Held one, Held two) {
    if (one.isNumber() && two.isNumber()) {
      return Math.abs(one.number() - two.number()) <= SAME * Math.max(1, Math.abs(one.number()));
    }
    return one.said().equals(two.said());
  }

  private static String shown(String name, Held held) {
    return held.isNumber() && name.endsWith("_usd")
        ? Shown.with(Units.USD, held.number())
        : held.said();
  }

  private static String by(String name, Held one, Held two) {
    if (!one.isNumber() || !two.isNumber()) {
      return "";
    }
    return shown(name, number(two.number() - one.number()));
  }

  private static Held number(double number) {
    double rounded = Math.rint(number * 1e9) / 1e9;
    return new Held(Held.Type.NUMBER, "", Double.toString(rounded), false, false);
  }

  private static String more(String name, Held one, Held two) {
    if (!one.isNumber() || !two.isNumber()) {
      return "";
    }
    double difference = two.number() - one.number();
    return ", %s %s"
        .formatted(shown(name, number(Math.abs(difference))), difference > 0 ? "more" : "less");
  }

  /** The lines of a list by what names them, each its cells by column. */
  private static Map<String, Map<String, Held>> lines(Reading reading, String list) {
    Map<String, Spot> columns = new TreeMap<>();
    reading
        .names()
        .forEach(
            (name, formula) -> {
              if (name.startsWith(list + "_")) {
                Spot.of(formula)
                    .filter(spot -> reading.panes().containsKey(spot.sheet()))
                    .ifPresent(spot -> columns.put(name.substring(list.length() + 1), spot));
              }
            });
    Spot key = columns.get(LISTS.get(list));
    Map<String, Map<String, Held>> lines = new LinkedHashMap<>();
    if (key == null) {
      return lines;
    }
    columns
        .values()
        .removeIf(
            spot ->
                !spot.sheet().equals(key.sheet())
                    || spot.row() != key.row()
                    || spot.lastRow() != key.lastRow());
    Pane pane = reading.panes().get(key.sheet());
    for (int row = key.row(); row <= key.lastRow(); row++) {
      String named = pane.at(row, key.column()).said();
      int line = row;
      if (!named.isEmpty()) {
        Map<String, Held> cells = new TreeMap<>();
        columns.forEach((column, spot) -> cells.put(column, pane.at(line, spot.column())));
        lines.putIfAbsent(named, cells);
      }
    }
    return lines;
  }

  private void compareList(String list) {
    Map<String, Map<String, Held>> before = lines(first, list);
    Map<String, Map<String, Held>> after = lines(second, list);
    if (before.isEmpty() && after.isEmpty()) {
      return;
    }
    String what = list.equals("marks") ? "Mark " : "";
    Set<String> keys = new LinkedHashSet<>(before.keySet());
    keys.addAll(after.keySet());
    for (String key : keys) {
      Map<String, Held> one = before.getOrDefault(key, Map.of());
      Map<String, Held> two = after.getOrDefault(key, Map.of());
      if (one.isEmpty() || two.isEmpty()) {
        rows.add(new Row(what + key, told(one), told(two), ""));
        words.add(
            "%s%s is %s: %s"
                .formatted(
                    what, key, one.isEmpty() ? "new" : "gone", told(one.isEmpty() ? two : one)));
      } else {
        changed(what + key, one, two);
      }
    }
  }

  private static String told(Map<String, Held> cells) {
    List<String> told = new ArrayList<>();
    cells.forEach(
        (column, held) -> {
          if (!held.isEmpty() && !LISTS.containsValue(column)) {
            told.add(Shown.inWords(column) + " " + shown(column, held));
          }
        });
    return String.join(", ", told);
  }

  private void changed(String what, Map<String, Held> one, Map<String, Held> two) {
    List<String> told = new ArrayList<>();
    one.forEach(
        (column, held) -> {
          Held other = two.getOrDefault(column, held);
          if (!isSame(held, other)) {
            String named = Shown.inWords(column);
            rows.add(
                new Row(
                    what + ", " + named,
                    shown(column, held),
                    shown(column, other),
                    by(column, held, other)));
            told.add(
                "%s %s before, %s now%s"
                    .formatted(
                        named,
                        shown(column, held),
                        shown(column, other),
                        more(column, held, other)));
          }
        });
    if (!told.isEmpty()) {
      words.add(what + ": " + String.join("; ", told));
    }
  }

  /** What the office may change and has a name of its own. */
  private void inputs() {
    Set<String> told = new LinkedHashSet<>();
    HEADLINES.values().forEach(told::addAll);
    first
        .names()
        .forEach(
            (name, formula) -> {
              Optional<Held> one = first.named(name);
              Optional<Held> two = second.named(name);
              boolean isInput = one.filter(Held::isOpen).isPresent() && two.isPresent();
              if (isInput && told.add(name)) {
                compare(
                    capital(Shown.inWords(name)),
                    one.map(held -> new Named(name, held)),
                    two.map(held -> new Named(name, held)));
              }
            });
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
  }
}
