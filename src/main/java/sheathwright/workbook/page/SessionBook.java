package sheathwright.workbook.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sheathwright.figure.Roll;
import sheathwright.figure.Shown;
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;
import sheathwright.figure.Working;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Reached;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.draw.DeckMap;
import sheathwright.workbook.file.Particulars;

/** A session as a live workbook: each variable a named cell, with every input and step under it. */
public final class SessionBook {

  private static final int WIDTH = 14;

  private final Book book =
      new Book(Particulars.of("A session at the prompt", "Figures and what they are made from"));
  private final Map<String, String> stale;
  private final Set<String> listed = new HashSet<>();

  private SessionBook(Map<String, String> stale) {
    this.stale = stale;
    book.takeLiteralsAsInputs();
  }

  /** The workbook of what a session's variables hold, each in one cell. */
  public static byte[] bytes(Map<String, Traced> variables) {
    return bytes(variables, Map.of(), Map.of());
  }

  /**
   * The workbook of what a session's variables hold.
   *
   * @param variables by name, in the order in which they are to stand
   * @param parts what takes more than a cell, by the variable that holds it
   * @param stale why a variable's value is an old one, by its name
   */
  public static byte[] bytes(
      Map<String, Traced> variables,
      Map<String, List<SessionPart>> parts,
      Map<String, String> stale) {
    return new SessionBook(stale).written(variables, parts);
  }

  private byte[] written(Map<String, Traced> variables, Map<String, List<SessionPart>> parts) {
    String subtitle = "a session at the prompt";
    Tab front = Sections.tab(book, "Read me first", subtitle);
    Tab session = Sections.tab(book, "Session", subtitle);
    Tab working = Sections.workingTab(book, subtitle);
    Tab tables = Sections.tablesTab(book, subtitle);
    front.heading("A session at the prompt");
    front.paragraph(
        "Each variable of the session is a named cell on the tab Session, under its own name. A name is made legal by"
            + " writing it in lower case with an underscore before each capital; if it then reads as a cell's address, an"
            + " underscore is added at its end; if another variable has it already, session_ is put before it.");
    front.paragraph(
        "Straw-colored cells with a frame are numbers that were typed: change them and everything follows. Working holds"
            + " every step, Tables the published values.");
    front.paragraph("Planning help: local code and licensed practice decide.");
    session.heading("What was typed");
    variables.forEach(
        (name, value) -> {
          if (value.step().isGiven()) {
            stand(session, name, value);
          }
        });
    session.heading("What came of it");
    variables.forEach(
        (name, value) -> {
          if (!value.step().isGiven()) {
            stand(session, name, value);
          }
        });
    parts.forEach((name, own) -> tab(name, own, subtitle));
    Reached reached = new Reached();
    reached.from(variables.values());
    Set<Solution> plans = reached.solutions();
    if (!plans.isEmpty()) {
      session.heading("Whether what was solved still holds");
      plans.forEach(plan -> session.entry(Shown.inWords(plan.name()), plan.state(), ""));
    }
    return book.finished(working, tables);
  }

  private void tab(String variable, List<SessionPart> parts, String subtitle) {
    int columns = parts.stream().mapToInt(SessionBook::columns).max().orElse(1);
    int[] widths = new int[Math.max(6, columns)];
    Arrays.fill(widths, WIDTH);
    widths[0] = 2 * WIDTH;
    Tab tab = Sections.titled(book.tab("Session " + variable, widths), subtitle);
    for (SessionPart part : parts) {
      tab.heading(Shown.inWords(snakeCase(part.name())));
      if (part instanceof SessionPart.Listed list) {
        tab.list(listed.add(list.roll().name()) ? list.roll() : renamed(list));
      } else if (part instanceof SessionPart.Printed table) {
        print(tab, table.rows());
      } else if (part instanceof SessionPart.Drawn drawn) {
        DeckMap.draw(
            tab,
            "Plane " + drawn.courses().plane().name(),
            drawn.courses(),
            drawn.marks(),
            drawn.patches());
      }
    }
  }

  private static int columns(SessionPart part) {
    if (part instanceof SessionPart.Listed list) {
      return list.roll().columns().size();
    }
    return part instanceof SessionPart.Printed table ? table.rows().get(0).size() : 1;
  }

  /** Two variables may hold lists of one name; the ranges of the second are called after it. */
  private static Roll renamed(SessionPart.Listed list) {
    Roll roll = list.roll();
    List<Roll.Column<List<Traced>>> columns = new ArrayList<>();
    for (int i = 0; i < roll.columns().size(); i++) {
      int place = i;
      columns.add(Roll.column(roll.columns().get(i), row -> row.get(place)));
    }
    return Roll.of(snakeCase(list.name()), roll.title(), roll.rows(), columns);
  }

  private static void print(Tab tab, List<Map<String, Object>> rows) {
    tab.note("As it was when the session was saved: this is not worked out again.");
    int line = tab.next();
    List<String> names = List.copyOf(rows.get(0).keySet());
    for (int column = 0; column < names.size(); column++) {
      tab.text(line, column, Shown.inWords(snakeCase(names.get(column))), Part.COLUMN_HEAD);
    }
    for (Map<String, Object> row : rows) {
      line++;
      for (int column = 0; column < names.size(); column++) {
        Object value = row.get(names.get(column));
        if (value instanceof Number number) {
          tab.number(line, column, number.doubleValue());
        } else {
          tab.text(line, column, String.valueOf(value), Part.LISTED_TEXT);
        }
      }
    }
    tab.skip(rows.size() + 2);
  }

  private void stand(Tab tab, String name, Traced value) {
    String made = value.step().isGiven() ? "typed" : Working.symbols(value);
    String how =
        stale.entrySet().stream()
            .filter(old -> name.equals(old.getKey()) || name.startsWith(old.getKey() + "_"))
            .findFirst()
            .map(old -> "stale: " + old.getValue())
            .orElse(made);
    if (book.hasPlace(value)) {
      tab.link(name, value, "the same as another variable");
    } else {
      tab.variable(name, snakeCase(name), value, how);
    }
  }

  static String snakeCase(String name) {
    return name.replaceAll("(?<=[a-z0-9])([A-Z])", "_$1").toLowerCase(java.util.Locale.ROOT);
  }
}
