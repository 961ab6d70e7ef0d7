package sheathwright.framing.rafter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.psf;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Check;
import sheathwright.figure.YesNo;
import sheathwright.loads.UniformLoad;
import sheathwright.wood.Grade;
import sheathwright.wood.Lumber;
import sheathwright.wood.LumberSize;
import sheathwright.wood.Species;
import sheathwright.wood.ValueSet;

/** The longest span that passes, and what governs, found a second time without closed forms. */
class LongestSpanTest {

  private static final String RAFTERS =
      """
      douglas-fir-larch, no-2,              2x6,  16,   20, 10, roof-live, 180, nds2018,            1.5
      hem-fir,           select-structural, 2x12, 24,   70, 20, snow,      180, nds2018,            1.5
      spruce-pine-fir,   no-1,              2x10, 12,   20, 0,  roof-live, 240, nds2018,            3
      southern-pine,     no-3,              2x4,  19.2, 50, 20, snow,      240, southern-pine-2012, 0.5
      hem-fir-north,     stud,              2x6,  48,   300, 100, snow,    180, nds2018,            12
      """;

  private static RafterCheck check(
      String species,
      String grade,
      String size,
      double spacing,
      double live,
      double dead,
      String load,
      double limit,
      String valueSet,
      double seat,
      double inches) {
    return Rafters.rafterCheck(
        Lumber.of(
            PrintedSpan.word(Species.values(), species),
            PrintedSpan.word(Grade.values(), grade),
            PrintedSpan.word(LumberSize.values(), size),
            PrintedSpan.word(ValueSet.values(), valueSet)),
        UniformLoad.spacing(in(spacing)).live(psf(live)).dead(psf(dead)),
        PrintedSpan.word(RafterLoad.values(), load),
        number(limit),
        ClearSpan.of(in(inches)).bearing(in(seat)));
  }

  @ParameterizedTest
  @CsvSource(textBlock = RAFTERS)
  void longestSpan_isWhereTheCheckTurns(
      String species,
      String grade,
      String size,
      double spacing,
      double live,
      double dead,
      String load,
      double limit,
      String valueSet,
      double seat) {
    double passes = 12;
    double fails = 40 * 12;
    RafterCheck at12 =
        check(species, grade, size, spacing, live, dead, load, limit, valueSet, seat, passes);
    assertThat(at12.ok().value()).isEqualTo(YesNo.YES);
    while (fails - passes > 1e-6) {
      double middle = (passes + fails) / 2;
      boolean ok =
          check(species, grade, size, spacing, live, dead, load, limit, valueSet, seat, middle)
                  .ok()
                  .value()
              == YesNo.YES;
      passes = ok ? middle : passes;
      fails = ok ? fails : middle;
    }
    assertThat(at12.longest().value() * 12).isCloseTo(passes, within(1e-5));
    double maxSpan =
        Rafters.rafterMaxSpan(
                Lumber.of(
                    PrintedSpan.word(Species.values(), species),
                    PrintedSpan.word(Grade.values(), grade),
                    PrintedSpan.word(LumberSize.values(), size),
                    PrintedSpan.word(ValueSet.values(), valueSet)),
                UniformLoad.spacing(in(spacing)).live(psf(live)).dead(psf(dead)),
                PrintedSpan.word(RafterLoad.values(), load),
                number(limit))
            .span()
            .value();
    assertThat(at12.longest().value() * 12).isLessThanOrEqualTo(maxSpan * (1 + 1e-12));
  }

  @ParameterizedTest
  @CsvSource(textBlock = RAFTERS)
  void whatGoverns_hasTheGreatestRatio(
      String species,
      String grade,
      String size,
      double spacing,
      double live,
      double dead,
      String load,
      double limit,
      String valueSet,
      double seat) {
    for (double span : new double[] {12, 48, 120, 240, 480}) {
      RafterCheck check =
          check(species, grade, size, spacing, live, dead, load, limit, valueSet, seat, span);
      Map<RafterLimit, Check> checks =
          Map.of(
              RafterLimit.BENDING, check.bending(),
              RafterLimit.SHEAR, check.shear(),
              RafterLimit.DEFLECTION, check.deflection(),
              RafterLimit.BEARING, check.bearing());
      double governing = checks.get(check.governs().value()).ratio().value();
      assertThat(checks.values())
          .allSatisfy(each -> assertThat(each.ratio().value()).isLessThanOrEqualTo(governing));
    }
  }
}
