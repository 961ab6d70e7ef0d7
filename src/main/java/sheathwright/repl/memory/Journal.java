package sheathwright.repl.memory;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import jdk.jshell.Snippet;
import sheathwright.repl.memory.Definitions.Definition;
import sheathwright.repl.memory.Values.Stale;
import sheathwright.repl.memory.Values.Value;

/** Which lines have changed something, and how it was before each of them. */
public final class Journal {

  /** Stands before a line that did not end; to whoever reads the lines again it is a remark. */
  private static final String UNENDED = "# did not end: ";

  private final Deque<Entry> entries = new ArrayDeque<>();
  private final Consumer<List<String>> heard;
  private Entry open = new Entry("");
  private boolean isHeld;

  /** A journal that tells the lines that made the session, whenever they change. */
  public Journal(Consumer<List<String>> heard) {
    this.heard = heard;
  }

  /**
   * How a name stood.
   *
   * @param definition what it was made by, or null
   * @param value what it held, or null
   * @param stale why that was an old value, or null
   */
  public record State(Definition definition, Value value, Stale stale) {}

  /** One line. */
  public static final class Entry {

    private final String typed;
    private final Map<String, State> before = new LinkedHashMap<>();
    private final List<Snippet> made = new ArrayList<>();
    private final Deque<Runnable> backs = new ArrayDeque<>();
    private boolean hasEnded;

    private Entry(String typed) {
      this.typed = typed;
    }

    public String typed() {
      return typed;
    }

    /** How every name that it touched stood before it. */
    public Map<String, State> before() {
      return before;
    }

    /** Takes back what it changed beside names. */
    public void takeBack() {
      backs.forEach(Runnable::run);
    }

    /** What it brought into the shell that holds no value: a class, an import. */
    public List<Snippet> made() {
      return made;
    }
  }

  /** What follows is the work of this line. */
  public void begin(String typed) {
    if (!isHeld) {
      open = new Entry(typed.strip());
    }
  }

  /** The line that began last has run to its end. */
  public void end() {
    if (!isHeld && !open.hasEnded) {
      open.hasEnded = true;
      if (entries.peekLast() == open) {
        heard.accept(lines());
      }
    }
  }

  /** What lines had left to do is done. */
  public void endAll() {
    entries.forEach(entry -> entry.hasEnded = true);
    heard.accept(lines());
  }

  /** Whatever is done is the work of the line that began last, until that is done. */
  public void hold(Runnable work) {
    isHeld = true;
    try {
      work.run();
    } finally {
      isHeld = false;
    }
  }

  /** A name is about to change. */
  public void touch(String name, State state) {
    keep();
    open.before.putIfAbsent(name, state);
  }

  /** Something that is no name is about to change, and this takes that back. */
  public void touch(Runnable back) {
    keep();
    open.backs.addFirst(back);
  }

  /** How a name stood before this line, if the line has changed it. */
  public Optional<State> before(String name) {
    return Optional.ofNullable(open.before.get(name));
  }

  /** A snippet that holds no value has been taken. */
  public void add(Snippet snippet) {
    keep();
    open.made.add(snippet);
  }

  private void keep() {
    if (entries.peekLast() != open) {
      entries.addLast(open);
      heard.accept(lines());
    }
  }

  /** Takes the last line back, if there is one. */
  public Optional<Entry> last() {
    Entry last = entries.pollLast();
    heard.accept(lines());
    return Optional.ofNullable(last);
  }

  /** The lines that made the session what it is, in order; one that did not end as a remark. */
  public List<String> lines() {
    return entries.stream()
        .filter(entry -> !entry.typed.isEmpty()) // Enter alone makes nothing that is not made again
        .map(entry -> entry.hasEnded ? entry.typed : UNENDED + entry.typed.replace("\n", "\n# "))
        .toList();
  }

  /** Of lines that are read again, those that did not end, each with its number. */
  public static List<String> unended(List<String> lines) {
    return IntStream.range(0, lines.size())
        .filter(line -> lines.get(line).startsWith(UNENDED))
        .mapToObj(
            line ->
                "left out: line %s did not end: %s"
                    .formatted(line + 1, lines.get(line).substring(UNENDED.length())))
        .toList();
  }
}
