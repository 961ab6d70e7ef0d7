package sheathwright.workbook.book;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.util.CellRangeAddress;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Roll;
import sheathwright.figure.Shown;
import sheathwright.figure.Table;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.job.file.Manifest;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.part.CellStyle;
import sheathwright.workbook.part.Sheet;

/**
 * One tab, written from the top down. What is written stands at once; formulas are written when the
 * book is finished and every cell that they point at has its place.
 */
public final class Tab {

  /** Where a tab's own lines begin, below its title and the state of the self-check. */
  static final int FIRST_LINE = 3;

  /** Parts that look the same whether a number or words stand in them. */
  private static final Set<Part> FOR_WORDS_TOO =
      EnumSet.of(Part.LARGE_TEXT, Part.LARGE_LABEL, Part.LARGE_RESULT, Part.CAPTION, Part.NOTE);

  private static final String FRACTIONS = "# ??/??";
  private static final String WHOLE = "#,##0";
  private static final String FRACTIONS_OF_A_LINE =
      "# ??/??\" above\";# ??/??\" below\";\"at the %s\"";
  public static final float LINE_HEIGHT = 13.5f;

  /** Above and below running text, together. */
  private static final double PARAGRAPH_AIR = 6;

  private final Book book;
  private final Sheet sheet;
  private final int[] widths;
  private final List<Listing> listings = new ArrayList<>();
  private final List<TabLine> lines = new ArrayList<>();
  private final List<String> validations = new ArrayList<>();
  private final BitSet sections = new BitSet();
  private final BitSet columnHeads = new BitSet();
  private int next = FIRST_LINE;
  private int firstRepeated;
  private int lastRepeated = 1;
  private boolean isOnOnePage;
  private boolean isATable;
  private String fractions = "";
  private boolean isKeptBack;
  private boolean isOneOfMany;

  /**
   * A tab.
   *
   * @param widths of its columns, in characters
   */
  Tab(Book book, Sheet sheet, int... widths) {
    this.book = book;
    this.sheet = sheet;
    this.widths = widths;
  }

  /** Whom the workbook is for. */
  public Audience audience() {
    return book.audience();
  }

  public String name() {
    return sheet.name();
  }

  public Sheet sheet() {
    return sheet;
  }

  public int next() {
    return next;
  }

  public int columns() {
    return widths.length;
  }

  /** The same, shrunk to one page where it would take more. */
  public Tab onOnePage() {
    isOnOnePage = true;
    return this;
  }

  /** Whether it is one page, however much stands on it. */
  boolean isOnOnePage() {
    return isOnOnePage;
  }

  /**
   * The same, left out when all tabs are printed: its print area is a cell on which nothing stands.
   */
  public Tab keptBack() {
    isKeptBack = true;
    return this;
  }

  /** Says below the title how a tab is printed that is left out with the others. */
  void saysHowItIsPrinted() {
    text(
        FIRST_LINE - 1,
        0,
        "Not printed with the other tabs. To print it, clear its print area (under page layout, or format), then print the active sheet.",
        Part.NOTE);
    merge(FIRST_LINE - 1, 0, columns() - 1);
  }

  /** Whether it is left out when all tabs are printed. */
  boolean isKeptBack() {
    return isKeptBack;
  }

  /** The same, its inches in the fractions of a tape. */
  public Tab inFractions() {
    fractions = FRACTIONS;
    return this;
  }

  /** The same, inches above or below a line, which is said in words. */
  public Tab inFractionsOfALine(String line) {
    fractions = FRACTIONS_OF_A_LINE.formatted(line);
    return this;
  }

  private CellStyle looked(Part part, Traced value) {
    return !fractions.isEmpty() && Units.INCH.equals(unitOf(value))
        ? book.look().of(part, fractions)
        : book.look().of(part, value);
  }

  /** How many columns fit in so many characters. */
  public int columnsIn(int characters) {
    int sum = 0;
    int fitting = 0;
    while (fitting < widths.length && sum + widths[fitting] <= characters) {
      sum += widths[fitting++];
    }
    return Math.max(1, fitting);
  }

  /**
   * The same, of which nothing is printed again at the top of its further pages: one of very many
   * tabs, for each of which the program that opens them would reckon all pages anew.
   */
  public Tab oneOfMany() {
    isOneOfMany = true;
    return this;
  }

  boolean repeats() {
    return !isOneOfMany;
  }

