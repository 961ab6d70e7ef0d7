package sheathwright.job.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DatesTest {

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-05-03|2026-05-03",
        "May 3, 2026|2026-05-03",
        "may 3 2026|2026-05-03",
        "Sept. 30, 2026|2026-09-30",
        "3 May 2026|2026-05-03",
        "5/3/2026|2026-05-03",
        "12/31/2026|2026-12-31",
        "2/29/2028|2028-02-29"
      })
  void dates_areReadAsTheyAreTyped(String typed, String day) {
    assertThat(Dates.read(typed)).hasToString(day);
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"soon", "2026-13-01", "Ma 3, 2026", "Mai 3, 2026", "1926-05-03", "46145"})
  void whatIsNoDate_isRefusedWithSomethingRight(String typed) {
    assertThatThrownBy(() -> Dates.read(typed))
        .hasMessage(
            "\"%s\" is not a date of this century; write year-month-day, such as 2027-05-04, or May 4, 2027, or month/day/year",
            typed);
  }
}
