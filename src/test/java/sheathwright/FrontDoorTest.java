package sheathwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Which rooms are the library's API: each says so, and a call of one needs no room that is not. */
class FrontDoorTest {

  static final String IS = "<p>Part of the library's API.";
  static final String IS_NOT = "<p>Not API: it may change with any version.";

  private static final Pattern SHOWN =
      Pattern.compile("<sourceFileInclude>([^*<]*)/\\*\\*/\\*\\.java<");

  private static final Path SOURCES = Path.of("src", "main", "java");

  private static List<Path> rooms() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      return files.filter(file -> file.endsWith("package-info.java")).sorted().toList();
    }
  }

  /** The packages that say that they are API. */
  static Set<String> api() throws IOException {
    Set<String> api = new TreeSet<>();
    for (Path room : rooms()) {
      if (Files.readString(room).contains(IS)) {
        api.add(SOURCES.relativize(room.getParent()).toString().replace('/', '.'));
      }
    }
    return api;
  }

  @Test
  void everyRoom_saysWhetherItIsApi_andApiSaysSinceWhen() throws IOException {
    for (Path room : rooms()) {
      String text = Files.readString(room);
      boolean isApi = text.contains(IS);
      assertThat(text.contains(IS_NOT)).as(room.toString()).isNotEqualTo(isApi);
      assertThat(text.contains("\n * @since 0.")).as(room.toString()).isEqualTo(isApi);
    }
    assertThat(api()).contains("sheathwright.figure", "sheathwright.workbook.own");
  }

  @Test
  void whatApiTakesAndGives_isApi() throws Exception {
    Set<String> api = api();
    Set<String> strangers = new TreeSet<>();
    for (String room : api) {
      for (Class<?> type : typesOf(room)) {
        for (Class<?> named : namedBy(type)) {
          boolean isOurs = named.getPackageName().startsWith("sheathwright");
          boolean isJava = named.getPackageName().startsWith("java.");
          if (isOurs ? !api.contains(named.getPackageName()) : !isJava && !named.isPrimitive()) {
            strangers.add(type.getName() + " names " + named.getName());
          }
        }
      }
    }
    assertThat(strangers).isEmpty();
  }

  /** What is published as Javadoc is what says that it is API. */
  @Test
  void theBuild_publishesWhatIsApi() throws IOException {
    String pom = Files.readString(Path.of("pom.xml"));
    List<String> shown =
        SHOWN.matcher(pom).results().map(room -> room.group(1).replace('/', '.')).toList();
    Set<String> published = new TreeSet<>();
    for (Path room : rooms()) {
      String name = SOURCES.relativize(room.getParent()).toString().replace('/', '.');
      if (shown.stream().anyMatch(each -> (name + ".").startsWith(each + "."))) {
        published.add(name);
      }
    }
    assertThat(published).isEqualTo(api());
  }

  private static List<Class<?>> typesOf(String room) throws Exception {
    List<Class<?>> types = new ArrayList<>();
    try (Stream<Path> files = Files.list(SOURCES.resolve(room.replace('.', '/')))) {
      for (Path file : files.filter(each -> each.toString().endsWith(".java")).toList()) {
        String name = file.getFileName().toString().replace(".java", "");
        if (!name.equals("package-info")) {
          addPublic(types, Class.forName(room + "." + name));
        }
      }
    }
    return types;
  }

  private static void addPublic(List<Class<?>> types, Class<?> type) {
    if (Modifier.isPublic(type.getModifiers())) {
      types.add(type);
      Arrays.stream(type.getDeclaredClasses()).forEach(inner -> addPublic(types, inner));
    }
  }

  private static Set<Class<?>> namedBy(Class<?> type) {
    List<Type> named = new ArrayList<>();
    for (Method method : type.getDeclaredMethods()) {
      if (Modifier.isPublic(method.getModifiers()) && !method.isSynthetic()) {
        named.add(method.getGenericReturnType());
        named.addAll(List.of(method.getGenericParameterTypes()));
      }
    }
    for (Constructor<?> made : type.getDeclaredConstructors()) {
      if (Modifier.isPublic(made.getModifiers())) {
        named.addAll(List.of(made.getGenericParameterTypes()));
      }
    }
    for (Field field : type.getDeclaredFields()) {
      if (Modifier.isPublic(field.getModifiers())) {
        named.add(field.getGenericType());
      }
    }
    Set<Class<?>> classes = new java.util.HashSet<>();
    named.forEach(each -> add(classes, each));
    return classes;
  }

  private static void add(Set<Class<?>> classes, Type type) {
    if (type instanceof Class<?> named) {
      classes.add(named.isArray() ? named.getComponentType() : named);
    } else if (type instanceof ParameterizedType generic) {
      add(classes, generic.getRawType());
      Arrays.stream(generic.getActualTypeArguments()).forEach(each -> add(classes, each));
    } else if (type instanceof WildcardType wild) {
      Arrays.stream(wild.getUpperBounds()).forEach(each -> add(classes, each));
    }
  }
}