  /** The line above the next, and not the title, is printed again at the top of every page. */
  void repeatsLineAbove() {
    firstRepeated = next - 1;
    lastRepeated = next - 1;
  }

  /** The first line that is printed again at the top of every page: a list's headings, if one. */
  int firstRepeated() {
    return hasOneList() ? listings.get(0).firstLine() - 1 : firstRepeated;
  }

  /** The last line that is printed again at the top of every page. */
  int lastRepeated() {
    return hasOneList() ? listings.get(0).firstLine() - 1 : lastRepeated;
  }

  /** Whether one list is what stands on it, and not a few lines beside it. */
  boolean hasOneList() {
    return listings.size() == 1
        && firstRepeated == 0
        && !isOnOnePage
        && 2 * listings.get(0).roll().rows().size() > next;
  }

  /** Characters that fit in a line across the page. */
  public int characters() {
    return IntStream.of(widths).sum();
  }

  /** Characters that fit in a column. */
  public int width(int column) {
    return widths[column];
  }

  /** How a cell of a part looks that shows its number in a way of its own. */
  CellStyle styled(Part part, String format) {
    return book.look().of(part, format);
  }

  /** The same look, its words broken into lines. */
  CellStyle broken(CellStyle style) {
    return book.look().broken(style);
  }

  /** The last column from which so many characters fit up to the right edge. */
  public int columnBefore(int characters) {
    int fitting = 0;
    for (int column = widths.length - 1; column > 0; column--) {
      fitting += widths[column];
      if (fitting >= characters) {
        return column;
      }
    }
    return 0;
  }

  /** Whether nothing stands on it below its title. */
  public boolean isEmpty() {
    return next == FIRST_LINE;
  }

  List<Listing> listings() {
    return listings;
  }

  /** Takes the next line. */
  public int line() {
    return next++;
  }

  public void skip(int lines) {
    next += lines;
  }

  /** A heading, with air above it unless it is the first. */
  public void heading(String text) {
    next += next == FIRST_LINE ? 0 : 1;
    for (int column = 0; column < columns(); column++) {
      text(next, column, column == 0 ? text : "", Part.HEADING);
    }
    row(next++).height(20);
  }

  /** Running text across the page. */
  public void paragraph(String text) {
    paragraph(text, Part.TEXT);
  }

  /** Small print across the page. */
  public void note(String text) {
    paragraph(text, Part.NOTE);
  }

  /** Running text that must not be overlooked. */
  public void caution(String text) {
    paragraph(text, Part.CAUTION);
  }

  private void paragraph(String text, Part part) {
    text(next, 0, text, part);
    merge(next, 0, columns() - 1);
    row(next++).height(tallOf(text, part));
  }

  /** A fact in words that nobody computes with. */
  public void fact(String label, String value) {
    text(next, 0, label, Part.LABEL);
    text(next++, 1, value, Part.RESULT_TEXT);
  }

  /** A value that has its place here. */
  public Place entry(String label, Traced value, String note) {
    return entry(label, value, note, Part.RESULT);
  }

  /** A value whose place is elsewhere and that must not be overlooked. */
  public void linkedVerdict(String label, Traced value) {
    text(next, 0, label, Part.LABEL);
    TabCell cell = cell(next, 1);
    cell.style(book.look().of(Part.VERDICT));
    Validation.redIfItSaysStop(sheet, next, 1);
    across(next++, 1, columns() - 1, Part.VERDICT);
    book.later(notation -> book.writeLink(cell, value, notation.on(name())));
  }

  /** A sentence of live words across the page. */
  public void sentence(Choice<String> words) {
    sentence(words, 1);
  }

  /** A sentence across the page with room for so many lines, if it grows. */
  public void sentence(Choice<String> words, int lines) {
    TabCell cell = cell(next, 0);
    cell.style(book.look().of(Part.TEXT));
    merge(next, 0, columns() - 1);
    int needed = Math.max(lines, linesOf(said(words), 0, columns() - 1, Part.TEXT));
    row(next).height(LINE_HEIGHT * needed + 3);
    book.stepped(words, this, next++, 0);
    book.later(notation -> book.write(cell, words, notation.on(name())));
  }

  /** A value that has its place here and must not be overlooked. */
  public void verdict(String label, Traced value) {
    text(next, 0, label, Part.LABEL);
    value(next, 1, value, Part.VERDICT);
    redIfStop(next, 1);
    across(next++, 1, columns() - 1, Part.VERDICT);
  }

