package sheathwright.workbook.part;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;

/**
 * The colors and letters that a spreadsheet program offers for whatever somebody adds to a workbook
 * of ours.
 */
public final class Theme {

  private static final String TEXT = "/sheathwright/workbook/theme.xml";

  private Theme() {}

  /** Writes its part. */
  public static void writeTo(OutputStream out) throws IOException {
    try (InputStream ours = Theme.class.getResourceAsStream(TEXT)) {
      ours.transferTo(out);
    }
  }
}
