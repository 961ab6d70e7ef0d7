package sheathwright.wood;

/**
 * A stick of graded lumber that bears something: what it is, what it measures, and where it serves.
 *
 * @param lumber as its grade stamp names it
 * @param actual what it really measures
 * @param service where it serves
 */
public record Member(Lumber lumber, ActualSize actual, ServiceConditions service) {

  public Member {
    lumber = lumber == null ? new Lumber(null, null, null, null) : lumber;
    actual = actual == null ? new ActualSize(null, null, null) : actual;
    service = service == null ? new ServiceConditions(null, null, null) : service;
  }

  /** As a yard sells it, in a dry place. */
  public static Member of(Lumber lumber) {
    return new Member(lumber, null, null);
  }

  public Member actual(ActualSize measured) {
    return new Member(lumber, measured, service);
  }

  public Member service(ServiceConditions conditions) {
    return new Member(lumber, actual, conditions);
  }

  /** What it shows where it is cut through; nothing for ripped stock, which has no values. */
  public RafterSection section() {
    return StockSection.of(lumber.size(), actual);
  }
}