  /** A word in one cell of a line, in red where it says stop. */
  public void stop(int line, int column, Traced value) {
    step(line, column, value, Part.VERDICT);
    redIfStop(line, column);
  }

  private void redIfStop(int line, int column) {
    cell(line, column).style(book.look().of(Part.VERDICT));
    Validation.redIfItSaysStop(sheet, line, column);
  }

  /** A value in one cell of a line, in its own place unless it has one already. */
  public void value(int line, int column, Traced value, Part part) {
    TabCell cell = cell(line, column);
    if (book.mayBePlaced(value)) {
      style(cell, value, part);
      book.placed(value, this, line, column);
      book.later(notation -> book.write(cell, value, notation.on(name())));
    } else {
      linked(cell, value, part);
    }
  }

  /** The same; in its own place it is a step on the way to what the line comes to, and unnamed. */
  public void step(int line, int column, Traced value, Part part) {
    TabCell cell = cell(line, column);
    if (book.mayBePlaced(value)) {
      style(cell, value, part);
      book.stepped(value, this, line, column);
      book.later(notation -> book.write(cell, value, notation.on(name())));
    } else {
      linked(cell, value, part);
    }
  }

  private void linked(TabCell cell, Traced value, Part part) {
    cell.style(looked(textual(value) ? textOf(part) : part, value));
    book.needed(value);
    book.later(notation -> book.writeLink(cell, value, notation.on(name())));
  }

  /** A number once more in one cell of a line; the self-check sees to it that it stays the same. */
  public void repeated(int line, int column, Figure<?> value, Part part) {
    step(line, column, book.repeated(value), part);
  }

  /** The sum of a list's column, under that column. */
  public Place listTotal(String label, Traced value, int column) {
    for (int i = 0; i < column; i++) {
      text(next, i, i == 0 ? label : "", Part.TOTAL_LABEL);
    }
    Place place = book.placed(value, this, next, column);
    TabCell cell = cell(next++, column);
    style(cell, value, Part.TOTAL);
    book.later(notation -> book.write(cell, value, notation.on(name())));
    return place;
  }

  /** A sentence that has its place here, on as many lines as it takes. */
  public void said(String label, Choice<String> sentence) {
    int line = next;
    entry(label, sentence, "");
    int needed = linesOf(sentence.plain(), 1, columns() - 1, Part.RESULT_TEXT);
    row(line).height(LINE_HEIGHT * needed + 2);
  }

  /** A value that has its place here and closes what stands above it. */
  public Place total(String label, Traced value, String note) {
    return entry(label, value, note, Part.TOTAL);
  }

  /** A value that has its place here and is shown by the state it stands for. */
  public Place state(String label, Figure<?> value, String format) {
    Place place = book.stepped(value, this, next, 1);
    text(next, 0, label, Part.LABEL);
    TabCell cell = cell(next++, 1);
    cell.style(book.look().of(Part.STATUS, format));
    book.later(notation -> book.write(cell, value, notation.on(name())));
    return place;
  }

  private Place entry(String label, Traced value, String note, Part part) {
    return entry(book.placed(value, this, next, 1), label, value, note, part);
  }

  /** The same, on which a table stands that is read back: nothing may stand below it. */
  public Tab holdingATable() {
    isATable = true;
    return this;
  }

  boolean isATable() {
    return isATable;
  }

  /**
   * The same without a name, where the label is name enough: whatever tells more of a result. What
   * has its place already is pointed at.
   */
  public void aside(String label, Traced value, String note) {
    if (book.hasPlace(value)) {
      book.needed(value);
      link(label, value, note);
    } else {
      aside(label, value, note, Part.RESULT);
    }
  }

  private Place aside(String label, Traced value, String note, Part part) {
    return entry(book.stepped(value, this, next, 1), label, value, note, part);
  }

  private Place entry(Place place, String label, Traced value, String note, Part part) {
    text(next, 0, label, part == Part.TOTAL ? Part.TOTAL_LABEL : Part.LABEL);
    TabCell cell = cell(next, 1);
    style(cell, value, part);
    book.later(notation -> book.write(cell, value, notation.on(name())));
    beside(next++, value, book.isInput(value) ? book.allowed(value) : "", note, part);
    return place;
  }

  /** A variable of a session, under its own name. */
  public void variable(String label, String cellName, Traced value, String how) {
    book.call(value, cellName);
    entry(label, value, how);
  }

