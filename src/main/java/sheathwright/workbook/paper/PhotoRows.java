package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Page;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.draw.Pictures;

/**
 * Photographs side by side below a heading, each with its words below it; or that there are none.
 */
final class PhotoRows {

  /** Of a page that maps and photographs stand on: three photographs side by side. */
  private static final int[] WIDTHS = {36, 36, 36};

  private static final int LINES = 10;
  private static final double CAPTION_LINE = 12.5;
  private static final int CAPTION_CHARACTERS = 36;
  private static final double HEADING = 40;

  private PhotoRows() {}

  /** A page for maps and photographs. */
  static Tab tab(Paper paper, String name) {
    return paper.page(name, WIDTHS);
  }

  /** The photographs of one mark or place; rows of three, none of them parted by a page's end. */
  static void write(Tab tab, String heading, List<Photo> photos) {
    double row = LINES * tab.sheet().getDefaultRowHeightInPoints() + 2 * CAPTION_LINE;
    Page.keepTogether(tab, HEADING + row);
    tab.heading(heading);
    if (photos.isEmpty()) {
      tab.paragraph("No photograph is in the record.");
      return;
    }
    for (int first = 0; first < photos.size(); first += WIDTHS.length) {
      if (first > 0) {
        Page.keepTogether(tab, row);
      }
      side(tab, heading, photos.subList(first, Math.min(photos.size(), first + WIDTHS.length)));
    }
  }

  private static void side(Tab tab, String heading, List<Photo> photos) {
    int top = tab.next();
    tab.skip(LINES);
    int captions = tab.line();
    int most = 0;
    for (int column = 0; column < photos.size(); column++) {
      Photo photo = photos.get(column);
      int place = column;
      String words = heading + ": " + photo.words();
      photo.picture().ifPresent(picture -> Pictures.place(tab, picture, top, LINES, place, words));
      tab.text(captions, column, photo.words(), Part.CAPTION);
      most = Math.max(most, photo.words().length() / CAPTION_CHARACTERS);
    }
    tab.row(captions).height(CAPTION_LINE * (1 + most) + 2);
  }

  /** What a line says of its photographs: their numbers, or that there are none. */
  static String keys(List<Photo> photos) {
    List<String> keys = new ArrayList<>();
    photos.forEach(photo -> keys.add(photo.number() + " " + photo.view().word()));
    return keys.isEmpty() ? "none" : keys.stream().collect(Collectors.joining(", "));
  }
}
