package sheathwright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.drawingml.x2006.main.CTNonVisualDrawingProps;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTTwoCellAnchor;

/**
 * The ten questions that the U.S. federal community asks of a workbook that everybody is to read,
 * each with what is wrong in a workbook, and a way to make it wrong, so that the question is known
 * to find it.
 */
enum Accessibility {
  /** The name of the file, and those of its tabs, say what is in them. */
  DESCRIPTIVE_NAMES {
    @Override
    List<String> faults(XSSFWorkbook workbook) {
      return Stream.concat(
              sheets(workbook)
                  .map(XSSFSheet::getSheetName)
                  .filter(name -> name.matches("(?i)(sheet|tab|table) ?\\d+|\\d*")),
              Stream.of(title(workbook)).filter(title -> title.split(" ").length < 3))
          .toList();
    }

    @Override
    void spoil(XSSFWorkbook workbook) {
      workbook.setSheetName(0, "Sheet1");
    }
  },

  /** Read from the first cell on, a tab says first what it is; nothing is hidden between. */
  READING_ORDER {
    @Override
    List<String> faults(XSSFWorkbook workbook) {
      return sheets(workbook)
          .filter(
              sheet ->
                  !text(sheet.getRow(0).getCell(0)).equals(sheet.getSheetName())
                      || sheet.getRow(1).getZeroHeight()
                      || workbook.isSheetHidden(workbook.getSheetIndex(sheet))
                      || IntStream.range(0, 20).anyMatch(sheet::isColumnHidden)
                      || sheet.isRightToLeft())
          .map(XSSFSheet::getSheetName)
          .toList();
    }

    @Override
    void spoil(XSSFWorkbook workbook) {
      workbook.getSheetAt(0).getRow(0).getCell(0).setCellValue("");
    }
  },

  /** A link's words say where it leads, and it leads there. */
  LINK_NAMES {
    @Override
    List<String> faults(XSSFWorkbook workbook) {
      return links(workbook)
          .filter(
              link -> {
                CellReference to = new CellReference(link.getLocation().split(":")[0]);
                return workbook.getSheet(to.getSheetName()) == null
                    || link.getTooltip() == null
                    || !link.getTooltip().endsWith(text(from(workbook, link)))
                    || !text(from(workbook, link)).startsWith(to.getSheetName());
              })
          .map(XSSFHyperlink::getCellRef)
          .toList();
    }

    @Override
    void spoil(XSSFWorkbook workbook) {
      from(workbook, links(workbook).findFirst().orElseThrow()).setCellValue("here");
    }
  },

  /** What stands in a header or footer only is not read aloud: it stands in a cell as well. */
  HEADER_FACTS {
    @Override
    List<String> faults(XSSFWorkbook workbook) {
      List<String> facts =
          sheets(workbook)
              .flatMap(
                  sheet ->
                      Stream.of(
                          sheet.getFooter().getLeft(),
                          sheet.getFooter().getCenter(),
                          sheet.getHeader().getLeft(),
                          sheet.getHeader().getCenter(),
                          sheet.getHeader().getRight()))
              .filter(Objects::nonNull)
              .map(fact -> fact.replaceFirst("^&8", ""))
              .filter(fact -> !fact.isEmpty())
              .distinct()
              .toList();
      List<String> cells = cells(workbook).map(Accessibility::text).toList();
      return facts.stream()
          .filter(fact -> cells.stream().noneMatch(cell -> cell.contains(fact)))
          .toList();
    }

    @Override
    void spoil(XSSFWorkbook workbook) {
      workbook.getSheetAt(0).getHeader().setCenter("Valid for 30 days");
    }
  },

  /** A list has one line of headings, one over each column, and no cells made one. */
  REAL_TABLES {
    @Override
    List<String> faults(XSSFWorkbook workbook) {
      List<String> faults = new ArrayList<>();
      for (Name name : workbook.getAllNames()) {
        AreaReference area = columnOf(name);
        if (area == null) {
          continue;
        }
        XSSFSheet sheet = workbook.getSheet(area.getFirstCell().getSheetName());
        CellReference first = area.getFirstCell();
        CellRangeAddress withHead =
            new CellRangeAddress(
                first.getRow() - 1, area.getLastCell().getRow(), first.getCol(), first.getCol());
        Cell head = sheet.getRow(first.getRow() - 1).getCell(first.getCol());
        if (text(head).isEmpty()
            || sheet.getMergedRegions().stream().anyMatch(withHead::intersects)) {
          faults.add(name.getNameName());
        }
      }
      return faults;
    }

    @Override
    void spoil(XSSFWorkbook workbook) {
      Name list =
          workbook.getAllNames().stream()
              .filter(name -> columnOf(name) != null)
              .findFirst()
              .orElseThrow();
      CellReference first = columnOf(list).getFirstCell();
      workbook
          .getSheet(first.getSheetName())
          .getRow(first.getRow() - 1)
          .getCell(first.getCol())
          .setBlank();
    }
  },

