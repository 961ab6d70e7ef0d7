package sheathwright.job.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.figure.Amounts;
import sheathwright.figure.RefusedException;

/** A day may carry its time; nobody has to say it. */
class MomentTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2027-05-03|2027-05-03|May 3, 2027",
        "2027-05-03T14:30|2027-05-03T14:30|May 3, 2027, 2:30 PM",
        "2027-05-03 14:30|2027-05-03T14:30|May 3, 2027, 2:30 PM",
        "2027-05-03T14:30:00|2027-05-03T14:30|May 3, 2027, 2:30 PM",
        "May 3, 2027 2:30 pm|2027-05-03T14:30|May 3, 2027, 2:30 PM",
        "5/3/2027 at 12:05 a.m.|2027-05-03T00:05|May 3, 2027, 12:05 AM",
        "3 May 2027 12:00 PM|2027-05-03T12:00|May 3, 2027, 12:00 PM",
      })
  void aMoment_isReadAsItIsWritten(String written, String kept, String spoken) {
    assertThat(Moment.read(written)).hasToString(kept);
    assertThat(Moment.read(kept)).isEqualTo(Moment.read(written));
    assertThat(Moment.spoken(written)).isEqualTo(spoken);
  }

  @ParameterizedTest
  @ValueSource(strings = {"2027-05-03T24:30", "2027-05-03 9:75", "2027-05-03 14:30 pm"})
  void aTimeThatNoDayHas_isRefused(String written) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> Moment.read(written))
        .withMessageContaining("\"" + written + "\" has a time that no day has")
        .withMessageContaining("2027-05-04T14:30");
  }

  @ParameterizedTest
  @ValueSource(strings = {"soon", "14:30", "2027-02-30T14:30", "2027-05-03T", "2027-05-03 noon"})
  void whatIsNoDay_isRefused(String written) {
    assertThatExceptionOfType(RefusedException.class).isThrownBy(() -> Moment.read(written));
  }

  /** Where one of two says no time, only their days are told apart. */
  @ParameterizedTest
  @CsvSource({
    "2027-05-03, 2027-05-04, true",
    "2027-05-03T23:59, 2027-05-04T00:01, true",
    "2027-05-03T10:00, 2027-05-03T14:30, true",
    "2027-05-03T14:30, 2027-05-03T14:30, false",
    "2027-05-03T14:30, 2027-05-03, false",
    "2027-05-03, 2027-05-03T14:30, false",
  })
  void oneOfTwo_isEarlier(String one, String other, boolean isBefore) {
    assertThat(Moment.read(one).isBefore(Moment.read(other))).isEqualTo(isBefore);
    assertThat(Moment.read(other).isBefore(Moment.read(one))).isFalse();
  }

  @Test
  void soManyHoursLater_mayBeTheNextDay() {
    assertThat(Moment.read("2027-05-18T22:30").after(Amounts.hours(4)))
        .isEqualTo("by 2:30 AM on May 19, 2027");
    assertThat(Moment.read("2027-05-18").after(Amounts.hours(4)))
        .isEqualTo("within 4 hours of receipt");
  }

  @Test
  void aDayThatCouldBeItsMonth_isAskedAboutWithItsTimeToo() {
    assertThat(Moment.doubt("10/4/2027 2:30 pm"))
        .hasValue(
            "10/4/2027 is read as October 4, 2027, the month first; write 2027-10-04 to be sure");
    assertThat(Moment.eitherWay("10/4/2027T14:30")).hasValue("write 2027-10-04 or 2027-04-10");
    assertThat(Moment.doubt("2027-10-04T14:30")).isEmpty();
    assertThat(Moment.eitherWay("10/10/2027")).isEmpty();
  }
}
