package sheathwright.wood;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.OneOf;
import sheathwright.figure.YesNo;

/**
 * A stick of graded lumber that bears something: what it is, what it measures, and where it serves.
 *
 * @param lumber as its grade stamp names it
 * @param actual what it really measures
 * @param service where it serves
 * @param incised whether slits were pressed into it for a preservative
 */
public record Member(
    Lumber lumber,
    ActualSize actual,
    ServiceConditions service,
    @Column(value = "incised", preset = "no") OneOf<YesNo> incised) {

  private static final Columns COLUMNS = Columns.of(Member.class);

  public Member {
    lumber = lumber == null ? new Lumber(null, null, null, null) : lumber;
    actual = actual == null ? new ActualSize(null, null, null) : actual;
    service = service == null ? ServiceConditions.DRY : service;
    incised = COLUMNS.let("incised", incised);
  }

  /** As a yard sells it, in a dry place. */
  public static Member of(Lumber lumber) {
    return new Member(lumber, null, null, null);
  }

  public Member actual(ActualSize measured) {
    return new Member(lumber, measured, service, incised);
  }

  public Member service(ServiceConditions conditions) {
    return new Member(lumber, actual, conditions, incised);
  }

  public Member incised(OneOf<YesNo> slits) {
    return new Member(lumber, actual, service, slits);
  }

  /** What it shows where it is cut through; nothing for ripped stock, which has no values. */
  public RafterSection section() {
    return StockSection.of(lumber.size(), actual);
  }
}