  /** Every picture, chart and drawing is told in words, under a name that says what it shows. */
  ALTERNATIVE_TEXT {
    @Override
    List<String> faults(XSSFWorkbook workbook) {
      return drawn(workbook)
          .filter(
              drawing ->
                  drawing.getDescr().split(" ").length < 4
                      || drawing.getTitle().isBlank()
                      || drawing.getName().isBlank()
                      || drawing.getName().matches("(?i)(dia\\w+|chart|group|picture|shape) ?\\d*"))
          .map(CTNonVisualDrawingProps::toString)
          .toList();
    }

    @Override
    void spoil(XSSFWorkbook workbook) {
      drawn(workbook).findFirst().orElseThrow().setDescr("");
    }
  },

  /** What a color says is said by a frame or a word as well. */
  COLOR_NEVER_ALONE {
    @Override
    List<String> faults(XSSFWorkbook workbook) {
      Stream<String> inputs =
          IntStream.range(0, workbook.getNumCellStyles())
              .mapToObj(workbook::getCellStyleAt)
              .filter(style -> !style.getLocked() && fill(style) != null)
              .filter(style -> style.getBorderLeft() == BorderStyle.NONE)
              .map(style -> "an input without a frame");
      Stream<String> rules =
          sheets(workbook)
              .map(XSSFSheet::getSheetConditionalFormatting)
              .flatMap(
                  all ->
                      IntStream.range(0, all.getNumConditionalFormattings())
                          .mapToObj(all::getConditionalFormattingAt))
              .map(each -> each.getRule(0).getFormula1())
              .filter(formula -> !formula.contains("\""))
              .map(formula -> "a color by no word: " + formula);
      return Stream.concat(inputs, rules).toList();
    }

    @Override
    void spoil(XSSFWorkbook workbook) {
      var all = workbook.getSheetAt(0).getSheetConditionalFormatting();
      var rule = all.createConditionalFormattingRule("B5>1");
      rule.createFontFormatting().setFontColorIndex((short) 10);
      all.addConditionalFormatting(new CellRangeAddress[] {CellRangeAddress.valueOf("B5")}, rule);
    }
  },

  /** Letters stand out from what is behind them by 4.5 to 1. */
  CONTRAST {
    @Override
    List<String> faults(XSSFWorkbook workbook) {
      return cells(workbook)
          .map(cell -> (XSSFCellStyle) cell.getCellStyle())
          .distinct()
          .filter(style -> contrast(style.getFont().getXSSFColor(), fill(style)) < LEAST)
          .map(style -> "style " + style.getIndex())
          .toList();
    }

    @Override
    void spoil(XSSFWorkbook workbook) {
      var style = workbook.createCellStyle();
      var font = workbook.createFont();
      font.setColor(new XSSFColor(new byte[] {(byte) 0xFF, (byte) 0x99, (byte) 0x99, 0x66}, null));
      style.setFont(font);
      workbook.getSheetAt(0).getRow(4).getCell(0).setCellStyle(style);
    }
  },

  /** Nothing sounds or plays; pictures are pictures. */
  MEDIA {
    @Override
    List<String> faults(XSSFWorkbook workbook) {
      return parts(workbook)
          .filter(part -> part.startsWith("/xl/media/"))
          .filter(part -> !part.matches("/xl/media/image\\d+\\.(jpeg|png)"))
          .toList();
    }

    @Override
    void spoil(XSSFWorkbook workbook) {
      workbook.addPicture(
          new byte[] {'G', 'I', 'F'}, org.apache.poi.ss.usermodel.Workbook.PICTURE_TYPE_WMF);
    }
  },

  /** Nothing flashes or moves: no program runs in it, no picture has several frames. */
  NO_FLASHING {
    @Override
    List<String> faults(XSSFWorkbook workbook) {
      return parts(workbook)
          .filter(part -> part.matches("(?i).*(vba|activex|ctrlprop|\\.gif|embeddings).*"))
          .toList();
    }

    @Override
    void spoil(XSSFWorkbook workbook) {
      try {
        workbook.setVBAProject(new java.io.ByteArrayInputStream(new byte[] {1}));
      } catch (java.io.IOException impossible) {
        throw new java.io.UncheckedIOException(impossible);
      }
    }
  };

