package sheathwright.fastening;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/** What stands beyond the numbers that a rule was made for is refused where it would count. */
class FasteningRefusalsTest {

  /** The ranges are the texts' own; which numbers stand in them is StatedRangesTest's. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "lag_withdrawal: specific_gravity=0.85, diameter_in=0.25 | specific_gravity is",
        "lag_withdrawal: specific_gravity=0.5, diameter_in=1.3 | diameter_in is",
        "screw_withdrawal: specific_gravity=0.85, diameter_in=0.19 | specific_gravity is",
        "screw_withdrawal: specific_gravity=0.5, diameter_in=0.6 | diameter_in is",
        "nail_withdrawal: specific_gravity=0.85, diameter_in=0.131, shank=ring | specific_gravity is",
        "nail_withdrawal: specific_gravity=0.5, diameter_in=0.25, shank=ring | diameter_in is",
        "nail_pull_through: specific_gravity=0.5, thickness_in=0.5, head_diameter_in=1.1 |"
            + " head_diameter_in is",
        "nail_lateral: diameter_in=0.131, length_in=2.5, bending_yield_psi=100000,"
            + " side_thickness_in=1, side_gravity=0.5, main_gravity=0.85 | main_gravity is",
        "nail_lateral: diameter_in=0.131, length_in=1.5, bending_yield_psi=100000,"
            + " side_thickness_in=1, side_gravity=0.5, main_gravity=0.5 |"
            + " no lateral value may be counted (NDS 2018, 12.1.6 (secondary source)); take a longer",
        "nailing_schedule: code=irc-2021, thickness_in=1.6, nail=10d-common, wind_mph=110,"
            + " exposure=b, specific_gravity=0.42 | thickness_in is",
        "nailing_schedule: code=irc-2021, thickness_in=0.5, nail=8d-common, wind_mph=140,"
            + " exposure=b, specific_gravity=0.42 | by IRC R301.2.1.1",
        "nailing_schedule: code=irc-2021, thickness_in=5/16, nail=8d-common, wind_mph=110,"
            + " exposure=b, specific_gravity=0.42 | the row of irc-2021 for 8d-common is not printed",
        "alternate_schedule: code=irc-2018, thickness_in=1.6, alternate=nail-0.097, wind_mph=105,"
            + " specific_gravity=0.42 | thickness_in is",
        "alternate_schedule: code=irc-2018, thickness_in=0.5, alternate=nail-0.097, wind_mph=999,"
            + " specific_gravity=0.42 | wind_mph is",
        "alternate_schedule: code=irc-2018, thickness_in=0.5, alternate=nail-0.097, wind_mph=105,"
            + " specific_gravity=0.85 | specific_gravity is",
        "alternate_schedule: code=irc-2018, thickness_in=17/32, alternate=nail-0.097, wind_mph=105,"
            + " specific_gravity=0.42 | irc-2018 does not print nail-0.097 for this thickness",
        "high_wind_schedule: wind_mph=181, exposure=b, specific_gravity=0.42 | wind_mph is",
        "high_wind_schedule: wind_mph=120, exposure=b, specific_gravity=0.41 | specific_gravity is",
        "nails_per_sheet: edge_spacing_in=6, field_spacing_in=12, support_spacing_in=97 | support_spacing_in is",
        "nails_per_piece: edge_spacing_in=6, field_spacing_in=12, first_support_in=0, piece_length_in=48, piece_width_in=24,"
            + " support_spacing_in=97 | support_spacing_in is",
        "nails_per_piece: edge_spacing_in=6, field_spacing_in=12, first_support_in=20, piece_length_in=48, piece_width_in=24,"
            + " support_spacing_in=16 | the first support must lie under the piece",
        "nails_per_piece: edge_spacing_in=6, field_spacing_in=12, first_support_in=20, piece_length_in=18, piece_width_in=24,"
            + " support_spacing_in=24 | the first support must lie under the piece",
        "nail_order: nails=1000001 | nails is",
        "nail_order: nails=1000, waste_pct=101 | waste_pct is",
        "nail_order: nails=1000, nails_per_box=0.5 | nails_per_box is",
        "nail_order: nails=1000, nails_per_pound=0.5 | nails_per_pound is",
        "nail_order: nails=1000, nails_per_coil=0.5 | nails_per_coil is",
        "board_nails: crossings=2.5, sound_nails=0 | crossings is",
        "board_nails: crossings=400, sound_nails=0.5 | sound_nails is",
        "board_nails: crossings=400, sound_nails=0, nails_each=5 | nails_each is",
        "re_nailing: old_nails_count=yes, old_spacing_in=49, sound_nails=45,"
            + " support_spacing_in=24 | old_spacing_in is",
        "clip_spacing: resistance_lb=2001, screws_per_clip=2, uplift_psf=60, panel_cover_in=16 |"
            + " resistance_lb is",
        "clip_spacing: resistance_lb=80, screws_per_clip=1.5, uplift_psf=60, panel_cover_in=16 |"
            + " screws_per_clip is",
        "clip_spacing: resistance_lb=80, screws_per_clip=2, uplift_psf=0.5, panel_cover_in=16 |"
            + " uplift_psf is",
        "clip_spacing: resistance_lb=80, screws_per_clip=2, uplift_psf=60, panel_cover_in=50 |"
            + " panel_cover_in is",
        "clip_spacing_limit: resistance_lb=80, screws_per_clip=2, seam_psf=90, clip_lb=400,"
            + " panel_cover_in=16, tested_spacing_in=24, maker_most_in=24, uplift_psf=501 |"
            + " uplift_psf is",
        "weakest_link: uplift_psf=501, seam_psf=90, clip_lb=400, panel_cover_in=16, screw_lb=80,"
            + " screws_per_clip=2, clip_spacing_in=24, nail_lb=60, nail_spacing_in=6,"
            + " support_spacing_in=24 | uplift_psf is",
        "nail_spacing_for_uplift: resistance_lb=2001, uplift_psf=60, support_spacing_in=24 |"
            + " resistance_lb is",
        "nail_spacing_for_uplift: resistance_lb=60, uplift_psf=501, support_spacing_in=24 |"
            + " uplift_psf is",
        "nail_spacing_for_uplift: resistance_lb=60, uplift_psf=60, support_spacing_in=97 |"
            + " support_spacing_in is"
      })
  void whatNoRuleIsFor_isRefused(String call, String reason) {
    assertThat(Asked.line(call).refusal().orElseThrow()).contains(reason);
  }
}
