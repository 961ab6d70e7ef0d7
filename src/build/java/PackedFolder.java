import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Packs a folder into a .zip file that keeps who may run what, in one order and with one date: the
 * same files give the same bytes. Arguments: the folder, the file.
 */
final class PackedFolder {

  private static final FileTime DATE = FileTime.from(Instant.parse("2020-01-01T00:00:00Z"));

  private PackedFolder() {}

  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]).toAbsolutePath().normalize();
    URI file = URI.create("jar:" + Path.of(arguments[1]).toAbsolutePath().normalize().toUri());
    List<Path> all;
    try (Stream<Path> walk = Files.walk(folder)) {
      all = walk.sorted().toList();
    }
    Map<String, String> settings = Map.of("create", "true", "enablePosixFileAttributes", "true");
    try (FileSystem zip = FileSystems.newFileSystem(file, settings)) {
      for (Path each : all) {
        Path packed = zip.getPath("/").resolve(folder.getParent().relativize(each).toString());
        if (Files.isDirectory(each)) {
          Files.createDirectories(packed);
        } else {
          Files.copy(each, packed, StandardCopyOption.REPLACE_EXISTING);
        }
        boolean isRun = Files.isDirectory(each) || Files.isExecutable(each);
        Files.setAttribute(
            packed,
            "zip:permissions",
            PosixFilePermissions.fromString(isRun ? "rwxr-xr-x" : "rw-r--r--"),
            LinkOption.NOFOLLOW_LINKS);
        Files.setLastModifiedTime(packed, DATE);
      }
    }
  }
}
