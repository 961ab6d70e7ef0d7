package sheathwright.repl.memory;

/** A text as it is typed between quotes. */
public final class Quoted {

  private Quoted() {}

  /** The text without its quotes, if it has any. */
  public static String text(String typed) {
    return typed.length() > 1 && typed.startsWith("\"") && typed.endsWith("\"")
        ? typed.substring(1, typed.length() - 1)
        : typed;
  }
}
