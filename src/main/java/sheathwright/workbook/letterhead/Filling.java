package sheathwright.workbook.letterhead;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sheathwright.figure.Shown;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.workbook.draw.Drawing;
import sheathwright.workbook.letterhead.OfficeFile.Blank;
import sheathwright.workbook.letterhead.OfficeFile.Sheet;
import sheathwright.workbook.told.Photos;

/** What becomes of each word in braces: a formula that points at our document, words, a picture. */
final class Filling {

  private static final Set<String> PICTURES =
      Stream.concat(Stream.of("photo"), Arrays.stream(Drawing.values()).map(Drawing::word))
          .collect(Collectors.toUnmodifiableSet());

  private final OfficeFile office;
  private final Ours ours;
  private final LetterKind kind;
  private final Map<String, Word> words;
  private final List<Problem> problems;

  Filling(OfficeFile office, Ours ours, LetterKind kind) {
    this.office = office;
    this.ours = ours;
    this.kind = kind;
    words = kind.words();
    problems = new ArrayList<>(office.problems());
  }

  /**
   * Fills every blank of the office's sheets, and gives the pictures that are to be laid upon them.
   *
   * @throws ProblemsException with everything that is wrong, cell by cell
   */
  List<Laid> fill(Told told, Supplier<Photos> photos) {
    clashes();
    List<Laid> laid = new ArrayList<>();
    for (Blank blank : office.blanks()) {
      Word word = words.get(blank.word());
      if (PICTURES.contains(blank.word().split("\\s")[0])) {
        picture(blank, photos, laid);
      } else if (word == null) {
        problem(blank, kind.refused(blank.word()));
      }
    }
    Map<Blank, Integer> lines = lines();
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
    for (Blank blank : office.blanks()) {
      Word word = words.get(blank.word());
      if (word == null) {
        blank.cell().empty();
      } else if (word.kind() == Word.Kind.TOLD) {
        blank.cell().say(told.texts().get(word.text()));
      } else {
        point(blank.cell(), word, lines.getOrDefault(blank, 0));
      }
    }
    office.blanks().stream()
        .map(Blank::sheet)
        .distinct()
        .forEach(sheet -> office.put(sheet.part(), sheet.root()));
    return laid;
  }

  private void point(Cell cell, Word word, int line) {
    ours.shown(word, line)
        .ifPresentOrElse(
            shown -> cell.calculate(shown.formula(), shown.result().type(), shown.result().value()),
            cell::empty);
  }

  /** Which line of its list each blank shows: that of its row among the rows of the list. */
  private Map<Blank, Integer> lines() {
    Map<String, List<Blank>> lists = new LinkedHashMap<>();
    for (Blank blank : office.blanks()) {
      Word word = words.get(blank.word());
      if (word != null && word.kind() == Word.Kind.LIST) {
        lists
            .computeIfAbsent(blank.sheet().name() + "\n" + word.list(), key -> new ArrayList<>())
            .add(blank);
      }
    }
    Map<Blank, Integer> lines = new HashMap<>();
    lists.values().forEach(list -> number(list, lines));
    return lines;
  }

  private void number(List<Blank> list, Map<Blank, Integer> lines) {
    List<Integer> rows =
        List.copyOf(
            list.stream()
                .map(blank -> blank.cell().row())
                .collect(Collectors.toCollection(TreeSet::new)));
    list.forEach(blank -> lines.put(blank, rows.indexOf(blank.cell().row())));
    int wanted =
        list.stream().mapToInt(blank -> ours.lines(words.get(blank.word()))).max().orElseThrow();
    if (wanted > rows.size()) {
      String name = words.get(list.get(0).word()).list();
      problem(
          list.get(0),
          "{%s.…} stands in %s, and this document has %s; copy the row until there are at least %s"
              .formatted(
                  name, Shown.counted(rows.size(), "row"), Shown.counted(wanted, "line"), wanted));
    }
  }

  private void picture(Blank blank, Supplier<Photos> photos, List<Laid> laid) {
    String[] said = blank.word().split("\\s+");
    if (!said[0].equals("photo")) {
      drawing(blank, String.join(" ", said), laid);
    } else if (said.length != 3) {
      problem(
          blank,
          "{%s}: a photograph is named by its mark or place and its view, such as {photo A-3-5 before}"
              .formatted(blank.word()));
    } else {
      Photos all = photos.get();
      all.shown(said[1], said[2])
          .ifPresentOrElse(
              photo ->
                  laid.add(
                      new Laid.Photo(
                          blank, photo, "Photograph of %s, %s".formatted(said[1], said[2]))),
              () ->
                  problem(
                      blank,
                      "{%s}: the job has no such photograph; it has %s"
                          .formatted(
                              blank.word(),
                              all.keys().isEmpty() ? "none" : String.join(", ", all.keys()))));
    }
  }

  private void drawing(Blank blank, String wanted, List<Laid> laid) {
    List<Ours.Drawn> all = ours.drawings();
    List<Ours.Drawn> ofThatKind =
        all.stream().filter(each -> each.word().startsWith(wanted + " ")).toList();
    all.stream()
        .filter(each -> each.word().equals(wanted))
        .findFirst()
        .or(() -> ofThatKind.size() == 1 ? Optional.of(ofThatKind.get(0)) : Optional.empty())
        .ifPresentOrElse(
            each -> laid.add(new Laid.Drawn(blank, each.part(), each.shape())),
            () ->
                problem(
                    blank,
                    "{%s}: this document has no such drawing; it has %s"
                        .formatted(
                            blank.word(),
                            all.isEmpty()
                                ? "none"
                                : all.stream()
                                    .map(each -> "{" + each.word() + "}")
                                    .distinct()
                                    .collect(Collectors.joining(", ")))));
  }

  /** Tabs and names that both have; a program could not tell them apart. */
  private void clashes() {
    Set<String> tabs = small(ours.sheets().keySet().stream());
    for (Sheet sheet : office.sheets()) {
      if (tabs.contains(sheet.name().toLowerCase(Locale.ROOT))) {
        problems.add(
            office.problem(
                "its tab \"%s\" is called as one of our document; give it another name"
                    .formatted(sheet.name())));
      }
    }
    Set<String> names = small(ours.names().stream());
    words.values().stream()
        .filter(word -> word.kind() != Word.Kind.TOLD)
        .map(word -> word.name().toLowerCase(Locale.ROOT))
        .forEach(names::add);
    Xml.child(office.root(OfficeFile.WORKBOOK), "definedNames").stream()
        .flatMap(all -> Xml.children(all, "definedName").stream())
        .map(each -> each.getAttribute("name"))
        .filter(name -> names.contains(name.toLowerCase(Locale.ROOT)))
        .forEach(
            name ->
                problems.add(
                    office.problem(
                        "its name %s is one of our document's; give it another".formatted(name))));
  }

  private static Set<String> small(Stream<String> names) {
    return names
        .map(name -> name.toLowerCase(Locale.ROOT))
        .collect(Collectors.toCollection(HashSet::new));
  }

  private void problem(Blank blank, String message) {
    problems.add(office.problem(blank.sheet(), blank.cell(), message));
  }
}
