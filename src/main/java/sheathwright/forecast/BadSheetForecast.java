package sheathwright.forecast;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;

/**
 * How many sheets of a whole roof are bad, those that were seen included.
 *
 * @param mean the average over houses like this one
 * @param sd how far houses lie from it, as a standard deviation
 * @param none how likely it is that not one is bad
 * @param p10 not more than this in 1 house of 10
 * @param p50 not more than this in half of them
 * @param p80 not more than this in 8 of 10
 * @param p90 not more than this in 9 of 10
 * @param p95 not more than this in 19 of 20
 * @param chances of each number, plain
 */
public record BadSheetForecast(
    @Column(value = "mean", unit = "sheet") Figure<Sheets> mean,
    @Column(value = "sd", unit = "sheet") Figure<Sheets> sd,
    @Column("p_none") Figure<Ratio> none,
    @Column(value = "p10_sheets", unit = "sheet") Figure<Sheets> p10,
    @Column(value = "p50_sheets", unit = "sheet") Figure<Sheets> p50,
    @Column(value = "p80_sheets", unit = "sheet") Figure<Sheets> p80,
    @Column(value = "p90_sheets", unit = "sheet") Figure<Sheets> p90,
    @Column(value = "p95_sheets", unit = "sheet") Figure<Sheets> p95,
    Chances chances) {}
