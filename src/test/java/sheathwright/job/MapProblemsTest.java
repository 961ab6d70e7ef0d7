package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.life.MapRecord;
import sheathwright.job.table.Field;
import sheathwright.job.table.JobText;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.zone.ZoneFields;

/**
 * What a job's tables say of places is held against the map of the old deck. Each plane of the
 * small job is 20 by 12 ft: three courses; by hand, joints at 96 and 192 in odd courses and at 48
 * and 144 in even ones make 3 places in each course, 9 on a plane.
 */
class MapProblemsTest {

  private static final String MARKS =
      "mark,plane,finding,along_in,up_in,width_in,height_in,sheet,action,joint_ft,void\n";

  private static JobText marked(String... lines) {
    return JobText.small().withTable("marks", MARKS + String.join("\n", lines) + "\n");
  }

  private static List<String> problems(JobText text) {
    try {
      new Estimate(text.job());
      return List.of();
    } catch (ProblemsException wrong) {
      return wrong.problems().stream().map(Problem::toString).toList();
    }
  }

  /** The small job with the table of places that it would be given today. */
  private static JobText recorded(JobText text) {
    MapRecord record = new Estimate(text.job()).deck().mapRecord();
    String headings =
        ZoneFields.PLACES_NAMED.stream().map(Field::name).collect(Collectors.joining(","));
    String lines =
        record.rows().stream()
            .map(
                row ->
                    ZoneFields.PLACES_NAMED.stream()
                        .map(field -> row.get(field.name()))
                        .collect(Collectors.joining(",")))
            .collect(Collectors.joining("\n"));
    return text.withTable("places", headings + "\n" + lines + "\n");
  }

