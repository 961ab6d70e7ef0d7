package sheathwright.life.found;

import java.util.List;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;
import sheathwright.job.Deck;
import sheathwright.job.DeckAreas;
import sheathwright.job.Estimate;
import sheathwright.job.life.Item;

/**
 * The boards of a deck, in feet: all that there are, found to be bad, and still possible.
 *
 * @param planes each plane of boards
 * @param most all of them, up to the next foot
 * @param found on all planes
 * @param possible that no mark calls for yet
 */
public record BoardsSettled(
    Roll planes, Figure<Length> most, Figure<Length> found, Figure<Length> possible) {

  private static final Figure<Length> NONE = Figure.of(0, Units.FOOT);

  /** What one plane holds and was found to be bad. */
  private record Line(Deck.Part part, Figure<Length> most, Figure<Length> found) {

    Figure<Length> possible() {
      return most.minus(found).max(NONE);
    }
  }

  /** The boards of an estimate; nothing where no plane is of boards. */
  public static Optional<BoardsSettled> of(Estimate estimate, FoundWork work) {
    List<Deck.Part> boards = estimate.deck().ofBoards();
    return estimate.boardsAtWorst().map(most -> of(boards, work, most));
  }

  private static BoardsSettled of(List<Deck.Part> boards, FoundWork work, Figure<Length> most) {
    Roll planes =
        Roll.of(
            "boards_by_plane",
            "the boards of each plane",
            boards.stream()
                .map(part -> new Line(part, DeckAreas.feetOfBoard(part), work.feetOfBoard(part)))
                .toList(),
            Roll.<Line>column("plane", line -> Choice.literal(line.part().plane().name())),
            Roll.column("board_in", line -> line.part().map().board().orElseThrow()),
            Roll.column("most_ft", Line::most),
            Roll.column("found_ft", Line::found),
            Roll.column("possible_ft", Line::possible));
    Figure<Length> found = work.quantities().get(Item.BOARD).in(Units.FOOT);
    return new BoardsSettled(
        planes,
        most,
        found,
        most.minus(found).max(NONE).as("boards_still_possible_ft", Units.FOOT));
  }
}