  /** A value under a name of its own, or from its place where it has one already. */
  public void called(String label, String cellName, Traced value, String note) {
    if (book.mayBePlaced(value)) {
      variable(label, cellName, value, note);
    } else {
      shown(label, value, note);
    }
  }

  /** What a page is for: the same in large letters. */
  public void answer(String label, String cellName, Traced value) {
    int line = next;
    called(label, cellName, value, "");
    cell(line, 0).style(book.look().of(Part.LARGE_LABEL));
    if (textual(value)) {
      Validation.redIfItSaysStop(sheet, line, 1);
    }
    cell(line, 1).style(looked(textual(value) ? Part.LARGE_TEXT : Part.LARGE_RESULT, value));
  }

  /** Every step between what stands here and what it is made from, each with its source. */
  public void working(Collection<Traced> results) {
    book.worked(this, results);
  }

  /** A value whose place is elsewhere. */
  public void link(String label, Traced value, String note) {
    text(next, 0, label, Part.LABEL);
    TabCell cell = cell(next, 1);
    Part part = textual(value) ? textOf(Part.RESULT) : Part.RESULT;
    cell.style(looked(part, value));
    book.later(notation -> book.writeLink(cell, value, notation.on(name())));
    beside(next++, value, "", note, Part.RESULT);
  }

  /** A value in its own place, or from its place where it has one already; words are an aside. */
  public void shown(String label, Traced value, String note) {
    if (book.mayBePlaced(value)) {
      if (textual(value) && !book.isInput(value)) {
        aside(label, value, note);
      } else {
        entry(label, value, note);
      }
    } else {
      book.needed(value);
      link(label, value, note);
    }
  }

  /** A length as the crew measures it, in inches and their parts. */
  public void measured(String label, Traced value, String note) {
    TabCell cell = cell(next, 1);
    shown(label, value, note);
    cell.style(book.look().of(Part.RESULT, FRACTIONS));
  }

  /** A number that whoever reads it counts in wholes. */
  public void whole(String label, Traced value, String note) {
    TabCell cell = cell(next, 1);
    shown(label, value, note);
    cell.style(book.look().of(Part.RESULT, WHOLE));
  }

  /** A number whose place is elsewhere, told again; the self-check holds the two together. */
  public void repeat(String label, Figure<?> value, String note) {
    aside(label, book.repeated(value), note, Part.RESULT);
  }

  /** The same, closing what stands above it. */
  public void repeatedTotal(String label, Figure<?> value, String note) {
    aside(label, book.repeated(value), note, Part.TOTAL);
  }

  private void beside(int line, Traced value, String allowed, String note, Part part) {
    if (textual(value)) {
      Part rest = book.isInput(value) ? Part.INPUT_TEXT : Part.RESULT_TEXT;
      boolean isShort = book.isInput(value) && !isFreeText(value);
      across(line, 1, isShort ? 2 : columns() - 1, rest);
      if (isShort) {
        noted(line, note);
      }
      return;
    }
    text(line, 2, unitBeside(value), part == Part.TOTAL ? Part.TOTAL_LABEL : Part.UNIT);
    noted(line, Stream.of(allowed, note).filter(said -> !said.isEmpty()).collect(joining("; ")));
  }

  private void noted(int line, String note) {
    text(line, 3, note, Part.NOTE);
    across(line, 3, columns() - 1, Part.NOTE);
    row(line).height(LINE_HEIGHT * linesOf(note, 3, columns() - 1, Part.NOTE) + 2);
  }

  /** Which document it is, on a line of its own; a draft is none. */
  public void document(String number) {
    if (!number.isEmpty()) {
      int line = line();
      text(line, 0, "This file is", Part.LABEL);
      text(line, 1, number, Part.RESULT_TEXT);
      across(line, 1, columns() - 1, Part.RESULT_TEXT);
      numbersTheDocument(1);
    }
  }

  /** Words on the line above that say which document this is, under the name of that. */
  public void numbersTheDocument(int column) {
    book.ranges().cell(Manifest.DOCUMENT, name(), this, next - 1, column);
  }

  private void across(int line, int first, int last, Part rest) {
    for (int column = first + 1; column <= last; column++) {
      text(line, column, "", rest);
    }
    across(line, first, last);
  }

  /** Cells of a line in one, where there are several: words that are broken have all their room. */
  public void across(int line, int first, int last) {
    if (first < last) {
      merge(line, first, last);
    }
  }

