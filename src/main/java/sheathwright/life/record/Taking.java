package sheathwright.life.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.TableGuide;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.table.Field;
import sheathwright.job.table.Keys;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.RowSource;

/** What somebody changed in a workbook of a job's being written back into the job's tables. */
public final class Taking {

  /**
   * An input of a workbook that holds something else now.
   *
   * @param name of its cell, or of the column of the list that it stands in
   * @param line of the list, counted from 0; 0 for a cell of its own
   * @param isListed whether it stands in a list
   */
  public record Input(String name, int line, boolean isListed, String was, String now) {}

  /** Where an input stands in the tables. */
  private record Target(JobTable table, int line, String column, Field<?> field) {}

  private static final Pattern OPTION = Pattern.compile("option_(\\d{1,4})_chosen");
  private static final String PRICE = "price_";
  private static final String TAB = "tab_";
  private static final Source TYPED = Source.given("typed");
  private static final double SAME = 1e-9;

  private final JobFolder folder;
  private final Map<JobTable, TableText> texts = new LinkedHashMap<>();
  private final List<String> lines = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private final Writing writing;

  /**
   * The tables with all of it in them.
   *
   * @throws ProblemsException if the job's stage does not allow it, the tables say something else
   *     than the workbook did, or do not take what it says now
   */
  public Taking(JobFolder folder, List<Input> inputs) {
    this.folder = folder;
    folder.require(Step.TAKE);
    inputs.forEach(this::take);
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
    Job.of(folder.with(texts.values().toArray(TableText[]::new)));
    writing = new Writing(folder.path());
    texts.values().forEach(writing::with);
  }

  private void take(Input input) {
    Optional<Target> target = input.isListed() ? listed(input) : keyed(input);
    if (target.isEmpty()) {
      wrong("", 0, input.name(), "it has no place in the job's tables; write it there by hand");
      return;
    }
    JobTable table = target.get().table();
    String column = target.get().column();
    TableText text = texts.getOrDefault(table, folder.text(table, List.of()));
    RowSource file = text.parsed();
    String held = held(target.get(), file);
    String where = table.keys().isPresent() ? target.get().field().name() : column;
    long number = target.get().line() < 0 ? 0 : file.lines().get(target.get().line()).number();
    if (!held.isEmpty() && !isSame(target.get().field(), file.readable(held), input.was())) {
      wrong(
          table.file(),
          number,
          where,
          "it says %s, and the workbook was made from %s; quote the job again"
              .formatted(held, input.was()));
      return;
    }
    try {
      if (!input.now().isEmpty()) {
        target.get().field().read("", input.now(), TYPED);
      }
    } catch (RefusedException refused) {
      wrong(table.file(), number, where, refused.getMessage());
      return;
    }
    lines.add(
        "%s%s, %s: was %s, now %s"
            .formatted(
                table.file(),
                number == 0 ? "" : ", line " + number,
                where,
                held.isEmpty() ? "blank" : held,
                input.now().isEmpty() ? "blank" : input.now()));
    texts.put(
        table,
        target.get().line() < 0
            ? text.with(table.keys().orElseThrow(), target.get().field(), input.now())
            : text.withCell(target.get().line(), column, input.now()));
  }

  private void wrong(String file, long line, String column, String message) {
    problems.add(
        new Problem(file.isEmpty() ? folder.path().toString() : file, line, column, message));
  }

  private static String held(Target target, RowSource file) {
    int column = file.header().indexOf(target.column());
    return target.line() < 0 || column < 0
        ? ""
        : file.lines().get(target.line()).cells().get(column).strip();
  }

  private static boolean isSame(Field<?> field, String held, String was) {
    try {
      Traced value = field.read("", held, TYPED);
      return value instanceof Figure<?> figure
          ? Math.abs(figure.value() - Double.parseDouble(was))
              <= SAME * Math.max(1, Math.abs(figure.value()))
          : ((Choice<?>) value).plain().equals(was);
    } catch (RefusedException | NumberFormatException another) {
      return held.equals(was);
    }
  }

  /** A cell of its own stands behind a key, or is the tick of an option. */
  private Optional<Target> keyed(Input input) {
    Matcher option = OPTION.matcher(input.name());
    if (option.matches()) {
      return option(Integer.parseInt(option.group(1)));
    }
    return Stream.of(
            key(JobTable.JOB, input.name()),
            key(JobTable.RATES, input.name()),
            input.name().startsWith(PRICE)
                ? price(input.name().substring(PRICE.length()))
                : Optional.<Target>empty())
        .flatMap(Optional::stream)
        .findFirst();
  }

  private Optional<Target> price(String name) {
    String bare = name.endsWith("_usd") ? name.substring(0, name.length() - 4) : name;
    return Stream.of(bare, name).flatMap(key -> key(JobTable.PRICES, key).stream()).findFirst();
  }

  private Optional<Target> key(JobTable table, String name) {
    return TableGuide.field(table, name)
        .filter(field -> folder.has(table))
        .map(
            field -> {
              Keys keys = table.keys().orElseThrow();
              RowSource file = folder.tables().files().get(table.word());
              int key = file.header().indexOf(keys.key());
              int line =
                  IntStream.range(0, file.lines().size())
                      .filter(i -> file.lines().get(i).cells().get(key).strip().equals(name))
                      .findFirst()
                      .orElse(-1);
              return new Target(table, line, keys.value(), field);
            });
  }

  /** Options without a price are not shown, and not counted. */
  private Optional<Target> option(int number) {
    if (!folder.has(JobTable.OPTIONS)) {
      return Optional.empty();
    }
    RowSource file = folder.tables().files().get(JobTable.OPTIONS.word());
    int usd = file.header().indexOf(AgreedFields.USD.name());
    return IntStream.range(0, file.lines().size())
        .filter(line -> usd >= 0 && !file.lines().get(line).cells().get(usd).isBlank())
        .skip(number - 1L)
        .mapToObj(
            line ->
                new Target(JobTable.OPTIONS, line, AgreedFields.CHOSEN.name(), AgreedFields.CHOSEN))
        .findFirst();
  }

  /**
   * The column of a table's tab is called after the table and its column, with the word tab before
   * both where a page's list has that name.
   */
  private Optional<Target> listed(Input input) {
    String name =
        input.name().startsWith(TAB) ? input.name().substring(TAB.length()) : input.name();
    return Stream.of(JobTable.values())
        .filter(table -> folder.has(table) && name.startsWith(table.word() + "_"))
        .map(
            table -> {
              String column = name.substring(table.word().length() + 1);
              RowSource file = folder.tables().files().get(table.word());
              boolean isThere =
                  file.header().contains(column) && input.line() < file.lines().size();
              return TableGuide.field(table, column)
                  .filter(field -> isThere)
                  .map(field -> new Target(table, input.line(), column, field));
            })
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** The job as it is with all of it in its tables. */
  JobFolder after() {
    return JobFolder.of(folder.path(), folder.with(texts.values().toArray(TableText[]::new)));
  }

  /** Adds what it writes to what another step writes. */
  void into(Writing other) {
    texts.values().forEach(other::with);
  }

  /** What is written, a line each. */
  public List<String> lines() {
    return List.copyOf(lines);
  }

  /** The tables that it writes. */
  public List<String> tables() {
    return writing.tables();
  }

  /** Writes all of it, or nothing. */
  public void write() {
    writing.write();
  }
}
