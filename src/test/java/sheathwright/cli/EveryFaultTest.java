package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.job.life.LifeText;
import sheathwright.job.table.JobText;

/**
 * A job's folder in which everything is wrong: all of it is said in one run, and nothing is done.
 */
class EveryFaultTest {

  @TempDir private Path folder;

  /** Every fault by the place where it is said. */
  private static JobText spoiled() {
    return LifeText.opened()
        .with("job", "asked_on,2027-04-20", "asked_on,2027-04-30")
        .with("job", "agreed_on,2027-05-06", "agreed_on,2027-05-03")
        .withLines("job", "known_leak,yes,", "shim_tolerance_in,1/8,", "closed_on,2027-05-20,")
        .withTable(
            "marks",
            """
            mark,plane,finding,sheet,along_in,up_in,width_in,height_in,stage_found,on,action
            a,front,rot,front-9-9,,,,,opened,2027-05-10,
            b,front,loose,front-2-1,,,,,opened,2027-05-09,refasten
            c,back,rot,back-1-1,100,8,10,6,surveyed,2027-04-28,
            d,front,rot,front-2-1,,,,,opened,2027-05-21,replace
            """)
        .with("photos", "a.jpg,a,", "a.jpg,z,")
        .with("photos", "F-1", "F-7")
        .withLines("photos", "job.csv,,,front-7-7,wide", "b.jpg,,,,wide")
        .with("agreed", "90,2,50,10", "90,30,95,30")
        .with("stages", "90,,when", "80,,when")
        .withLines("stages", "more,5,5,some day", "none,,,some day")
        .with("orders", "Nobody at all,signed,2027-05-11", ",pre-agreed,")
        .with("orders", "90,0.25", "300,0.25")
        .withLines("order_lines", "07,sheet,half,1,90,a: 1", "02,scab,piece,1,22,q: 1")
        .with("zones", "1,3,8,6,1", "3,1,8,9,10")
        .with("zones", "rest,back,,,8", "rest,back,,,10")
        .with("inspections", "nails,6", "nails,many")
        .withTable("log", "day,task,quantity,hours\n2027-05-10,sheet,3,-2\n")
        .withTable(
            "places", "key,plane,along_in,up_in,width_in,height_in\nfront-1-1,front,96,0,96,48\n");
  }

  private static final List<String> SAID =
      List.of(
          "job.csv, line 21, column value: looked_on: ",
          "job.csv, line 22, column value: agreed_on: ",
          "job.csv, line 27, column key: \"shim_tolerance_in\" is for the table readings.csv",
          "marks.csv, line 2, column sheet: sheet is \"front-9-9\"",
          "marks.csv, line 3, column on: ",
          "marks.csv, line 4, column sheet: sheet is back-1-1, but what was measured lies in back-1-2",
          "marks.csv, line 5, column on: ",
          "marks.csv, line 5, column action: ",
          "photos.csv, line 2, column mark: \"z\"",
          "photos.csv, line 3, column report: \"F-7\"",
          "photos.csv, line 4, column photo: \"job.csv\" is not a JPEG or PNG picture",
          "photos.csv, line 4, column sheet: ",
          "photos.csv, line 5, column mark: it is empty",
          "agreed.csv, line 2, column credit_usd: 95",
          "agreed.csv, line 2, column included: 30",
          "stages.csv, line 4, column part_pct: ",
          "stages.csv, line 5, column part_pct: ",
          "orders.csv, line 2, column approved_by: ",
          "orders.csv, line 2, column approved_how: pre-agreed is given, but it comes to $300.00",
          "orders.csv, line 2, column approved_on: ",
          "order_lines.csv, line 4, column order: \"07\"",
          "order_lines.csv, line 5, column item: \"scab\"",
          "order_lines.csv, line 5, column marks: \"q\"",
          "zones.csv, line 2, column from_course: 3",
          "zones.csv, line 2, column seen: 9",
          "zones.csv, line 2, column seen_bad: 10",
          "zones.csv, line 3, column places: 10",
          "inspections.csv, line 2, column required: \"many\"",
          "log.csv, line 2, column hours: hours is -2",
          "planes.csv, line 2, column plane: the map is not the one by which documents name its places (places.csv): what was front-1-1 would be front-1-2");

  @Test
  void everything_isSaidAtOnceAndNothingIsWritten() throws IOException {
    for (Map.Entry<String, String> table : spoiled().tables().entrySet()) {
      Files.writeString(folder.resolve(table.getKey() + ".csv"), table.getValue());
    }
    Map<String, String> before = contents();
    CommandRun ran = CommandRun.of("quote", folder);
    assertThat(ran.status()).isNotZero();
    assertThat(ran.out()).isEmpty();
    List<String> lines = ran.err().lines().toList();
    for (String said : SAID) {
      assertThat(lines).as(said).anyMatch(line -> line.contains(said));
    }
    assertThat(lines).hasSize(SAID.size());
    assertThat(contents()).isEqualTo(before);
  }

  /** The same job without its faults is read: each line above speaks of a fault. */
  @Test
  void theJobBehindIt_isRead() {
    assertThat(LifeText.opened().problems()).isEmpty();
  }

  private Map<String, String> contents() throws IOException {
    Map<String, String> contents = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        contents.put(folder.relativize(file).toString(), Files.readString(file));
      }
    }
    return contents;
  }
}