  private static final double LEAST = 4.5;

  /** What is wrong, each thing in a few words. */
  abstract List<String> faults(XSSFWorkbook workbook);

  /** Makes one thing wrong. */
  abstract void spoil(XSSFWorkbook workbook);

  private static Stream<XSSFSheet> sheets(XSSFWorkbook workbook) {
    return IntStream.range(0, workbook.getNumberOfSheets()).mapToObj(workbook::getSheetAt);
  }

  private static Stream<Cell> cells(XSSFWorkbook workbook) {
    return sheets(workbook)
        .flatMap(sheet -> StreamSupport.stream(sheet.spliterator(), false))
        .flatMap(row -> StreamSupport.stream(row.spliterator(), false));
  }

  private static String title(XSSFWorkbook workbook) {
    return Objects.requireNonNullElse(workbook.getProperties().getCoreProperties().getTitle(), "");
  }

  private static String text(Cell cell) {
    boolean isText =
        cell != null
            && (cell.getCellType() == CellType.STRING
                || cell.getCellType() == CellType.FORMULA
                    && cell.getCachedFormulaResultType() == CellType.STRING);
    return isText ? cell.getStringCellValue() : "";
  }

  private static Stream<XSSFHyperlink> links(XSSFWorkbook workbook) {
    return sheets(workbook).flatMap(sheet -> sheet.getHyperlinkList().stream());
  }

  private static Cell from(XSSFWorkbook workbook, XSSFHyperlink link) {
    CellReference at = new CellReference(link.getCellRef());
    return sheets(workbook)
        .filter(sheet -> sheet.getHyperlinkList().contains(link))
        .map(sheet -> sheet.getRow(at.getRow()).getCell(at.getCol()))
        .findFirst()
        .orElseThrow();
  }

  /** The column of a list that a name stands for; null if it stands for something else. */
  private static AreaReference columnOf(Name name) {
    if (name.getNameName().startsWith("_") || name.getNameName().endsWith("_words")) {
      return null;
    }
    AreaReference area = new AreaReference(name.getRefersToFormula(), SpreadsheetVersion.EXCEL2007);
    boolean isColumn = area.getFirstCell().getCol() == area.getLastCell().getCol();
    boolean isPrinted = area.getFirstCell().getSheetName().equals("Tables");
    return area.isSingleCell() || !isColumn || isPrinted ? null : area;
  }

  private static Stream<CTNonVisualDrawingProps> drawn(XSSFWorkbook workbook) {
    return sheets(workbook)
        .filter(sheet -> sheet.getDrawingPatriarch() != null)
        .flatMap(
            sheet -> sheet.getDrawingPatriarch().getCTDrawing().getTwoCellAnchorList().stream())
        .map(Accessibility::properties);
  }

  private static CTNonVisualDrawingProps properties(CTTwoCellAnchor anchor) {
    if (anchor.isSetGrpSp()) {
      return anchor.getGrpSp().getNvGrpSpPr().getCNvPr();
    }
    if (anchor.isSetGraphicFrame()) {
      return anchor.getGraphicFrame().getNvGraphicFramePr().getCNvPr();
    }
    return anchor.isSetPic()
        ? anchor.getPic().getNvPicPr().getCNvPr()
        : anchor.getSp().getNvSpPr().getCNvPr();
  }

  private static XSSFColor fill(XSSFCellStyle style) {
    return style.getFillForegroundXSSFColor();
  }

  /** By the formula of the Web Content Accessibility Guidelines 2.1; white where nothing is. */
  private static double contrast(XSSFColor letters, XSSFColor behind) {
    double one = luminance(letters == null ? new byte[] {0, 0, 0} : letters.getRGB());
    double other = behind == null ? 1 : luminance(behind.getRGB());
    return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
  }

  private static double luminance(byte[] rgb) {
    double[] shares = {0.2126, 0.7152, 0.0722};
    double sum = 0;
    for (int i = 0; i < shares.length; i++) {
      double part = (rgb[i] & 0xFF) / 255.0;
      sum += shares[i] * (part <= 0.03928 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4));
    }
    return sum;
  }

  private static Stream<String> parts(XSSFWorkbook workbook) {
    try {
      return workbook.getPackage().getParts().stream()
          .map(PackagePart::getPartName)
          .map(name -> name.getName().toLowerCase(Locale.ROOT));
    } catch (InvalidFormatException broken) {
      throw new IllegalStateException(broken);
    }
  }
}
