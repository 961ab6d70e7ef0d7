import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * How many planted errors a room's own tests found. An error that lives is expected where {@code
 * src/build/survivors.tsv} gives the reason; any other is told.
 *
 * <p>The name that a step of the working gets ({@code as}) changes no value: those are counted
 * apart, since the tests of {@code explain} and of the workbooks hold them, not the room's own.
 *
 * <p>Usage: {@code java src/build/java/MutationScore.java FOLDER ROOM ...}; FOLDER/ROOM has the
 * reports. Status 1 where a room lies under its goal or an error lives that nobody explained.
 */
final class MutationScore {

  private static final Path EXPLAINED = Path.of("src/build/survivors.tsv");
  private static final Set<String> EXACT_ROOMS = Set.of("figure", "catalog", "pricing");
  private static final double EXACT_GOAL = 0.95;
  private static final double GOAL = 0.85;

  private MutationScore() {}

  public static void main(String[] arguments) throws Exception {
    Map<String, Integer> explained = explained();
    boolean isWell = true;
    System.out.printf(
        "%-11s %9s %9s %6s %5s %9s%n", "room", "planted", "found", "share", "goal", "lines run");
    for (String room : List.of(arguments).subList(1, arguments.length)) {
      isWell &= told(Path.of(arguments[0], room), room, explained);
    }
    System.exit(isWell ? 0 : 1);
  }

  private static boolean told(Path folder, String room, Map<String, Integer> explained)
      throws Exception {
    List<Planted> all = planted(folder.resolve("mutations.xml"), room);
    List<Planted> values = all.stream().filter(each -> !each.isName()).toList();
    long found = values.stream().filter(Planted::isFound).count();
    long names = all.size() - values.size();
    double share = values.isEmpty() ? 1 : (double) found / values.size();
    double goal = EXACT_ROOMS.contains(room) ? EXACT_GOAL : GOAL;
    System.out.printf(
        "%-11s %9d %9d %5.1f%% %4.0f%% %9s   (and %d of %d names of steps)%n",
        room,
        values.size(),
        found,
        share * 100,
        goal * 100,
        linesRun(folder),
        all.stream().filter(each -> each.isName() && each.isFound()).count(),
        names);
    Map<String, List<Planted>> living = new TreeMap<>();
    values.stream()
        .filter(each -> !each.isFound())
        .forEach(each -> living.computeIfAbsent(each.key(), key -> new ArrayList<>()).add(each));
    boolean isExplained = true;
    for (var entry : living.entrySet()) {
      if (entry.getValue().size() > explained.getOrDefault(entry.getKey(), 0)) {
        isExplained = false;
        entry.getValue().forEach(each -> System.out.println("  lives: " + each.said()));
      }
    }
    return share >= goal && isExplained;
  }

  private record Planted(
      String room, String file, String method, int line, String what, boolean isFound) {

    boolean isName() {
      return what.contains("Figure::as with")
          || what.contains("Check::as with")
          || what.contains("Choice::as with");
    }

    String key() {
      return String.join("|", room, file, method, what);
    }

    String said() {
      return "%s:%d %s: %s".formatted(file, line, method, what);
    }
  }

  private static List<Planted> planted(Path report, String room)
      throws IOException, ParserConfigurationException, SAXException {
    List<Planted> planted = new ArrayList<>();
    NodeList mutations = read(report).getElementsByTagName("mutation");
    for (int i = 0; i < mutations.getLength(); i++) {
      Element each = (Element) mutations.item(i);
      planted.add(
          new Planted(
              room,
              text(each, "sourceFile"),
              text(each, "mutatedMethod"),
              Integer.parseInt(text(each, "lineNumber")),
              text(each, "description").replaceAll("sheathwright/(\\w+/)*", ""),
              each.getAttribute("detected").equals("true")));
    }
    return planted;
  }

  private static String linesRun(Path folder)
      throws IOException, ParserConfigurationException, SAXException {
    Path report = folder.resolve("linecoverage.xml");
    if (!Files.exists(report)) {
      return "?";
    }
    NodeList blocks = read(report).getElementsByTagName("block");
    int run = 0;
    for (int i = 0; i < blocks.getLength(); i++) {
      run += ((Element) blocks.item(i)).getElementsByTagName("test").getLength() > 0 ? 1 : 0;
    }
    return "%.0f%%".formatted(100.0 * run / Math.max(1, blocks.getLength()));
  }

  private static Document read(Path report)
      throws IOException, ParserConfigurationException, SAXException {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    try (InputStream stream = Files.newInputStream(report)) {
      return factory.newDocumentBuilder().parse(stream);
    }
  }

  private static String text(Element of, String name) {
    return of.getElementsByTagName(name).item(0).getTextContent();
  }

  /**
   * How many of each kind may live: room|file|method|what, count and reason, a tab between them.
   */
  private static Map<String, Integer> explained() throws IOException {
    Map<String, Integer> explained = new LinkedHashMap<>();
    for (String line : Files.readAllLines(EXPLAINED)) {
      if (!line.isBlank() && !line.startsWith("#")) {
        String[] cells = line.split("\t", -1);
        if (cells.length != 3 || cells[2].isBlank()) {
          throw new IOException(EXPLAINED + " has a line without a reason: " + line);
        }
        explained.merge(cells[0], Integer.parseInt(cells[1]), Integer::sum);
      }
    }
    return explained;
  }
}
