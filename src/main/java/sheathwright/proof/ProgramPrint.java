package sheathwright.proof;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import sheathwright.job.life.PhotoRules;

/**
 * What tells the program, or a set of files that it carries, from any other: SHA-256 (FIPS 180-4),
 * as 64 digits.
 *
 * @param what it is of
 * @param digits the fingerprint
 * @param about how many files it is taken of, or which
 */
public record ProgramPrint(String what, String digits, String about) {

  /** That of the program: its jar, or its classes where it runs from a folder of them. */
  public static ProgramPrint ofProgram() {
    Path place = Shipped.place();
    if (Files.isDirectory(place)) {
      return of("program", Shipped.below(""), "classes in a folder");
    }
    try {
      String digits = PhotoRules.hash(Files.readAllBytes(place));
      return new ProgramPrint("program", digits, String.valueOf(place.getFileName()));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** That of the published tables that the program computes by. */
  public static ProgramPrint ofTables() {
    return of("tables", Shipped.below("published"), "published tables");
  }

  /** That of the certified cases. */
  public static ProgramPrint ofCases() {
    return of("cases", Shipped.below(CertifiedCases.FOLDER), "tables of certified cases");
  }

  /** That of many files: of each one's own fingerprint and path, listed as sha256sum does. */
  static ProgramPrint of(String what, SortedMap<String, byte[]> files, String name) {
    StringBuilder list = new StringBuilder();
    files.forEach(
        (path, bytes) ->
            list.append(PhotoRules.hash(bytes)).append("  ").append(path).append('\n'));
    String digits = PhotoRules.hash(list.toString().getBytes(StandardCharsets.UTF_8));
    return new ProgramPrint(what, digits, files.size() + " " + name);
  }
}
