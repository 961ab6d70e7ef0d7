package sheathwright.job.path;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.figure.Check;
import sheathwright.figure.Traced;
import sheathwright.job.site.Site;

/**
 * The way of a roof's loads down to the walls, joint by joint: each is a check that holds or fails
 * once somebody has looked, and until then is said not to have been looked at.
 */
public final class LoadPath {

  private static final String NO_RAFTERS =
      "what the rafters are (rafter_size and what belongs to it), and then %s";

  private final List<Check> checks;
  private final Unsaid said;

  /**
   * The joints of a job.
   *
   * @param said what it says of them, and what may be said later
   * @param rafters whose joints they are, if the job says what they are
   * @param site in whose wind they stand
   */
  public LoadPath(Unsaid said, Optional<PathRafters> rafters, Site site) {
    this.said = said;
    Stream<Check> joints =
        rafters
            .map(known -> Stream.of(HeelJoints.check(said, known), WallTies.check(said, known)))
            .orElseGet(
                () ->
                    Stream.of(
                        Check.neverLooked(HeelJoints.WHAT, NO_RAFTERS.formatted(HeelJoints.LOOK)),
                        Check.neverLooked(WallTies.WHAT, NO_RAFTERS.formatted(WallTies.LOOK))));
    checks =
        Stream.of(
                Stream.of(RidgeAndStruts.ridge(said), RidgeAndStruts.struts(said)),
                joints,
                Stream.of(EaveRows.check(said, site)))
            .flatMap(each -> each)
            .toList();
  }

  /** Each joint, from the ridge down. */
  public List<Check> checks() {
    return checks;
  }

  /** What nobody has said of them yet, labeled: inputs of the workbook. */
  public Map<String, Traced> unsaid() {
    return said.inputs();
  }
}
