package sheathwright.framing.sister;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.catalog.Asked;

/** Worked values from outside, each named with its source and how sure it is. */
class SisterCasesTest {

  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true).get();

  /** A 2x8 of 1.6 million psi at 24 in under 40 psf over 13 ft: 6.667 lb/in on 156 in. */
  private static final Asked SAG =
      Asked.of("part_sister_sag")
          .with("rafter_depth_in", "7.25")
          .with("sister_size", "2x8")
          .with("rafter_modulus_psi", "1600000")
          .with("sister_modulus_psi", "1600000")
          .with("spacing_in", "24")
          .with("span_ft", "13")
          .with("live_psf", "40");

  private static final Asked SPLICE =
      Asked.of("sister_splice")
          .with("span_ft", "13")
          .with("break_ft", "6.5")
          .with("spacing_in", "24")
          .with("live_psf", "30")
          .with("dead_psf", "10")
          .with("near_in", "0")
          .with("sister_size", "2x8")
          .with("sister_bending_psi", "1428")
          .with("lateral_lb", Double.toString(118 * 1.15));

  private static final Asked ALONG =
      Asked.of("nails_along_sister")
          .with("sister_bears", "yes")
          .with("sister_share", "0.5")
          .with("spacing_in", "24")
          .with("live_psf", "30")
          .with("dead_psf", "10")
          .with("span_ft", "13")
          .with("nail_spacing_in", "9.23")
          .with("lateral_lb", "135.7");

  private static final Asked NAIL =
      Asked.of("nail_lateral")
          .with("side_thickness_in", "1.5")
          .with("side_gravity", "0.5")
          .with("main_gravity", "0.5")
          .with("bending_yield_psi", "90000");

  private static final Asked ADJUSTED =
      Asked.of("adjusted_lateral")
          .with("moisture", "dry")
          .with("lateral_lb", "141")
          .with("diameter_in", "0.162");

  /** Fb 875 psi, CD 1.15, Cr 1.15, and CF 1.5 for the 2x4. */
  private static final Asked COTTAGE =
      Asked.of("sister_sizes")
          .with("rafter_depth_in", "3.5")
          .with("rafter_bending_psi", Double.toString(875 * 1.5 * 1.15 * 1.15))
          .with("sister_species", "spruce-pine-fir")
          .with("sister_grade", "no-2")
          .with("load", "snow")
          .with("spacing_in", "24")
          .with("span_ft", "10")
          .with("live_psf", "38.5")
          .with("dead_psf", Double.toString(9 * 1.201850))
          .with("existing_psf", "0")
          .with("deflection_limit", "120");

  static List<Arguments> cases() throws IOException {
    try (CSVParser parser =
        CSVParser.parse(
            new InputStreamReader(
                SisterCasesTest.class.getResourceAsStream("sister-cases.csv"),
                StandardCharsets.UTF_8),
            FORMAT)) {
      return parser.getRecords().stream()
          .map(
              line ->
                  Arguments.of(
                      "%s: %s (%s)".formatted(line.get("id"), line.get("source"), line.get("mark")),
                      line))
          .toList();
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void case_isMet(String name, CSVRecord line) {
    assertThat(answer(line.get("id")))
        .isCloseTo(
            Double.parseDouble(line.get("expected")),
            within(Double.parseDouble(line.get("tolerance"))));
  }

  private static double answer(String id) {
    return switch (id) {
      case "sister_share-01" -> share("2x8", "2x8", "1600000");
      case "sister_share-02" -> share("2x6", "2x8", "1400000");
      case "sister_deflection-01" -> SAG.with("sister_length_ft", "9.75").number("most_sag_in");
      case "sister_deflection-02" -> SAG.with("sister_length_ft", "9.75").number("least_sag_in");
      case "sister_deflection-03" -> SAG.with("sister_length_ft", "6.5").number("least_sag_in");
      case "sister_splice-01" -> SPLICE.with("arm_in", "24.05").number("moment_in_lb");
      case "sister_splice-02" -> SPLICE.with("arm_in", "24.05").number("near_lb");
      case "sister_splice-03" -> SPLICE.with("arm_in", "24.05").number("near_nails");
      case "sister_splice-04" -> SPLICE.with("arm_in", "36.08").number("far_lb");
      case "sister_splice-05" -> SPLICE.with("arm_in", "36.08").number("far_nails");
      case "sister_length-01" -> reach();
      case "sister_nail-01" -> ALONG.number("each_lb");
      case "sister_nail-02" -> ALONG.number("transfer_lb");
      case "nail_Zprime-01" ->
          ADJUSTED
              .with("penetration_in", "1.25")
              .with("load_duration", "1.6")
              .number("adjusted_lb");
      case "nail_Z-25" ->
          NAIL.with("diameter_in", "0.148").with("length_in", "3").number("lateral_lb");
      // mode IV is the same whether the point ends in the wood or behind it
      case "nail_Z-26" ->
          NAIL.with("diameter_in", "0.162").with("length_in", "3.5").number("lateral_lb");
      case "nail_Z-27" ->
          ADJUSTED.with("penetration_in", "1.5").with("load_duration", "1").number("adjusted_lb");
      case "bearing-01" -> seat();
      case "S3-alone" -> COTTAGE.number("alone_ratio");
      case "S3-2x6" -> cottageSister("2x6", 875 * 1.3 * 1.15 * 1.15);
      case "S3-2x8" -> cottageSister("2x8", 875 * 1.2 * 1.15 * 1.15);
      default -> throw new IllegalArgumentException(id);
    };
  }

  private static double share(String rafter, String sister, String rafterModulus) {
    return Asked.of("sister_share")
        .with("rafter_size", rafter)
        .with("sister_size", sister)
        .with("rafter_modulus_psi", rafterModulus)
        .with("sister_modulus_psi", "1600000")
        .number("sister_share");
  }

  /** Nine tenths of what the rafter can take is here 0.6 of the 20,280 in-lb asked. */
  private static double reach() {
    double modulus = 1.5 * 7.25 * 7.25 / 6;
    return Asked.of("part_sister_reach")
        .with("rafter_depth_in", "7.25")
        .with("rafter_bending_psi", Double.toString(0.6 * 20_280 / 0.9 / modulus))
        .with("spacing_in", "24")
        .with("span_ft", "13")
        .with("live_psf", "30")
        .with("dead_psf", "10")
        .with("support_ratio", "0.5")
        .number("reach_in");
  }

  /** What the seat can give, out of the ratio of a known reaction: Fc-perp 405, Cb 1.25. */
  private static double seat() {
    return 500
        / Asked.of("sister_reactions")
            .with("existing_lb", "0")
            .with("added_lb", "500")
            .with("rafter_share", "0.5")
            .with("sister_bears", "no")
            .with("rafter_depth_in", "5.5")
            .with("sister_size", "2x6")
            .with("rafter_shear_psi", "150")
            .with("sister_shear_psi", "150")
            .with("rafter_bearing_psi", Double.toString(405 * (1.5 + 0.375) / 1.5))
            .with("sister_bearing_psi", "405")
            .number("rafter_bearing_ratio");
  }

  /** The pair by itself, and the same out of the list of sizes. */
  private static double cottageSister(String size, double bending) {
    double byItself =
        Asked.of("sistered_rafter")
            .with("rafter_depth_in", "3.5")
            .with("sister_size", size)
            .with("rafter_bending_psi", Double.toString(875 * 1.5 * 1.15 * 1.15))
            .with("sister_bending_psi", Double.toString(bending))
            .with("spacing_in", "24")
            .with("span_ft", "10")
            .with("live_psf", "38.5")
            .with("dead_psf", Double.toString(9 * 1.201850))
            .with("existing_psf", "0")
            .number("sister_ratio");
    assertThat(COTTAGE.number("ratio_" + size)).isCloseTo(byItself, within(1e-9));
    return byItself;
  }
}
