package sheathwright.hard;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Random;

/** What mischief may be done with a workbook's file: each makes one of a good one. */
enum Hostile {
  /** One part that is nearly nothing packed, and fills the memory unpacked. */
  BOMB(Kind.REFUSED) {
    @Override
    byte[] of(byte[] good) {
      return with(good, "xl/media/blank.bin", new byte[90_000_000]);
    }
  },

  /** A packed file in the packed file; nobody asks for what is in it. */
  NESTED(Kind.HARMLESS) {
    @Override
    byte[] of(byte[] good) {
      byte[] inner = FileFaults.zipped(Map.of("a", new byte[50_000_000]));
      return with(good, "xl/media/inner.zip", inner);
    }
  },

  /** A directory that lists one part ten thousand times over. */
  OVERLAPPING(Kind.HARMLESS) {
    @Override
    byte[] of(byte[] good) {
      return listedOften(good, 10_000);
    }
  },

  /** A document type whose entities grow tenfold at each of ten steps. */
  ENTITIES(Kind.REFUSED) {
    @Override
    byte[] of(byte[] good) {
      return changed(good, "xl/workbook.xml", Hostile::withEntities);
    }
  },

  /** Millions of cells, in a file too long to be taken for a bomb. */
  CELLS(Kind.HEAVY) {
    @Override
    byte[] of(byte[] good) {
      return rows(good, "<c><v>1</v></c>".repeat(16_000), 200);
    }
  },

  /** One long formula that half a million cells share. */
  FORMULAS(Kind.HEAVY) {
    @Override
    byte[] of(byte[] good) {
      String first =
          "<c r=\"A1\"><f t=\"shared\" ref=\"A1:XFD31\" si=\"0\">%s1</f><v>1</v></c>"
              .formatted("1+".repeat(4_000));
      String others = "<c><f t=\"shared\" si=\"0\"/><v>1</v></c>".repeat(16_000);
      return filled(
          good, "<row>" + first + others + ("</row><row>" + others).repeat(30) + "</row>");
    }
  },

  /** Every column hidden, two hundred thousand times. */
  COLUMNS(Kind.HEAVY) {
    @Override
    byte[] of(byte[] good) {
      String all = "<col min=\"1\" max=\"16384\" hidden=\"1\"/>".repeat(200_000);
      return padded(
          changed(good, SHEET, xml -> before("<sheetData", "<cols>" + all + "</cols>", xml)));
    }
  },

  /** More than a million texts that no cell uses. */
  TEXTS(Kind.HEAVY) {
    @Override
    byte[] of(byte[] good) {
      String many = "<si><t>x</t></si>".repeat(1_200_000);
      return padded(changed(good, "xl/sharedStrings.xml", xml -> before("<si>", many, xml)));
    }
  },

  /** A hundred thousand tabs that are all the same sheet. */
  TABS(Kind.HEAVY) {
    @Override
    byte[] of(byte[] good) {
      String tab = "<sheet name=\"t%d\" sheetId=\"%d\" r:id=\"rId1\"/>";
      StringBuilder tabs = new StringBuilder();
      for (int i = 0; i < 100_000; i++) {
        tabs.append(tab.formatted(i, i + 100));
      }
      return padded(
          changed(good, "xl/workbook.xml", xml -> before("</sheets>", tabs.toString(), xml)));
    }
  },

  /** Elements that stand a million deep in each other. */
  DEEP(Kind.HEAVY) {
    @Override
    byte[] of(byte[] good) {
      return filled(good, "<a>".repeat(1_000_000) + "</a>".repeat(1_000_000));
    }
  },

  /** A workbook with macros that is called an ordinary one. */
  MACROS(Kind.NAMED) {
    @Override
    byte[] of(byte[] good) {
      return with(
          changed(
              good,
              "[Content_Types].xml",
              xml ->
                  xml.replace(
                      "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
                      "application/vnd.ms-excel.sheet.macroEnabled.main+xml")),
          "xl/vbaProject.bin",
          new byte[] {1, 2, 3});
    }
  },

  /** A link to another workbook. */
  LINKS(Kind.NAMED) {
    @Override
    byte[] of(byte[] good) {
      return with(
          good, "xl/externalLinks/externalLink1.xml", "<x/>".getBytes(StandardCharsets.UTF_8));
    }
  },

  /** A part that would lie outside of the folder it is unpacked into. */
  OUTSIDE(Kind.REFUSED) {
    @Override
    byte[] of(byte[] good) {
      return with(good, "xl/../../../outside.xml", "<x/>".getBytes(StandardCharsets.UTF_8));
    }
  },