  /** Cells of one line made one; no two of them meet. */
  public void merge(int line, int first, int last) {
    sheet.merge(line, first, last);
  }

  private static boolean isFreeText(Traced value) {
    return value instanceof Choice<?> choice && choice.options().isEmpty();
  }

  /** The unit as it is said beside a number that shows its own dollar sign. */
  public static String unitBeside(Traced value) {
    Unit<?> unit = unitOf(value);
    if (unit == null) {
      return "";
    }
    if (unit.symbol().startsWith("$")) {
      return unit.symbol().replace("$/", "per ").replace("$", "");
    }
    return unit.isCount() ? unit.spoken() : unit.symbol();
  }

  /** A published table in this place; it is not printed again among the others. */
  public void table(Table table) {
    book.printed(table);
    PrintedTable.write(book, this, table);
  }

  /** A list whose headings are the names of its columns, in words. */
  public Listing list(Roll roll) {
    Headed headed = headed(roll);
    return list(roll, headed.headings(), headed.units());
  }

  /** The same under its heading; on a tab of its own, if it is longer than a page. */
  public Listing listUnder(String heading, String name, Roll roll) {
    Headed headed = headed(roll);
    return listUnder(heading, name, roll, headed.headings(), headed.units());
  }

  /** The headings of a list's columns, and what stands in them. */
  private record Headed(List<String> headings, List<Unit<?>> units) {}

  private static Headed headed(Roll roll) {
    List<String> headings = new ArrayList<>();
    List<Unit<?>> units = new ArrayList<>();
    for (String column : roll.columns()) {
      List<Traced> cells = roll.cellsOf(column);
      Unit<?> unit = cells.isEmpty() ? null : unitOf(cells.get(0));
      String ending = unit == null ? "" : "_" + unit.suffix();
      boolean isSaid = unit != null && !unit.suffix().isEmpty() && column.endsWith(ending);
      String bare = isSaid ? column.substring(0, column.length() - ending.length()) : column;
      String words = Shown.inWords(bare);
      headings.add(
          words.substring(0, 1).toUpperCase(java.util.Locale.ROOT)
              + words.substring(1)
              + (isSaid ? ", " + unit.symbol() : ""));
      units.add(unit);
    }
    return new Headed(headings, units);
  }

  /**
   * A list, a line an item, its columns under headings; the columns' ranges carry the list's names.
   * A column that the reader may not see is left out.
   */
  public Listing list(Roll roll, List<String> headings, List<Unit<?>> units) {
    List<String> seen =
        roll.columns().stream()
            .filter(column -> audience().maySeeAll(roll.cellsOf(column)))
            .toList();
    return seen.size() == roll.columns().size()
        ? listed(roll, headings, units)
        : listed(
            roll.only(seen),
            kept(headings, roll.columns(), seen),
            kept(units, roll.columns(), seen));
  }

  /**
   * A list under its heading, where other things stand beside it. A program repeats one run of
   * lines of a tab only: a list that is longer than a page has a tab of its own, behind this one,
   * whose every page begins with its headings.
   *
   * @param name of that tab
   */
  public Listing listUnder(
      String heading, String name, Roll roll, List<String> headings, List<Unit<?>> units) {
    heading(heading);
    if (!isLongerThanAPage(roll)) {
      return list(roll, headings, units);
    }
    Tab own = book.tabBehind(this, name);
    own.fractions = fractions;
    text(next, 0, "It is longer than a page, on a tab of its own:", Part.NOTE);
    next++;
    link(next++, 0, own);
    own.heading(heading);
    return own.list(roll, headings, units);
  }

  /** Whether a list takes more than a page by itself. */
  public boolean isLongerThanAPage(Roll roll) {
    return Page.isLongerThanOne(this, roll.rows().stream().mapToDouble(this::tallOf).sum());
  }

  /** The same; a line whose first column says a word for nothing is not shown. */
  public Listing listBut(String nothing, Roll roll, List<String> headings, List<Unit<?>> units) {
    Listing listing = list(roll, headings, units);
    int last = listing.firstLine() + roll.rows().size() - 1;
    Validation.whiteIfItSays(
        nothing, sheet, new CellRangeAddress(listing.firstLine(), last, 0, headings.size() - 1));
    return listing;
  }

  private static <T> List<T> kept(List<T> of, List<String> columns, List<String> seen) {
    List<T> kept = new ArrayList<>();
    seen.forEach(column -> kept.add(of.get(columns.indexOf(column))));
    return kept;
  }

