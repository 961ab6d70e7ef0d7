package sheathwright.figure;

/**
 * Why there is no number here. A refused figure keeps its formula and passes the reason on to
 * whatever is computed from it, until somebody asks for the value.
 *
 * @param reason one line: what was given, what is allowed, whose rule, something right to try
 */
public record Refusal(String reason) {

  RefusedException raised() {
    return new RefusedException(reason);
  }
}
