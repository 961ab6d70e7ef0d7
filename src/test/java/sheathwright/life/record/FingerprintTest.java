package sheathwright.life.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.JobTables;
import sheathwright.job.table.CsvFile;

class FingerprintTest {

  private static final String JOB =
      "key,value,note\nbase_roofing_usd,\"10,420.00\",lump\nstage,quoted,\nsite,\"a, b\",\n";
  private static final String MARKS = "mark,plane,probe_in\n1,A,3/8\n2,B,\n";

  /** FIPS 180-4's own example. */
  @Test
  void aFilesFingerprint_isItsSha256() {
    assertThat(Fingerprint.of("abc".getBytes(StandardCharsets.UTF_8)))
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "job|`key;value\nsite;a, b\nbase_roofing_usd;10420\nstage;agreed\n`",
        "job|`value,note,key\n\"a, b\",x,site\n\"$10,420.00\",y,base_roofing_usd\n2027-05-04,,agreed_on\n`",
        "marks|`plane,probe_in,note_x,mark,by\r\nA,3/8 ,x,1,\r\n\r\nB,,,2,\r\n`",
        "marks|`mark,plane,probe_in\n2,B,\n1,A,3/8\n`",
        "orders|`order,on,status\nCO-01,2027-05-04,offered\n`",
        "sent|`document,file\na,b\n`",
      })
  void howATableIsWrittenOrWhatComesAfterTheQuote_isNoChange(String table, String text) {
    assertThat(Fingerprint.ofQuote(with(table, text)))
        .isEqualTo(Fingerprint.ofQuote(with("job", JOB)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "job|`key,value\nbase_roofing_usd,10421\nsite,\"a, b\"\n`",
        "job|`key,value\nbase_roofing_usd,10420\n`",
        "job|`key,value\nbase_roofing_usd,10420\nsite,\"a, b\"\npermit_usd,0\n`",
        "marks|`mark,plane,probe_in\n1,A,3/8\n2,B,1/8\n`",
        "marks|`mark,plane,probe_in\n1,A,3/8\n`",
        "options|`option,item,chosen\na,b,\n`",
      })
  void whatTheQuoteSays_isAChange(String table, String text) {
    assertThat(Fingerprint.ofQuote(with(table, text)))
        .isNotEqualTo(Fingerprint.ofQuote(with("job", JOB)));
  }

  /** Options are numbered as they stand. */
  @Test
  void optionsInAnotherOrder_areAChange() {
    assertThat(Fingerprint.ofQuote(with("options", "option,item\na,b\nc,d\n")))
        .isNotEqualTo(Fingerprint.ofQuote(with("options", "option,item\nc,d\na,b\n")));
  }

  /** As demo-data/thistlewick/fir/sent.csv has it, from before rows could be sorted. */
  @Test
  void aQuoteOfBefore_isKnownAgain() {
    JobTables fir = JobTables.in(Path.of("demo-data", "thistlewick", "fir"));
    String hash = fir.files().get("sent").lines().get(0).cells().get(3);
    assertThat(Fingerprint.isOfQuote(hash, fir)).isTrue();
    assertThat(Fingerprint.isOfQuote(hash, with("job", JOB))).isFalse();
  }

  @Test
  void whatTheOwnerChooses_isNoChangeOfTheQuoteButOfTheRecord() {
    JobTables open = with("options", "option,item,chosen,chosen_on\na,b,,\n");
    JobTables chosen = with("options", "option,item,chosen,chosen_on\na,b,yes,2027-05-04\n");
    assertThat(Fingerprint.ofQuote(chosen)).isEqualTo(Fingerprint.ofQuote(open));
    assertThat(Fingerprint.ofAll(chosen)).isNotEqualTo(Fingerprint.ofAll(open));
  }

  private static JobTables with(String table, String text) {
    Map<String, CsvFile> files = new LinkedHashMap<>();
    files.put("job", CsvFile.parse("job.csv", JOB));
    files.put("marks", CsvFile.parse("marks.csv", MARKS));
    files.put(table, CsvFile.parse(table + ".csv", text));
    return new JobTables(files);
  }
}
