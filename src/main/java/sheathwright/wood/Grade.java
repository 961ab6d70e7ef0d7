package sheathwright.wood;

import java.util.List;
import sheathwright.figure.Option;

/** A visual grade as it stands on a grade stamp. */
public enum Grade implements Option<Grade> {
  SELECT_STRUCTURAL,
  NO_1_AND_BETTER("no-1&btr"),
  NO_1,
  NO_2,
  NO_3,
  STUD,
  CONSTRUCTION,
  STANDARD,
  /** No stamp was found: it counts as no-3, where the code's rafter tables end. */
  UNKNOWN_GRADE;

  private final String stamp;

  Grade() {
    this("");
  }

  Grade(String stamp) {
    this.stamp = stamp;
  }

  @Override
  public String alsoWritten() {
    return stamp;
  }

  @Override
  public List<String> inTheTrade() {
    return switch (this) {
      case SELECT_STRUCTURAL -> List.of("SS");
      case NO_1, NO_2, NO_3 -> List.of("#" + name().charAt(name().length() - 1));
      case NO_1_AND_BETTER, STUD, CONSTRUCTION, STANDARD, UNKNOWN_GRADE -> List.of();
    };
  }

  @Override
  public String word() {
    return this == UNKNOWN_GRADE ? "unknown" : Option.super.word();
  }
}
