package sheathwright.workbook.book;

import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
  static Set<String> addresses(WrittenFile file, Map<String, List<String>> solved) {
    Map<String, List<String>> cellsOf = file.names();
    Deque<String> next = new ArrayDeque<>();
    solved.values().forEach(next::addAll);
    cellsOf.forEach(
        (name, cells) -> {
          if (name.endsWith("_now") || name.endsWith("_changed")) {
            next.addAll(cells);
          }
        });
    Map<String, Set<String>> users = new HashMap<>();
    file.formulas()
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
}
