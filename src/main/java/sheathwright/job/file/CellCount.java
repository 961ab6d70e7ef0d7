package sheathwright.job.file;

import java.util.List;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;

/** How much of a workbook's cells is held; beyond all measure the workbook is given up. */
public final class CellCount {

  private static final int MOST = 1_000_000;

  /** So many letters of a formula that is written anew for a cell cost as much as the cell. */
  private static final int LETTERS = 8;

  private final String name;
  private long held;

  /**
   * A count that begins.
   *
   * @param name of the file, for messages
   */
  public CellCount(String name) {
    this.name = name;
  }

  /**
   * One cell or text more.
   *
   * @param letters that are made for it alone
   * @throws ProblemsException if there are too many
   */
  public void add(int letters) {
    held += 1 + letters / LETTERS;
    if (held > MOST) {
      throw new ProblemsException(
          List.of(
              new Problem(
                  name,
                  0,
                  "",
                  "more than %,d cells of it hold something, the most that is read; split it"
                      .formatted(MOST))));
    }
  }
}
