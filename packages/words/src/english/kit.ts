import type { CandyBoardCaution, KitItem } from '@winterheft/core';
import { candy } from './answers.ts';

export const kit = {
  item: 'item',
  piece: 'one piece',
  need: 'need',
  have: 'have',
  more: 'more',
  buy: 'buy',
  cost: 'cost',
  items: {
    foam: 'foam for the lids',
    boards: 'rims and boxes',
    mesh: 'mesh',
    cloth: 'cloth',
    fill: 'absorbent fill',
    lid: 'lid boards',
    sugar: 'sugar',
    jars: 'jars',
  } satisfies Record<KitItem, string>,
  units: { sheets: 'sheets', boards: 'boards', rolls: 'rolls', m: 'm', bags: 'bags', jars: 'jars' },
  total: (cost: string) => `What has a price comes to ${cost}.`,
  unpriced: (items: string) => `Without a price: ${items}.`,
  cut: (item: string, fromOne: number, over: number) => `${item}: ${fromOne} from one, ${over} over.`,
  boardCut: (boards: number, pieces: string, left: string) => `${boards} boards so: ${pieces}; ${left} left.`,
  atLeast: (boards: number) => `No cutting needs fewer than ${boards} boards.`,
  meshShort: 'The mesh is short of the rim all round, so that wood meets wood and the bees can glue the joint.',
  fill: (mass: string, depth: string) =>
    `Fill of one box: ${mass}, ${depth} deep; pellets swell about fourfold, so a quarter of the box (common practice).`,
  syrup: (volume: string, sugar: string, water: string, bags: number, containers: number) =>
    `Syrup ${volume}: ${sugar} sugar and ${water} water; ${bags} bags, ${containers} containers.`,
  grains: 'It may grain where it stands: mix it shortly before it is fed, or keep it warmer.',
  jars: (atOnce: number, holes: number, hole: string, days: string) =>
    `Jars: ${atOnce} on a hive at once, ${holes} holes of ${hole} in the lid (common practice); taken in about ${days} days.`,
  left: (volume: string) => `Not all is taken before the last feeding day: ${volume} a hive is left. Give that as frames or candy.`,
  candy: (boards: number, sugar: string, water: string) => `Candy, ${boards} boards of ${sugar} sugar and ${water} water.`,
  cook: (hard: string, soft: string, stir: string) =>
    `Cook to ${hard} for hard candy, ${soft} for soft; cool to ${stir} and stir until white.`,
  dry: (hours: string) => `Let it set ${hours} hours.`,
  lasts: (days: string, hours: string) => `One board feeds this colony about ${days} days (${hours} hours) if it eats nothing else.`,
  onFrom: (date: string, temp: string) => `On from ${date}, above ${temp}, little wind, the lid off for seconds.`,
  on: (temp: string) => `On after the last warm days, above ${temp}, little wind, the lid off for seconds.`,
  cautions: {
    ...candy.cautions,
    'hot-sugar-burns': 'Boiling sugar is far hotter than water and sticks: long sleeves, gloves, no children near, cold water at hand.',
    'heat-makes-harm': 'Heat makes a substance that harms bees: no hotter and no longer than the recipe, never darkened sugar.',
    'after-warm-days': 'Not before the last warm days: bees carry sugar out.',
  } satisfies Record<CandyBoardCaution, string>,
} as const;
