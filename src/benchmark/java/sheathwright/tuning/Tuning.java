package sheathwright.tuning;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.ToolProvider;

/**
 * Half and double of a constant of a search, by counted work: the class is compiled again with the
 * other value, and the same lists are cut with the same work allowed.
 */
public final class Tuning {

  private static final Path SOURCES = Path.of("src", "main", "java");

  private Tuning() {}

  /**
   * Takes what measures (a class of ours that makes a list of cost, bound and work from a folder
   * and the millions of turns allowed for each list), the folder, the millions, and constants, each
   * {@code Class.CONSTANT} for half and double or {@code Class.CONSTANT=one;other} for others.
   */
  public static void main(String[] arguments) throws Exception {
    Measured own = measured(arguments, Files.createTempDirectory("as-it-is"));
    System.out.println(own.line("as it is", own));
    for (String constant : List.of(arguments).subList(3, arguments.length)) {
      String[] parts = constant.split("=");
      String[] name = parts[0].split("\\.");
      String[] values =
          parts.length > 1 ? parts[1].split(";") : new String[] {"0.5 * (%s)", "2 * (%s)"};
      for (String value : values) {
        Measured other = measured(arguments, changed(name[0], name[1], value));
        System.out.println(other.line(parts[0] + " " + value.replace(" * (%s)", "x"), own));
        System.out.flush();
      }
    }
  }

  @SuppressWarnings("unchecked") // the field is of the kind that its constant says
  private static Measured measured(String[] arguments, Path changed) throws Exception {
    Object measuring =
        new CountingClasses(changed).loadClass(arguments[0]).getDeclaredConstructor().newInstance();
    return new Measured(
        ((BiFunction<Path, Long, List<long[]>>) measuring)
            .apply(Path.of(arguments[1]), Long.parseLong(arguments[2]) * 1_000_000));
  }

  private static Path changed(String type, String constant, String value) throws IOException {
    Path source;
    try (Stream<Path> files = Files.walk(SOURCES)) {
      source = files.filter(file -> file.endsWith(type + ".java")).findFirst().orElseThrow();
    }
    Matcher declared =
        Pattern.compile("(static final (int|long|double) " + constant + " =\\s*)([^;]+);")
            .matcher(Files.readString(source));
    if (!declared.find()) {
      throw new IllegalArgumentException("no constant " + constant + " in " + source);
    }
    Path folder = Files.createTempDirectory(type);
    Path copy = folder.resolve(type + ".java");
    String given = "(" + declared.group(2) + ") (" + value.replace("%s", declared.group(3)) + ")";
    Files.writeString(
        copy, declared.replaceFirst(Matcher.quoteReplacement(declared.group(1) + given + ";")));
    int status =
        ToolProvider.getSystemJavaCompiler()
            .run(null, null, null, "-proc:none", "-d", folder.toString(), copy.toString());
    if (status != 0) {
      throw new IllegalArgumentException(given + " does not compile for " + constant);
    }
    return folder;
  }
}