  private Listing listed(Roll roll, List<String> headings, List<Unit<?>> units) {
    if (headings.size() != roll.columns().size() || units.size() != headings.size()) {
      throw new IllegalStateException(
          "%s has columns %s, and headings %s".formatted(roll.title(), roll.columns(), headings));
    }
    Listing listing = headed(roll, headings, units, roll.rows().size());
    for (int row = 0; row < roll.rows().size(); row++) {
      int item = row;
      int line = listing.firstLine() + row;
      List<Traced> values = roll.rows().get(row);
      raise(row(line), values);
      book.later(
          notation -> {
            CellNotation inRow = listing.notation(notation.on(name()), item);
            for (int column = 0; column < headings.size(); column++) {
              Traced value = values.get(column);
              TabCell cell = cell(line, column);
              boolean own = listing.owns(item, value);
              cell.style(listedStyle(value, own));
              if (own) {
                book.write(cell, value, inRow);
              } else {
                book.writeLink(cell, value, notation.on(name()));
              }
            }
          });
    }
    return listing;
  }

  /**
   * The headings of a list whose lines are written later, one by one.
   *
   * @param model one item, which tells what all of them are made of; or none
   * @param lines how many there will be
   */
  public void headingsOf(Roll model, List<String> headings, List<Unit<?>> units, int lines) {
    headed(model, headings, units, lines);
    book.filledDown(this, next - 1);
  }

  private Listing headed(Roll roll, List<String> headings, List<Unit<?>> units, int lines) {
    Listing listing = new Listing(this, roll, next + 1);
    int last = next + Math.max(1, lines);
    for (int column = 0; column < headings.size(); column++) {
      boolean right = units.get(column) != null;
      text(next, column, headings.get(column), right ? Part.COLUMN_HEAD_RIGHT : Part.COLUMN_HEAD);
      Ranges ranges = book.ranges();
      ranges.named(ranges.of(roll, roll.columns().get(column)), this, next + 1, last, column);
    }
    row(next).height(LINE_HEIGHT * headingLines(headings) + 3);
    next = last + 1;
    listings.add(listing);
    book.listed(listing);
    return listing;
  }

  public void text(int line, int column, String text, Part part) {
    TabCell cell = cell(line, column);
    if (!text.isEmpty()) {
      cell.text(CellText.of(text));
    }
    cell.style(book.look().of(part));
    if (part == Part.HEADING) {
      sections.set(line);
    } else if (part == Part.COLUMN_HEAD || part == Part.COLUMN_HEAD_RIGHT) {
      columnHeads.set(line);
    }
  }

  /** Whether a heading stands in a line. */
  boolean beginsSection(int line) {
    return sections.get(line);
  }

  /** Whether the headings of a list's columns stand in a line. */
  boolean headsColumns(int line) {
    return columnHeads.get(line);
  }

  /** Whether nothing stands in a line. */
  boolean isBlank(int line) {
    TabLine made = line < lines.size() ? lines.get(line) : null;
    return made == null || made.cells().stream().allMatch(Objects::isNull);
  }

  /** Makes a cell a link to other cells of the workbook. */
  void leadsTo(int line, int column, String cells, String tip) {
    sheet.link(line, column, cells, tip);
  }

  /** The name of another tab, which leads to its top. */
  public void link(int line, int column, Tab to) {
    text(line, column, to.name(), Part.LINK);
    leadsTo(line, column, Place.quoted(to.name()) + "!A1", "Go to " + to.name());
  }

  public void number(int line, int column, double number) {
    TabCell cell = cell(line, column);
    cell.number(number);
    cell.style(book.look().of(Part.RESULT));
  }

  void style(TabCell cell, Traced value, Part part) {
    Part shown = book.isInput(value) ? Part.INPUT : part;
    cell.style(looked(textual(value) ? textOf(shown) : shown, value));
  }

  /** A line, made if need be. */
  public TabLine row(int line) {
    while (lines.size() <= line) {
      lines.add(null);
    }
    TabLine made = lines.get(line);
    if (made == null) {
      made = new TabLine();
      lines.set(line, made);
    }
    return made;
  }

  /** A cell, made if need be. */
  public TabCell cell(int line, int column) {
    return row(line).cell(column);
  }

