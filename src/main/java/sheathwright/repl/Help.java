package sheathwright.repl;

import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.partitioningBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Reference;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;
import sheathwright.repl.show.ShellCommand;

/** What can be typed, by task, by the trade's words and by name, in lines of a width. */
final class Help {

  private static final Catalog CATALOG = Catalog.shipped();
  private static final String INDENT = "  ";

  private static final List<String[]> SAID =
      List.of(
          new String[] {"1-3/8 in, 16-9 1/4 ft", "a length, as it is spoken"},
          new String[] {"30 psf, 10 %, $41.25", "any other number with its unit"},
          new String[] {"order = sheetsByArea(1408 sqft, 10 %)", "an answer with a name"},
          new String[] {"nailsPerSheet(edge = 6 in, …)", "its parts by their names, in any order"},
          new String[] {"nailsPerSheet", "alone, asks for one part after the other"},
          new String[] {"given(spacing = 24 in, species = SPF)", "said once, for every call"},
          new String[] {"help lay sheets", "all of one task, with lines to type"},
          new String[] {"help cut list", "what the trade calls it finds it"},
          new String[] {"explain order", "where it comes from: the last step"},
          new String[] {"explain all order", "every step, with sources"},
          new String[] {"show check", "a picture, where one can be drawn"},
          new String[] {"seek order = 60 sheets by waste", "the typed value that gives it"},
          new String[] {"scenario \"low\" (waste = 5 %)", "scenario alone: all side by side"},
          new String[] {"list, undo, delete order", "what is there; a line back; a name gone"});

  private static final List<String[]> SAVE =
      List.of(
          new String[] {"save \"roof.xlsx\"", "the session as a live workbook"},
          new String[] {"save \"roof.session\"", "as the lines that make it again"},
          new String[] {"resume", "brings the last session back"},
          new String[] {"exit", "leaves; Tab completes and tells the parameters"});

  /** What a job's folder goes through, at the command line. */
  private static final List<String[]> LIFE =
      List.of(
          new String[] {"quote my-job", "a draft; sent with --issue --on DATE"},
          new String[] {"agree my-job --on DATE", "freezes what was sent"},
          new String[] {"change-order my-job --on DATE", "what was found besides"},
          new String[] {"close my-job --on DATE", "invoice and deck record"});

  /** The words that a line can begin with, and what each does. */
  private static final Map<String, String> COMMANDS =
      Map.ofEntries(
          Map.entry("help", "help lay sheets: what can be typed for it"),
          Map.entry("show", "show deck: a picture, where one can be drawn"),
          Map.entry(
              "explain",
              """
              explain order: where it comes from, the last step
              explain all order: every step
              explain order depth 2: the last two steps, one after the other
              explain order plain: the numbers put in without units, to be checked by hand
              explain order untaken: what a choice did not take, too
              explain check: demand and capacity as a small tree
              with brackets as well: explain(order), explain(order, depth 2), explain(order) plain"""),
          Map.entry("explainAll", "explainAll order: every step, with sources"),
          Map.entry("print", "print order: its value"),
          Map.entry("list", "list: every name, its value, what it is made from"),
          Map.entry("undo", "undo: takes back what the last line changed"),
          Map.entry("delete", "delete order: takes a name away; what is made from it stays"),
          Map.entry(
              "save", "save \"roof.xlsx\": a live workbook; save \"roof.session\": its lines"),
          Map.entry("saveOver", "saveOver \"roof.xlsx\": in place of one that exists"),
          Map.entry("seek", "seek order = 110 sheets by waste: the typed value that gives it"),
          Map.entry(
              "scenario", "scenario \"cheap\" (waste = 5 %): keeps changes; scenario shows all"),
          Map.entry("job", "job \"folder\": what a job's tables say, as variables"),
          Map.entry(
              "resume", "resume: brings the last session back; resume \"roof.session\", one"));

  private Help() {}

