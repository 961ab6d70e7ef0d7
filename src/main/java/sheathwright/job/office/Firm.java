package sheathwright.job.office;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Source;
import sheathwright.job.table.Field;
import sheathwright.job.table.KeyedTable;
import sheathwright.job.table.Keys;
import sheathwright.job.table.Problem;
import sheathwright.job.table.RowSource;
import sheathwright.job.table.TableReader;
import sheathwright.job.table.TableReader.Group;
import sheathwright.job.table.TableReader.Input;

/** The firm as its own table tells it; one without a table says nothing. */
public final class Firm {

  /** Begins the names of its cells. */
  private static final String PREFIX = "firm_";

  private final Optional<KeyedTable> told;
  private final Optional<Path> file;

  private Firm(Optional<KeyedTable> told, Optional<Path> file) {
    this.told = told;
    this.file = file;
  }

  /**
   * The firm of a job.
   *
   * @param table its table, if the job's office has one
   * @param job the job's folder, if it lies in one
   */
  public static Firm read(
      TableReader reader, Optional<RowSource> table, Keys keys, Optional<Path> job) {
    Optional<KeyedTable> told =
        table.map(
            file ->
                reader.keyedTable(
                    file, keys, PREFIX, "", List.of(new Group(FirmKeys.FIRM, true)), Map.of()));
    Firm firm =
        new Firm(told, job.flatMap(folder -> table.map(file -> folder.resolve(file.name()))));
    firm.said(FirmKeys.NEXT_QUOTE_NUMBER)
        .filter(number -> QuoteNumbers.after(number).isEmpty())
        .ifPresent(
            number ->
                told.orElseThrow()
                    .problem(
                        FirmKeys.NEXT_QUOTE_NUMBER,
                        "\"%s\" does not end in digits, so nobody knows which number comes behind it; write one such as 2027-041"
                            .formatted(number)));
    return firm;
  }

  /** Whether it has a table. */
  public boolean isTold() {
    return told.isPresent();
  }

  /** What it says of something; nothing, if it does not. */
  public Optional<String> said(Field<Choice<String>> key) {
    return told.map(KeyedTable::facts)
        .filter(facts -> facts.knows(key))
        .map(facts -> facts.fact(key).value());
  }

  /**
   * The facts of a job, and those that the firm says where the job does not.
   *
   * @param by who made the quote: the firm
   * @param number of the quote: one that is not given yet, if the firm gives it when it is issued
   */
  public Map<String, Input> with(
      Map<String, Input> facts, Field<Choice<String>> by, Field<Choice<String>> number) {
    Map<String, Input> all = new LinkedHashMap<>(facts);
    input(FirmKeys.NAME)
        .ifPresent(name -> all.putIfAbsent(by.name(), new Input(by, name.value(), name.line())));
    input(FirmKeys.NEXT_QUOTE_NUMBER)
        .ifPresent(
            next -> {
              Source source = Source.given("numbered when it is issued");
              Choice<String> none = Choice.input(number.name(), "not numbered yet", source);
              all.putIfAbsent(number.name(), new Input(number, none, next.line()));
            });
    return all;
  }

  private Optional<Input> input(Field<Choice<String>> key) {
    return told.map(table -> table.inputs().get(key.name()));
  }

  /** What is wrong with something that it says. */
  public Problem wrong(Field<Choice<String>> key, String message) {
    return told.orElseThrow().said(key, message);
  }

  /** A file beside its table; none where the table lies nowhere. */
  public Optional<Path> beside(String name) {
    return file.map(table -> table.resolveSibling(name));
  }
}
