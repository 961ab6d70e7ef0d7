package sheathwright.workbook.part;

/** What stands on a sheet and has a part of its own. */
public sealed interface Pasted permits Chart, Picture {

  /** The kind of link that points at it. */
  String link();
}