  /** The first page: the work in its order, and what serves each part of it. */
  static String page(int width) {
    List<String> lines = new ArrayList<>(sideBySide(SAID, width));
    for (Task task : Task.values()) {
      lines.add("");
      lines.add(task.title() + ": help " + task.asked());
      String calls =
          Stream.concat(DeckWords.callsFor(task), cards(task).map(Card::call))
              .distinct()
              .collect(joining(", "));
      lines.addAll(Shown.wrapped(calls, width, INDENT, INDENT));
    }
    lines.add("");
    lines.add("Save");
    lines.addAll(sideBySide(SAVE, width));
    lines.add("");
    lines.add("A job's folder, outside the prompt: ./sheathwright and");
    lines.addAll(sideBySide(LIFE, width));
    String commands =
        ShellCommand.all().stream().map(ShellCommand::name).sorted().collect(joining(", "));
    lines.addAll(Shown.wrapped("help tells of each: " + commands, width, "", INDENT));
    return String.join("\n", lines);
  }

  /**
   * All of a task, one function whole, or whatever speaks of these words.
   *
   * @throws RefusedException if nothing does
   */
  static String about(String words, int width) {
    if (COMMANDS.containsKey(words.strip())) {
      return COMMANDS
          .get(words.strip())
          .lines()
          .flatMap(line -> Shown.wrapped(line, width, "", INDENT).stream())
          .collect(joining("\n"));
    }
    Optional<Task> task = Task.asked(words);
    if (task.isPresent()) {
      return page(task.get(), width);
    }
    try {
      return Reference.page(CATALOG.named(words), width);
    } catch (RefusedException noSuchName) {
      List<String> wanted = List.of(words.strip().split("\\s+"));
      String found = found(wanted, width);
      if (found.isEmpty()) {
        throw new RefusedException(
            "nothing here speaks of \"%s\"; try one word of it, or help alone for the work in its order"
                .formatted(words.strip()));
      }
      return found;
    }
  }

  /** Whether there is anything to tell of these words. */
  static boolean knows(String words) {
    List<String> wanted = List.of(words.strip().split("\\s+"));
    return !DeckWords.about(wanted).isEmpty()
        || !CATALOG.about(wanted).isEmpty()
        || ShellCommand.all().stream()
            .anyMatch(command -> command.isCalled(wanted) || command.speaksOf(wanted));
  }

  /** Whatever speaks of these words; before all else the command of the shell that is called so. */
  private static String found(List<String> words, int width) {
    Map<Boolean, List<ShellCommand>> commands =
        ShellCommand.all().stream()
            .filter(command -> command.isCalled(words) || command.speaksOf(words))
            .collect(partitioningBy(command -> command.isCalled(words)));
    return Stream.of(
            told(commands.get(true), width),
            found(DeckWords.about(words), CATALOG.about(words), width),
            told(commands.get(false), width))
        .filter(each -> !each.isEmpty())
        .collect(joining("\n"));
  }

  private static String told(List<ShellCommand> commands, int width) {
    return commands.stream()
        .flatMap(command -> command.lines(width).stream())
        .collect(joining("\n"));
  }

  private static String page(Task task, int width) {
    return task.title() + "\n\n" + found(DeckWords.linesFor(task), cards(task).toList(), width);
  }

  private static String found(List<DeckWords.Entry> entries, List<Card> cards, int width) {
    List<String> lines = new ArrayList<>();
    for (DeckWords.Entry entry : entries) {
      lines.addAll(Shown.wrapped(entry.typed(), width, "", "    "));
      lines.addAll(Shown.wrapped(entry.meaning(), width, "    ", "    "));
    }
    cards.forEach(card -> lines.add(line(card, width)));
    return String.join("\n", lines);
  }

  /** One function in a line with what it answers, and one that can be typed. */
  static String line(Card card, int width) {
    List<String> lines = new ArrayList<>();
    lines.add(Reference.list(List.of(card), width));
    lines.addAll(Shown.wrapped(card.text().examples().get(0), width, "    ", "        "));
    return String.join("\n", lines);
  }

  private static Stream<Card> cards(Task task) {
    return CATALOG.cards().stream().filter(task::isServedBy);
  }

  /** A table of two columns, the second one wrapped in its own width. */
  private static List<String> sideBySide(List<String[]> pairs, int width) {
    int widest = pairs.stream().mapToInt(pair -> pair[0].length()).max().orElse(0);
    return pairs.stream()
        .flatMap(
            pair -> {
              String first = pair[0] + " ".repeat(widest - pair[0].length() + 2);
              return Shown.wrapped(pair[1], width, first, " ".repeat(first.length())).stream();
            })
        .toList();
  }
}
