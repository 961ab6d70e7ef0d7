package sheathwright.repl.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.tools.ToolProvider;

/** What the reader writes, compiled as a class by itself. */
public final class ExportedClass {

  private ExportedClass() {}

  /** Compiles a class of the name {@code Exported} in a folder; it must compile. */
  public static Class<?> compiled(Path folder, String source) throws Exception {
    Path file = Files.writeString(folder.resolve("Exported.java"), source);
    ByteArrayOutputStream errors = new ByteArrayOutputStream();
    int failed =
        ToolProvider.getSystemJavaCompiler()
            .run(
                null,
                null,
                errors,
                "-proc:none",
                "-nowarn",
                "-d",
                folder.toString(),
                "-cp",
                System.getProperty("java.class.path"),
                file.toString());
    assertThat(failed).as(errors + "\n" + source).isZero();
    return new URLClassLoader(
            new URL[] {folder.toUri().toURL()}, ExportedClass.class.getClassLoader())
        .loadClass("Exported");
  }
}
