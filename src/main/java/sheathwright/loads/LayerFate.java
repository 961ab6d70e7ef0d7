package sheathwright.loads;

import sheathwright.figure.Option;

/** What becomes of a layer of a roof in this job. */
public enum LayerFate implements Option<LayerFate> {
  /** It lies there before and after. */
  STAYS,
  /** It is torn off, and weighs nothing when the job is done. */
  COMES_OFF,
  /** It is new. */
  GOES_ON
}
