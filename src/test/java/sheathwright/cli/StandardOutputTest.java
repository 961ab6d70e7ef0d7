package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.cli.pipe.StandardOutput;

class StandardOutputTest {

  private static final Path FULL = Path.of("/dev/full");

  @TempDir private Path folder;

  @ParameterizedTest(name = "{0}")
  @CsvSource({"--help", "--version", "help", "functions", "functions --markdown", "help nail"})
  void aCommand_whoseOutputIsLostFails(String command) throws IOException {
    assertLost("No space left on device", command.split(" "));
  }

  @Test
  void fill_whoseOutputIsLostFails() throws IOException {
    Path table =
        Files.writeString(
            folder.resolve("a.csv"),
            "support_spacing_in,edge_spacing_in,field_spacing_in\n" + "16,6,12\n".repeat(2_000));
    assertLost("No space left on device", "fill", "nails_per_sheet", table.toString());
  }

  @Test
  void quote_whoseOutputIsLostFails() throws IOException {
    assertLost("Disk quota exceeded", "quote", "demo-data/quince-hollow", "-o", folder.toString());
  }

  @Test
  void aCommand_whoseFirstTroubleIsAnotherKeepsItsStatus() {
    StringWriter err = new StringWriter();
    int status =
        Main.status(full("No space left on device"), new PrintWriter(err), "functions", "rubbish");
    assertThat(status).isEqualTo(2);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"Broken pipe", "The pipe is being closed", "The pipe has been ended"})
  void aReaderOfAPipe_mayStopReadingQuietly(String reason) {
    StringWriter err = new StringWriter();
    assertThat(Main.status(full(reason), new PrintWriter(err), "functions")).isZero();
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void aFullDevice_losesOutputAndItIsSaid() throws IOException {
    assumeTrue(Files.exists(FULL), "no such device here");
    StringWriter err = new StringWriter();
    try (OutputStream full = new FileOutputStream(FULL.toFile())) {
      int status = Main.status(new StandardOutput(full), new PrintWriter(err), "functions");
      assertThat(status).isEqualTo(3);
    }
    assertThat(err.toString()).startsWith("standard output could not be written: ").hasLineCount(1);
  }

  @Test
  void tooLittleMemory_isSaidInOneLine() {
    StringWriter err = new StringWriter();
    Iterator<Error> thrown = List.<Error>of(new OutOfMemoryError("Java heap space")).iterator();
    OutputStream sink =
        new OutputStream() {
          @Override
          public void write(int octet) {
            if (thrown.hasNext()) {
              throw thrown.next();
            }
          }
        };
    int status = Main.status(new StandardOutput(sink), new PrintWriter(err), "functions");
    assertThat(status).isEqualTo(3);
    assertThat(err.toString()).startsWith("there is not memory enough").hasLineCount(1);
  }

  private static void assertLost(String reason, String... command) {
    StringWriter err = new StringWriter();
    assertThat(Main.status(full(reason), new PrintWriter(err), command)).isEqualTo(3);
    assertThat(err.toString().strip()).isEqualTo("standard output could not be written: " + reason);
  }

  private static StandardOutput full(String reason) {
    return new StandardOutput(
        new OutputStream() {
          @Override
          public void write(int octet) throws IOException {
            throw new IOException(reason);
          }
        });
  }
}
