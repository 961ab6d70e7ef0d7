package sheathwright.workbook.page;

import java.util.Map;
import java.util.Set;
import sheathwright.figure.Shown;
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;
import sheathwright.figure.Working;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Reached;
import sheathwright.workbook.book.Tab;

/** A session as a live workbook: each variable a named cell, with every input and step under it. */
public final class SessionBook {

  private final Book book = new Book();

  private SessionBook() {
    book.takeLiteralsAsInputs();
  }

  /**
   * The workbook of what a session's variables hold.
   *
   * @param variables by name, in the order in which they are to stand
   */
  public static byte[] bytes(Map<String, Traced> variables) {
    return new SessionBook().written(variables);
  }

  private byte[] written(Map<String, Traced> variables) {
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
    Reached reached = new Reached();
    reached.from(variables.values());
    Set<Solution> plans = reached.solutions();
    if (!plans.isEmpty()) {
      session.heading("Whether what was solved still holds");
      plans.forEach(plan -> session.entry(Shown.inWords(plan.name()), plan.state(), ""));
    }
    return book.finished(working, tables);
  }

  private void stand(Tab tab, String name, Traced value) {
    boolean isGiven = value.step().isGiven();
    String how = isGiven ? "typed" : Working.symbols(value);
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
