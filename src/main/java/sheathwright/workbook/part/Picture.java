package sheathwright.workbook.part;

/**
 * A picture.
 *
 * @param bytes of a JPEG
 */
public record Picture(byte[] bytes) implements Pasted {

  @Override
  public String link() {
    return Ooxml.LINKS + "/image";
  }
}
