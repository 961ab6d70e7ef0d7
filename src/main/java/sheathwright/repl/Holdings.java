package sheathwright.repl;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import sheathwright.repl.line.Reader;
import sheathwright.repl.memory.Definitions;
import sheathwright.repl.memory.Journal;
import sheathwright.repl.memory.Values;
import sheathwright.repl.memory.Values.Stale;
import sheathwright.repl.memory.Values.Value;

/**
 * What a session holds: every change of it is noted in the journal, and the compiler, where it is
 * awake, is kept in step.
 *
 * @param definitions what is defined, and from what it was made
 * @param values what the variables hold
 * @param journal how it was before
 */
record Holdings(Definitions definitions, Values values, Journal journal, Compiler compiler) {

  /**
   * A variable is given a value.
   *
   * @param isCarried whether it is its own line, run again
   * @param nanos how long that took
   */
  void keep(String name, String source, boolean isCarried, Value value, long nanos) {
    touch(name);
    if (!isCarried) {
      definitions.put(name, source, true);
    }
    values.put(name, value);
    values.took(name, nanos);
    if (!isCarried) {
      staleReadBy(source, name)
          .ifPresent(read -> values.mark(name, Stale.madeFrom(Reader.saidName(read))));
    }
  }

  /** A method of the user's is defined. */
  void define(String name, String source) {
    touch(name);
    definitions.put(name, source, false);
  }

  /** A line has done something to a variable that it does not define. */
  void change(String name, Value now) {
    touch(name);
    values.put(name, now);
  }

  private Optional<String> staleReadBy(String source, String name) {
    return Definitions.wordsIn(source).stream()
        .filter(word -> !word.equals(name) && values.stale(word).isPresent())
        .sorted()
        .findFirst();
  }

  /** What is said, with a word on what is stale in it. */
  Answer noted(Answer answer, String source) {
    return staleReadBy(source, "")
        .map(read -> new Answer(answer.kind(), answer.text() + staleNote(read, source)))
        .orElse(answer);
  }

  private String staleNote(String read, String source) {
    boolean isItself = source.replace(";", "").strip().equals(read);
    String why =
        isItself
            ? values.stale(read).orElseThrow().reason()
            : Stale.madeFrom(Reader.saidName(read)).reason();
    return "  (stale: " + why + ")";
  }

  private void touch(String name) {
    journal.touch(
        name,
        new Journal.State(definitions.of(name), values.of(name), values.stale(name).orElse(null)));
  }

  /** A variable that a change does not carry along. */
  Answer stayed(String name, Stale why) {
    touch(name);
    values.mark(name, why);
    Object object = values.of(name).object();
    return new Answer(
        Answer.Kind.DEFINED,
        "  %s stays %s, stale: %s"
            .formatted(Reader.saidName(name), Shows.brief(object), why.reason()));
  }

  /** The compiler is to read a variable anew from here, at once if a method may ask for it. */
  void toldAnew(String name) {
    if (!compiler.isAwake()) {
      return;
    }
    compiler.awake().forget(name);
    if (values.has(name) && definitions.isReadByMethod(name)) {
      compiler.awake().declare(name, values.of(name));
    }
  }

  /** A variable's value in few words; empty if there is none. */
  String brief(String name) {
    return values.has(name) ? Shows.brief(values.of(name).object()) : "";
  }

  /** Sets a name back to how it stood. */
  void restore(String name, Journal.State state) {
    boolean wasMethod = state.definition() != null && !state.definition().isVariable();
    boolean isMethod = definitions.has(name) && !definitions.of(name).isVariable();
    forget(name);
    if (isMethod) {
      compiler.awake().dropMethod(name);
    }
    if (state.definition() != null) {
      definitions.put(state.definition());
    }
    if (wasMethod) {
      compiler.awake().ran(state.definition().source());
    } else if (state.value() != null) {
      values.put(name, state.value());
      if (state.stale() != null) {
        values.mark(name, state.stale());
      }
      toldAnew(name);
    }
  }

  /** Takes a name away. */
  void delete(String name) {
    touch(name);
    if (!definitions.of(name).isVariable()) {
      compiler.awake().dropMethod(name);
    }
    forget(name);
  }

  private void forget(String name) {
    definitions.remove(name);
    values.remove(name);
    if (compiler.isAwake()) {
      compiler.awake().forget(name);
    }
  }

  /** What the variables hold, in the order in which they were last given a value. */
  Map<String, Object> variables() {
    Map<String, Object> held = new LinkedHashMap<>();
    definitions.variables().forEach(name -> held.put(name, values.of(name).object()));
    return held;
  }
}
