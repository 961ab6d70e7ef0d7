package sheathwright.workbook.own;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.pct;
import static sheathwright.figure.Amounts.sqft;
import static sheathwright.sheathing.layout.SheetCounts.sheetsByArea;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.figure.RefusedException;

class FigureBookTest {

  @TempDir Path folder;

  @Test
  void theSameFigures_giveTheSameBytes() {
    assertThat(book().bytes()).isEqualTo(book().bytes());
  }

  private static FigureBook book() {
    return FigureBook.titled("A deck")
        .section("Order")
        .figure("sheets", sheetsByArea(sqft(700), pct(10)));
  }

  @Test
  void figure_refusesWhatNoCellCanHold() {
    FigureBook book = book();
    assertThatThrownBy(() -> book.figure("sheets", in(1)))
        .isInstanceOf(RefusedException.class)
        .hasMessage(
            "\"sheets\" is named already in this workbook; name each of its figures otherwise, such as sheets 2");
    assertThatThrownBy(() -> book.figure("2 × 6", in(1)))
        .isInstanceOf(RefusedException.class)
        .hasMessageStartingWith("\"2 × 6\" names no cell; write a letter, then");
    assertThatThrownBy(() -> book.figure("too much", sheetsByArea(sqft(700), pct(140))))
        .isInstanceOf(RefusedException.class)
        .hasMessageStartingWith(
            "too much has no value: waste_pct is 140; it must be from 0 to 100");
    assertThatThrownBy(() -> FigureBook.titled(" ")).isInstanceOf(RefusedException.class);
  }

  @Test
  void save_keepsWhatIsThere() {
    Path file = folder.resolve("deck.xlsx");
    book().save(file);
    assertThatThrownBy(() -> book().save(file))
        .isInstanceOf(RefusedException.class)
        .hasMessage(file + ": it exists and is kept; name another, or move it elsewhere");
  }

  @Test
  void aSavedBook_isFinished() {
    FigureBook book = book();
    book.save(folder.resolve("deck.xlsx"));
    assertThatThrownBy(() -> book.note("more")).isInstanceOf(IllegalStateException.class);
  }
}
