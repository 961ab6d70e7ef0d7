package sheathwright.figure;

/** How two numbers are compared; each to the 15 digits that a spreadsheet holds. */
enum Comparison {
  AT_MOST("≤", "<=") {
    @Override
    boolean holds(int order) {
      return order <= 0;
    }
  },
  LESS_THAN("<", "<") {
    @Override
    boolean holds(int order) {
      return order < 0;
    }
  },
  AT_LEAST("≥", ">=") {
    @Override
    boolean holds(int order) {
      return order >= 0;
    }
  },
  MORE_THAN(">", ">") {
    @Override
    boolean holds(int order) {
      return order > 0;
    }
  },
  EQUAL_TO("=", "=") {
    @Override
    boolean holds(int order) {
      return order == 0;
    }
  };

  private final String words;
  private final String cell;

  Comparison(String words, String cell) {
    this.words = words;
    this.cell = cell;
  }

  abstract boolean holds(int order);

  String words() {
    return words;
  }

  String cell() {
    return cell;
  }

  boolean holds(double left, double right) {
    return holds(Double.compare(Rounding.toFifteenDigits(left), Rounding.toFifteenDigits(right)));
  }
}
