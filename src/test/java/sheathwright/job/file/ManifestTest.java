package sheathwright.job.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The hash of a manifest, whoever has written it anew. */
class ManifestTest {

  private static final String WRITTEN =
      "<?xml version=\"1.0\"?>\n<manifest xmlns=\"urn:sheathwright:manifest:1\" reader=\"office\">\n<sheet n=\"A\">\n<n r=\"A1\" f=\"1+1\">2</n><t r=\"B1\">it's\n5</t>\n</sheet></manifest>";

  private static String hash(String xml) {
    return Manifest.hash(xml.getBytes(StandardCharsets.UTF_8)).orElse("");
  }

  @Test
  void lineEndsOrderOfAttributesBlanksAndEscapes_changeNothing() {
    String rewritten =
        "<m:manifest reader='office' xmlns:m='urn:sheathwright:manifest:1'><m:sheet n='A'>\r\n\r\n  <m:n f='1+1' r='A1'>2</m:n><m:t r='B1'>it&apos;s\r\n5</m:t></m:sheet>\r\n</m:manifest>";

    assertThat(hash(rewritten)).isEqualTo(hash(WRITTEN)).hasSize(64);
  }

  @Test
  void anythingElse_doesChangeIt() {
    assertThat(hash(WRITTEN.replace(">2<", ">3<"))).isNotEqualTo(hash(WRITTEN));
    assertThat(hash(WRITTEN.replace("1+1", "1-1"))).isNotEqualTo(hash(WRITTEN));
    assertThat(hash(WRITTEN.replace("r=\"B1\"", "r=\"B2\""))).isNotEqualTo(hash(WRITTEN));
  }

  @Test
  void whatIsBroken_hasNone() {
    assertThat(hash("<manifest")).isEmpty();
    assertThat(Manifest.hashIn("no workbook".getBytes(StandardCharsets.UTF_8))).isEmpty();
    assertThat(Manifest.isOurs("<a xmlns='urn:other'/>".getBytes(StandardCharsets.UTF_8)))
        .isFalse();
  }
}
