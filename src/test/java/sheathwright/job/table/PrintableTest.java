package sheathwright.job.table;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PrintableTest {

  @Test
  void printable_showsWhatSteersATerminalAsCodes() {
    assertThat(Printable.line("a\u001b[2J\u0007\u0000b\u202ec\u2069\rd\te\nf"))
        .isEqualTo("a\\u001b[2J\\u0007\\u0000b\\u202ec\\u2069\\u000dd\\u0009e\\u000af");
    assertThat(Printable.lines("a\nb\u009b")).isEqualTo("a\nb\\u009b");
  }

  @Test
  void printable_leavesTextAlone() {
    String text = "Süd, 16-9 1/4\", 5 % · “x” 東 🏠";
    assertThat(Printable.line(text)).isEqualTo(text);
  }

  @Test
  void aCell_mayHoldTabsAndLines() {
    assertThat("\t\n\r a".codePoints()).noneMatch(Printable::isForeign);
    assertThat("\u0000\u001b\u0085\u2028\u202a".codePoints()).allMatch(Printable::isForeign);
  }
}
