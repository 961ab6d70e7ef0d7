package sheathwright.workbook.part;

/** What elements of parts belong to, and what kinds of parts and of links there are (ECMA-376). */
public final class Ooxml {

  /** Cells, looks and texts. */
  public static final String SHEETS = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

  /** What points at another part. */
  public static final String LINKS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

  /** Where drawings stand on a sheet. */
  public static final String PLACES =
      "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";

  /** Shapes, lines, fills and words in drawings. */
  public static final String SHAPES = "http://schemas.openxmlformats.org/drawingml/2006/main";

  static final String CHARTS = "http://schemas.openxmlformats.org/drawingml/2006/chart";

  /** The lists of what a file's parts point at. */
  public static final String PACKAGE_LINKS =
      "http://schemas.openxmlformats.org/package/2006/relationships";

  /** The list of what kinds a file's parts are. */
  public static final String PACKAGE_KINDS =
      "http://schemas.openxmlformats.org/package/2006/content-types";

  /** Begins the kind of a part that belongs to an office's document. */
  private static final String DOCUMENT = "application/vnd.openxmlformats-officedocument.";

  public static final String XML = "application/xml";
  public static final String JPEG = "image/jpeg";
  public static final String WORKBOOK = DOCUMENT + "spreadsheetml.sheet.main+xml";
  public static final String SHEET = DOCUMENT + "spreadsheetml.worksheet+xml";
  public static final String STYLES = DOCUMENT + "spreadsheetml.styles+xml";
  public static final String TEXTS = DOCUMENT + "spreadsheetml.sharedStrings+xml";
  public static final String DRAWING = DOCUMENT + "drawing+xml";
  public static final String CHART = DOCUMENT + "drawingml.chart+xml";
  public static final String THEME = DOCUMENT + "theme+xml";
  public static final String STORED_XML = DOCUMENT + "customXmlProperties+xml";
  static final String PROPERTIES = DOCUMENT + "extended-properties+xml";
  static final String CORE_PROPERTIES =
      "application/vnd.openxmlformats-package.core-properties+xml";

  private Ooxml() {}
}
