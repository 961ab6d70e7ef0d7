package sheathwright.job.life;

import sheathwright.figure.Option;

/** What became of a change order. */
public enum OrderStatus implements Option<OrderStatus> {
  OFFERED,
  APPROVED,
  REFUSED,
  WITHDRAWN
}
