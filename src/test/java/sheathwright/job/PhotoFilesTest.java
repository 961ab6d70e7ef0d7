package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.table.JobText;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;

/** The files that a table of photographs names are pictures in the job's folder. */
class PhotoFilesTest {

  /** How a JPEG file begins, by its standard: start of image, and the next marker. */
  private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE0};

  @TempDir Path folder;

  @BeforeEach
  void aJob() throws IOException {
    for (Map.Entry<String, String> table : JobText.small().tables().entrySet()) {
      Files.writeString(folder.resolve(table.getKey() + ".csv"), table.getValue());
    }
    Files.createDirectory(folder.resolve("photos"));
  }

  private void photo(String name) throws IOException {
    Files.writeString(
        folder.resolve("photos.csv"), "photo,sheet,view\n" + name + ",front-1-1,wide\n");
  }

  private List<Problem> problems() {
    ProblemsException wrong = catchThrowableOfType(ProblemsException.class, () -> Job.in(folder));
    return wrong == null ? List.of() : wrong.problems();
  }

  private List<Problem> asked() {
    return Job.in(folder).questions().stream()
        .filter(question -> question.file().equals("photos.csv"))
        .toList();
  }

  @Test
  void aPictureInTheFolder_isTaken() throws IOException {
    Files.write(folder.resolve("photos/a.jpg"), JPEG);
    photo("photos/a.jpg");
    assertThat(asked()).isEmpty();
  }

  @Test
  void onePictureThatIsNotThereYet_isAskedAbout() throws IOException {
    photo("photos/a.jpg");
    assertThat(asked())
        .singleElement()
        .hasToString(
            "photos.csv, line 2, column photo: there is no file \"photos/a.jpg\" in the job's folder; a page that shows it says that it is missing; put it there, or is another name meant?");
  }

  @ParameterizedTest
  @CsvSource({
    "photos, \"photos\" is not a JPEG or PNG picture; save it as one of the two",
    "photos.csv, \"photos.csv\" is not a JPEG or PNG picture; save it as one of the two",
    "../x.jpg, \"../x.jpg\" lies outside the job's folder; copy it there",
    "/etc/hosts, \"/etc/hosts\" lies outside the job's folder; copy it there"
  })
  void whatIsNoPicture_isSaid(String name, String said) throws IOException {
    photo(name);
    assertThat(problems())
        .singleElement()
        .asString()
        .startsWith("photos.csv, line 2, column photo: " + said);
  }

  @Test
  void textUnderAPicturesName_isSaid() throws IOException {
    Files.writeString(folder.resolve("photos/a.jpg"), "<html>", StandardCharsets.UTF_8);
    photo("photos/a.jpg");
    assertThat(problems()).singleElement().asString().contains("is not a JPEG or PNG picture");
  }

  /** 20 MB are allowed, a byte more is not. */
  @Test
  void aPictureOf20Megabytes_isTheGreatest() throws IOException {
    photo("photos/a.jpg");
    try (RandomAccessFile file =
        new RandomAccessFile(folder.resolve("photos/a.jpg").toFile(), "rw")) {
      file.write(JPEG);
      file.setLength(20_000_000);
      assertThat(problems()).isEmpty();
      file.setLength(24_300_000);
    }
    assertThat(problems())
        .singleElement()
        .hasToString(
            "photos.csv, line 2, column photo: \"photos/a.jpg\" has 24.3 MB; a picture has at most 20 MB: save it smaller, 1,200 pixels are enough");
  }
}
