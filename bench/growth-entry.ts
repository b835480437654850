export { climateFromMonthly } from '../packages/core/src/weather/index.ts';
export {
  drawSeason,
  judgeColony,
  levelPrior,
  makeRun,
  type PreparedColony,
  prepareColony,
  winterValues,
} from '../packages/core/src/winter/index.ts';
