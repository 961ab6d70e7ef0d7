package sheathwright.catalog;

import static sheathwright.figure.Amounts.in;

import java.io.IOException;
import java.util.Properties;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.RefusedException;

/** Made-up functions that have everything a function can have, and an index of what they say. */
public final class MadeFunctions {

  private MadeFunctions() {}

  /** Two woods. */
  public enum Wood implements Option<Wood> {
    SOFT,
    HARD_MAPLE
  }

  /** A plank. */
  public record Plank(
      @Column(value = "length_in", least = 1, most = 96, rule = "a plank is short", symbol = "L")
          Figure<Length> length,
      @Column("wood") OneOf<Wood> wood) {

    public Plank {
      length = Columns.of(Plank.class).let("length", length);
      wood = Columns.of(Plank.class).let("wood", wood);
    }
  }

  /** Planks in a stack. */
  public record Stack(@Column(prefix = "top_") Plank top, Plank bottom) {}

  /** What is cut, with a part that no table shows. */
  public record Cut(
      @Column(value = "left_in", marked = Marked.DOWN) Figure<Length> left,
      @Column("kept_wood") Choice<Wood> kept,
      Figure<Length> secret) {}

  /** Takes a thing and two plain arguments, gives two results. */
  @LibraryFunction(words = {"batten", "lath"})
  public static Cut cutOff(
      Plank plank,
      @Column(value = "saw_in", least = 0, most = 1, preset = "0.125", rule = "a blade")
          @Assumed("0.25")
          @Assumed(value = "0.5", where = "kind", is = "soft")
          Figure<Length> saw,
      @Column("kind") @SaysWhich("length_in") OneOf<Wood> kind) {
    Figure<Length> left = plank.length().minus(saw).as("left_in", plank.length().unit());
    return new Cut(left, plank.wood().choice().as("kept_wood"), saw);
  }

  /** No library function, though it has the name of one. */
  public static Cut cutOff() {
    return new Cut(in(1), Choice.literal(Wood.SOFT), in(1));
  }

  /** Nor is this, which has a name of its own. */
  public static Cut unmarked() {
    return cutOff();
  }

  /** Takes things within things. */
  @LibraryFunction
  @Column("stack_in")
  public static Figure<Length> stacked(@Column(prefix = "our_") Stack stack) {
    return stack.top().length().plus(stack.bottom().length());
  }

  /** Gives a check. */
  @LibraryFunction
  @Column("used")
  public static Check holds(Plank plank) {
    return Check.of("plank", "used", plank.length(), in(50));
  }

  /** Gives a word. */
  @LibraryFunction
  @Column("seen_wood")
  public static Choice<Wood> seen(Plank plank) {
    return plank.wood().choice();
  }

  /** Refuses outright. */
  @LibraryFunction
  @Column("left_in")
  public static Figure<Length> refused(@Column("saw_in") Figure<Length> saw) {
    throw new RefusedException("no saw");
  }

  /** Breaks down. */
  @LibraryFunction
  @Column("left_in")
  public static Figure<Length> broken(@Column("saw_in") Figure<Length> saw) throws IOException {
    throw new IOException("the saw is gone");
  }

  /** The place of a function in the index. */
  static String place(String function) {
    return MadeFunctions.class.getName() + "#" + function;
  }

  /** A function, read anew. */
  static Card card(String function) {
    return new CardReader(index()).card(place(function));
  }

  /** What the doc comments say. */
  static Properties index() {
    Properties index = new Properties();
    index.setProperty("functions", place("cutOff") + "," + place("stacked"));
    index.setProperty(Plank.class.getName() + ".param.length", "end to end");
    index.setProperty(Plank.class.getName() + ".param.wood", "what it is of");
    index.setProperty(Stack.class.getName() + ".param.top", "the upper plank");
    index.setProperty(Stack.class.getName() + ".param.bottom", "the lower plank");
    say(index, "cutOff", "param.plank", "what is cut");
    say(index, "cutOff", "param.saw", "what the saw takes");
    say(index, "cutOff", "param.kind", "the kind");
    say(index, "stacked", "param.stack", "both planks");
    say(index, "cutOff", "summary", "What is left of a plank.");
    say(index, "cutOff", "formula", "left = length − saw");
    say(index, "cutOff", "limits", "Does not cover logs.");
    say(index, "cutOff", "example", "first // 1\nsecond // 2");
    say(index, "cutOff", "return", "what is left");
    say(index, "cutOff", "throws", "if it is a log");
    say(index, "cutOff", "source", "derived");
    return index;
  }

  private static void say(Properties index, String function, String part, String text) {
    index.setProperty(place(function) + "." + part, text);
  }
}
