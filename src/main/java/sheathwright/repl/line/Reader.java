package sheathwright.repl.line;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import sheathwright.figure.Choice;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Traced;
import sheathwright.repl.line.Parser.Beyond;
import sheathwright.repl.line.Reading.Places;
import sheathwright.repl.line.Reading.Told;

/**
 * Reads what is typed: evaluates it from its tree where it is one of the small language, and hands
 * the rest to Java with everything spoken in it rewritten.
 */
public final class Reader {

  private final Around around;
  private String last = "";

  public Reader(Around around) {
    this.around = around;
  }

  /**
   * Reads one line.
   *
   * @throws Unreadable if what is typed has no one meaning
   * @throws sheathwright.figure.RefusedException if what it asks for is refused outright
   */
  public Reading read(String line) {
    List<Token> tokens = Lexer.tokens(line);
    if (isShowJava(tokens)) {
      return told(last.isEmpty() ? "nothing was typed yet" : last);
    }
    Reading reading = again(line);
    last = reading.java();
    return reading;
  }

  /** What the last line became as it was compiled: declared, its operators and words mended. */
  public void compiled(String java) {
    last = java;
  }

  /**
   * Reads a line that was typed before, which {@code show java} does not tell of.
   *
   * @throws Unreadable if it has no one meaning any more
   */
  public Reading again(String line) {
    return around.ran(() -> reading(line));
  }

  private Reading reading(String line) {
    List<Token> tokens = Lexer.tokens(line);
    if (Lexer.isUnreadable(tokens) || tokens.isEmpty()) {
      return new Reading.Compiled(line, List.of(), new Places());
    }
    Brackets.checkDepth(tokens);
    try {
      return direct(line, tokens);
    } catch (Beyond java) {
      return compiled(line, tokens);
    }
  }

  /** A variable as it is told: a fact that was given under the name that it was given by. */
  public static String saidName(String variable) {
    return Fact.saidName(variable);
  }

  /** The variable that a name says as it is told: {@code given spacing} that of the fact. */
  public static String variable(String saidName) {
    return Fact.variable(saidName);
  }

  /** What a line becomes in Java. */
  public String java(String line) {
    return reading(line).java();
  }

  /** Whether a text is whole by itself, so that the compiler need not be asked. */
  public boolean isWhole(String text) {
    List<Token> tokens = Lexer.tokens(text);
    try {
      return !Lexer.isUnreadable(tokens)
          && !tokens.isEmpty()
          && Brackets.close(tokens)
          && new Parser(text, tokens).statement() != null;
    } catch (Beyond java) {
      return false;
    } catch (Unreadable wrong) {
      return true;
    }
  }

  /** A text with everything spoken in it as Java; the text itself where it has no one meaning. */
  public String rewritten(String text) {
    List<Token> tokens = Lexer.tokens(text);
    try {
      return Lexer.isUnreadable(tokens)
          ? text
          : new JavaRoad(around, new Notes()).java(text, tokens, new Places());
    } catch (Unreadable | Beyond | RefusedException unsaid) {
      return text;
    }
  }

  /** Whether a line is Java as it was typed. */
  public boolean isJavaAsTyped(String line) {
    List<Token> tokens = Lexer.tokens(line);
    try {
      return Lexer.isUnreadable(tokens)
          || new JavaRoad(around, new Notes()).java(line, tokens, new Places()).equals(line);
    } catch (Unreadable | Beyond | RefusedException unsaid) {
      return false;
    }
  }

  private boolean isShowJava(List<Token> tokens) {
    return tokens.size() == 2
        && tokens.get(0).isWord("show")
        && tokens.get(1).isWord("java")
        && !around.has("java");
  }

  private Reading direct(String line, List<Token> tokens) {
    Tree tree = new Parser(line, tokens).statement();
    boolean isGiven = !around.has("given") && !around.isOwn("given");
    if (isGiven && tree instanceof Tree.Name name && name.name().equals("given")) {
      return told(facts());
    }
    if (isGiven
        && tree instanceof Tree.Call call
        && call.of() == null
        && call.name().equals("given")) {
      return given(call);
    }
    if (tree instanceof Tree.Call call
        && call.name().equals("showJava")
        && call.arguments().size() == 1
        && call.arguments().get(0).tree() instanceof Tree.Text text) {
      String java = text.java();
      return told(java(java.substring(1, java.length() - 1).translateEscapes()));
    }
    Notes notes = new Notes();
    DirectRoad road = new DirectRoad(around, notes);
    if (tree instanceof Tree.Assignment assigned) {
      if (around.isTyped(assigned.name())) {
        throw new Beyond();
      }
      return new Reading.Direct(
          List.of(made(assigned.name(), road.piece(assigned.value()), notes)));
    }
    return new Reading.Direct(List.of(made("", road.piece(tree), notes)));
  }

  private Reading compiled(String line, List<Token> tokens) {
    Notes notes = new Notes();
    Places places = new Places();
    try {
      String java = new JavaRoad(around, notes).java(line, tokens, places);
      return new Reading.Compiled(java, notes.lines(), places);
    } catch (Beyond asTyped) {
      return new Reading.Compiled(line, List.of(), new Places());
    }
  }

  private static Reading.Made made(String name, Piece piece, Notes notes) {
    if (!piece.isKnown() || piece.value() instanceof Class<?>) {
      throw new Beyond();
    }
    String java = (name.isEmpty() ? "" : "var " + name + " = ") + piece.java() + ";";
    return new Reading.Made(name, piece.value(), piece.javaType(), java, notes.lines());
  }

  private static Reading told(String text) {
    Told told = new Told(text);
    return new Reading.Direct(
        List.of(
            new Reading.Made(
                "", told, Told.class.getCanonicalName(), "/* " + text + " */", List.of())));
  }

  private Reading given(Tree.Call call) {
    List<Reading.Made> made = new ArrayList<>();
    DirectRoad road = new DirectRoad(around, new Notes());
    for (Tree.Argument argument : call.arguments()) {
      made.add(Fact.made(argument, road.arguments()));
    }
    return made.isEmpty() ? told(facts()) : new Reading.Direct(made);
  }

  private String facts() {
    String facts =
        java.util.Arrays.stream(Fact.values())
            .filter(fact -> around.has(fact.variable()))
            .map(fact -> fact.word() + " = " + shown(around.value(fact.variable())))
            .collect(Collectors.joining("\n"));
    return facts.isEmpty()
        ? "nothing is given yet; given(spacing = 24 in, species = SPF) takes " + Fact.all()
        : facts;
  }

  private static String shown(Object value) {
    return value instanceof Enum<?> option
        ? Choice.literal(option).toString()
        : value instanceof Traced traced ? traced.toString() : String.valueOf(value);
  }

  /** What the reader sees of the session around it. */
  public interface Around {

    /** Whether a variable of this name holds a value. */
    boolean has(String name);

    /** What a variable holds. */
    Object value(String name);

    /** Whether the user declared a method or a type of this name. */
    boolean isOwn(String name);

    /** Whether a variable was declared with a type, which it keeps. */
    boolean isTyped(String name);

    /** Classes whose static methods are words of the prompt. */
    List<Class<?>> words();

    /** Reads a line, and evaluates it with that, so that the user can stop it. */
    default <T> T ran(Supplier<T> reading) {
      return reading.get();
    }
  }
}
