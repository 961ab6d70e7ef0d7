package sheathwright.workbook.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.junit.jupiter.api.Test;

/** A packed file as the JDK and Apache POI unpack it. */
class PartFileTest {

  private static byte[] packed() throws IOException {
    PartFile file = new PartFile();
    FilePart first = file.add("a/first.xml", "application/first+xml", FilePart.Content.of("<a/>"));
    FilePart second = file.add("a/b/second.xml", Ooxml.XML, FilePart.Content.of("<b/>"));
    FilePart picture = file.add("a/third.jpeg", Ooxml.JPEG, out -> out.write(7));
    second.level(9);
    file.whole().link("urn:whole", first);
    first.link("urn:one", second);
    first.link("urn:two", picture);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    file.writeTo(bytes);
    return bytes.toByteArray();
  }

  @Test
  void kindsComeFirst_thenEachPartWithItsLinks_allOfOneDay() throws IOException {
    List<String> names = new ArrayList<>();
    ZipInputStream parts = new ZipInputStream(new ByteArrayInputStream(packed()));
    for (ZipEntry part = parts.getNextEntry(); part != null; part = parts.getNextEntry()) {
      names.add(part.getName());
      assertThat(part.getTimeLocal()).hasToString("1980-01-01T00:00:02");
    }

    assertThat(names)
        .containsExactly(
            "[Content_Types].xml",
            "_rels/.rels",
            "a/first.xml",
            "a/_rels/first.xml.rels",
            "a/b/second.xml",
            "a/third.jpeg");
  }

  @Test
  void itsPartsAndLinks_areThoseOfAPackage() throws IOException, OpenXML4JException {
    try (OPCPackage read = OPCPackage.open(new ByteArrayInputStream(packed()))) {
      PackagePart first = read.getPart(read.getRelationshipsByType("urn:whole").getRelationship(0));
      assertThat(first.getContentType()).isEqualTo("application/first+xml");
      PackageRelationship one = first.getRelationship("rId1");
      assertThat(first.getRelatedPart(one).getPartName().getName()).isEqualTo("/a/b/second.xml");
      assertThat(first.getRelatedPart(one).getContentType()).isEqualTo(Ooxml.XML);
      PackagePart picture = first.getRelatedPart(first.getRelationship("rId2"));
      assertThat(picture.getContentType()).isEqualTo(Ooxml.JPEG);
      assertThat(picture.getInputStream().readAllBytes()).containsExactly(7);
    }
  }

  @Test
  void theSameParts_makeTheSameBytes() throws IOException {
    assertThat(packed()).isEqualTo(packed());
  }
}
