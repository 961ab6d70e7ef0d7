package sheathwright.workbook.book;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;

/**
 * The cells of a workbook that a solver's answer has to do with: they cannot follow an edited input
 * of that solver, and the guard says so instead.
 */
public final class SolvedCells {

  private static final Pattern WORD = Pattern.compile("[a-z][a-z0-9_]*");
  private static final Pattern TEXT = Pattern.compile("\"[^\"]*\"");
  private static final Pattern REFERENCE =
      Pattern.compile("(?:('[^']+'|[A-Za-z]+)!)?(\\$?[A-Z]{1,3}\\$?\\d+)(?![\\d(])");

  private SolvedCells() {}

  /** Solutions that rest on an input. */
  static List<Solution> restingOn(Traced input, Book book) {
    Set<Traced> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    return book.solutions().stream()
        .filter(
            solution -> {
              seen.clear();
              return solution.inputs().stream().anyMatch(each -> reaches(each, input, seen));
            })
        .toList();
  }

  private static boolean reaches(Traced node, Traced input, Set<Traced> seen) {
    return node == input
        || seen.add(node)
            && node.step().operands().stream().anyMatch(each -> reaches(each, input, seen));
  }

  /** The guards, what was solved, and whatever is made from either, however far down. */
  static Set<String> addresses(byte[] file, Map<String, List<String>> solved) {
    Map<String, List<String>> cellsOf = cellsByName(file);
    Deque<String> next = new ArrayDeque<>();
    solved.values().forEach(next::addAll);
    cellsOf.forEach(
        (name, cells) -> {
          if (name.endsWith("_now") || name.endsWith("_changed")) {
            next.addAll(cells);
          }
        });
    Map<String, Set<String>> users = new HashMap<>();
    Cells.formulas(file)
        .forEach(
            (address, formula) ->
                operands(address, formula, cellsOf)
                    .forEach(
                        operand ->
                            users.computeIfAbsent(operand, key -> new HashSet<>()).add(address)));
    Set<String> reached = new HashSet<>();
    while (!next.isEmpty()) {
      String address = next.remove();
      if (reached.add(address)) {
        next.addAll(users.getOrDefault(address, Set.of()));
      }
    }
    return reached;
  }

  /** Every name of a workbook with the cells that it stands for, in order. */
  public static Map<String, List<String>> cellsByName(byte[] file) {
    try (XSSFWorkbook workbook = Cells.opened(file)) {
      Map<String, List<String>> cells = new LinkedHashMap<>();
      workbook.getAllNames().stream()
          .filter(name -> !name.getNameName().startsWith("_"))
          .forEach(name -> cells.put(name.getNameName(), cells(name.getRefersToFormula())));
      return cells;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static Set<String> operands(
      String address, String formula, Map<String, List<String>> cellsOf) {
    Set<String> operands = new HashSet<>();
    Matcher words = WORD.matcher(formula);
    while (words.find()) {
      operands.addAll(cellsOf.getOrDefault(words.group(), List.of()));
    }
    Matcher references = REFERENCE.matcher(TEXT.matcher(formula).replaceAll("0"));
    String own = address.substring(0, address.indexOf('!'));
    while (references.find()) {
      String tab = references.group(1) == null ? own : references.group(1).replace("'", "");
      operands.add(tab + "!" + references.group(2).replace("$", ""));
    }
    return operands;
  }

  private static List<String> cells(String range) {
    List<String> cells = new ArrayList<>();
    for (CellReference each :
        new AreaReference(range, org.apache.poi.ss.SpreadsheetVersion.EXCEL2007)
            .getAllReferencedCells()) {
      cells.add(
          each.getSheetName()
              + "!"
              + new CellReference(each.getRow(), each.getCol(), false, false).formatAsString());
    }
    return cells;
  }

  /** What each guard says once the workbook is recalculated. */
  static Map<Solution, String> states(byte[] file, List<Solution> solutions) {
    Map<Solution, String> states = new LinkedHashMap<>();
    try (XSSFWorkbook workbook = Cells.opened(file)) {
      FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
      for (Solution solution : solutions) {
        CellReference at =
            new CellReference(
                workbook.getName(Names.legal(solution.state().name())).getRefersToFormula());
        Cell cell = workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
        states.put(solution, evaluator.evaluate(cell).getStringValue());
      }
      return states;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
