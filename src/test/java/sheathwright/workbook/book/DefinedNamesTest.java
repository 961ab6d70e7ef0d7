package sheathwright.workbook.book;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class DefinedNamesTest {

  @Test
  void aNameThatIsTaken_isNotGivenAgain() {
    DefinedNames names = new DefinedNames();
    names.define("nail_length_in", "Tables!$B$4:$B$9");

    assertThatThrownBy(() -> names.define("nail_length_in", "Nails!$B$7"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("nail_length_in stands for Tables!$B$4:$B$9 already");
  }
}
