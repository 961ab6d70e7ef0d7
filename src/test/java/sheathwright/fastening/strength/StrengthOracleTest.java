package sheathwright.fastening.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sheathwright.catalog.Asked;

/**
 * Nails and screws that are pulled out, at chance inputs, against the sentences of NDS 2018
 * chapters 11 and 12 written out in plain numbers. The smooth nail, the screws and the 0.25 are
 * secondary source; ring shank, stainless, pull-through, temperature and the other wet factors from
 * memory.
 */
class StrengthOracleTest {

  private static final String[] MOISTURES = {
    "stays-dry", "dries-later", "gets-wet-later", "stays-wet"
  };
  private static final Map<String, Double> DURATIONS =
      Map.of("permanent", 0.9, "ten-years", 1.0, "snow", 1.15, "ten-minutes", 1.6);

  /** 12.2-3, 12.2-4 and 12.2-5, pounds for an inch. */
  private static double perInch(String shank, double g, double d) {
    return switch (shank) {
      case "ring" -> 1800 * g * g * d;
      case "stainless" -> 465 * Math.sqrt(g * g * g) * d;
      default -> 1380 * g * g * Math.sqrt(g) * d;
    };
  }

  /** Table 11.3.4, its dry row and its wet row. */
  private static double heat(boolean wetInService, double degrees) {
    int column = degrees <= 100 ? 0 : degrees <= 125 ? 1 : 2;
    double[] row = wetInService ? new double[] {1, 0.7, 0.5} : new double[] {1, 0.8, 0.7};
    return row[column];
  }

  private static boolean wetInService(String moisture) {
    return moisture.equals("gets-wet-later") || moisture.equals("stays-wet");
  }

  private static boolean crossesTheBorder(String moisture) {
    return moisture.equals("gets-wet-later") || moisture.equals("dries-later");
  }

  @Test
  void aNail_isTheStandardsSentences() {
    Random chance = new Random(12_2_3);
    String[] durations = DURATIONS.keySet().stream().sorted().toArray(String[]::new);
    for (int i = 0; i < 400; i++) {
      String shank = new String[] {"smooth", "ring", "stainless"}[chance.nextInt(3)];
      String moisture = MOISTURES[chance.nextInt(4)];
      String duration = durations[chance.nextInt(4)];
      double g = 0.3 + 0.35 * chance.nextDouble();
      double d = 0.1 + 0.06 * chance.nextDouble();
      double length = 1.5 + 2 * chance.nextDouble();
      double head = 0.2 + 0.25 * chance.nextDouble();
      double panel = 0.3 + 0.8 * chance.nextDouble();
      double ofPanel = 0.4 + 0.15 * chance.nextDouble();
      double degrees = 60 + 90 * chance.nextDouble();
      double rings = 0.5 + 2 * chance.nextDouble();
      Asked asked =
          Asked.of("nail_resistance")
              .with("diameter_in", "" + d)
              .with("length_in", "" + length)
              .with("head_diameter_in", "" + head)
              .with("shank", shank)
              .with("rings_in", "" + rings)
              .with("specific_gravity", "" + g)
              .with("thickness_in", "" + panel)
              .with("panel_gravity", "" + ofPanel)
              .with("load_duration", duration)
              .with("moisture", moisture)
              .with("temperature_f", "" + degrees);
      double reach = Math.max(0, length - panel);
      double p = shank.equals("ring") ? Math.min(reach, rings) : reach;
      double all = DURATIONS.get(duration) * heat(wetInService(moisture), degrees);
      double wet = crossesTheBorder(moisture) && !shank.equals("ring") ? 0.25 : 1;
      double withdrawal = perInch(shank, g, d) * p * all * wet;
      assertThat(asked.number("withdrawal_lb")).isCloseTo(withdrawal, within(1e-7));
      if (wetInService(moisture)) {
        assertThat(asked.refusal()).as("no pull-through of wet panels").isPresent();
        continue;
      }
      double over =
          panel <= 2.5 * head
              ? 690 * Math.PI * head * ofPanel * ofPanel * panel
              : 1725 * Math.PI * head * head * ofPanel * ofPanel;
      assertThat(asked.number("pull_through_lb")).isCloseTo(over * all, within(1e-7));
      assertThat(asked.number("resistance_lb"))
          .isCloseTo(Math.min(withdrawal, over * all), within(1e-7));
    }
  }

  @Test
  void aScrew_isTheStandardsSentences() {
    Random chance = new Random(12_2_1);
    String[] durations = DURATIONS.keySet().stream().sorted().toArray(String[]::new);
    for (int i = 0; i < 300; i++) {
      boolean isLag = chance.nextBoolean();
      String moisture = MOISTURES[chance.nextInt(4)];
      String duration = durations[chance.nextInt(4)];
      double g = 0.3 + 0.35 * chance.nextDouble();
      double d = isLag ? 0.25 + 0.25 * chance.nextDouble() : 0.14 + 0.1 * chance.nextDouble();
      double length = 2 + 3 * chance.nextDouble();
      double thread = 0.5 + length / 2 * chance.nextDouble();
      double tip = isLag ? 0.25 : 0;
      double side = 0.4 + chance.nextDouble();
      double degrees = 60 + 90 * chance.nextDouble();
      Asked asked =
          Asked.of("screw_resistance")
              .with("screw_kind", isLag ? "lag-screw" : "wood-screw")
              .with("diameter_in", "" + d)
              .with("length_in", "" + length)
              .with("thread_in", "" + thread)
              .with("tip_in", "" + tip)
              .with("specific_gravity", "" + g)
              .with("thickness_in", "" + side)
              .with("load_duration", duration)
              .with("moisture", moisture)
              .with("temperature_f", "" + degrees);
      double perInch = isLag ? 1800 * Math.pow(g, 1.5) * Math.pow(d, 0.75) : 2850 * g * g * d;
      double held = Math.max(0, Math.min(length - side, thread) - tip);
      double expected =
          perInch
              * held
              * DURATIONS.get(duration)
              * (wetInService(moisture) ? 0.7 : 1)
              * heat(wetInService(moisture), degrees);
      assertThat(asked.number("resistance_lb")).isCloseTo(expected, within(1e-7));
    }
  }
}
