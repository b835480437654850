// The forecast of many colonies, none of them alike, so that no curve is shared. Also runs as a worker on a part of them.
import { parentPort, workerData } from 'node:worker_threads';

const FROM_DAY = 20711;
const DAYS = 270;
/** Invented monthly means of a cold continental place. */
const MONTHLY = [-19, -16, -9, 1, 9, 15, 18, 17, 10, 3, -8, -16];
const NO_DOUBT = { tare: { key: 'b', sdKg: 2 }, scale: { key: 's', sdKg: 0.5 }, own: { sdKg: 1 }, beeKg: 0.00012 };

/** Weather once, then a curve and a verdict for each colony number from `from` to `to`. Gives back what a phone has to keep. */
export function forecastOf(core, { from, to, members }) {
  const values = core.winterValues();
  const climate = core.climateFromMonthly(MONTHLY).value;
  const season = core.drawSeason(climate, { seed: 1, entity: 'yard', fromDay: FROM_DAY, days: DAYS, members, values });
  const run = core.makeRun(season);
  const level = core.levelPrior();
  const kept = [];
  let needKg = 0;
  for (let n = from; n < to; n++) {
    const draw = { seed: 1, members, fromDay: FROM_DAY, bees: 9000 + 7 * n, beesSdFrac: 0.15, pins: {} };
    const prepared = core.prepareColony({ season, draw, level, hiveWPerK: 0.9, values }, run);
    needKg += core.judgeColony(prepared, { kg: 20, doubt: NO_DOUBT }, 0.95).needKg;
    kept.push(prepared);
  }
  return { kept, needKg };
}

if (parentPort !== null && workerData?.bundle !== undefined) {
  const core = await import(workerData.bundle);
  parentPort.on('message', (part) => parentPort.postMessage(forecastOf(core, part).needKg));
  parentPort.postMessage('ready');
}
