package sheathwright.workbook.letterhead;

import org.w3c.dom.Element;
import sheathwright.workbook.draw.Photograph;

/** A picture that is laid upon a cell of an office's sheet. */
sealed interface Laid {

  /** The cell. */
  OfficeFile.Blank blank();

  /**
   * A photograph of the job.
   *
   * @param words for whoever does not see it
   */
  record Photo(OfficeFile.Blank blank, Photograph photograph, String words) implements Laid {}

  /**
   * A map or a chart that our document has on one of its tabs.
   *
   * @param drawing the part that it is drawn in
   * @param shape what is drawn
   */
  record Drawn(OfficeFile.Blank blank, String drawing, Element shape) implements Laid {}
}
