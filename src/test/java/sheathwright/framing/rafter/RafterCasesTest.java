package sheathwright.framing.rafter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.number;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.catalog.Asked;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Units;
import sheathwright.wood.SimpleSpan;

/** Every worked case of {@code rafter-cases.csv}, by the function that answers it. */
class RafterCasesTest {

  private static final Map<String, DoubleSupplier> ANSWERS = answers();

  static Stream<Arguments> cases() {
    return PrintedSpan.rows("rafter-cases.csv").stream()
        .map(
            row ->
                Arguments.of(
                    row.get("id"),
                    row.get("mark"),
                    row.get("inputs"),
                    Double.parseDouble(row.get("expected")),
                    Double.parseDouble(row.get("tolerance"))));
  }

  @ParameterizedTest(name = "{0} ({1}): {2}")
  @MethodSource("cases")
  void answer_isThePublishedOne(
      String id, String mark, String inputs, double expected, double tolerance) {
    assertThat(ANSWERS.get(id).getAsDouble()).isCloseTo(expected, within(tolerance));
  }

  @Test
  void everyAnswer_hasItsCase() {
    assertThat(cases().map(each -> each.get()[0]))
        .containsExactlyInAnyOrderElementsOf(
            ANSWERS.keySet().stream().map(Object.class::cast).toList());
  }

  private static Map<String, DoubleSupplier> answers() {
    Map<String, DoubleSupplier> answers = new TreeMap<>();
    answers.put("ceiling_joist-01", () -> joist("douglas-fir-larch", "no-2", "2x8", 24));
    answers.put("ceiling_joist-02", () -> joist("spruce-pine-fir", "no-2", "2x6", 24));
    answers.put("ceiling_joist-03", () -> joist("southern-pine", "no-2", "2x10", 19.2));
    answers.put("section-01", () -> section("2x8").number("section_modulus_in3"));
    answers.put("section-02", () -> section("2x10").number("section_modulus_in3"));
    answers.put("section-03", () -> section("2x12").number("section_modulus_in3"));
    // A 2x14 is no size of ours, so its measures are given.
    answers.put(
        "section-04",
        () ->
            section("2x12")
                .with("stock", "measured")
                .with("thickness_in", "1.5")
                .with("depth_in", "13.25")
                .number("section_modulus_in3"));
    answers.put("adjusted_Fb-01", () -> bending("no-2", "2x8", "roof-live"));
    answers.put("adjusted_Fb-02", () -> bending("no-2", "2x10", "roof-live"));
    answers.put("adjusted_Fb-03", () -> bending("no-1", "2x12", "snow"));
    answers.put("adjusted_Fb-05", () -> bending("no-2", "2x12", "snow"));
    answers.put("adjusted_Fv-01", () -> larch("no-2", "2x8", "roof-live").number("shear_psi"));
    answers.put("adjusted_Fv-02", () -> larch("no-1", "2x12", "snow").number("shear_psi"));
    answers.put("bending_stress-01", () -> moment((19 + 73) / 12d, 17.3) / 31.6);
    answers.put("required_S-01", () -> moment(5.441, 14) / 900);
    answers.put("required_S-02", () -> moment(10.97, 14) / 900);
    answers.put("beam_stability-01", () -> beam().number("effective_length_in"));
    answers.put("beam_stability-02", () -> beam().number("slenderness"));
    answers.put("beam_stability-03", () -> beam().number("buckling_psi"));
    answers.put("beam_stability-04", () -> beam().number("stability_factor"));
    answers.put(
        "beam_stability-05",
        () -> larch("no-2", "2x8", "snow").with("unbraced_in", "48").number("stability_factor"));
    answers.put(
        "bearing-01",
        () ->
            1.5
                * 1.5
                * wood("hem-fir", "no-2", "2x6", "snow")
                    .with("end_distance_in", "3")
                    .number("bearing_psi"));
    answers.put(
        "thrust-01",
        () ->
            Asked.of("rafter_thrust")
                .with("span_ft", "12")
                .with("rise_in_12", "4")
                .with("spacing_in", "16")
                .with("load_psf", "30")
                .number("thrust_lb"));
    return answers;
  }

  private static Asked section(String size) {
    return Asked.of("section_properties").with("size", size);
  }

  private static Asked wood(String species, String grade, String size, String duration) {
    return Asked.of("design_values")
        .with("moisture", "dry")
        .with("species", species)
        .with("grade", grade)
        .with("size", size)
        .with("value_set", "nds2018")
        .with("load_duration", duration)
        .with("spacing_in", "24");
  }

  private static Asked larch(String grade, String size, String duration) {
    return wood("douglas-fir-larch", grade, size, duration);
  }

  private static double bending(String grade, String size, String duration) {
    return larch(grade, size, duration).number("bending_psi");
  }

  /** Glued laminated 6-3/4 by 30 with 20 ft between braces. */
  private static Asked beam() {
    return Asked.of("beam_stability")
        .with("unbraced_in", "240")
        .with("depth_in", "30")
        .with("thickness_in", "6.75")
        .with("min_modulus_psi", "690000")
        .with("bending_psi", "2400");
  }

  private static double moment(double poundsPerInch, double feet) {
    return SimpleSpan.moment(line(poundsPerInch), ft(feet)).value();
  }

  private static Figure<LineForce> line(double poundsPerInch) {
    return Figure.of(poundsPerInch, Units.POUND_PER_INCH);
  }

  /** An attic joist: 20 psf live, 10 dead, ten years, L/240, rounded as the table rounds. */
  private static double joist(String species, String grade, String size, double spacing) {
    Asked asked =
        wood(species, grade, size, "ten-years").with("spacing_in", String.valueOf(spacing));
    Figure<?> s = Figure.of(section(size).number("section_modulus_in3"), Units.CUBIC_INCH);
    double i = section(size).number("second_moment_in4");
    double bending =
        SimpleSpan.spanByBending(
                Figure.of(asked.number("bending_psi"), Units.PSI),
                s.in(Units.CUBIC_INCH),
                line(30 * spacing / 144))
            .value();
    double sag =
        SimpleSpan.spanBySag(
                Figure.of(asked.number("modulus_psi"), Units.PSI),
                Figure.of(i, Units.INCH_TO_THE_FOURTH),
                number(240),
                line(20 * spacing / 144))
            .value();
    return Math.floor(Math.min(bending, sag) + 0.5);
  }
}
