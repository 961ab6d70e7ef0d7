package sheathwright.cutting.sheet;

/** A block that is cut out of a stock of the task. */
record SheetPattern(int stock, GuillotineBlock block) {}
