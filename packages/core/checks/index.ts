import { airChecks } from './air.ts';
import type { Check } from './check.ts';
import { envelopeChecks } from './envelope.ts';
import { feedChecks } from './feed.ts';
import { hivetopChecks } from './hivetop.ts';
import { hivetopFigureChecks } from './hivetop-figures.ts';
import { honeyChecks } from './honey.ts';
import { kitChecks } from './kit.ts';
import { mitesChecks } from './mites.ts';
import { partsChecks } from './parts.ts';
import { phenologyChecks } from './phenology.ts';
import { provisionChecks } from './provision.ts';
import { seasonChecks } from './season.ts';
import { storesChecks } from './stores.ts';
import { sugarChecks } from './sugar.ts';
import { unitsChecks } from './units.ts';
import { washChecks } from './wash.ts';
import { weatherChecks } from './weather.ts';
import { weighChecks } from './weigh.ts';
import { winterChecks } from './winter.ts';

export { type Check, passes } from './check.ts';

/** Every published figure that is compared with ours, by topic. A test asserts that no file of this folder is left out. */
export const checksByTopic: Readonly<Record<string, readonly Check[]>> = {
  air: airChecks,
  envelope: envelopeChecks,
  feed: feedChecks,
  hivetop: hivetopChecks,
  'hivetop-figures': hivetopFigureChecks,
  honey: honeyChecks,
  kit: kitChecks,
  mites: mitesChecks,
  parts: partsChecks,
  phenology: phenologyChecks,
  provision: provisionChecks,
  season: seasonChecks,
  stores: storesChecks,
  sugar: sugarChecks,
  units: unitsChecks,
  wash: washChecks,
  weather: weatherChecks,
  weigh: weighChecks,
  winter: winterChecks,
};

export const allChecks: readonly Check[] = Object.values(checksByTopic).flat();
