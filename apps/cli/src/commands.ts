import { air, candy, heft, kit, stores, syrup, top, topForecast, wash } from '@winterheft/core';
import type { Command } from './command.ts';
import * as airContract from './contracts/air.ts';
import * as candyContract from './contracts/candy.ts';
import * as heftContract from './contracts/heft.ts';
import * as kitContract from './contracts/kit.ts';
import * as storesContract from './contracts/stores.ts';
import * as syrupContract from './contracts/syrup.ts';
import * as topContract from './contracts/top.ts';
import * as topsContract from './contracts/tops.ts';
import * as washContract from './contracts/wash.ts';
import { mitesCommand } from './mites-command.ts';
import { objectCommand } from './object-command.ts';
import { outlookCommand } from './outlook-command.ts';
import { planCommand } from './plan-command.ts';
import { kitTable } from './print/kit.ts';
import { airTable, candyTable, heftTable, syrupTable, washTable } from './print/small-answers.ts';
import { storesTable } from './print/stores.ts';
import { topsTable, topTable } from './print/top.ts';
import { provisionCommand } from './provision-command.ts';
import { seasonCommand } from './season-command.ts';
import { learnCommand, springCommand } from './spring-commands.ts';
import { tasksCommand } from './tasks-command.ts';
import { watchCommand } from './watch-command.ts';
import { weatherCommand } from './weather-command.ts';

/** Every command, in the order the help lists them. */
export const commands: readonly Command[] = [
  objectCommand({
    name: 'heft',
    summary: 'weight of a hive from what a scale shows at its edges, and the reading to stop at',
    contract: heftContract,
    answer: heft,
    table: heftTable,
  }),
  objectCommand({
    name: 'stores',
    summary: 'what a colony holds that its bees can eat, with the error and what to measure next',
    contract: storesContract,
    answer: stores,
    table: storesTable,
  }),
  outlookCommand,
  provisionCommand,
  planCommand,
  mitesCommand,
  watchCommand,
  springCommand,
  learnCommand,
  weatherCommand,
  seasonCommand,
  tasksCommand,
  objectCommand({
    name: 'syrup',
    summary: 'strength, density and volume of a syrup, and the stores it becomes',
    contract: syrupContract,
    answer: syrup,
    table: syrupTable,
  }),
  objectCommand({
    name: 'candy',
    summary: 'sugar and water for no-cook candy',
    contract: candyContract,
    answer: candy,
    table: candyTable,
  }),
  objectCommand({
    name: 'wash',
    summary: 'what a mite wash says, with its interval',
    contract: washContract,
    answer: wash,
    table: washTable,
  }),
  objectCommand({
    name: 'air',
    summary: 'vapour, dew point and frost point of moist air',
    contract: airContract,
    answer: air,
    table: airTable,
  }),
  objectCommand({
    name: 'top',
    summary: 'heat and water through the top of a hive: temperatures, wet and frosted places, where the water goes',
    contract: topContract,
    answer: top,
    table: topTable,
  }),
  objectCommand({
    name: 'tops',
    summary: 'several tops through the winters of a forecast: stores, wet days, the day the absorbent is full',
    contract: topsContract,
    answer: topForecast,
    table: topsTable,
  }),
  objectCommand({
    name: 'kit',
    summary: 'what to build and buy for so many hives: cut lists, fill, syrup, candy, jars, less the stock',
    contract: kitContract,
    answer: kit,
    table: kitTable,
  }),
];
