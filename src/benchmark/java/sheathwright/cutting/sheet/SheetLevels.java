package sheathwright.cutting.sheet;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The same problem in two stages, written plainly for a general solver (level packing, Lodi,
 * Martello and Vigo 2004, from memory): a piece opens a column or lies in one that a piece at least
 * as wide has opened; a column opens a sheet or stands in one. Columns, not rows, since roof pieces
 * have few widths; rows are far worse on them.
 */
final class SheetLevels {

  private final SheetOrder order;
  private final List<SheetPiece> pieces;
  private final MPSolver solver;
  private final MPVariable[] opensColumn;
  private final MPVariable[] opensSheet;

  /** What the solver found: negative sheets if it found nothing; proven for two stages only. */
  record Found(long sheets, boolean isProven) {}

  private SheetLevels(SheetOrder order, MPSolver solver) {
    this.order = order;
    this.solver = solver;
    pieces =
        order.pieces().stream()
            .flatMap(piece -> IntStream.range(0, piece.count()).mapToObj(copy -> piece))
            .sorted(Comparator.comparingLong(SheetPiece::width).reversed())
            .toList();
    opensColumn = solver.makeBoolVarArray(pieces.size());
    opensSheet = solver.makeBoolVarArray(pieces.size());
  }

  static Found solve(SheetOrder order, double seconds) {
    Loader.loadNativeLibraries();
    MPSolver solver = MPSolver.createSolver("SCIP");
    try {
      return new SheetLevels(order, solver).solve(seconds);
    } finally {
      solver.delete(); // left to the collector, it has brought the process down
    }
  }

  private Found solve(double seconds) {
    long end = System.nanoTime() + (long) (seconds * 1e9);
    pack(opensColumn, null, order.sheetHeight(), pieces.stream().mapToLong(this::high).toArray());
    pack(
        opensSheet,
        opensColumn,
        order.sheetWidth(),
        pieces.stream().mapToLong(this::wide).toArray());
    MPObjective objective = solver.objective();
    for (MPVariable sheet : opensSheet) {
      objective.setCoefficient(sheet, 1);
    }
    MPSolverParameters exact = new MPSolverParameters();
    exact.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
    solver.setTimeLimit(Math.max(1, (end - System.nanoTime()) / 1_000_000));
    MPSolver.ResultStatus status = solver.solve(exact);
    boolean found =
        status == MPSolver.ResultStatus.OPTIMAL || status == MPSolver.ResultStatus.FEASIBLE;
    return new Found(
        found ? Math.round(objective.value()) : -1, status == MPSolver.ResultStatus.OPTIMAL);
  }

  private long wide(SheetPiece piece) {
    return piece.width() + order.kerf();
  }

  private long high(SheetPiece piece) {
    return piece.height() + order.kerf();
  }

  /**
   * Each item, where it is there, opens a holder or lies in one that an item before it has opened.
   *
   * @param isThere of each item; null where all are
   */
  private void pack(MPVariable[] opens, MPVariable[] isThere, long room, long[] sizes) {
    double roomWithKerf = room + order.kerf();
    MPConstraint[] once = new MPConstraint[sizes.length];
    for (int item = 0; item < sizes.length; item++) {
      double there = isThere == null ? 1 : 0;
      once[item] = solver.makeConstraint(there, there);
      once[item].setCoefficient(opens[item], 1);
      if (isThere != null) {
        once[item].setCoefficient(isThere[item], -1);
      }
    }
    for (int holder = 0; holder < sizes.length; holder++) {
      MPConstraint fits = solver.makeConstraint(-MPSolver.infinity(), 0);
      fits.setCoefficient(opens[holder], sizes[holder] - roomWithKerf);
      for (int item = holder + 1; item < sizes.length; item++) {
        MPVariable in = solver.makeBoolVar("");
        fits.setCoefficient(in, sizes[item]);
        once[item].setCoefficient(in, 1);
      }
    }
  }
}
