package sheathwright.proof;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import sheathwright.job.table.CsvFile;

/** The files that the program carries, whether it lies in a jar or in a folder of classes. */
public final class Shipped {

  private static final String TOP = "sheathwright/";

  private Shipped() {}

  /** One file, if the program carries it. */
  static Optional<InputStream> file(String path) {
    return Optional.ofNullable(Shipped.class.getResourceAsStream("/" + TOP + path));
  }

  /** A table that the program carries. */
  public static CsvFile table(String path) {
    try (InputStream stream = file(path).orElseThrow()) {
      return CsvFile.read(stream, path);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** Where the program lies: a jar, or a folder of classes. */
  static Path place() {
    try {
      return Path.of(Shipped.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** The bytes of all files below a folder, by their paths below it. */
  public static SortedMap<String, byte[]> below(String folder) {
    Path place = place();
    try {
      if (Files.isDirectory(place)) {
        return bytes(place.resolve(TOP + folder));
      }
      URI jar = URI.create("jar:" + place.toUri());
      try (FileSystem inside = FileSystems.newFileSystem(jar, Map.of())) {
        return bytes(inside.getPath(TOP + folder));
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static SortedMap<String, byte[]> bytes(Path folder) throws IOException {
    SortedMap<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        String path = folder.relativize(file).toString().replace('\\', '/');
        files.put(path, Files.readAllBytes(file));
      }
    }
    return files;
  }
}
