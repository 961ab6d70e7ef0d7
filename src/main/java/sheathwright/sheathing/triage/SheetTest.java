package sheathwright.sheathing.triage;

import java.util.List;
import java.util.stream.Stream;
import sheathwright.figure.Choice;
import sheathwright.figure.Option;
import sheathwright.figure.Word;

/** What a sheet is tried by, the first that decides first, and what is done where it speaks. */
public enum SheetTest implements Option<SheetTest> {
  FRAMING("framing", "stop", "a report stops the framing under it"),
  PROBE("probe", "replace", "an awl goes in", "more than", "is cut out"),
  BROKEN("broken", "replace", "it is parted or split through"),
  LARGE_HOLE("large hole", "replace", "a hole is", "more than", "is not covered"),
  HOLD("screw hold", "replace", "a screw holds", "less than", "is not enough"),
  UNMEASURED_WOOD("wood not measured", "replace"),
  THICKNESS(
      "thickness", "stop", "its thickness is", "less than", "needs an overlay or a new deck: ask"),
  UNMEASURED_THICKNESS("thickness not measured", "stop"),
  HOLE("hole", "cover", "a hole is", "up to", "is covered with sheet metal"),
  BEARING("bearing", "support", "an end bears on", "less than", "gets a scab or a block"),
  EDGE("edge", "support", "a long edge is bare that the span table wants held"),
  UNMEASURED_SUPPORT("support not measured", "support"),
  HUMP("hump", "relieve", "a closed joint stands up", "more than", "is sawn to 1/8 in"),
  UNMEASURED_JOINT("joint not measured", "relieve"),
  NAILS("nails", "refasten", "it is held by", "fewer than", "calls for more by the schedule"),
  LOOSE("loose", "refasten", "it gives or moves on its nails, and the wood is not shown to be bad"),
  MOISTURE("moisture", "dry", "the wood holds", "more than", "is not covered: read it again"),
  STAIN("stain", "watch", "find the water and let it dry"),
  BUILD_UP("build-up", "lift", "it lies over a rafter that is built up: lay it again"),
  NOTHING("nothing else", "watch", "what was measured lies within the limits");

  /** Which of the three sentences a test is said in. */
  enum Saying implements Word {
    NUMBERS,
    FINDING,
    PLAIN
  }

  private static final String NONE = "none";

  private final String word;
  private final String action;
  private final Saying saying;
  private final String said; // without the action, which a firm may change
  private final String limit;
  private final String why;

  SheetTest(String word, String action) {
    this(word, action, Saying.FINDING, "", NONE, NONE);
  }

  SheetTest(String word, String action, String said) {
    this(word, action, Saying.PLAIN, said, NONE, NONE);
  }

  SheetTest(String word, String action, String said, String limit, String why) {
    this(word, action, Saying.NUMBERS, said + " ", "; " + limit + " ", " " + why);
  }

  SheetTest(String word, String action, Saying saying, String said, String limit, String why) {
    this.word = word;
    this.action = action;
    this.saying = saying;
    this.said = said;
    this.limit = limit;
    this.why = why;
  }

  /** A line of the table of tests, where this is done. */
  List<String> line(String done) {
    return Stream.of(word, done, saying.word(), done + ": " + said, limit, why).toList();
  }

  /** What is done where it speaks, if the firm's rules say nothing else. */
  public String action() {
    return action;
  }

  @Override
  public String word() {
    return word.replace(' ', '-');
  }

  /** As it is called where several speak. */
  Choice<String> called() {
    return Choice.literal(word);
  }

  /** Begins the names of its cells. */
  String cell() {
    return word.replace(' ', '_').replace('-', '_');
  }
}
