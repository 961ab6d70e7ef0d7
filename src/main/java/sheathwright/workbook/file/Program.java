package sheathwright.workbook.file;

/** What wrote a workbook, as its properties, its footers and the command line say it. */
public final class Program {

  /** The same as the build's own, which a test holds it to. */
  private static final String VERSION = "0.1.0";

  /** Its name and version in a sentence. */
  public static final String NAME = "Sheathwright " + VERSION;

  /** The same as the command line writes it. */
  public static final String COMMAND = "sheathwright " + VERSION;

  private Program() {}
}
