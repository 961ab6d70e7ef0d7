package sheathwright.proof;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.SortedMap;

/**
 * What tells one set of files from any other: SHA-256 (FIPS 180-4), as 64 digits.
 *
 * @param what it is of
 * @param digits the fingerprint
 * @param about how many files it is taken of, or which
 */
public record Fingerprint(String what, String digits, String about) {

  private static final int AT_ONCE = 1 << 16;

  /** That of the program: its jar, or its classes where it runs from a folder of them. */
  public static Fingerprint ofProgram() {
    Path place = Shipped.place();
    return Files.isDirectory(place)
        ? of("program", Shipped.below(""), "classes in a folder")
        : new Fingerprint("program", digits(place), String.valueOf(place.getFileName()));
  }

  /** That of the published tables that the program computes by. */
  public static Fingerprint ofTables() {
    return of("tables", Shipped.below("published"), "published tables");
  }

  /** That of the certified cases. */
  public static Fingerprint ofCases() {
    return of("cases", Shipped.below(CertifiedCases.FOLDER), "tables of certified cases");
  }

  /**
   * That of many files: of a list of each one's own fingerprint and path, as sha256sum writes it.
   */
  static Fingerprint of(String what, SortedMap<String, byte[]> files, String name) {
    MessageDigest all = sha256();
    files.forEach(
        (path, bytes) -> {
          String line = hex(sha256().digest(bytes)) + "  " + path + "\n";
          all.update(line.getBytes(StandardCharsets.UTF_8));
        });
    return new Fingerprint(what, hex(all.digest()), files.size() + " " + name);
  }

  private static String digits(Path file) {
    MessageDigest digest = sha256();
    try (InputStream stream = Files.newInputStream(file)) {
      byte[] part = new byte[AT_ONCE];
      for (int read = stream.read(part); read >= 0; read = stream.read(part)) {
        digest.update(part, 0, read);
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return hex(digest.digest());
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static String hex(byte[] digest) {
    return HexFormat.of().formatHex(digest);
  }
}
