/**
 * Growth rates of four sets of Corkrey et al. 2016, PLoS ONE 11(4):e0153343,
 * data set S4 (per minute there, times 60), and the least-squares parameters of
 * the cardinal temperature model with inflection: rate at the optimum per hour,
 * minimum, optimum and maximum, degC.
 */
export const growthSets: readonly {
  readonly organism: string;
  readonly from: string;
  /** degC and rate per hour. */
  readonly points: readonly (readonly [number, number])[];
  readonly start: readonly number[];
  readonly parameters: readonly string[];
  readonly squares: string;
}[] = [
  {
    organism: "S. thermophilus",
    from: "Corkrey et al. 2016, PLoS ONE 11(4):e0153343, S4, set 486, Benson 1996 thesis",
    // prettier-ignore
    points: [[17.2, 0.029], [18.32, 0.0665], [19.5, 0.087], [20.6, 0.1589], [21.8, 0.1976], [22.38, 0.2459], [23.4, 0.302], [25.62, 0.4488], [27, 0.5338], [27.75, 0.5345], [29.05, 0.69], [30.43, 0.7867], [31.88, 0.956], [33.33, 1.0517], [34.85, 1.211], [36.7, 1.3528], [38.15, 1.569], [40.25, 1.5789], [41.73, 1.6263], [44.05, 1.7259], [46.9, 1.4561], [49.2, 0.9383]],
    start: [1.6, 12, 42, 52],
    parameters: ["1.700735", "14.09832", "43.18623", "51.21739"],
    squares: "0.01909737",
  },
  {
    organism: "S. thermophilus",
    from: "Corkrey et al. 2016, PLoS ONE 11(4):e0153343, S4, set 484, Benson 1996",
    // prettier-ignore
    points: [[16.53, 0.1322], [17.7, 0.1603], [18.86, 0.2493], [20.17, 0.2932], [21.27, 0.3748], [22.2, 0.4108], [23.3, 0.5137], [25.43, 0.545], [26.62, 0.6903], [27.6, 0.808], [28.7, 0.8868], [29.9, 0.996], [31.1, 1.1791], [32.05, 1.241], [33.2, 1.373], [34.48, 1.4971], [35.75, 1.5889], [37.02, 1.7721], [38.67, 1.6516], [40.08, 1.852], [41.83, 1.8057], [43.42, 1.6616], [45.25, 0.917]],
    start: [1.8, 12, 40, 47],
    parameters: ["1.853234", "10.01213", "40.67747", "46.25889"],
    squares: "0.04989173",
  },
  {
    organism: "B. coagulans",
    from: "Corkrey et al. 2016, PLoS ONE 11(4):e0153343, S4, set 203, Mohr & Krawiec 1980",
    // prettier-ignore
    points: [[27.94, 0.1498], [30, 0.0977], [31.81, 0.2265], [33.44, 0.3902], [36.39, 0.5705], [38.16, 0.6148], [39.94, 0.7435], [42.32, 0.6968], [44.24, 0.7387], [46.17, 0.8644], [48.39, 0.8941], [50.39, 0.8658], [51.56, 0.9641], [52.58, 0.881], [55.84, 0.8967], [58.11, 0.8975], [60.32, 0.7874], [62.45, 0.1821]],
    start: [1, 15, 53, 64],
    parameters: ["0.987811", "12.41004", "53.92725", "63.18957"],
    squares: "0.12204013",
  },
  {
    organism: "B. subtilis",
    from: "Corkrey et al. 2016, PLoS ONE 11(4):e0153343, S4, set 205, Mohr & Krawiec 1980",
    // prettier-ignore
    points: [[19.83, 0.232], [22.83, 0.3161], [26.08, 0.4872], [27.96, 0.7902], [29.11, 0.8495], [31.43, 0.9326], [33.19, 1.0556], [36.08, 1.1473], [38.01, 1.0906], [39.96, 1.0913], [41.93, 1.1033], [45, 0.918], [48.03, 0.4961], [50.25, 0.2228]],
    start: [1.1, 15, 38, 52],
    parameters: ["1.148369", "14.23957", "38.21630", "51.39800"],
    squares: "0.03476773",
  },
];
