import { keyOf, normalAt } from '../chance/index.ts';
import { winterStartDay, winterYearOf, yearIndexOf } from './calendar.ts';
import type { Climate } from './climate.ts';
import { innovations, type WeatherModel, weatherModel } from './model.ts';
import { ownYears, setOwnDays } from './own-years.ts';
import { bentRaw } from './skew.ts';

export interface DrawSpan {
  readonly seed: number;
  /** Whose weather: the yard. All its colonies share the draw. */
  readonly entity: string;
  /** Epoch days, both inclusive. */
  readonly fromDay: number;
  readonly toDay: number;
  readonly members: number;
}

/** Days before 1 June from which the chain of a winter runs; the slow part has then forgotten its start to 1.5 %. */
const SPIN_UP_DAYS = 92;
/** Keeps the index of a keyed number positive for days before 1970. */
const INDEX_SHIFT = 100_000;

/**
 * Stochastic years: daily mean temperatures, one row per member.
 *
 * The value of a member on a day depends on seed, entity, climate, member and that day alone, not on the span asked
 * for or on the number of members: every winter's chain starts at its own 1 June, with a run-up through the spring
 * before it that uses the same keyed numbers as the winter before, so that two winters join without a step.
 *
 * A climate with a record of its own takes the record's winters instead where there are enough of them, and what the record says of
 * the days asked for in any case.
 *
 * climate     or a model made from it once, where several spans are drawn
 * returns     [degC] members x days, row after row; value of (member, day) at member * days + (day - fromDay)
 * equation    mean(d) + sd(d) * bend(slow(d) + fast(d)) + place error of the member
 * throws      RangeError where the span is empty or longer than 3 years, or members is not 1 to 1,000,000
 * source      [WEATHER-MODEL]
 * checked     weather-years.test.ts: 2,000 years against [DAILY-SPREAD]
 */
export function drawWeather(climate: Climate | WeatherModel, span: DrawSpan): Float64Array {
  const { seed, entity, fromDay, toDay, members } = span;
  const days = toDay - fromDay + 1;
  if (!(Number.isInteger(days) && days >= 1 && days <= 1100)) throw new RangeError(`drawWeather: span is ${days} days, must be 1 to 1100`);
  if (!(Number.isInteger(members) && members >= 1 && members <= 1e6)) {
    throw new RangeError(`drawWeather: members is ${members}, must be 1 to 1,000,000`);
  }
  const model = 'meanC' in climate ? climate : weatherModel(climate);
  const own = 'meanC' in climate ? undefined : climate.own;
  const fromRecord = own !== undefined && own.winters.length > 0;
  const temps = fromRecord ? ownYears(own, model.meanC, span) : new Float64Array(members * days);
  for (let winter = winterYearOf(fromDay); !fromRecord && winter <= winterYearOf(toDay); winter++) {
    const first = Math.max(fromDay, winterStartDay(winter));
    const last = Math.min(toDay, winterStartDay(winter + 1) - 1);
    drawWinter(
      model,
      { seed, entity, start: winterStartDay(winter) - SPIN_UP_DAYS, first, last, members, days, offset: first - fromDay },
      temps,
    );
  }
  const placeKey = keyOf(seed, 'place-error', entity);
  if (model.placeErrorSdC > 0) {
    for (let member = 0; member < members; member++) {
      const error = model.placeErrorSdC * normalAt(placeKey, member, 0);
      for (let k = member * days; k < (member + 1) * days; k++) temps[k]! += error;
    }
  }
  if (own !== undefined) setOwnDays(own, temps, span);
  return temps;
}

interface WinterSpan {
  readonly seed: number;
  readonly entity: string;
  readonly start: number;
  readonly first: number;
  readonly last: number;
  readonly members: number;
  readonly days: number;
  readonly offset: number;
}

function drawWinter(model: WeatherModel, span: WinterSpan, temps: Float64Array): void {
  const slowKey = keyOf(span.seed, 'weather-slow', span.entity);
  const fastKey = keyOf(span.seed, 'weather-fast', span.entity);
  const c = dailyCoefficients(model, span.start, span.last);
  const lead = span.first - span.start;
  const slowSigma = Math.sqrt(1 - model.slowPersistence ** 2);
  const index0 = span.start + INDEX_SHIFT;
  const length = span.last - span.start + 1;
  for (let member = 0; member < span.members; member++) {
    let slow = normalAt(slowKey, member, index0);
    let before = normalAt(fastKey, member, index0);
    let fast = before;
    const row = member * span.days + span.offset - lead;
    for (let k = 1; k < length; k++) {
      slow = model.slowPersistence * slow + slowSigma * normalAt(slowKey, member, index0 + k);
      const next = c.phi1[k]! * fast + c.phi2[k]! * before + c.sigma[k]! * normalAt(fastKey, member, index0 + k);
      before = fast;
      fast = next;
      if (k < lead) continue;
      const z = c.slowWeight[k]! * slow + c.fastWeight[k]! * fast;
      const bent = c.bend[k] === 0 ? z : (bentRaw(z, c.bend[k]!) - c.centre[k]!) * c.perUnit[k]!;
      temps[row + k] = c.meanC[k]! + c.sdC[k]! * bent;
    }
  }
}

/** The model's coefficients laid out along the days of a chain; `bend` is 0 on days without skew. */
function dailyCoefficients(model: WeatherModel, start: number, last: number) {
  const sigmaOfYear = innovations(model);
  const length = last - start + 1;
  const column = () => new Float64Array(length);
  const [phi1, phi2, sigma, slowWeight, fastWeight] = [column(), column(), column(), column(), column()];
  const [bend, centre, perUnit, meanC, sdC] = [column(), column(), column(), column(), column()];
  for (let k = 0; k < length; k++) {
    const day = yearIndexOf(start + k);
    phi1[k] = model.phi1[day]!;
    phi2[k] = model.phi2[day]!;
    sigma[k] = sigmaOfYear[day]!;
    slowWeight[k] = model.slowWeight[day]!;
    fastWeight[k] = model.fastWeight[day]!;
    meanC[k] = model.meanC[day]!;
    sdC[k] = model.sdC[day]!;
    const shape = model.shape[day]!;
    bend[k] = shape.bend;
    centre[k] = shape.centre;
    perUnit[k] = shape.perUnit;
  }
  return { phi1, phi2, sigma, slowWeight, fastWeight, bend, centre, perUnit, meanC, sdC };
}
