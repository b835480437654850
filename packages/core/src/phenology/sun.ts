import { inRange } from '../result/index.ts';

const RAD = Math.PI / 180;
/** Centre of the sun at sunrise: refraction and half its disc below the horizon. Source: [sun-noaa]. */
const ZENITH_DEG = 90.833;
/** Epoch day 0 as a Julian day at midnight UTC, and the epoch J2000. */
const JULIAN_OF_EPOCH = 2440587.5;
const J2000 = 2451545;

/** A day's sun; minutes after midnight UTC of that date, below 0 or above 1440 where it is the day before or after there. */
export interface SunDay {
  readonly riseMinute: number | null;
  readonly noonMinute: number;
  readonly setMinute: number | null;
  /** 0 where the sun stays down, 24 where it stays up. */
  readonly hours: number;
}

/**
 * Sunrise, noon and sunset.
 *
 * latDeg, lonDeg  north and east [deg]
 * returns         rise and set null where there is none that day
 * equation        equation of time and declination of the NOAA solar calculator; rise and set each at its own moment
 * valid           1900 to 2199; a mountain or a wood on the horizon is not known
 * throws          RangeError outside -90 to 90 and -180 to 180, NaN included
 * source          [sun-noaa]
 * checked         checks/season.ts: a library of its own, and Fairbanks as printed
 */
export function sunDay(latDeg: number, lonDeg: number, epochDay: number): SunDay {
  if (!inRange('latDeg', latDeg, { low: -90, high: 90, unit: 'deg' }).ok)
    throw new RangeError(`sunDay: latDeg is ${latDeg}, must be -90 to 90`);
  if (!inRange('lonDeg', lonDeg, { low: -180, high: 180, unit: 'deg' }).ok)
    throw new RangeError(`sunDay: lonDeg is ${lonDeg}, must be -180 to 180`);
  const noonAt = (minute: number) => 720 - 4 * lonDeg - sunAt(epochDay, minute).equationMin;
  const noonMinute = noonAt(noonAt(720));
  const event = (sign: 1 | -1): number | null => {
    let minute = noonMinute;
    for (let round = 0; round < 3; round++) {
      const { equationMin, declination } = sunAt(epochDay, minute);
      const cos =
        (Math.cos(ZENITH_DEG * RAD) - Math.sin(latDeg * RAD) * Math.sin(declination)) / (Math.cos(latDeg * RAD) * Math.cos(declination));
      if (!(cos >= -1 && cos <= 1)) return null;
      minute = 720 - 4 * lonDeg - equationMin + sign * 4 * (Math.acos(cos) / RAD);
    }
    return minute;
  };
  const [riseMinute, setMinute] = [event(-1), event(1)];
  if (riseMinute !== null && setMinute !== null) return { riseMinute, noonMinute, setMinute, hours: (setMinute - riseMinute) / 60 };
  const up = latDeg * sunAt(epochDay, noonMinute).declination > 0;
  return { riseMinute: null, noonMinute, setMinute: null, hours: up ? 24 : 0 };
}

/** Equation of time [min] and declination [rad] at a moment. */
function sunAt(epochDay: number, minute: number): { readonly equationMin: number; readonly declination: number } {
  const t = (epochDay + minute / 1440 + JULIAN_OF_EPOCH - J2000) / 36525;
  const meanLong = (280.46646 + t * (36000.76983 + t * 0.0003032)) * RAD;
  const anomaly = (357.52911 + t * (35999.05029 - 0.0001537 * t)) * RAD;
  const eccentricity = 0.016708634 - t * (0.000042037 + 0.0000001267 * t);
  const centre =
    Math.sin(anomaly) * (1.914602 - t * (0.004817 + 0.000014 * t)) +
    Math.sin(2 * anomaly) * (0.019993 - 0.000101 * t) +
    Math.sin(3 * anomaly) * 0.000289;
  const node = (125.04 - 1934.136 * t) * RAD;
  const longitude = meanLong + (centre - 0.00569 - 0.00478 * Math.sin(node)) * RAD;
  const tilt = (23 + (26 + (21.448 - t * (46.815 + t * (0.00059 - t * 0.001813))) / 60) / 60 + 0.00256 * Math.cos(node)) * RAD;
  const y = Math.tan(tilt / 2) ** 2;
  const equation =
    y * Math.sin(2 * meanLong) -
    2 * eccentricity * Math.sin(anomaly) +
    4 * eccentricity * y * Math.sin(anomaly) * Math.cos(2 * meanLong) -
    0.5 * y * y * Math.sin(4 * meanLong) -
    1.25 * eccentricity * eccentricity * Math.sin(2 * anomaly);
  return { equationMin: (4 * equation) / RAD, declination: Math.asin(Math.sin(tilt) * Math.sin(longitude)) };
}

/**
 * Daylight hours of a day at or above a temperature.
 *
 * maxC, minC  extremes of the day [degC]
 * returns     [h] 0 to the length of the day
 * equation    a sine between the extremes is above the limit for (24/pi) acos((limit - mean)/a) hours; the warm hours lie in daylight
 * source      the day of [BASKERVILLE-1969]
 */
export function warmHours(maxC: number, minC: number, of: { readonly aboveC: number; readonly daylightHours: number }): number {
  if (!(maxC >= minC)) throw new RangeError(`warmHours: maxC is ${maxC} degC, must not be below minC, ${minC} degC`);
  if (minC >= of.aboveC) return of.daylightHours;
  if (maxC < of.aboveC) return 0;
  // At the very maximum rounding may carry the sine past 1.
  const sine = Math.min(1, (of.aboveC - (maxC + minC) / 2) / ((maxC - minC) / 2));
  const hours = (24 / Math.PI) * Math.acos(sine);
  return Math.min(of.daylightHours, hours);
}
