package sheathwright.workbook.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

/** XML that is written, read back by the JDK's own reader. */
class XmlTextTest {

  private static Element read(XmlText xml) throws Exception {
    byte[] bytes = xml.toString().getBytes(StandardCharsets.UTF_8);
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(bytes))
        .getDocumentElement();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plain",
        "a < b & c > d",
        "\"said\"",
        "it's",
        "&amp;",
        "é 1½ ✓",
        "]]>",
        "two  spaces"
      })
  void words_comeBackAsTheyWere(String words) throws Exception {
    Element element = read(new XmlText().open("a", "said", words).words(words).close("a"));

    assertThat(element.getTextContent()).isEqualTo(words);
    assertThat(element.getAttribute("said")).isEqualTo(words);
  }

  /** A reader makes a space of an end of line in an attribute, unless it is written as a number. */
  @Test
  void anEndOfLineInAnAttribute_comesBack() throws Exception {
    Element element = read(new XmlText().empty("a", "said", "one\ntwo"));

    assertThat(element.getAttribute("said")).isEqualTo("one\ntwo");
  }

  @Test
  void anAttributeWithoutAValue_isLeftOut() throws Exception {
    assertThat(read(new XmlText().empty("a", "b", null, "c", 3)).getAttributes().getLength())
        .isEqualTo(1);
  }

  @Test
  void aWholeNumber_hasNoPoint() {
    assertThat(new XmlText().leaf("a", 3).leaf("a", -0.5).empty("b", "c", 2.0))
        .hasToString("<a>3</a><a>-0.5</a><b c=\"2\"/>");
  }
}
