import static sheathwright.figure.Amounts.*;
import static sheathwright.sheathing.layout.SheetCounts.*;
import sheathwright.figure.*;

var deck = ft(42).times(ft("16-9 1/4")).in(Units.SQUARE_FOOT);
var sheets = sheetsByArea(deck, pct(10));
System.out.println(deck + ": " + sheets);
System.out.println(Working.of(sheets));
/exit
