package sheathwright.workbook.part;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.zip.Deflater;

/**
 * One part of a file: its name, its kind, what stands in it and what it points at (Open Packaging
 * Conventions, ECMA-376, part 2).
 */
public final class FilePart {

  /** What stands in a part; it is asked for once, when the parts before it are written. */
  @FunctionalInterface
  public interface Content {
    void writeTo(OutputStream out) throws IOException;

    /** A part that is a text. */
    static Content of(String text) {
      return out -> out.write(text.getBytes(StandardCharsets.UTF_8));
    }
  }

  private final String name;
  private final String kind;
  private final Content content;
  private int level = Deflater.BEST_SPEED; // a third of the time, little larger
  private final XmlText links = new XmlText();
  private int count;

  FilePart(String name, String kind, Content content) {
    this.name = name;
    this.kind = kind;
    this.content = content;
  }

  String name() {
    return name;
  }

  String kind() {
    return kind;
  }

  Content content() {
    return content;
  }

  /** How closely it is packed. */
  int level() {
    return level;
  }

  /**
   * Packs it more closely, or less.
   *
   * @param how from 1, fast, to 9, small
   */
  public void level(int how) {
    level = how;
  }

  /** The name of a part's link. */
  static String link(int number) {
    return "rId" + number;
  }

  /** Points at another part, and gives the name by which this one's text may point at it. */
  public String link(String type, FilePart to) {
    String id = link(++count);
    links.empty("Relationship", "Id", id, "Type", type, "Target", "/" + to.name);
    return id;
  }

  /** Whether it points at any. */
  boolean isLinked() {
    return count > 0;
  }

  /** The name of the part that says what it points at. */
  String nameOfLinks() {
    int folder = name.lastIndexOf('/') + 1;
    return name.substring(0, folder) + "_rels/" + name.substring(folder) + ".rels";
  }

  String linksText() {
    return new XmlText()
        .add(XmlText.HEAD)
        .open("Relationships", "xmlns", Ooxml.PACKAGE_LINKS)
        .add(links.toString())
        .close("Relationships")
        .toString();
  }
}
