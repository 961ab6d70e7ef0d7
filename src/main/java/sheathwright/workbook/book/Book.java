package sheathwright.workbook.book;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.util.WorkbookUtil;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity;
import sheathwright.figure.Refusal;
import sheathwright.figure.Solution;
import sheathwright.figure.Step;
import sheathwright.figure.Table;
import sheathwright.figure.Traced;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.file.Particulars;
import sheathwright.workbook.part.Sheet;
import sheathwright.workbook.part.Styles;

/**
 * A workbook in the making. Pages say what stands on them; the book finds everything that those
 * values are made from, gives each its place, and writes every derived number as a formula with the
 * library's own value beside it.
 */
public final class Book {

  private final Audience audience;
  private final Particulars particulars;
  private final Styles styles = new Styles(Look.PLAIN_LETTERS);
  private final Look look = new Look(styles);
  private final Ranges ranges = new Ranges();
  private static final int LONGEST_NAME_OF_A_TAB = 31;

  private final Map<String, Tab> tabs = new LinkedHashMap<>();
  private final Map<Traced, Place> places = new LinkedHashMap<>();
  private final Map<String, Map<Traced, Place>> copies = new HashMap<>();
  private final List<Traced> roots = new ArrayList<>();
  private final List<Listing> listings = new ArrayList<>();
  private final Map<Step.Guarded, CellNotation.Guard> guards = new HashMap<>();
  private final List<Consumer<CellNotation>> unfinished = new ArrayList<>();
  private final Map<Traced, Place> inLists = new LinkedHashMap<>();
  private final Reached reached = new Reached();
  private final List<Solution> drawn = new ArrayList<>();
  private final Map<Traced, String> called = new LinkedHashMap<>();
  private final List<Condition> repeats = new ArrayList<>();
  private final Set<Traced> told = Collections.newSetFromMap(new IdentityHashMap<>());
  private boolean literalsAreInputs;
  private boolean isTold;
  private boolean leavesOutEmptyPages;
  private final List<Runnable> drawings = new ArrayList<>();
  private final Map<Traced, Place> inputs = new LinkedHashMap<>();
  private final Map<String, Integer> filledDown = new HashMap<>();
  private final Map<Traced, String> helps = new LinkedHashMap<>();
  private final List<Consumer<WordLists>> held = new ArrayList<>();
  private final Set<String> printed = new HashSet<>();
  private final Set<Refusal> refused = new LinkedHashSet<>();

  /** A workbook for the office. */
  public Book(Particulars particulars) {
    this(Audience.office(), particulars);
  }

  public Book(Audience audience, Particulars particulars) {
    this.audience = audience;
    this.particulars = particulars;
  }

  /** Whom it is for. */
  public Audience audience() {
    return audience;
  }

  Look look() {
    return look;
  }

  /** The names of its cells and lists. */
  Ranges ranges() {
    return ranges;
  }

  /** A new tab; its lines are written later, its place among the tabs is taken now. */
  public Tab tab(String name, int... widths) {
    Tab tab = new Tab(this, new Sheet(name, styles, widths), widths);
    tabs.put(name, tab);
    return tab;
  }

  /** What a tab may be called that is to be called so: safe, and no other's name. */
  public String nameOfATab(String wanted) {
    // a comma parts the lines that a program repeats, and not every program reads it in a name
    String safe = WorkbookUtil.createSafeSheetName(wanted.replace(",", ""), '-');
    String name = safe;
    for (int i = 2; hasTab(name); i++) {
      String number = " " + i;
      int fits = Math.min(safe.length(), LONGEST_NAME_OF_A_TAB - number.length());
      name = safe.substring(0, fits) + number;
    }
    return name;
  }

  /** A new tab behind another, with its columns and under the same title but for its name. */
  Tab tabBehind(Tab before, String wanted) {
    String name = nameOfATab(wanted);
    int[] widths = IntStream.range(0, before.columns()).map(before::width).toArray();
    Tab tab = tab(name, widths);
    for (int column = 0; column < tab.columns(); column++) {
      tab.text(0, column, column == 0 ? name : "", Part.TITLE);
      tab.text(1, column, before.textAt(1, column), Part.SUBTITLE);
    }
    for (int line = 0; line <= 1; line++) {
      tab.row(line).height(before.height(line));
    }
    List<Tab> all = new ArrayList<>(tabs.values());
    all.remove(tab);
    all.add(all.indexOf(before) + 1, tab);
    tabs.clear();
    all.forEach(each -> tabs.put(each.name(), each));
    return tab;
  }

  /** Whether it has a tab of that name, in capitals or not. */
  public boolean hasTab(String name) {
    return tabs.keySet().stream().anyMatch(name::equalsIgnoreCase);
  }

  Tab tabNamed(String name) {
    return tabs.get(name);
  }