  @Test
  void everyMarkOffTheMap_isSaidAtOnce() {
    assertThat(
            problems(
                marked(
                    "a,front,rot,,,,,front-9-2,,,",
                    "b,front,rot,100,8,10,6,front-1-1,,,",
                    "c,back,rot,500,8,10,6,,,,",
                    "d,back,rot,,,,,front-1-1,,,")))
        .hasSize(4)
        .extracting(problem -> problem.substring(0, problem.indexOf(':')))
        .containsExactly(
            "marks.csv, line 2, column sheet",
            "marks.csv, line 3, column sheet",
            "marks.csv, line 4, column along_in",
            "marks.csv, line 5, column sheet");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a,front,rot,,,,,front-1-2,replace,,|b,front,loose,,,,,front-1-2,refasten,,",
        "a,front,rot,,,,,front-1-2,replace,,|b,front,loose,100,8,10,6,,refasten,,"
      })
  void twoActionsForOnePlace_areSaid(String one, String other) {
    assertThat(problems(marked(one, other)))
        .containsExactly(
            "marks.csv, line 3, column action: refasten is given, but mark a (line 2) of the same place front-1-2 says replace; a place is dealt with in one way: give both the same, leave one blank for the rules, or give yes in void");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a,front,rot,,,,,front-1-2,replace,,|b,front,rot,,,,,front-1-2,replace,,",
        "a,front,rot,,,,,front-1-2,replace,,|b,front,loose,,,,,front-1-2,,,",
        "a,front,rot,,,,,front-1-2,replace,,|b,front,loose,,,,,front-1-2,refasten,,yes",
        "a,front,rot,,,,,front-1-2,replace,,|b,front,tight,,,,,front-1-2,relieve,8,",
        "a,front,rot,,,,,front-1-2,replace,,|b,front,loose,,,,,front-1-1,refasten,,"
      })
  void oneActionForOnePlace_isAllowed(String one, String other) {
    assertThat(problems(marked(one, other))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "front-1-2|",
        "front-1-7|sheet is \"front-1-7\", but plane front has no such place; the nearest are front-1-3, ",
        "roof-1-1|\"roof-1-1\" is not a place of the map; the planes are front, back; give plane, course from the eave and place from the left, such as front-1-1",
        "by the vent|\"by the vent\" is not a place of the map; the planes are front, back; give"
      })
  void aPhotographOfAPlace_isOfOneOnTheMap(String sheet, String said) {
    List<String> problems =
        problems(
            JobText.small().withTable("photos", "photo,sheet,view\nx.jpg," + sheet + ",wide\n"));
    if (said == null) {
      assertThat(problems).isEmpty();
    } else {
      assertThat(problems)
          .singleElement()
          .asString()
          .startsWith("photos.csv, line 2, column sheet: " + said);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "front-1-2|",
        "front-1-1|photos.csv, line 2, column sheet: front-1-1 is given, but mark a lies in front-1-2; give that, or leave it blank"
      })
  void aPhotographOfAMark_isOfItsPlace(String sheet, String said) {
    assertThat(
            problems(
                marked("a,front,rot,100,8,10,6,,,,")
                    .withTable("photos", "photo,mark,sheet,view\nx.jpg,a," + sheet + ",wide\n")))
        .isEqualTo(said == null ? List.of() : List.of(said));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "eave,front,1,1,3|",
        "eave,front,1,1,4|column places: 4 is given, but the map of plane front has 3 places in these courses; give at most that",
        "all,,,,18|",
        "all,,,,19|column places: 19 is given, but the map of the roof has 18 places in these courses; give at most that",
        "top,front,3,4,|column to_course: 4 is given, but plane front has 3 courses, counted from the lowest point; give at most that"
      })
  void aZone_isOnThePlane(String zone, String said) {
    List<String> problems =
        problems(
            JobText.small()
                .withTable("zones", "zone,plane,from_course,to_course,places\n" + zone + "\n"));
    assertThat(problems)
        .isEqualTo(said == null ? List.of() : List.of("zones.csv, line 2, " + said));
  }

  @Test
  void theMapAsItWasNamed_isKept() {
    JobText kept = recorded(JobText.small());
    assertThat(kept.tables().get("places"))
        .startsWith(
            "key,plane,along_in,up_in,width_in,height_in\n"
                + "front-1-1,front,0,0,96,48\n"
                + "front-1-2,front,96,0,96,48\n"
                + "front-1-3,front,192,0,48,48\n"
                + "front-2-1,front,0,48,48,48\n")
        .contains("\nback-3-1,back,0,96,96,48\n");
    assertThat(problems(kept)).isEmpty();
  }

  /** By hand: with the first joint at 48 in, what lay from 96 to 192 is half each of two places. */
  @Test
  void aChangeThatWouldRenumberPlaces_isRefusedWithBothKeys() {
    JobText moved =
        recorded(JobText.small())
            .withTable(
                "planes", "plane,eave_ft,slope_length_ft,joint_in\nfront,20,12,48\nback,20,12,\n");
    assertThat(problems(moved))
        .singleElement()
        .asString()
        .startsWith(
            "planes.csv, line 2, column plane: the map is not the one by which documents name its places (places.csv): what was front-1-1 would be front-1-2, what was front-1-2 would be front-1-3")
        .endsWith(
            "; put the measures of the plane, its openings and its joints back, or give what was found as a line of joints.csv, which moves no key");
  }

  /** By hand: a plane that lost its right half has no third place any more. */
  @Test
  void aPlaceThatIsLost_isSaid() {
    JobText shorter = recorded(JobText.small()).with("planes", "front,20,12,", "front,15,12,");
    assertThat(problems(shorter))
        .singleElement()
        .asString()
        .contains("what was front-1-3 would be no place");
  }

  @ParameterizedTest
  @CsvSource({"'front,1,92'", "'front,1,150'", "'front,2,30'"})
  void aJointFoundLater_movesNoKey(String joint) {
    JobText split =
        recorded(JobText.small()).withTable("joints", "plane,course,joint_in\n" + joint + "\n");
    assertThat(problems(split)).isEmpty();
  }

  @Test
  void aJointThatSplits_isAKeyWithLetters() {
    JobText split =
        recorded(JobText.small()).withTable("joints", "plane,course,joint_in\nfront,1,150\n");
    assertThat(new Estimate(split.job()).deck().parts().get(0).map().has("front-1-2b")).isTrue();
    JobText joined =
        new JobText(recorded(split).tables())
            .withTable("joints", "plane,course,joint_in\nfront,3,92\n");
    assertThat(problems(joined))
        .singleElement()
        .asString()
        .contains("what was front-1-2a would be front-1-2, what was front-1-2b would be front-1-2");
  }

  @Test
  void aWiderPlane_keepsItsKeys() {
    assertThat(problems(recorded(JobText.small()).with("planes", "front,20,12,", "front,28,12,")))
        .isEmpty();
  }

  /** What only rows tell and what only the map tells is said in one run. */
  @Test
  void rowsAndMap_areSaidTogether() {
    JobText both =
        marked("a,front,rot,,,,,front-9-2,,,", "b,frunt,rot,,,,,front-1-1,,,")
            .with("job", "valid_days,30", "valid_days,soon");
    assertThatThrownBy(both::job)
        .hasMessageContaining("job.csv, line 8, column value: valid_days")
        .hasMessageContaining("marks.csv, line 2, column sheet: ")
        .hasMessageContaining("marks.csv, line 3, column plane: ");
  }
}
