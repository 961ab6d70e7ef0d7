package sheathwright.cell;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Parameter;
import sheathwright.catalog.Result;
import sheathwright.workbook.file.Program;

/**
 * Writes out of the catalog what an add-in of a spreadsheet program is made from: its interface,
 * the class behind it, and what the program's list of functions says of each.
 */
public final class AddInFiles {

  static final String SERVICE = "sheathwright.cell.CellFunctions";

  /** A function as the add-in offers it. */
  private record Offered(String method, String display, String what, List<Hint> hints) {}

  /** What is said of one argument. */
  private record Hint(String name, String what) {}

  private AddInFiles() {}

  /** Writes all of them into a folder. */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    List<Card> cards = Catalog.shipped().cards();
    write(folder.resolve("cells.idl"), idl(cards));
    write(folder.resolve("java/sheathwright/cell/CellFunctions.java"), java(cards));
    write(folder.resolve("oxt/CalcAddIns.xcu"), registry(cards));
    write(folder.resolve("oxt/description.xml"), description());
    write(folder.resolve("oxt/META-INF/manifest.xml"), manifest());
  }

  private static void write(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private static boolean isOne(Card card) {
    return card.results().size() == 1;
  }

  private static String idl(List<Card> cards) {
    String methods =
        cards.stream()
            .map(
                card ->
                    "    %s %s(%s);\n"
                        .formatted(
                            isOne(card) ? "any" : "sequence< sequence<any> >",
                            card.call(),
                            card.parameters().stream()
                                .map(parameter -> "[in] any " + oneWord(parameter.column()))
                                .collect(joining(", "))))
            .collect(joining());
    return """
        module sheathwright { module cell {
          interface XCellFunctions {
        %s    sequence< sequence<any> > answer([in] string function, [in] sequence<any> values);
            string working([in] string function, [in] sequence<any> values);
            sequence< sequence<any> > table([in] string function, [in] sequence< sequence<any> > rows);
          };
        }; };
        """
        .formatted(methods);
  }

  /** As an interface may call it, without anything between the words. */
  private static String oneWord(String column) {
    return Pattern.compile("_(.)")
        .matcher(column)
        .replaceAll(found -> found.group(1).toUpperCase(Locale.ROOT));
  }

  private static String java(List<Card> cards) {
    String methods = cards.stream().map(AddInFiles::method).collect(joining("\n"));
    return """
        package sheathwright.cell;

        import com.sun.star.lang.XServiceInfo;
        import com.sun.star.lang.XSingleComponentFactory;
        import com.sun.star.lib.uno.helper.Factory;
        import com.sun.star.lib.uno.helper.WeakBase;
        import com.sun.star.registry.XRegistryKey;
        import com.sun.star.uno.XComponentContext;

        /** The library's functions in the cells of a spreadsheet; written by AddInFiles. */
        public final class CellFunctions extends WeakBase implements XCellFunctions, XServiceInfo {

          private static final String SERVICE = "%s";

          public CellFunctions(XComponentContext context) {}

        %s
          @Override
          public Object[][] answer(String function, Object[] values) {
            return Cells.row(function, values);
          }

          @Override
          public String working(String function, Object[] values) {
            return Cells.working(function, values);
          }

          @Override
          public Object[][] table(String function, Object[][] rows) {
            return Cells.table(function, rows);
          }

          @Override
          public String getImplementationName() {
            return SERVICE;
          }

          @Override
          public boolean supportsService(String name) {
            return SERVICE.equals(name);
          }

          @Override
          public String[] getSupportedServiceNames() {
            return new String[] {SERVICE};
          }

          public static XSingleComponentFactory __getComponentFactory(String name) {
            return SERVICE.equals(name)
                ? Factory.createComponentFactory(CellFunctions.class, new String[] {SERVICE})
                : null;
          }

          public static boolean __writeRegistryServiceInfo(XRegistryKey key) {
            return Factory.writeRegistryServiceInfo(SERVICE, new String[] {SERVICE}, key);
          }
        }
        """
        .formatted(SERVICE, methods);
  }

  private static String method(Card card) {
    int count = card.parameters().size();
    String taken = IntStream.range(0, count).mapToObj(i -> "Object a" + i).collect(joining(", "));
    String given = IntStream.range(0, count).mapToObj(i -> ", a" + i).collect(joining());
    return """
          @Override
          public Object%s %s(%s) {
            return Cells.%s("%s"%s);
          }
        """
        .formatted(
            isOne(card) ? "" : "[][]",
            card.call(),
            taken,
            isOne(card) ? "one" : "row",
            card.name(),
            given);
  }

  private static List<Offered> offered(List<Card> cards) {
    List<Offered> offered = new ArrayList<>();
    for (Card card : cards) {
      String results =
          isOne(card)
              ? ""
              : " In a row: "
                  + card.results().stream().map(Result::column).collect(joining(", "))
                  + ".";
      offered.add(
          new Offered(
              card.call(),
              display(card.name()),
              card.text().summary() + results,
              card.parameters().stream().map(AddInFiles::hint).toList()));
    }
    Hint function = new Hint("function", "a function's name, such as nails_per_sheet");
    Hint values =
        new Hint("values", "its values in order, or with their names, such as waste_pct=10");
    offered.add(
        new Offered(
            "answer",
            display("answer"),
            "The results of the function of a name, in a row.",
            List.of(function, values)));
    offered.add(
        new Offered(
            "working",
            display("working"),
            "How the function of a name works its results out, with the sources.",
            List.of(function, values)));
    offered.add(
        new Offered(
            "table",
            display("table"),
            "A function filled down a table: as many rows, of its results and of what is wrong.",
            List.of(function, new Hint("rows", "a table whose headings name parameters"))));
    return offered;
  }

  private static Hint hint(Parameter parameter) {
    String words =
        parameter.options() == null ? "" : " (" + String.join(", ", parameter.words()) + ")";
    String preset = parameter.isRequired() ? "" : "; blank for " + parameter.preset();
    return new Hint(parameter.column(), parameter.text() + words + preset);
  }

  private static String display(String name) {
    return "DECK_" + name.toUpperCase(Locale.ROOT);
  }

  private static String registry(List<Card> cards) {
    return """
        <?xml version="1.0" encoding="UTF-8"?>
        <oor:component-data xmlns:oor="http://openoffice.org/2001/registry"
            xmlns:xs="http://www.w3.org/2001/XMLSchema" oor:name="CalcAddIns" oor:package="org.openoffice.Office">
        <node oor:name="AddInInfo">
        <node oor:name="%s" oor:op="replace">
        <node oor:name="AddInFunctions">
        %s</node>
        </node>
        </node>
        </oor:component-data>
        """
        .formatted(SERVICE, offered(cards).stream().map(AddInFiles::node).collect(joining()));
  }

  private static String node(Offered offered) {
    StringBuilder node = new StringBuilder();
    node.append("<node oor:name=\"%s\" oor:op=\"replace\">\n".formatted(offered.method()));
    node.append(said("DisplayName", offered.display()));
    node.append(said("Description", offered.what()));
    node.append("<prop oor:name=\"Category\"><value>Add-In</value></prop>\n");
    node.append(said("CompatibilityName", offered.display()));
    node.append("<node oor:name=\"Parameters\">\n");
    for (Hint hint : offered.hints()) {
      // the program finds what is said of an argument by its name in the interface
      node.append("<node oor:name=\"%s\" oor:op=\"replace\">\n".formatted(oneWord(hint.name())));
      node.append(said("DisplayName", hint.name()));
      node.append(said("Description", hint.what()));
      node.append("</node>\n");
    }
    return node.append("</node>\n</node>\n").toString();
  }

  private static String said(String property, String words) {
    return "<prop oor:name=\"%s\"><value xml:lang=\"en\">%s</value></prop>\n"
        .formatted(property, escaped(words));
  }

  private static String escaped(String words) {
    return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  private static String description() {
    return """
        <?xml version="1.0" encoding="UTF-8"?>
        <description xmlns="http://openoffice.org/extensions/description/2006">
        <identifier value="sheathwright.cell"/>
        <version value="%s"/>
        <display-name><name lang="en">%s</name></display-name>
        </description>
        """
        .formatted(Program.NAME.substring(Program.NAME.indexOf(' ') + 1), Program.NAME);
  }

  private static String manifest() {
    return """
        <?xml version="1.0" encoding="UTF-8"?>
        <manifest:manifest xmlns:manifest="http://openoffice.org/2001/manifest">
        <manifest:file-entry manifest:full-path="cells.rdb" manifest:media-type="application/vnd.sun.star.uno-typelibrary;type=RDB"/>
        <manifest:file-entry manifest:full-path="cells.jar" manifest:media-type="application/vnd.sun.star.uno-component;type=Java"/>
        <manifest:file-entry manifest:full-path="CalcAddIns.xcu" manifest:media-type="application/vnd.sun.star.configuration-data"/>
        </manifest:manifest>
        """;
  }
}