  public Iterable<Tab> tabs() {
    return tabs.values();
  }

  /** Lets numbers typed in passing be inputs, as in a session, and not constants. */
  public void takeLiteralsAsInputs() {
    literalsAreInputs = true;
  }

  /** Writes every value as it is and nothing of how it was made; none of them is an input. */
  public void tellValuesOnly() {
    isTold = true;
  }

  /** Leaves out pages on which nothing stands when it is finished. */
  public void leaveOutEmptyPages() {
    leavesOutEmptyPages = true;
  }

  /** Writes pure numbers and counts with as many decimals as they have. */
  public void showCountsPlainly() {
    look.showCountsPlainly();
  }

  /** Gives a value another name than its own. */
  void call(Traced value, String name) {
    called.put(value, name);
  }

  public boolean hasPlace(Traced value) {
    return places.containsKey(value);
  }

  /** Whether whoever holds the workbook may change it. */
  boolean isInput(Traced value) {
    return !isTold && value.step().isInput()
        || value.step().isLiteral() && literalsAreInputs && places.containsKey(value);
  }

  /** Whether it can have its place on a page. */
  boolean mayBePlaced(Traced value) {
    return !places.containsKey(value) && !isGuardedElsewhere(value);
  }

  /** Sees to it that a value which a page only points at has a place. */
  void needed(Traced value) {
    roots.add(value);
  }

  /** A number once more, in a cell of its own that must go on saying the same. */
  <Q extends Quantity> Figure<Q> repeated(Figure<Q> figure) {
    Figure<Q> again = figure.as("shown_" + figure.name(), figure.unit());
    repeats.add(again.isTheSameAs(figure));
    told.add(figure);
    return again;
  }

  /** That each number which is told again says what it says in its own place. */
  public List<Condition> repeats() {
    return List.copyOf(repeats);
  }

  Place placed(Traced value, Tab tab, int row, int column) {
    roots.add(value);
    return placed(value, tab, row, column, tab.name());
  }

  Place placed(Traced value, Tab tab, int row, int column, String owner) {
    String wanted = called.getOrDefault(value, value.name());
    return wanted.isEmpty()
        ? unnamed(value, tab, row, column)
        : taken(value, ranges.cell(wanted, owner, tab, row, column));
  }

  /** A step on the way to a result, on a page: it has no name. */
  Place stepped(Traced value, Tab tab, int row, int column) {
    roots.add(value);
    return stepped(value, tab, row, column, tab.name());
  }

  /**
   * A step on the way to a result has no name: formulas point at its cell. An input keeps its, and
   * so does what a page tells from here.
   */
  Place stepped(Traced value, Tab tab, int row, int column, String owner) {
    boolean isTyped = value.step().isLiteral() && literalsAreInputs;
    return value.step().isInput() || isTyped || told.contains(value)
        ? placed(value, tab, row, column, owner)
        : unnamed(value, tab, row, column);
  }

  private Place unnamed(Traced value, Tab tab, int row, int column) {
    return taken(value, new Place(tab.name(), row, column, ""));
  }

  private Place taken(Traced value, Place place) {
    if (places.containsKey(value)) {
      throw new IllegalStateException(value.name() + " already stands at " + places.get(value));
    }
    places.put(value, place);
    return place;
  }

  /**
   * Gives an input of a table its place, and what whoever changes it is told of it. It is one that
   * cells follow only if a page needs it; else it is read when the workbook is.
   */
  void placed(Traced input, Place place, String help) {
    places.put(input, place);
    helps.put(input, help);
  }

  /** Cells without a value are held to what may be typed there. */
  void held(Tab tab, String cells, Allowed allowed) {
    held.add(words -> tab.hold(Validation.of(cells, allowed, words)));
  }

  public void guarded(Step.Guarded guard, Tab tab, int row) {
    guards.put(
        guard,
        new CellNotation.Guard(
            new Place(tab.name(), row, 3, "").absolute(),
            new Place(tab.name(), row, 4, "").absolute()));
  }

  public void guarded(Step.Guarded guard, CellNotation.Guard limits) {
    guards.put(guard, limits);
  }

  void listed(Listing listing) {
    listings.add(listing);
  }

  /** The first line of a tab's list stands for all lines down to the last. */
  void filledDown(Tab tab, int last) {
    filledDown.put(tab.name(), last);
  }

  /** Does something once every cell is written, such as drawing what the cells hold. */
  public void afterwards(Runnable drawing) {
    drawings.add(drawing);
  }

  public void later(Consumer<CellNotation> write) {
    unfinished.add(write);
  }

  /** A page shows a table itself. */
  void printed(Table table) {
    printed.add(table.name());
  }

