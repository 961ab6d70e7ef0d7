package sheathwright.framing.rafter;

import sheathwright.figure.Option;

/** Whether a strut stands on a bearing wall, which somebody has to have seen. */
public enum BearsOnWall implements Option<BearsOnWall> {
  /** Nobody has looked: no support. */
  WALL_NOT_SEEN("unknown"),
  /** Seen to stand on a bearing wall. */
  ON_BEARING_WALL("yes"),
  /** Seen to stand on a ceiling, on a partition, or on nothing. */
  ON_NO_WALL("no");

  private final String word;

  BearsOnWall(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