  /** How many columns are printed: those of the tab, and more where a table is wider. */
  int across() {
    return lines.stream()
        .filter(Objects::nonNull)
        .mapToInt(line -> line.cells().size())
        .reduce(columns(), Math::max);
  }

  /** The words in a cell; none where nothing stands. */
  String textAt(int line, int column) {
    TabLine made = line < lines.size() ? lines.get(line) : null;
    boolean isMade = made != null && column < made.cells().size();
    TabCell cell = isMade ? made.cells().get(column) : null;
    return cell == null ? "" : cell.text();
  }

  /** From the top; null where there is none. */
  List<TabLine> lines() {
    return lines;
  }

  /** Holds an input to what it may be, if that is anything. */
  void hold(String validation) {
    if (!validation.isEmpty()) {
      validations.add(validation);
    }
  }

  /** What its inputs are held to, as its part says it. */
  List<String> validations() {
    return validations;
  }

  /** How tall a line stands, in points. */
  public double height(int line) {
    TabLine made = line < lines.size() ? lines.get(line) : null;
    return made == null ? Sheet.LINE : made.height().orElse(Sheet.LINE);
  }

  /** How tall a line of a list stands that holds these, in points. */
  public double tallOf(List<Traced> values) {
    int needed = linesFor(0, values.stream().map(Tab::said).toList());
    return needed > 1 ? LINE_HEIGHT * needed + 2 : Sheet.LINE;
  }

  /** How tall running text stands across the page, in points. */
  public double tallOf(String words) {
    return tallOf(words, Part.TEXT);
  }

  private double tallOf(String words, Part part) {
    return LINE_HEIGHT * linesOf(words, 0, columns() - 1, part) + PARAGRAPH_AIR;
  }

  /** How many lines words take that stand between two columns, broken where they have to be. */
  public int linesOf(String words, int first, int last, Part part) {
    return Fit.lines(this, words, first, last, book.look().of(part));
  }

  /** Makes a line tall enough for the longest of its words. */
  void raise(TabLine line, List<Traced> values) {
    raise(line, 0, values.stream().map(Tab::said).toList());
  }

  /** Makes a line tall enough for words that stand in it from a column on. */
  void raise(int line, int first, List<String> words) {
    raise(row(line), first, words);
  }

  /** Makes a line tall enough for words that stand in it from the left. */
  public void raiseTo(int line, List<String> words) {
    raise(row(line), 0, words);
  }

  private void raise(TabLine line, int first, List<String> words) {
    int needed = linesFor(first, words);
    if (needed > 1) {
      line.height(LINE_HEIGHT * needed + 2);
    }
  }

  private static String said(Traced value) {
    return textual(value) && value.refusal().isEmpty() ? value.plain() : "";
  }

  /** How many lines the headings need, each kept within its column. */
  private int headingLines(List<String> headings) {
    int most = 1;
    for (int column = 0; column < Math.min(columns(), headings.size()); column++) {
      most = Math.max(most, linesOf(headings.get(column), column, column, Part.COLUMN_HEAD));
    }
    return most;
  }

  /** How many lines the longest words need, each kept within its column. */
  private int linesFor(int first, List<String> words) {
    int most = 1;
    for (int i = 0; i < words.size() && first + i < columns(); i++) {
      if (!words.get(i).isEmpty()) {
        most = Math.max(most, linesOf(words.get(i), first + i, first + i, Part.LISTED_TEXT));
      }
    }
    return most;
  }

  /**
   * How a list's cell looks; its own values are inputs, if whoever holds the book may change them.
   */
  CellStyle listedStyle(Traced value, boolean own) {
    return looked(listed(value, own), value);
  }

  private Part listed(Traced value, boolean own) {
    boolean isInput = own && book.isInput(value);
    if (textual(value)) {
      return isInput ? Part.LISTED_INPUT_TEXT : Part.LISTED_TEXT;
    }
    return isInput ? Part.INPUT : Part.RESULT;
  }

  private static boolean textual(Traced value) {
    return value instanceof Choice<?>;
  }

  private static Part textOf(Part part) {
    if (part == Part.INPUT) {
      return Part.INPUT_TEXT;
    }
    if (part == Part.TOTAL) {
      return Part.TOTAL_LABEL;
    }
    return FOR_WORDS_TOO.contains(part) ? part : Part.RESULT_TEXT;
  }

  public static Unit<?> unitOf(Traced value) {
    return value instanceof Figure<?> figure ? figure.unit() : null;
  }
}
