package sheathwright.workbook.file;

import java.util.ServiceLoader;
import org.apache.logging.log4j.spi.Provider;

/**
 * Where the spreadsheet library's log goes. Without somebody who takes it, that library complains
 * on standard error at its first class; a program that has such a somebody keeps its own.
 */
public final class LogProvider {

  private static final String NAMED = "log4j.provider";
  private static final String SIMPLE = "org.apache.logging.log4j.simple.internal.SimpleProvider";

  private static final String LEVEL = "org.apache.logging.log4j.simplelog.level";

  private LogProvider() {}

  /** Names the log's own silent one where the program has none. Called before any such class. */
  public static void settle() {
    boolean isSettled = System.getProperty(NAMED) != null;
    if (!isSettled && ServiceLoader.load(Provider.class).findFirst().isEmpty()) {
      System.setProperty(NAMED, SIMPLE);
      System.setProperty(LEVEL, "OFF");
    }
  }
}
