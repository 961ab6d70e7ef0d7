package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Arguments of different kinds cannot be swapped: the compiler says so. */
class KindsTest {

  @TempDir Path classes;

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "sheetsByArea(sqft(100), pct(5))             | sheetsByArea(pct(5), sqft(100))",
        "ft(12).min(in(3))                      | ft(12).min(psf(3))",
        "usdPerSheet(1).max(usdPerSheet(2))     | usdPerSheet(1).max(usdPerPiece(2))",
        "number(2).power(pct(50))                    | number(2).power(in(3))",
        "Figure.choose(in(1).isAtMost(in(2)), in(1), ft(2))"
            + "| Figure.choose(in(1).isAtMost(in(2)), in(1), psf(2))",
        "nailsPerSheet(in(16), Nailing.edge(in(6)).field(in(12)), FOUR_BY_EIGHT)"
            + "| nailsPerSheet(in(16), FOUR_BY_EIGHT, Nailing.edge(in(6)).field(in(12)))",
        "nailSpacingForUplift(lb(60), allowablePressure(strengthPsf(50)), in(24))"
            + "| nailSpacingForUplift(lb(60), strengthPsf(50), in(24))",
        "psf(30).max(psf(10)) | psf(30).max(strengthPsf(10))",
        "rafterMaxSpan(Lumber.of(HEM_FIR, NO_2, SIZE_2X6, NDS2018), UniformLoad.spacing(in(16)).live(psf(20)).dead(psf(10)), SNOW, number(180))"
            + "| rafterMaxSpan(Lumber.of(NO_2, HEM_FIR, SIZE_2X6, NDS2018), UniformLoad.spacing(in(16)).live(psf(20)).dead(psf(10)), SNOW, number(180))",
      })
  void swappedArguments_doNotCompile(String right, String swapped) {
    assertThat(errorsOf(right)).isEmpty();
    assertThat(errorsOf(swapped)).isNotEmpty();
  }

  @Test
  void aSwappedCall_failsForTheKindAndForNothingElse() {
    assertThat(errorsOf("sheetsByArea(pct(5), sqft(100))"))
        .singleElement()
        .asString()
        .isEqualTo(
            "incompatible types: sheathwright.figure.Figure<sheathwright.figure.Quantity.Ratio>"
                + " cannot be converted to"
                + " sheathwright.figure.Figure<sheathwright.figure.Quantity.Area>");
  }

  private List<String> errorsOf(String expression) {
    String source =
        """
        import sheathwright.figure.Figure;
        import sheathwright.loads.UniformLoad;
        import sheathwright.wood.Lumber;
        import static sheathwright.figure.Amounts.*;
        import static sheathwright.figure.YesNo.*;
        import static sheathwright.fastening.count.NailCounts.*;
        import sheathwright.fastening.count.Nailing;
        import static sheathwright.roof.SheetSize.*;
        import static sheathwright.fastening.uplift.UpliftSpacings.*;
        import static sheathwright.loads.wind.WindPressures.*;
        import static sheathwright.wood.Grade.*;
        import static sheathwright.framing.rafter.RafterLoad.*;
        import static sheathwright.framing.rafter.Rafters.*;
        import static sheathwright.wood.Species.*;
        import static sheathwright.wood.ValueSet.*;
        import static sheathwright.wood.LumberSize.*;
        import static sheathwright.sheathing.layout.SheetCounts.*;
        class Tried {
          Object answer = %s;
        }
        """
            .formatted(expression);
    var complaints = new DiagnosticCollector<JavaFileObject>();
    var options =
        List.of(
            "-proc:none",
            "-d",
            classes.toString(),
            "-classpath",
            System.getProperty("java.class.path"));
    ToolProvider.getSystemJavaCompiler()
        .getTask(null, null, complaints, options, null, List.of(new Text(source)))
        .call();
    return complaints.getDiagnostics().stream()
        .filter(complaint -> complaint.getKind() == javax.tools.Diagnostic.Kind.ERROR)
        .map(complaint -> complaint.getMessage(java.util.Locale.ROOT))
        .toList();
  }

  private static final class Text extends SimpleJavaFileObject {

    private final String source;

    Text(String source) {
      super(URI.create("string:///Tried.java"), Kind.SOURCE);
      this.source = source;
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
      return source;
    }
  }
}
