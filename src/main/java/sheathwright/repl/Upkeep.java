package sheathwright.repl;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import sheathwright.figure.RefusedException;
import sheathwright.job.JobLines;
import sheathwright.repl.line.Reader;
import sheathwright.repl.memory.Definitions;
import sheathwright.repl.memory.Definitions.Definition;
import sheathwright.repl.memory.Journal;
import sheathwright.repl.memory.Quoted;
import sheathwright.repl.memory.Values;
import sheathwright.repl.memory.Values.Stale;
import sheathwright.repl.whatif.Scenarios;

/** The care of a session: what it holds is told, taken back, deleted, saved and brought again. */
final class Upkeep {

  private static final Pattern NAME = Pattern.compile("[A-Za-z_]\\w*");

  private final Session session;
  private final Holdings holdings;
  private final Definitions definitions;
  private final Values values;
  private final Journal journal;
  private final Optional<Autosave> autosave;
  private List<String> saved = List.of();

  Upkeep(Session session, Holdings holdings, Optional<Autosave> autosave) {
    this.session = session;
    this.holdings = holdings;
    this.definitions = holdings.definitions();
    this.values = holdings.values();
    this.journal = holdings.journal();
    this.autosave = autosave;
  }

  /** Every variable: its value, what it is made from, and why it is stale if it is. */
  Answer list() {
    List<String> rows = new ArrayList<>();
    for (String name : definitions.variables()) {
      String from =
          definitions.of(name).reads().stream()
              .filter(definitions::has)
              .map(Reader::saidName)
              .sorted()
              .collect(joining(", "));
      rows.add(
          "%s = %s%s"
              .formatted(
                  Reader.saidName(name),
                  Shows.brief(values.of(name).object()),
                  from.isEmpty() ? "" : "   from " + from));
      values.stale(name).ifPresent(why -> rows.add("    stale: " + why.reason()));
    }
    return new Answer(
        Answer.Kind.SHOWN, rows.isEmpty() ? "there is no variable yet" : String.join("\n", rows));
  }

  /** Takes back what the last line did that changed anything. */
  Answer undone() {
    Journal.Entry last =
        journal.last().orElseThrow(() -> new RefusedException("there is nothing to undo"));
    last.before().forEach(holdings::restore);
    last.takeBack();
    last.made().forEach(made -> holdings.compiler().awake().drop(made));
    List<String> rows =
        new ArrayList<>(
            List.of("undone: " + (last.typed().isEmpty() ? "Enter alone" : last.typed())));
    for (String name : last.before().keySet()) {
      String said = Reader.saidName(name);
      rows.add(
          values.has(name)
              ? "  %s = %s".formatted(said, Shows.brief(values.of(name).object()))
              : "  %s is gone".formatted(said));
    }
    return new Answer(Answer.Kind.SHOWN, String.join("\n", rows));
  }

  /** Deletes a variable; what is made from it keeps its value. */
  Answer deleted(String said) {
    String name = Reader.variable(said);
    String scenario = Quoted.text(said);
    if (!definitions.has(name) && session.scenarios().has(scenario)) {
      session.scenarios().delete(scenario);
      return new Answer(Answer.Kind.SHOWN, "scenario \"%s\" is deleted".formatted(scenario));
    }
    if (!NAME.matcher(name).matches() || !definitions.has(name)) {
      String known = definitions.variables().stream().map(Reader::saidName).collect(joining(", "));
      throw new RefusedException(
          "there is no \"%s\" to delete; there %s"
              .formatted(scenario, known.isEmpty() ? "is no variable yet" : "are " + known));
    }
    List<String> dependents = definitions.dependents(name).stream().map(Definition::name).toList();
    holdings.delete(name);
    Stale why = new Stale("made from %s, which is deleted".formatted(Reader.saidName(name)), false);
    dependents.forEach(dependent -> holdings.stayed(dependent, why));
    return new Answer(
        Answer.Kind.SHOWN,
        Reader.saidName(name)
            + " is deleted"
            + (dependents.isEmpty()
                ? ""
                : "; made from it, and kept with the value it has: "
                    + String.join(", ", dependents)));
  }

  /** Writes the session, as a live workbook or as the lines that make it again. */
  Answer saved(String name, boolean mayReplace) {
    SavedFile file = SavedFile.named(name, mayReplace);
    Map<String, String> stale = new LinkedHashMap<>();
    definitions
        .variables()
        .forEach(each -> values.stale(each).ifPresent(why -> stale.put(each, why.reason())));
    String text =
        file.isSession()
            ? file.written(journal.lines())
            : file.written(new SavedThings(toWrite()), stale);
    saved = journal.lines();
    return new Answer(Answer.Kind.SHOWN, text);
  }

  /** What the variables hold, and what the scenarios come to unless a variable is called so. */
  private Map<String, Object> toWrite() {
    Map<String, Object> things = holdings.variables();
    if (!session.scenarios().areNone()) {
      things.putIfAbsent("scenarios", Varied.of(session.scenarios().rows(List.of())));
    }
    return things;
  }

  /** Keeps a set of changes under its name, or shows all that were kept. */
  Answer scenario(String about) {
    Scenarios scenarios = session.scenarios();
    if (Scenarios.isNamed(about)) {
      return new Answer(Answer.Kind.DEFINED, scenarios.kept(about));
    }
    if (scenarios.areNone()) {
      return new Answer(Answer.Kind.SHOWN, Scenarios.usage());
    }
    List<String> answers =
        about.isEmpty() ? List.of() : List.of(about.strip().split("\\s*,\\s*|\\s+"));
    return new Answer(
        Answer.Kind.SHOWN, Varied.of(scenarios.rows(answers)).turned(session.pages().columns()));
  }

  /** Runs a file that makes a session again; without a name, the last session at this prompt. */
  Answer resumed(String name) throws IOException {
    Optional<Path> file =
        name.isEmpty() && autosave.isPresent()
            ? autosave.get().last()
            : Optional.of(Path.of(Quoted.text(name))).filter(Files::isRegularFile);
    List<String> lines =
        Files.readAllLines(
            file.orElseThrow(
                () ->
                    new RefusedException(
                        name.isEmpty()
                            ? "there is no session to bring back yet"
                            : "there is no file %s to bring a session back from".formatted(name))));
    List<Answer> answers = session.answers(String.join("\n", lines));
    Optional<Answer> failed = answers.stream().filter(Answer::isError).findFirst();
    Answer said = failed.orElseGet(this::list);
    List<String> rows = new ArrayList<>(Journal.unended(lines));
    rows.add(said.text());
    return new Answer(said.kind(), String.join("\n", rows), said.line());
  }

  /** Takes what the tables of a job say as variables; undone as one line. */
  Answer takenJob(String folder) {
    List<String> lines = JobLines.of(Path.of(Quoted.text(folder)));
    List<Answer> failed = new ArrayList<>();
    journal.hold(
        () ->
            session.answers(
                lines,
                (line, answer) -> {
                  if (answer.isError()) {
                    failed.add(answer);
                  }
                  return failed.isEmpty();
                }));
    return failed.isEmpty()
        ? new Answer(
            Answer.Kind.DEFINED,
            "%s variables from %s; list tells them".formatted(lines.size(), folder))
        : failed.get(0);
  }

  /** Whether there is anything that would be lost without the file that is kept on the side. */
  boolean isUnsaved() {
    return !journal.lines().equals(saved);
  }
}
