package sheathwright.workbook.book;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class NamesTest {

  private final Names names = new Names();

  @Test
  void aNameThatIsTaken_saysWhoseItIs_andThenCounts() {
    assertThat(names.taken("sag", "plane")).isEqualTo("sag");
    assertThat(names.taken("sag", "plane")).isEqualTo("plane_sag");
    assertThat(names.taken("sag", "plane")).isEqualTo("plane_sag_2");
    assertThat(names.taken("sag", "plane")).isEqualTo("plane_sag_3");
  }

  @Test
  void counting_leavesOutNumbersThatOthersTook() {
    names.taken("plane_sag_3", "other");
    names.taken("sag", "plane");
    names.taken("sag", "plane");
    assertThat(names.taken("sag", "plane")).isEqualTo("plane_sag_2");
    assertThat(names.taken("sag", "plane")).isEqualTo("plane_sag_4");
  }
}
