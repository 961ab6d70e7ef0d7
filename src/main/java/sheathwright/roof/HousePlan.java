package sheathwright.roof;

import java.util.ArrayList;
import java.util.List;

/** What a house's roof was measured from: its body, and what stands on it. */
public final class HousePlan {

  private final HouseBody body;
  private final List<HousePart> parts;

  HousePlan(HouseBody body, List<HousePart> parts) {
    this.body = body;
    this.parts = List.copyOf(parts);
  }

  public HouseBody body() {
    return body;
  }

  List<HousePart> parts() {
    return parts;
  }

  HousePlan with(HousePart part) {
    List<HousePart> all = new ArrayList<>(parts);
    all.add(part);
    return new HousePlan(body, all);
  }

  @Override
  public String toString() {
    return "%s by %s, %s".formatted(body.length(), body.width(), body.ends().choice());
  }
}
