package sheathwright.workbook.letterhead;

import sheathwright.workbook.draw.Photograph;

/**
 * A photograph that is laid upon a cell of an office's sheet.
 *
 * @param words for whoever does not see it
 */
record LaidPhoto(OfficeFile.Blank blank, Photograph photograph, String words) {}
