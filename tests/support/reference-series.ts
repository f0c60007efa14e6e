/**
 * Series A of the reference values: "productC", Hyndman & Athanasopoulos, Forecasting: Principles and Practice, 2nd edition,
 * section 12.2 [S]; series B was made for them. Their forecasts were computed with R 4.2.2 and checked a second way.
 */
export const seriesA = [
  0, 2, 0, 1, 0, 11, 0, 0, 0, 0, 2, 0, 6, 3, 0, 0, 0, 0, 0, 7, 0, 0, 0, 0, 0, 0, 0, 3, 1, 0, 0, 1, 0, 1, 0, 0,
];
export const seriesB = [0, 0, 5, 0, 0, 0, 3, 0, 4, 0, 0, 0, 0, 6, 0, 2, 0, 0, 0, 8, 0, 0, 1, 0];
