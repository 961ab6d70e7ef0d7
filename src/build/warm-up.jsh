// Run once when the program is built, so that Java knows which classes a session and a workbook need.
area = sqft(1408.72)
order = sheetsByArea(area, pct(10))
nails = nailsPerSheet(in("16"), Nailing.edge(in(6)).field(in(12)), FOUR_BY_EIGHT)
check = rafterCheck(Lumber.of(HEM_FIR, NO_2, SIZE_2X6, NDS2018), UniformLoad.spacing(in(16)).live(psf(20)).dead(psf(10)), ROOF_LIVE, number(180), ClearSpan.of(ft("12-0 1/4")))
area = sqft(1500)
order
check
explain(order)
help("nail")
show(check)
for (int i = 12; i <= 24 && i != 23; i += 4) { System.out.println(sheetsByArea(sqft(i * 100.0), pct(10))); }
java.io.File book = java.io.File.createTempFile("warm-up", ".xlsx")
book.deleteOnExit()
saveOver(book.getPath())
