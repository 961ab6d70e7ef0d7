// Run once when the program is built, so that Java knows which classes a session needs.
area = sqft(1408.72)
order = sheetsByArea(area, pct(10))
nails = nailsPerSheet(in("16"), Nailing.edge(in(6)).field(in(12)), FOUR_BY_EIGHT)
check = rafterCheck(HEM_FIR, NO_2, SIZE_2X6, in(16), psf(20), psf(10), ROOF_LIVE, number(180), NDS2018, ft("12-0 1/4"), in(1.5))
area = sqft(1500)
order
check
explain(order)
help("nail")
show(check)
