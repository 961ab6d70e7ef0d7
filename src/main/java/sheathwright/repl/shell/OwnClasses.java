package sheathwright.repl.shell;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.tools.StandardJavaFileManager;
import javax.tools.StandardLocation;

/**
 * The program's own classes, and those of other folders, as the compiler sees them. The libraries
 * beside them are kept from it: it would open and list every one of them before the first line, and
 * no line needs them.
 */
public final class OwnClasses implements AutoCloseable {

  private final FileSystem jar;
  private final Set<Path> roots = new LinkedHashSet<>();

  /** Those of the folder or jar that this class comes from. */
  public OwnClasses() {
    try {
      Path place =
          Path.of(OwnClasses.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      jar = Files.isDirectory(place) ? null : FileSystems.newFileSystem(place, (ClassLoader) null);
      roots.add(jar == null ? place : jar.getPath("/"));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    } catch (URISyntaxException impossible) {
      throw new IllegalStateException(impossible);
    }
    Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
        .map(Path::of)
        .filter(Files::isDirectory)
        .forEach(roots::add);
  }

  /** The same files, with these classes alone beside those of Java. */
  public StandardJavaFileManager alone(StandardJavaFileManager files) {
    try {
      files.setLocationFromPaths(StandardLocation.CLASS_PATH, roots);
      files.setLocationFromPaths(StandardLocation.ANNOTATION_PROCESSOR_PATH, List.of()); // none
      return files;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  @Override
  public void close() {
    if (jar != null) {
      try {
        jar.close();
      } catch (IOException broken) {
        throw new UncheckedIOException(broken);
      }
    }
  }
}