  /** A part that stands there twice, each time otherwise. */
  TWICE(Kind.REFUSED) {
    @Override
    byte[] of(byte[] good) {
      return with(good, "XL/Workbook.xml", "<x/>".getBytes(StandardCharsets.UTF_8));
    }
  },

  /** More parts than any workbook has. */
  PARTS(Kind.REFUSED) {
    @Override
    byte[] of(byte[] good) {
      Map<String, byte[]> parts = FileFaults.parts(good);
      for (int i = 0; i < 5_000; i++) {
        parts.put("xl/media/" + i, new byte[0]);
      }
      return FileFaults.zipped(parts);
    }
  };

  static final String SHEET = "xl/worksheets/sheet1.xml";

  /** What becomes of it. */
  enum Kind {
    /** No reader opens it. */
    REFUSED,

    /** Whoever takes numbers or words from it refuses it; comparing reads past what is in it. */
    NAMED,

    /** It is read as the good one is, or refused. */
    HARMLESS,

    /** It is answered in any way that takes no long time; too long for the gate. */
    HEAVY
  }

  private final Kind kind;

  Hostile(Kind kind) {
    this.kind = kind;
  }

  Kind kind() {
    return kind;
  }

  /** The file that is made of a good workbook's. */
  abstract byte[] of(byte[] good);

  /** A part with a document type in front of it, whose entities grow. */
  static String withEntities(String xml) {
    StringBuilder entities = new StringBuilder("<!DOCTYPE x [<!ENTITY e0 \"ha\">");
    for (int i = 1; i <= 10; i++) {
      entities.append("<!ENTITY e%d \"%s\">".formatted(i, ("&e" + (i - 1) + ";").repeat(10)));
    }
    int after = xml.startsWith("<?xml") ? xml.indexOf("?>") + 2 : 0;
    return xml.substring(0, after) + entities + "]>" + xml.substring(after);
  }

  /** One part changed as a text. */
  static byte[] changed(byte[] good, String part, java.util.function.UnaryOperator<String> change) {
    Map<String, byte[]> parts = FileFaults.parts(good);
    String text = new String(parts.get(part), StandardCharsets.UTF_8);
    parts.put(part, change.apply(text).getBytes(StandardCharsets.UTF_8));
    return FileFaults.zipped(parts);
  }

  private static String before(String sign, String more, String xml) {
    int at = xml.indexOf(sign);
    return xml.substring(0, at) + more + xml.substring(at);
  }

  private static byte[] rows(byte[] good, String cells, int rows) {
    return filled(good, ("<row>" + cells + "</row>").repeat(rows));
  }

  private static byte[] filled(byte[] good, String rows) {
    return padded(
        changed(
            good,
            SHEET,
            xml ->
                xml.substring(0, xml.indexOf("<sheetData"))
                    + "<sheetData>"
                    + rows
                    + "</sheetData></worksheet>"));
  }

  /** Too long to be taken for a bomb. */
  private static byte[] padded(byte[] file) {
    byte[] noise = new byte[1_000_000];
    new Random(17).nextBytes(noise);
    return with(file, "xl/media/noise.bin", noise);
  }

  private static byte[] with(byte[] good, String part, byte[] content) {
    Map<String, byte[]> parts = FileFaults.parts(good);
    parts.put(part, content);
    return FileFaults.zipped(parts);
  }

  private static byte[] listedOften(byte[] good, int times) {
    ByteBuffer file = ByteBuffer.wrap(good).order(ByteOrder.LITTLE_ENDIAN);
    int end = good.length - 22; // the end of the directory, which has no comment
    int at = file.getInt(end + 16);
    int length = 46 + file.getShort(at + 28) + file.getShort(at + 30) + file.getShort(at + 32);
    byte[] entry = java.util.Arrays.copyOfRange(good, at, at + length);
    ByteArrayOutputStream made = new ByteArrayOutputStream();
    made.write(good, 0, end);
    for (int i = 0; i < times; i++) {
      byte[] name = "%04d".formatted(i).getBytes(StandardCharsets.UTF_8);
      System.arraycopy(name, 0, entry, 46, name.length);
      made.write(entry, 0, length);
    }
    ByteBuffer last = ByteBuffer.allocate(22).order(ByteOrder.LITTLE_ENDIAN);
    last.put(good, end, 22);
    last.putShort(8, (short) (file.getShort(end + 8) + times));
    last.putShort(10, (short) (file.getShort(end + 10) + times));
    last.putInt(12, file.getInt(end + 12) + times * length);
    made.writeBytes(last.array());
    return made.toByteArray();
  }
}
