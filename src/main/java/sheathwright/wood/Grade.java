package sheathwright.wood;

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
  STANDARD;

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
}
