package sheathwright.repl;

import java.util.List;
import sheathwright.repl.line.Reader;
import sheathwright.repl.line.Reading;
import sheathwright.repl.memory.Block.Step;
import sheathwright.repl.memory.PlainLine;
import sheathwright.repl.memory.Values.Value;
import sheathwright.repl.whatif.Runs;

/** Lines that are evaluated as they are read; no compiler is asked for them. */
final class Uncompiled {

  private final Reader reader;
  private final Snippets snippets;
  private final Varying varying;

  Uncompiled(Reader reader, Holdings holdings, Snippets snippets, Runs apart) {
    this.reader = reader;
    this.snippets = snippets;
    this.varying = new Varying(holdings.definitions(), apart);
  }

  /**
   * What came of a line that was evaluated without the compiler.
   *
   * @param name the variable that it gives a value; empty if none
   * @param source the line as a statement of Java
   * @param notes what the answer says beside
   */
  record Made(String name, String source, Value value, List<String> notes) {}

  /** What came of a line that was typed before; empty if the compiler has to take it. */
  List<Made> again(String line) {
    return made(reader.again(line));
  }

  /** What came of a reading without the compiler; empty if the compiler has to take it. */
  List<Made> made(Reading reading) {
    if (reading instanceof Reading.Direct direct) {
      return direct.made().stream()
          .map(
              made ->
                  new Made(
                      made.name(), made.java(), new Value(made.value(), made.type()), made.notes()))
          .toList();
    }
    return varying.made(reading.java()).stream().toList();
  }

  /** What an expression stands for. */
  Object value(String expression) {
    Reading reading = reader.again(expression);
    return reading instanceof Reading.Direct direct
        ? direct.made().get(0).value()
        : snippets
            .apart(List.of(new Step(0, "", PlainLine.statement(reading.java()), false, null)))
            .get(0);
  }
}
