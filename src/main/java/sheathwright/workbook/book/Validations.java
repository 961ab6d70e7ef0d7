package sheathwright.workbook.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDataValidation;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDataValidations;

/**
 * What may be typed on each tab, written at once: for each that is added, POI counts all that are
 * there.
 */
final class Validations {

  private final Map<XSSFSheet, List<CTDataValidation>> bySheet = new LinkedHashMap<>();

  /** Takes away what was just added. */
  void takeFrom(XSSFSheet sheet) {
    CTDataValidations added = sheet.getCTWorksheet().getDataValidations();
    if (added != null) {
      List<CTDataValidation> taken = bySheet.computeIfAbsent(sheet, each -> new ArrayList<>());
      for (CTDataValidation validation : added.getDataValidationArray()) {
        taken.add((CTDataValidation) validation.copy());
      }
      sheet.getCTWorksheet().unsetDataValidations();
    }
  }

  /** Puts everything back that was taken. */
  void write() {
    bySheet.forEach(
        (sheet, taken) -> {
          CTDataValidations all = sheet.getCTWorksheet().addNewDataValidations();
          all.setDataValidationArray(taken.toArray(CTDataValidation[]::new));
          all.setCount(taken.size());
        });
  }
}
