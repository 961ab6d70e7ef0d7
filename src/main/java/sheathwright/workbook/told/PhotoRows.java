package sheathwright.workbook.told;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.draw.Pictures;
import sheathwright.workbook.part.Sheet;

/** Photographs side by side below a heading, each with its words below it. */
public final class PhotoRows {

  /**
   * A photograph, or the place of one that is missing.
   *
   * @param photo itself
   * @param of what it is of, in words
   */
  public record Shown(Photo photo, String of) {

    private String words() {
      return of.isEmpty() ? photo.words() : of + ": " + photo.words();
    }
  }

  private static final int SIDE_BY_SIDE = 3;
  private static final int LINES = 10;
  private static final double CAPTION_LINE = 13.5;

  private PhotoRows() {}

  /**
   * Rows of up to three, none of them parted by a page's end, each of one thing alone; nothing
   * where there is no photograph.
   */
  public static void write(Sheaf sheaf, String heading, List<Shown> photos) {
    List<List<Shown>> rows = rows(photos);
    for (List<Shown> row : rows) {
      int captions = captionLines(sheaf.tab(), row);
      double tall = LINES * Sheet.LINE + CAPTION_LINE * captions + 2;
      if (row == rows.get(0)) {
        sheaf.heading(heading, tall);
      } else {
        sheaf.keep(tall);
      }
      side(sheaf.tab(), row, captions);
    }
  }

  /** The photographs of a mark begin a row of their own. */
  private static List<List<Shown>> rows(List<Shown> photos) {
    List<List<Shown>> rows = new ArrayList<>();
    String of = "";
    for (Shown shown : photos) {
      boolean isNew = rows.isEmpty() || !shown.of().equals(of);
      if (isNew || rows.get(rows.size() - 1).size() == SIDE_BY_SIDE) {
        rows.add(new ArrayList<>());
      }
      rows.get(rows.size() - 1).add(shown);
      of = shown.of();
    }
    return rows;
  }

  private static void side(Tab tab, List<Shown> row, int captionLines) {
    int top = tab.next();
    tab.skip(LINES);
    int captions = tab.line();
    for (int place = 0; place < row.size(); place++) {
      Shown shown = row.get(place);
      int first = column(tab, place);
      int last = column(tab, place + 1) - 1;
      shown
          .photo()
          .picture()
          .ifPresent(
              picture -> Pictures.place(tab, picture, top, LINES, first, last, shown.words()));
      for (int column = first; column <= last; column++) {
        tab.text(captions, column, column == first ? shown.words() : "", Part.CAPTION);
      }
      if (last > first) {
        tab.merge(captions, first, last);
      }
    }
    tab.row(captions).height(CAPTION_LINE * captionLines + 2);
  }

  /** The column in which the next third of a page begins. */
  private static int column(Tab tab, int place) {
    int column = 0;
    double left = 0;
    double wanted = (double) tab.characters() * place / SIDE_BY_SIDE;
    while (column < tab.columns() && left + tab.width(column) / 2.0 <= wanted) {
      left += tab.width(column++);
    }
    return column;
  }

  private static int captionLines(Tab tab, List<Shown> row) {
    int most = 1;
    for (int place = 0; place < row.size(); place++) {
      int first = column(tab, place);
      int last = column(tab, place + 1) - 1;
      most = Math.max(most, tab.linesOf(row.get(place).words(), first, last, Part.CAPTION));
    }
    return most;
  }

  /** What a line says of its photographs: their numbers, or that there are none. */
  public static String keys(List<Photo> photos) {
    List<String> keys = new ArrayList<>();
    photos.forEach(photo -> keys.add(photo.number() + " " + photo.view().word()));
    return keys.isEmpty() ? "none" : keys.stream().collect(Collectors.joining(", "));
  }
}
