package sheathwright.repl;

import java.nio.file.Path;
import java.util.List;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Reference;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Traced;
import sheathwright.figure.Working;
import sheathwright.job.StringTable;
import sheathwright.leveling.string.StringReadings;
import sheathwright.repl.Session.OwnLines;
import sheathwright.repl.shell.Lines;

/** What can be asked of a session at its own prompt. Meant to be imported statically. */
public final class Words {

  private Words() {}

  /** Text that is shown as it stands. */
  public record Page(String text) {

    @Override
    public String toString() {
      return text;
    }
  }

  /** What can be typed here. */
  public static Page help() {
    return new Page(
        """
        A line is Java, without the semicolon: order = sheetsByArea(sqft(1408.72), pct(10))
        A name given a new value carries along everything made from it.
        in("1-3/8") ft("16-9 1/4") sqft psf pct usd number    say a number with its unit
        help("nail")         functions that speak of nails, with an example each
        explain(order)       the working, step by step, with sources
        show(check)          a picture, where one can be drawn
        help("layout")       roof planes, sheets laid on them, patches
        help("string")       string-line readings, rafters made straight
        save("roof.xlsx")    the session as a live workbook
        Tab completes and tells the parameters; exit leaves.

        """
            + Reference.list(Catalog.shipped().cards()));
  }

  /**
   * The functions that speak of these words, best first, with an example each; or the one of this
   * name.
   */
  public static Page help(String words) {
    Catalog catalog = Catalog.shipped();
    try {
      return new Page(Reference.page(catalog.named(words)));
    } catch (RefusedException noSuchName) {
      List<String> wanted = List.of(words.strip().split("\\s+"));
      List<Card> about = catalog.about(wanted);
      StringBuilder page = new StringBuilder(DeckWords.about(wanted));
      if (about.isEmpty() && page.isEmpty()) {
        throw noSuchName;
      }
      for (Card card : about) {
        page.append(Reference.list(List.of(card))).append('\n');
        page.append("    ").append(card.text().examples().get(0)).append('\n');
      }
      return new Page(page.toString().stripTrailing());
    }
  }

  /** The string-line readings of a plane, from a file: rafter, along_in, up_in, drop_in. */
  public static StringReadings stringReadings(String file, String plane) {
    return StringTable.read(Path.of(file), plane);
  }

  /** The working of a figure, choice or check, or of everything that a function answered. */
  public static Page explain(Object result) {
    List<Traced> traced = result == null ? List.of() : TracedParts.of(result);
    if (traced.isEmpty()) {
      throw new RefusedException(
          "explain takes a figure, a choice, a check or a function's answer; this is "
              + (result == null ? "nothing" : result.getClass().getSimpleName()));
    }
    return new Page(Working.of(traced));
  }

  /** A picture in the terminal, where one can be drawn. */
  public static Page show(Object result) {
    return new Page(Bars.of(result));
  }

  /**
   * The session as a live workbook, or as lines that make it again, by the file's ending.
   *
   * @throws RefusedException if there is nothing to save yet, or the ending is that of neither
   */
  public static Page save(String file) {
    return new Page(session().saved(file, false).text());
  }

  /** The same, in place of a file that exists. */
  public static Page saveOver(String file) {
    return new Page(session().saved(file, true).text());
  }

  private static Session session() {
    return ((OwnLines) Lines.here()).session();
  }
}
