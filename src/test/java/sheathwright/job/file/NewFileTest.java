package sheathwright.job.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.job.table.ProblemsException;

class NewFileTest {

  private static final byte[] OLD = {1, 2, 3};
  private static final byte[] NEW = {4, 5, 6, 7};

  @TempDir private Path folder;

  @Test
  void newFile_isWrittenWholeAndLeavesNoDraft() throws IOException {
    Path place = folder.resolve("quote.xlsx");
    NewFile.at(place, false).write(NEW);
    assertThat(place).hasBinaryContent(NEW);
    assertThat(names()).containsExactly("quote.xlsx");
  }

  @Test
  void newFile_keepsAFileThatExists() throws IOException {
    Path place = Files.write(folder.resolve("quote.xlsx"), OLD);
    assertThat(messageOf(place))
        .isEqualTo(place + ": it exists and is kept; add --force to replace it, or name another");
    assertThat(place).hasBinaryContent(OLD);
  }

  @Test
  void newFile_replacesAFileWhereItMay() throws IOException {
    Path place = Files.write(folder.resolve("quote.xlsx"), OLD);
    NewFile.at(place, true).write(NEW);
    assertThat(place).hasBinaryContent(NEW);
    assertThat(names()).containsExactly("quote.xlsx");
  }

  @Test
  void newFile_keepsAFileThatWasMadeMeanwhile() throws IOException {
    Path place = folder.resolve("quote.xlsx");
    NewFile file = NewFile.at(place, false);
    Files.write(place, OLD);
    assertThatThrownBy(() -> file.write(NEW))
        .isInstanceOf(ProblemsException.class)
        .hasMessage(place + ": something else made it in the meantime; it is kept");
    assertThat(place).hasBinaryContent(OLD);
    assertThat(names()).containsExactly("quote.xlsx");
  }

  @Test
  void newFile_needsAFolderToStandIn() {
    Path place = folder.resolve("nowhere").resolve("quote.xlsx");
    assertThat(messageOf(place)).isEqualTo(place + ": its folder does not exist; make it first");
    assertThat(folder.resolve("nowhere")).doesNotExist();
  }

  @Test
  void newFile_isNotAFolder() {
    assertThat(messageOf(folder)).isEqualTo(folder + ": it is a folder; name a file in it");
  }

  @Test
  void newFile_leavesNothingHalfWrittenWhereItCannotBePutInPlace() throws IOException {
    Path place = folder.resolve("quote.xlsx");
    NewFile file = NewFile.at(place, true);
    Path inTheWay = Files.createDirectories(place);
    Files.write(inTheWay.resolve("kept.txt"), OLD);
    assertThatThrownBy(() -> file.write(NEW)).isInstanceOf(ProblemsException.class);
    assertThat(inTheWay.resolve("kept.txt")).hasBinaryContent(OLD);
    assertThat(names()).containsExactly("quote.xlsx");
  }

  @Test
  void newFile_leavesNothingHalfWrittenWhereItsFolderHasGone() throws IOException {
    Path gone = Files.createDirectory(folder.resolve("gone"));
    NewFile file = NewFile.at(gone.resolve("quote.xlsx"), false);
    Files.delete(gone);
    assertThatThrownBy(() -> file.write(NEW)).isInstanceOf(ProblemsException.class);
    assertThat(names()).isEmpty();
  }

  private List<String> names() throws IOException {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.map(entry -> entry.getFileName().toString()).toList();
    }
  }

  private static String messageOf(Path place) {
    return catchThrowableOfType(ProblemsException.class, () -> NewFile.at(place, false))
        .getMessage();
  }
}
