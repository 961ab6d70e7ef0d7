package sheathwright.cutting.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Invented orders from a seeded generator, and orders changed in ways that have a known effect. */
final class SheetOrders {

  private SheetOrders() {}

  /** Up to six pieces on a sheet of 4 to 9 units a side; every third order has offcuts. */
  static SheetOrder tiny(int seed) {
    Random random = new Random(seed);
    int width = 4 + random.nextInt(6);
    int height = 4 + random.nextInt(6);
    List<SheetPiece> pieces = new ArrayList<>();
    int wanted = 2 + random.nextInt(5);
    for (int piece = 0; piece < wanted; piece++) {
      pieces.add(
          new SheetPiece(1 + random.nextInt(width * 3 / 4), 1 + random.nextInt(height * 3 / 4), 1));
    }
    List<Offcut> offcuts = new ArrayList<>();
    if (seed % 3 == 0) {
      offcuts.add(new Offcut(2 + random.nextInt(width), 2 + random.nextInt(height), 1));
      offcuts.add(new Offcut(1 + random.nextInt(width), 1 + random.nextInt(height), 2));
    }
    return new SheetOrder(width, height, offcuts, pieces, seed % 2);
  }

  /** Twenty to forty pieces of one to four bays on a sheet of 96 by 48 with a kerf of 1. */
  static SheetOrder patches(int seed) {
    Random random = new Random(seed);
    List<SheetPiece> pieces = new ArrayList<>();
    int kinds = 10 + random.nextInt(11);
    for (int kind = 0; kind < kinds; kind++) {
      pieces.add(
          new SheetPiece(
              16 * (1 + random.nextInt(4)) - 1, 6 + random.nextInt(25), 1 + random.nextInt(3)));
    }
    return new SheetOrder(96, 48, List.of(), pieces, 1);
  }

  static SheetOrder shuffled(SheetOrder order, int seed) {
    List<SheetPiece> pieces = new ArrayList<>(order.pieces());
    Collections.shuffle(pieces, new Random(seed));
    return with(order, order.offcuts(), pieces);
  }

  static SheetOrder withOffcut(SheetOrder order, Offcut offcut) {
    List<Offcut> offcuts = new ArrayList<>(order.offcuts());
    offcuts.add(offcut);
    return with(order, offcuts, order.pieces());
  }

  private static SheetOrder with(SheetOrder order, List<Offcut> offcuts, List<SheetPiece> pieces) {
    return new SheetOrder(order.sheetWidth(), order.sheetHeight(), offcuts, pieces, order.kerf());
  }

  static SheetOrder scaled(SheetOrder order, long factor) {
    return new SheetOrder(
        factor * order.sheetWidth(),
        factor * order.sheetHeight(),
        order.offcuts().stream()
            .map(cut -> new Offcut(factor * cut.width(), factor * cut.height(), cut.count()))
            .toList(),
        order.pieces().stream()
            .map(
                piece ->
                    new SheetPiece(factor * piece.width(), factor * piece.height(), piece.count()))
            .toList(),
        factor * order.kerf());
  }
}