  /** What may be written into an input, in words. */
  String allowed(Traced value) {
    Limits limits = value.step().limits();
    return value.step().isGiven() && limits.exist() ? limits.inWords() : "";
  }

  /**
   * Finds a place for everything that is still without one, writes all formulas, and gives the
   * file's bytes.
   */
  public byte[] finished(Tab working, Tab tables) {
    finish(working, tables);
    return bytes();
  }

  private byte[] bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      packed().write(bytes);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }

  /**
   * The same of a book in which every number that another is made from stands on a page.
   *
   * @throws IllegalStateException if one does not
   */
  public byte[] finished() {
    settle();
    Closure closure = closure();
    List<String> homeless =
        Stream.concat(
                closure.steps().values().stream().flatMap(List::stream),
                closure.constants().stream())
            .map(Traced::toString)
            .toList();
    if (!homeless.isEmpty() || !solutions().isEmpty()) {
      throw new IllegalStateException("no page shows what others are made from: " + homeless);
    }
    written(new WordLists(this, null), null);
    return bytes();
  }

  /**
   * The same of a book that tells values only.
   *
   * @param words where the words of long drop-downs stand
   */
  public byte[] told(Tab words) {
    settle();
    written(new WordLists(this, words), null);
    return bytes();
  }

  /**
   * Finishes the book and writes it, with more lines below what stands on one tab: each is written
   * out and forgotten when the next ones come.
   *
   * @param tab holds a list of which only the headings stand
   * @param lines writes all of them onto the sheet that it is given
   */
  public void finish(Tab working, Tab tables, Tab tab, OutputStream out, Lines lines)
      throws IOException {
    CellNotation notation = finish(working, tables);
    PackedBook packed = packed();
    packed.with(tab, below -> lines.writeTo(new LongSheet(tab, below), notation));
    packed.write(out);
  }

  /** Lines that are written when everything that they point at has its place. */
  @FunctionalInterface
  public interface Lines {
    void writeTo(LongSheet sheet, CellNotation notation);
  }

  private CellNotation finish(Tab working, Tab tables) {
    solutions().forEach(solution -> SolvedPlans.write(this, working, solution));
    settle();
    Closure closure = closure();
    closure.argumentNames().forEach(this::call);
    new WorkingPage(this, working).write(closure);
    closure.tables().stream()
        .filter(table -> !printed.contains(table.name()))
        .forEach(table -> PrintedTable.write(this, tables, table));
    return written(new WordLists(this, tables), working);
  }

  /** Gives no cell a name that belongs to a published table behind some values. */
  public void leaveNamesToTables(Collection<Traced> values) {
    Reached own = new Reached();
    own.from(values);
    own.nodes().stream()
        .flatMap(node -> node.value().step().lookedUpIn().stream())
        .forEach(ranges::leave);
  }

  /** A value stands on a tab once more: what stands there points at it there. */
  void copied(Traced value, Tab tab, int row, int column) {
    copies
        .computeIfAbsent(tab.name(), name -> new HashMap<>())
        .put(value, new Place(tab.name(), row, column, ""));
  }

  /** Shows on a tab every step behind some results; what stands on another is pointed at there. */
  void worked(Tab tab, Collection<Traced> results) {
    Reached own = new Reached();
    own.from(results);
    Predicate<Traced> isHere =
        value -> places.containsKey(value) && places.get(value).tab().equals(tab.name());
    new WorkingPage(this, tab).write(Closure.of(own, isHere, literalsAreInputs));
  }

  /** Decides which cells of lists are places of their own. */
  private void settle() {
    for (Listing listing : listings) {
      listing.settle(value -> place(value) != null || isGuardedElsewhere(value));
      listing.places(inLists::put);
    }
  }

  private Closure closure() {
    return Closure.of(reached(), value -> place(value) != null, literalsAreInputs);
  }

  /**
   * Writes everything, now that every value has its place.
   *
   * @param working the tab of what stands on no other; null where there is none
   */
  private CellNotation written(WordLists words, Tab working) {
    reached();
    inLists.forEach(this::noted);
    places.forEach(this::noted);
    CellNotation notation = CellNotation.alone(this::placeFrom, guards, ranges::of);
    unfinished.forEach(write -> write.accept(notation));
    drawings.forEach(Runnable::run);
    validations(words);
    if (audience.isOffice() && working != null) {
      NamesPage.write(this, working);
    }
    if (leavesOutEmptyPages) {
      List.copyOf(tabs.values()).stream().filter(Tab::isEmpty).map(Tab::name).forEach(tabs::remove);
    }
    tabs.values().stream()
        .filter(tab -> !tab.isATable())
        .reduce((before, last) -> last)
        .ifPresent(last -> last.note(Page.SAID));
    tabs.values().stream().filter(Tab::isKeptBack).forEach(Tab::saysHowItIsPrinted);
    tabs.values().forEach(Fit::words);
    tabs.values().forEach(Page::finish);
    return notation;
  }

  /** A guarded argument stands on the working page with its limits, unless a table holds those. */
  private boolean isGuardedElsewhere(Traced value) {
    return value.step().guard().filter(guard -> !guards.containsKey(guard)).isPresent();
  }

  /** Where a value stands; null if it has no place. */
  private Place place(Traced value) {
    Place place = places.get(value);
    return place == null ? inLists.get(value) : place;
  }

  /** The same as a tab sees it: its own copy, if it has one. */
  private Place placeFrom(Traced value, String tab) {
    Place copy = copies.getOrDefault(tab, Map.of()).get(value);
    return copy == null ? place(value) : copy;
  }

  private void noted(Traced value, Place place) {
    if (isInput(value) && (!helps.containsKey(value) || reached.has(value))) {
      inputs.put(value, place);
    }
  }

  /** Everything that the values on the pages are made from, as far as they stand there by now. */
  private Reached reached() {
    reached.from(roots);
    listings.forEach(listing -> listing.roll().rows().forEach(reached::from));
    return reached;
  }

  /** Something that was solved is drawn on a page, even where no number of it is written. */
  public void draws(List<Solution> solutions) {
    solutions.stream().filter(each -> audience.maySee(each.state())).forEach(drawn::add);
  }

  /** What solvers found, and everything on the pages rests on. */
  List<Solution> solutions() {
    Set<Solution> all = new LinkedHashSet<>(drawn);
    all.addAll(reached().solutions());
    return List.copyOf(all);
  }

  /** The cells that hold what was solved, by the name of the list's column or of the figure. */
  Map<String, List<String>> solvedCells() {
    Map<String, List<String>> solved = new LinkedHashMap<>();
    places.forEach(
        (value, place) -> {
          if (value.step().solution().isPresent()) {
            solved.computeIfAbsent(value.name(), name -> new ArrayList<>()).add(place.address());
          }
        });
    for (Listing listing : listings) {
      for (String column : listing.roll().columns()) {
        if (listing.roll().cellsOf(column).stream()
            .anyMatch(value -> value.step().solution().isPresent())) {
          solved.put(ranges.of(listing.roll(), column), listing.addressesOf(column));
        }
      }
    }
    return solved;
  }

  /** Where each input stands. */
  Map<Traced, Place> inputs() {
    return inputs;
  }

  private void validations(WordLists words) {
    Map<Traced, Limits> limits = GuardedInputs.limits(reached(), this::isInput);
    inputs.forEach(
        (value, place) -> {
          int last = filledDown.getOrDefault(place.tab(), place.row());
          Limits byFunction = limits.getOrDefault(value, Limits.NONE);
          Allowed allowed = Allowed.of(value, byFunction, helps.getOrDefault(value, ""));
          tabs.get(place.tab()).hold(Validation.of(place.downTo(last), allowed, words));
        });
    helps.forEach(
        (value, help) -> {
          if (!inputs.containsKey(value)) {
            Place place = places.get(value);
            held(
                tabs.get(place.tab()),
                place.downTo(place.row()),
                Allowed.of(value, Limits.NONE, help));
          }
        });
    held.forEach(hold -> hold.accept(words));
  }

  /**
   * Writes a value into its place: a formula and its value, or the bare value where it was given.
   */
  void write(TabCell cell, Traced value, CellNotation notation) {
    if (!isTold && !value.step().isValueOnly()) {
      cell.formula(notation.formula(value));
    }
    valued(cell, audience.allowed(value));
  }

  /** Writes a value whose place is elsewhere: a formula that points there, or the bare value. */
  public void writeLink(TabCell cell, Traced value, CellNotation notation) {
    if (!isTold && place(value) != null) {
      cell.formula(notation.of(value).text());
    }
    valued(cell, audience.allowed(value));
  }

  private void valued(TabCell cell, Traced value) {
    value.refusal().filter(refusal -> !refusal.isAnswer()).ifPresent(refused::add);
    CellValue.write(value, cell);
  }

  /** Why cells hold no value; known once the book is finished. */
  public Set<Refusal> refused() {
    return refused;
  }

  private PackedBook packed() {
    List<Tab> written = List.copyOf(tabs.values());
    return new PackedBook(
        particulars,
        styles,
        ranges.defined(),
        written,
        new ManifestPart(audience.isOffice(), ranges.defined(), written, solvedPlaces()));
  }

  private Set<String> solvedPlaces() {
    return Stream.concat(places.entrySet().stream(), inLists.entrySet().stream())
        .filter(entry -> entry.getKey().step().solution().isPresent())
        .map(entry -> entry.getValue().absolute())
        .collect(Collectors.toSet());
  }
}
