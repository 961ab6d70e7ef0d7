package sheathwright.repl.shell;

import java.io.File;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.util.HashMap;
import java.util.Map;
import jdk.jshell.execution.LoaderDelegate;
import jdk.jshell.spi.ExecutionControl.ClassBytecodes;
import jdk.jshell.spi.ExecutionControl.ClassInstallException;
import jdk.jshell.spi.ExecutionControl.InternalException;

/**
 * Loads the classes of a session's snippets, each made so that it can neither end the program nor
 * run on for ever.
 */
final class SnippetLoader extends URLClassLoader implements LoaderDelegate {

  private final Lines lines;
  private final Map<String, byte[]> declared = new HashMap<>();
  private final Map<String, Class<?>> loaded = new HashMap<>();

  SnippetLoader(Lines lines) {
    super(new URL[0], SnippetLoader.class.getClassLoader());
    this.lines = lines;
  }

  /** The session that a class belongs to, or null. */
  static Lines linesOf(Class<?> type) {
    return type.getClassLoader() instanceof SnippetLoader loader ? loader.lines : null;
  }

  @Override
  public void load(ClassBytecodes[] classes) throws ClassInstallException {
    boolean[] isLoaded = new boolean[classes.length];
    try {
      classesRedefined(classes);
      for (int i = 0; i < classes.length; i++) {
        Class<?> type = loadClass(classes[i].name());
        type.getDeclaredMethods(); // which readies it, as the shell expects
        loaded.put(classes[i].name(), type);
        isLoaded[i] = true;
      }
    } catch (ClassNotFoundException | LinkageError fault) {
      throw new ClassInstallException("load: " + fault.getMessage(), isLoaded);
    }
  }

  @Override
  public void classesRedefined(ClassBytecodes[] classes) {
    for (ClassBytecodes each : classes) {
      declared.put(each.name(), TamedClass.of(each.bytecodes()));
    }
  }

  @Override
  public void addToClasspath(String path) throws InternalException {
    try {
      for (String each : path.split(File.pathSeparator)) {
        addURL(new File(each).toURI().toURL());
      }
    } catch (MalformedURLException wrong) {
      throw new InternalException(wrong.toString());
    }
  }

  @Override
  public Class<?> findClass(String name) throws ClassNotFoundException {
    Class<?> known = loaded.get(name);
    if (known != null) {
      return known;
    }
    byte[] code = declared.get(name);
    return code == null ? super.findClass(name) : defineClass(name, code, 0, code.length);
  }
}
