package sheathwright.cli.pipe;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** What was typed as {@code name=value}, by name. */
public final class NamedValues {

  private NamedValues() {}

  /**
   * All of them, in the order in which they were typed.
   *
   * @param form how each is to be typed
   * @throws ParameterException if one is not of that form, or a name is given twice
   */
  public static Map<String, String> of(List<String> typed, String form, CommandSpec spec) {
    Map<String, String> given = new LinkedHashMap<>();
    for (String each : typed) {
      int equals = each.indexOf('=');
      if (equals < 0) {
        throw new ParameterException(
            spec.commandLine(), "\"%s\" is not of the form %s".formatted(each, form));
      }
      String name = each.substring(0, equals).strip();
      String value = each.substring(equals + 1);
      String before = given.putIfAbsent(name, value);
      if (before != null) {
        throw new ParameterException(
            spec.commandLine(),
            "%s is given more than once, as %s and %s; give it once"
                .formatted(name, before, value));
      }
    }
    return given;
  }
}
