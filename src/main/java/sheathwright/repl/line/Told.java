package sheathwright.repl.line;

/** Text that is an answer as it stands. */
public record Told(String text) {

  @Override
  public String toString() {
    return text;
  }
}
