package sheathwright.leveling.plan;

import sheathwright.figure.Choice;
import sheathwright.figure.YesNo;

/**
 * What may be done to rafters, and must not be done to trusses.
 *
 * @param whereDeep where more is missing than a strip makes up: sister, on trusses stop
 * @param whereHigh where the wood stands too high: plane, on trusses stop
 */
record WhatTrussesAllow(Choice<LevelAction> whereDeep, Choice<LevelAction> whereHigh) {

  static WhatTrussesAllow of(Choice<YesNo> truss) {
    return new WhatTrussesAllow(
        rafterOnly(truss, LevelAction.SISTER).as("where_deep"),
        rafterOnly(truss, LevelAction.PLANE).as("where_high"));
  }

  private static Choice<LevelAction> rafterOnly(Choice<YesNo> truss, LevelAction toRafter) {
    return Choice.choose(truss.is(YesNo.YES), LevelAction.STOP, toRafter);
  }
}
