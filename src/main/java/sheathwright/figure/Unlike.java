package sheathwright.figure;

/**
 * What is said of figures that cannot go together, whatever their values: both are named, with
 * their units.
 */
final class Unlike {

  private Unlike() {}

  static RefusedException measures(Figure<?> one, String verb, Figure<?> other) {
    return new RefusedException(
        "%s cannot be %s %s: they do not measure the same thing"
            .formatted(described(one), verb, described(other)));
  }

  static RefusedException unit(Figure<?> figure, Unit<?> wanted) {
    return new RefusedException(
        "%s cannot be given in %s".formatted(described(figure), said(wanted)));
  }

  static RefusedException toANumber(Figure<?> figure, String verb) {
    return new RefusedException(
        "%s cannot be %s: only a pure number can".formatted(described(figure), verb));
  }

  static RefusedException root(Figure<?> figure, int degree) {
    return new RefusedException("%s has no root of degree %s".formatted(described(figure), degree));
  }

  static String said(Unit<?> unit) {
    return unit.symbol().isEmpty() ? "plain numbers" : unit.symbol();
  }

  /** A figure by its name and unit; one without a name by its value, which shows the unit. */
  private static String described(Figure<?> figure) {
    return figure.isNamed() || figure.refusal().isPresent()
        ? figure.described() + " in " + said(figure.unit())
        : figure.shown();
  }
}
