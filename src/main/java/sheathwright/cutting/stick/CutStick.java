package sheathwright.cutting.stick;

import java.util.List;

/**
 * One stick and what is cut from it.
 *
 * @param stock index into the order's stock
 * @param pieces indexes into the order's pieces, one for each piece cut, longest piece first
 */
public record CutStick(int stock, List<Integer> pieces) {

  public CutStick {
    pieces = List.copyOf(pieces);
  }
}
