package sheathwright.repl.line;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.OneOf;
import sheathwright.figure.RefusedException;
import sheathwright.figure.YesNo;

/** Asks an answer whether it holds, so that Java can go one way or the other. */
public final class Holds {

  private Holds() {}

  /**
   * Whether something holds.
   *
   * @param asked a check, a yes or no, a condition, or an answer that has {@code ok}
   * @throws RefusedException if it is none of these, or refuses its value
   */
  public static boolean holds(Object asked) {
    if (asked instanceof Boolean plain) {
      return plain;
    }
    if (asked instanceof Condition condition) {
      return condition.holds();
    }
    if (asked instanceof Check check) {
      return check.ok().holds();
    }
    if (asked instanceof OneOf<?> word && word.choice().value() instanceof YesNo said) {
      return said == YesNo.YES;
    }
    if (asked instanceof Record answer) {
      return Arrays.stream(answer.getClass().getRecordComponents())
          .filter(component -> component.getName().equals("ok"))
          .findFirst()
          .map(component -> holds(part(component, answer)))
          .orElseThrow(() -> notAsked(asked));
    }
    throw notAsked(asked);
  }

  private static RefusedException notAsked(Object asked) {
    String what = asked instanceof Choice<?> word ? "the word " + word : String.valueOf(asked);
    return new RefusedException(
        "holds takes a check, a yes or no, a condition, or an answer that has ok; this is " + what);
  }

  private static Object part(RecordComponent component, Record answer) {
    try {
      return component.getAccessor().invoke(answer);
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
