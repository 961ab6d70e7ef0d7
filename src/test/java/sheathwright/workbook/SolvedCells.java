package sheathwright.workbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
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
final class SolvedCells {

  private static final Pattern WORD = Pattern.compile("[a-z][a-z0-9_]*");

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

  /** The guards and whatever is made from them, or from what was solved. */
  static Set<String> addresses(byte[] file, Set<String> solvedNames) {
    try (XSSFWorkbook workbook = Cells.opened(file)) {
      Map<String, String> addressOf = new LinkedHashMap<>();
      Set<String> names = new HashSet<>(solvedNames);
      Set<String> addresses = new HashSet<>();
      workbook
          .getAllNames()
          .forEach(
              name -> {
                String range = name.getRefersToFormula();
                String bare = name.getNameName();
                if (!range.contains(":")) {
                  addressOf.put(range.replace("'", "").replace("$", ""), bare);
                }
                if (bare.endsWith("_now") || bare.endsWith("_changed")) {
                  names.add(bare);
                  addresses.addAll(cells(range));
                }
              });
      Map<String, String> formulas = Cells.formulas(file);
      boolean grows = true;
      while (grows) {
        grows = false;
        for (Map.Entry<String, String> formula : formulas.entrySet()) {
          if (!addresses.contains(formula.getKey()) && mentions(formula.getValue(), names)) {
            addresses.add(formula.getKey());
            String name = addressOf.get(formula.getKey());
            if (name != null) {
              names.add(name);
            }
            grows = true;
          }
        }
      }
      return addresses;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static boolean mentions(String formula, Set<String> names) {
    Matcher words = WORD.matcher(formula);
    while (words.find()) {
      if (names.contains(words.group())) {
        return true;
      }
    }
    return false;
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
