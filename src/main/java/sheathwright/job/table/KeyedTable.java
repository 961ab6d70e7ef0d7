package sheathwright.job.table;

import java.util.Map;
import sheathwright.job.table.TableReader.Input;

/** A table of two columns as it was read, and where what is wrong with its lines is said. */
public final class KeyedTable {

  private final TableReader reader;
  private final RowSource file;
  private final Keys keys;
  private final Map<String, Input> inputs;

  KeyedTable(TableReader reader, RowSource file, Keys keys, Map<String, Input> inputs) {
    this.reader = reader;
    this.file = file;
    this.keys = keys;
    this.inputs = inputs;
  }

  /** What was read, by the word of the first column. */
  public Map<String, Input> inputs() {
    return inputs;
  }

  /** What it says. */
  public KeyedFacts facts() {
    return new KeyedFacts(inputs);
  }

  /** Whether anything is given for a fact, be it readable or not. */
  public boolean mentions(Field<?> field) {
    int key = file.header().indexOf(keys.key());
    int value = file.header().indexOf(keys.value());
    return key >= 0
        && value >= 0
        && file.lines().stream()
            .filter(line -> line.cells().get(key).strip().equals(field.name()))
            .anyMatch(line -> !line.cells().get(value).isBlank());
  }

  /** Where a fact stands, in words: {@code job.csv, line 4}. */
  public String place(Field<?> field) {
    return file.name() + ", line " + inputs.get(field.name()).line().number();
  }

  /** What is wrong with a fact that was given, to be said by whoever asks. */
  public Problem said(Field<?> field, String message) {
    return TableReader.said(
        file, inputs.get(field.name()).line(), keys.value(), field.name() + ": " + message);
  }

  /** Asks about a fact what is allowed, but hardly meant. */
  public void question(Field<?> field, String message) {
    reader.question(said(field, message));
  }

  /** Says what is wrong with a fact that was given. */
  public void problem(Field<?> field, String message) {
    reader.problem(said(field, message));
  }
}
