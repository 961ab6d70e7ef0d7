package sheathwright.workbook.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.table.RowSource;
import sheathwright.life.found.Found;
import sheathwright.life.found.FoundWork;
import sheathwright.workbook.home.HomeBook;
import sheathwright.workbook.page.Samples;
import sheathwright.workbook.told.Photos;

/**
 * What a homeowner is handed calls a place by words and a mark by its number in a list: the
 * office's keys of both stand in no cell of it, no picture and no words for a picture.
 */
class NoKeysTest {

  /** Keys of the marks of this test, and of every place of its planes. */
  private static final Pattern OURS = Pattern.compile("\\b(?:[RLT]-\\d|[AB]-\\d{1,2}-\\d{1,2})\\b");

  /** A key on the map of its own plane. */
  private static final Pattern ON_THE_MAP = Pattern.compile("\\d-\\d");

  private static final Pattern DRAWN = Pattern.compile("<a:t>([^<]*)</a:t>");

  private static final String MARKS =
      """
      mark,plane,finding,sheet,stage_found,on,probe_in,action,note
      R-1,A,rot,A-1-2,opened,2027-05-18,3/8,,
      R-2,A,rot,A-1-3,opened,2027-05-18,3/8,,
      R-3,B,rot,B-2-3,opened,2027-05-18,3/8,,
      R-4,B,rot,B-5-3,opened,2027-05-18,3/8,,
      L-1,B,loose,B-2-1,opened,2027-05-18,,refasten,
      L-2,B,loose,B-2-3,opened,2027-05-18,,refasten,
      T-1,A,stain,A-4-2,opened,2027-05-18,,,
      """;

  private static final String PHOTOS =
      """
      photo,mark,report,sheet,view,taken,caption
      photos/4-before.jpg,R-4,,,before,2027-05-18,
      photos/4-open.jpg,R-4,,,open,2027-05-18,
      photos/2-before.jpg,,,A-1-3,before,2027-05-18,
      """;

  private static Map<String, byte[]> papers() {
    Map<String, RowSource> open = LifeJob.tables(Map.of("marks", MARKS, "photos", PHOTOS));
    String orders =
        """
        order,on,usd,days,status,approved_by,approved_how,approved_on
        01,2027-05-18,117.00,0.25,approved,Odalys Brackenridge-Plume,signed,2027-05-18
        """;
    String lines = "order,item,unit,quantity,usd,marks\n01,sheet,half,1,117.00,R-4: 1\n";
    Map<String, RowSource> closed =
        LifeJob.tables(
            Map.of(
                "marks",
                MARKS,
                "photos",
                PHOTOS,
                "orders",
                orders,
                "order_lines",
                lines,
                "sent",
                LifeJob.SENT));
    Job opened = LifeJob.job(open);
    Estimate done = new Estimate(LifeJob.job(closed));
    Map<String, byte[]> papers = new LinkedHashMap<>();
    papers.put("quote", HomeBook.of(new Estimate(opened), Photos.none()).bytes());
    papers.put("change order", LifeBooks.changeOrder(opened, found(new Estimate(opened))));
    papers.put("invoice", LifeBooks.invoice(done, found(done)));
    papers.put("deck record", LifeBooks.deckRecord(done, found(done)));
    return papers;
  }

  private static List<Found> found(Estimate estimate) {
    return FoundWork.of(estimate).list();
  }

  static List<String> jobs() {
    return Samples.everyJob();
  }

  @ParameterizedTest
  @ValueSource(strings = {"quote", "change order", "invoice", "deck record"})
  void noPaperOfTheHomeowners_showsAKeyOfOurs(String paper) throws IOException {
    byte[] file = papers().get(paper);

    assertThat(parts(file).toString()).doesNotContainPattern(OURS);
    assertThat(drawn(file)).noneMatch(words -> ON_THE_MAP.matcher(words).find());
  }

  /** A key of whichever plane and mark a demo job has. */
  @ParameterizedTest
  @MethodSource("jobs")
  void noQuote_showsAKeyOfItsJob(String job) throws IOException {
    Estimate estimate = new Estimate(Job.of(Samples.tables(job)));
    String said = parts(HomeBook.of(estimate, Photos.none()).bytes()).toString();

    for (Found found : found(estimate)) {
      assertThat(said).doesNotContainPattern("\\b" + Pattern.quote(found.key()) + "\\b");
      assertThat(said).doesNotContainPattern(">" + Pattern.quote(found.mark()) + "<");
    }
  }

  private static List<String> drawn(byte[] file) throws IOException {
    List<String> words = new ArrayList<>();
    parts(file)
        .forEach(
            (name, text) -> {
              if (name.contains("drawing")) {
                DRAWN.matcher(text).results().forEach(found -> words.add(found.group(1)));
              }
            });
    return words;
  }

  private static Map<String, String> parts(byte[] file) throws IOException {
    Map<String, String> parts = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        if (entry.getName().endsWith(".xml")) {
          parts.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
        }
      }
    }
    return parts;
  }
}
