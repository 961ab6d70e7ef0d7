package sheathwright.figure;

import java.util.Optional;

/**
 * Where a number or rule comes from, and how surely it was had.
 *
 * @param text body, edition and clause; or the column of the user's table; or empty where the mark
 *     says all
 * @param mark how it was had
 * @param exceptions which parts of it were had less surely, in words; empty if none were
 * @param cell where it stands in the user's table, if it stands in one
 */
public record Source(String text, Mark mark, String exceptions, Optional<Cell> cell) {

  /** How sure a source is. A mark is copied with its value and never upgraded. */
  public enum Mark {
    /** Read on the page named. */
    READ(""),
    /** Read in somebody else's copy of the page named. */
    READ_SECOND_HAND("secondary source"),
    /** Remembered, the page was not read. */
    FROM_MEMORY("from memory"),
    /** What the trade does; nobody published it. */
    COMMON_PRACTICE("common practice, no source"),
    /** Follows from the rest by arithmetic or statics. */
    DERIVED("derived"),
    /** Said by whoever uses the tool. */
    GIVEN("given");

    private final String words;

    Mark(String words) {
      this.words = words;
    }
  }

  /** A source that is not a user's table, had all alike. */
  public Source(String text, Mark mark) {
    this(text, mark, "", Optional.empty());
  }

  /** What the trade does; nobody published it. */
  public static final Source COMMON_PRACTICE = new Source("", Mark.COMMON_PRACTICE);

  /** Follows from the step's own operands. */
  public static final Source ARITHMETIC = new Source("", Mark.DERIVED);

  /** Said by the user, without a table to point at. */
  public static final Source GIVEN = new Source("", Mark.GIVEN);

  /** A published page that was read. */
  public static Source read(String text) {
    return new Source(text, Mark.READ);
  }

  /** A published page, known from somebody else's copy. */
  public static Source secondHand(String text) {
    return new Source(text, Mark.READ_SECOND_HAND);
  }

  /** A published page, known from memory. */
  public static Source fromMemory(String text) {
    return new Source(text, Mark.FROM_MEMORY);
  }

  /** Plain reasoning, named. */
  public static Source derived(String text) {
    return new Source(text, Mark.DERIVED);
  }

  /** A value of the user's, with the place where it stands. */
  public static Source given(String text) {
    return new Source(text, Mark.GIVEN);
  }

  /** A value of the user's, with the cell of the table that it was read from. */
  public static Source given(Cell cell) {
    return new Source(cell.inWords(), Mark.GIVEN, "", Optional.of(cell));
  }

  /** The same source, at one clause, table or equation. */
  public Source at(String clause) {
    return new Source(text + ", " + clause, mark, exceptions, cell);
  }

  /** The same source, parts of which were had less surely. */
  public Source but(String parts) {
    return new Source(text, mark, parts, cell);
  }

  /**
   * Body, edition and clause as they are named to somebody whom it does not concern how they were
   * had; nothing where the page was not read by anybody.
   */
  public String plainly() {
    return switch (mark) {
      case READ, READ_SECOND_HAND, DERIVED -> text;
      case FROM_MEMORY, COMMON_PRACTICE -> "";
      case GIVEN -> mark.words;
    };
  }

  @Override
  public String toString() {
    String whole = exceptions.isEmpty() ? text : text + "; " + exceptions;
    return whole.isEmpty()
        ? mark.words
        : mark.words.isEmpty() ? whole : whole + " (" + mark.words + ")";
  }

  /**
   * Where a value stands in a user's table.
   *
   * @param table the file's name
   * @param line counted from 1, the heading included
   * @param column as headed
   * @param item what the value is called there: its column, or the key of a two-column table
   */
  public record Cell(String table, long line, String column, String item) {

    /** The file and the line, as a source says them: {@code job.csv, line 12}. */
    public String inWords() {
      return table + ", line " + line;
    }
  }
}
