package sheathwright.catalog;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Shown;

/**
 * The catalog as people read it: a line a function, a page a function, and the whole as a document.
 */
public final class Reference {

  /** The rooms that have functions, in the order of the work, with what each is about. */
  private static final Map<String, String> CHAPTERS = chapters();

  private static Map<String, String> chapters() {
    Map<String, String> chapters = new LinkedHashMap<>();
    chapters.put("roof", "The roof as geometry");
    chapters.put("loads", "What lies and pulls on it");
    chapters.put("wood", "What its lumber can carry");
    chapters.put("framing", "Rafters and their sisters");
    chapters.put("sheathing", "Panels and boards of the deck");
    chapters.put("fastening", "Nails and screws");
    chapters.put("leveling", "From the string line to straight rafters");
    chapters.put("forecast", "What nobody has seen");
    chapters.put("pricing", "What it costs");
    return chapters;
  }

  private Reference() {}

  /** The rooms that have functions, in the order of the work, each with what it is about. */
  public static Map<String, String> rooms() {
    return Collections.unmodifiableMap(CHAPTERS);
  }

  /** One line each: name and first sentence. */
  public static String list(List<Card> cards) {
    int widest = cards.stream().mapToInt(card -> card.name().length()).max().orElse(0);
    return cards.stream()
        .map(card -> pad(card.name(), widest + 2) + card.text().summary())
        .collect(joining("\n"));
  }

  /** The same in lines of a width, each function called as it is typed. */
  public static String list(List<Card> cards, int width) {
    int widest = cards.stream().mapToInt(card -> card.call().length()).max().orElse(0);
    return cards.stream()
        .flatMap(card -> hung(pad(card.call(), widest + 2), card.text().summary(), width).stream())
        .collect(joining("\n"));
  }

  /** Everything that is known of one function, for a terminal of a width. */
  public static String page(Card card, int width) {
    List<String> lines = new ArrayList<>();
    lines.add(card.name());
    lines.addAll(hung("  ", card.text().summary(), width));
    lines.add("");
    card.text()
        .formula()
        .lines()
        .forEach(line -> lines.addAll(Shown.wrapped(line, width, "    ", "            ")));
    lines.add("");
    lines.addAll(hung("  ", card.text().limits(), width));
    if (!card.text().notes().isBlank()) {
      lines.addAll(hung("  ", card.text().notes(), width));
    }
    lines.add("");
    lines.add("takes");
    int widest = card.parameters().stream().mapToInt(p -> p.column().length()).max().orElse(0);
    for (Parameter parameter : card.parameters()) {
      String preset = parameter.isRequired() ? "" : " [" + parameter.preset() + " if left out]";
      lines.addAll(
          hung("  " + pad(parameter.column(), widest + 2), said(parameter) + preset, width));
    }
    lines.add("gives");
    lines.addAll(hung("  ", results(card) + ": " + card.text().result(), width));
    lines.add("refuses");
    lines.addAll(hung("  ", card.text().refusals(), width));
    lines.add("example");
    card.text().examples().forEach(example -> lines.addAll(hung("  ", example, width)));
    lines.add("source");
    lines.addAll(hung("  ", card.text().source(), width));
    return String.join("\n", lines);
  }

  /** Every function as one Markdown document. */
  public static String document(List<Card> cards) {
    List<String> lines = new ArrayList<>();
    lines.add("# Functions, a handbook");
    lines.add("");
    lines.add(
        "This page is written by `./sheathwright functions --markdown` from the doc comments; a test fails when it is"
            + " out of date. Every example in it is run by the tests. Results are planning help: local code and"
            + " licensed practice decide.");
    lines.add("");
    CHAPTERS.forEach(
        (room, title) -> lines.add("- %s: %s".formatted(title, links(inRoom(cards, room)))));
    CHAPTERS.forEach(
        (room, title) -> {
          lines.add("");
          lines.add("## " + title);
          inRoom(cards, room).forEach(card -> lines.addAll(section(card)));
        });
    return String.join("\n", lines) + "\n";
  }

  private static List<Card> inRoom(List<Card> cards, String room) {
    return cards.stream().filter(card -> card.room().equals(room)).toList();
  }

  private static String links(List<Card> cards) {
    return cards.stream()
        .map(card -> "[%s](#%s)".formatted(card.name(), card.name()))
        .collect(joining(", "));
  }

  private static List<String> section(Card card) {
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.add("### " + card.name());
    lines.add("");
    lines.add(card.text().summary());
    lines.add("");
    lines.add("```text");
    lines.addAll(card.text().formula().lines().toList());
    lines.add("```");
    lines.add("");
    lines.add(card.text().limits());
    if (!card.text().notes().isBlank()) {
      lines.add("");
      lines.add(card.text().notes());
    }
    lines.add("");
    lines.add("| parameter | what it is | if left out |");
    lines.add("| --- | --- | --- |");
    for (Parameter parameter : card.parameters()) {
      lines.add(
          "| `%s` | %s | %s |"
              .formatted(
                  parameter.column(),
                  said(parameter).replace("|", "\\|"),
                  parameter.isRequired() ? "" : "`" + parameter.preset() + "`"));
    }
    lines.add("");
    lines.add("Gives `" + results(card).replace(", ", "`, `") + "`: " + card.text().result() + ".");
    lines.add("");
    lines.add("Refuses " + card.text().refusals() + ".");
    lines.add("");
    lines.add("```java");
    lines.addAll(card.text().examples());
    lines.add("```");
    lines.add("");
    lines.add("Source: " + card.text().source() + ".");
    return lines;
  }

  private static String said(Parameter parameter) {
    return parameter.options() == null
        ? parameter.text()
        : parameter.text() + " (" + String.join(", ", parameter.words()) + ")";
  }

  private static String results(Card card) {
    return card.results().stream().map(Result::column).collect(joining(", "));
  }

  private static List<String> hung(String head, String text, int width) {
    return Shown.wrapped(text, width, head, " ".repeat(head.length()));
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(width - text.length());
  }
}
