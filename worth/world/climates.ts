/**
 * Four cold climates by monthly mean [degC], January first, at true places, so that the product can be told where it stands.
 * Means: national normals (1991-2020; the second 1981-2010; the last a list of cities, period not stated); a keeper's own site differs
 * from them (see weather.ts).
 */
export interface Climate {
  readonly name: string;
  readonly latDeg: number;
  readonly lonDeg: number;
  readonly elevM: number;
  readonly monthlyMeanC: readonly number[];
}

export const climates: readonly Climate[] = [
  {
    name: 'boreal plain',
    latDeg: 53.975,
    lonDeg: -101.089,
    elevM: 272,
    monthlyMeanC: [-18.8, -16.2, -9.0, 0.7, 8.4, 15.0, 18.4, 17.1, 11.1, 3.1, -7.2, -15.8],
  },
  {
    name: 'northern valley',
    latDeg: 64.804,
    lonDeg: -147.876,
    elevM: 132,
    monthlyMeanC: [-22.2, -18.5, -11.4, 0.3, 9.7, 15.8, 16.9, 13.4, 7.2, -4.3, -16.3, -20.1],
  },
  {
    name: 'continental lowland',
    latDeg: 45.383,
    lonDeg: -75.714,
    elevM: 79,
    monthlyMeanC: [-9.6, -8.1, -2.2, 6.1, 13.8, 18.8, 21.2, 20.1, 15.6, 8.7, 2.0, -5.1],
  },
  {
    name: 'prairie',
    latDeg: 49.92,
    lonDeg: -97.23,
    elevM: 239,
    monthlyMeanC: [-16.4, -13.2, -5.8, 4.4, 11.6, 17.0, 19.7, 18.8, 12.7, 5.0, -4.9, -13.2],
  },
];
