package sheathwright.leveling.string;

import sheathwright.figure.Option;

/** Which way a straightedge lies. */
public enum FlatnessWay implements Option<FlatnessWay> {
  ALONG_THE_RAFTERS,
  ACROSS_THE_RAFTERS
}
