package sheathwright.workbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;

/**
 * LibreOffice without a screen, which reads workbooks, recalculates them if it is told to, and
 * writes them again.
 */
public final class LibreOffice {

  /**
   * Whether formulas are recalculated when a file is read: its own setting, whose default is to
   * trust the file.
   */
  public enum Recalculation {
    ALWAYS(0),
    NEVER(1);

    private final int setting;

    Recalculation(int setting) {
      this.setting = setting;
    }
  }

  private static final int FILES_AT_ONCE = 40;
  private static final int MINUTES_AT_MOST = 8;

  private LibreOffice() {}

  /** Reads the files and writes them, recalculated, into another folder under their own names. */
  public static void convert(List<Path> files, Path folder, Recalculation recalculation)
      throws IOException, InterruptedException {
    Files.createDirectories(folder);
    // One process works on one processor: as many side by side as there are, with files by turns.
    int processes = Math.min(files.size(), Runtime.getRuntime().availableProcessors());
    ExecutorService sideBySide = Executors.newFixedThreadPool(Math.max(1, processes));
    try {
      List<Future<?>> running = new ArrayList<>();
      for (int first = 0; first < processes; first++) {
        List<Path> some = new ArrayList<>();
        for (int i = first; i < files.size(); i += processes) {
          some.add(files.get(i));
        }
        running.add(
            sideBySide.submit(
                () -> {
                  convertAlone(some, folder, recalculation);
                  return null;
                }));
      }
      for (Future<?> each : running) {
        each.get();
      }
    } catch (ExecutionException failed) {
      throw new IOException(failed.getCause());
    } finally {
      sideBySide.shutdownNow();
    }
  }

  private static void convertAlone(List<Path> files, Path folder, Recalculation recalculation)
      throws IOException, InterruptedException {
    Path profile = Files.createTempDirectory("libreoffice-profile");
    Files.createDirectories(profile.resolve("user"));
    Files.writeString(profile.resolve("user/registrymodifications.xcu"), settings(recalculation));
    for (int first = 0; first < files.size(); first += FILES_AT_ONCE) {
      List<Path> some = files.subList(first, Math.min(files.size(), first + FILES_AT_ONCE));
      convert(some, folder, profile, "xlsx:Calc MS Excel 2007 XML", ".xlsx");
    }
  }

  /** Prints the files into another folder, each into a file of pages under its own name. */
  static void print(List<Path> files, Path folder) throws IOException, InterruptedException {
    Path profile = Files.createTempDirectory("libreoffice-profile");
    convert(files, folder, profile, "pdf", ".pdf");
  }

  private static void convert(
      List<Path> files, Path folder, Path profile, String format, String ending)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add("soffice");
    command.add("-env:UserInstallation=" + profile.toUri());
    command.addAll(List.of("--headless", "--norestore", "--convert-to", format));
    command.addAll(List.of("--outdir", folder.toString()));
    files.forEach(file -> command.add(file.toString()));
    Path log = Files.createTempFile("libreoffice", ".log");
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
    if (!process.waitFor(MINUTES_AT_MOST, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new IOException("LibreOffice took too long: " + Files.readString(log));
    }
    for (Path file : files) {
      String made = file.getFileName().toString().replace(".xlsx", ending);
      if (!Files.exists(folder.resolve(made))) {
        throw new IOException("LibreOffice did not write " + file + ": " + Files.readString(log));
      }
    }
  }

  private static String settings(Recalculation recalculation) {
    return """
        <?xml version="1.0" encoding="UTF-8"?>
        <oor:items xmlns:oor="http://openoffice.org/2001/registry">
        <item oor:path="/org.openoffice.Office.Calc/Formula/Load">
        <prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>%d</value></prop></item>
        </oor:items>
        """
        .formatted(recalculation.setting);
  }
}
