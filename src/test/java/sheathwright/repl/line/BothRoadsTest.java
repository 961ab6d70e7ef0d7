package sheathwright.repl.line;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.catalog.Argument;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Parameter;
import sheathwright.figure.Traced;
import sheathwright.figure.Working;

/**
 * Every example of the catalog, and lines with operators, names and presets, by both roads: from
 * the tree without a compiler, and as the Java that the line becomes, compiled in one class.
 */
class BothRoadsTest {

  private static final List<String> SAID =
      List.of(
          "24 in * 2",
          "1408.72 sqft * 1.1",
          "2 * 3 ft",
          "3 ft * 40 in",
          "30 psf * 100 sqft",
          "$38.50/sheet * 12 sheets",
          "$100 * 10 %",
          "100 sqft / 10 ft",
          "-24 in",
          "-(24 in + 1-3/8 in)",
          "16-9 1/4 ft - 6 in",
          "10% + 5%",
          "number(2) + 3",
          "3 ft < 40 in",
          "7 / 2",
          "2 + 3 * 4",
          "1.5 - 2",
          "pitch(5/12)",
          "ft(41 + 7/12)",
          "$2/sqft * 100 sqft",
          "rafterCheck(size = 2x6, species = SYP, grade = #2, spacing = 24 in, snow = 30 psf, dead = 10 psf, span = 11-6 ft).bending().ratio()",
          "nails_per_sheet(16 in, edge = 6 in, field = 12 in)",
          "boardSpan(board = DeckBoard.thickness(3/4 in), spacing = 24 in).ok",
          "sheetsByArea(1408.72 sqft * 1.1, 10 %)",
          "layerLoad(material = plywood, thickness = 1/2 in)",
          "roofSnow(ground_snow = 30 psf, edition = 7-16, importance = 1, exposure_factor = 1, thermal = 1.1, slippery = no, pitch = 6 in 12).sloped");

  private static final Set<String> IMPORTS = imports();

  @TempDir Path folder;

  private static List<String> examples() {
    List<String> examples = new ArrayList<>();
    for (Card card : Catalog.shipped().cards()) {
      card.text().examples().forEach(line -> examples.add(line.replaceAll(" // .*", "")));
    }
    examples.addAll(SAID);
    return examples;
  }

  @Test
  void theSameFigure_comesOutByBothRoads() throws Exception {
    List<String> lines = examples();
    List<Object> direct = new ArrayList<>();
    StringBuilder source = new StringBuilder();
    IMPORTS.forEach(each -> source.append("import ").append(each).append(";\n"));
    source.append("public class Exported {\n");
    for (String line : lines) {
      Reading.Made made = new Standing().made(line);
      source.append(
          "public static %s line%d() { return %s }%n"
              .formatted(made.type(), direct.size(), made.java()));
      direct.add(made.value());
    }
    source.append("}\n");

    Class<?> exported = ExportedClass.compiled(folder, source.toString());
    for (int i = 0; i < direct.size(); i++) {
      Object java = exported.getMethod("line" + i).invoke(null);
      assertThat(told(java)).as(lines.get(i)).isEqualTo(told(direct.get(i)));
    }
  }

  /** A script as a class: its statements one after the other, each as the reader writes it. */
  @Test
  void aScript_compilesAsAClass() throws Exception {
    List<String> script =
        List.of(
            "given(spacing = 24 in, species = SPF)",
            "span = 11-6 ft",
            "rafter = rafterCheck(size = 2x8, grade = #2, snow = 30 psf, dead = 10 psf, span = span)",
            "deck = 42 ft * 16-9 1/4 ft",
            "deck = deck * 2",
            "order = sheetsByArea(deck, 10 %)",
            "cost = order * $38.50/sheet");
    Standing session = new Standing();
    String body = "";
    Set<String> declared = new TreeSet<>();
    for (String line : script) {
      for (Reading.Made made : ((Reading.Direct) session.read(line)).made()) {
        boolean isNew = declared.add(made.name());
        body += "    " + (isNew ? made.java() : made.java().replaceFirst("^var ", "")) + "\n";
      }
    }
    Class<?> exported =
        ExportedClass.compiled(
            folder,
            IMPORTS.stream().map("import %s;\n"::formatted).collect(joining())
                + "public class Exported {\n  public static Object cost() {\n"
                + body
                + "    return cost;\n  }\n}\n");
    assertThat(told(exported.getMethod("cost").invoke(null)))
        .isEqualTo(told(session.value("cost")));
  }

  /** A value with all its working, so that not only the number is the same. */
  private static String told(Object value) {
    return value instanceof Traced traced
        ? traced + "\n" + Working.of(List.of(traced))
        : String.valueOf(value);
  }

  private static Set<String> imports() {
    Set<String> imports = new TreeSet<>();
    imports.add("sheathwright.figure.*");
    imports.add("static sheathwright.figure.Amounts.*");
    for (Card card : Catalog.shipped().cards()) {
      imports.add("static " + card.method().getDeclaringClass().getCanonicalName() + ".*");
      imports.add(card.method().getDeclaringClass().getPackageName() + ".*");
      for (Argument argument : card.arguments()) {
        for (Class<? extends Record> thing : argument.things()) {
          imports.add(thing.getPackageName() + ".*");
          for (Field constant : thing.getFields()) {
            imports.add("static " + thing.getCanonicalName() + "." + constant.getName());
          }
        }
      }
      for (Parameter parameter : card.parameters()) {
        if (parameter.options() != null) {
          imports.add("static " + parameter.options().getCanonicalName() + ".*");
          imports.add(parameter.options().getPackageName() + ".*");
        }
      }
    }
    return imports;
  }
}
