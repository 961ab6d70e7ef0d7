package sheathwright.workbook.letterhead;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import sheathwright.catalog.Nearest;
import sheathwright.figure.Choice;
import sheathwright.job.life.Item;
import sheathwright.job.office.FirmKeys;
import sheathwright.job.table.Field;

/** The documents that an office may have a letterhead for. */
public enum LetterKind {
  QUOTE("quote", "a quote", FirmKeys.QUOTE_LETTERHEAD),
  CHANGE_ORDER("change-order", "a change order", FirmKeys.ORDER_LETTERHEAD),
  INVOICE("invoice", "an invoice", FirmKeys.INVOICE_LETTERHEAD);

  private static final String TABLE = "/sheathwright/workbook/letterhead.csv";
  private static final int COLUMNS = 5;

  /** What only the office is to read. */
  private static final Set<String> OFFICE =
      Set.of("cost", "costs", "overhead", "margin", "hours", "forecast", "mean", "wage", "leak");

  private final String document;
  private final String spoken;
  private final Field<Choice<String>> key;

  LetterKind(String document, String spoken, Field<Choice<String>> key) {
    this.document = document;
    this.spoken = spoken;
    this.key = key;
  }

  /** What it is called. */
  public String document() {
    return document;
  }

  /** Which command writes the document. */
  public String command() {
    return this == INVOICE ? "close" : document;
  }

  /** Under which key the firm's table says which letterhead. */
  Field<Choice<String>> key() {
    return key;
  }

  /** Every word that it offers, by its text. */
  Map<String, Word> words() {
    Map<String, Word> words = new LinkedHashMap<>();
    try (BufferedReader table =
        new BufferedReader(
            new InputStreamReader(
                LetterKind.class.getResourceAsStream(TABLE), StandardCharsets.UTF_8))) {
      table
          .lines()
          .skip(1)
          .map(line -> line.split(",", COLUMNS))
          .filter(line -> line[0].equals("*") || line[0].equals(document))
          .flatMap(LetterKind::each)
          .forEach(word -> words.put(word.text(), word));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return words;
  }

  /** A line that speaks of any item stands for one word of each. */
  private static Stream<Word> each(String[] line) {
    Word.Kind kind = Word.Kind.valueOf(line[2].toUpperCase(Locale.ROOT));
    List<String> texts =
        line[1].contains("ITEM")
            ? Arrays.stream(Item.values())
                .map(item -> line[1].replace("ITEM", item.name().toLowerCase(Locale.ROOT)))
                .toList()
            : List.of(line[1]);
    return texts.stream()
        .map(text -> new Word(text, kind, Integer.parseInt(line[3]), line[COLUMNS - 1]));
  }

  /** What is said of a word that it does not offer. */
  String refused(String word) {
    String said = "{%s} ".formatted(word);
    if (Arrays.stream(word.toLowerCase(Locale.ROOT).split("[_.\\s]")).anyMatch(OFFICE::contains)) {
      return said + "is for the office only, and %s never shows it; take it out".formatted(spoken);
    }
    return said
        + "is no word of %s%s".formatted(spoken, Nearest.asked(word, words().keySet()))
        + "; `letterhead %s` writes all of them".formatted(document);
  }

  /** What it is called in a sentence. */
  String spoken() {
    return spoken;
  }
}
