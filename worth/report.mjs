// Writes docs/worth.md from worth/last.json; `--check` compares instead. The study itself is worth/run.mjs.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { root } from '../bench/bundle.mjs';

const LAST = join(root, 'worth/last.json');
const DOC = join(root, 'docs/worth.md');

export function writeReport(result) {
  writeFileSync(LAST, `${JSON.stringify(result, null, 1)}\n`);
  writeFileSync(DOC, reportOf(result));
}

const pc = (frac, places = 1) => `${(100 * frac).toFixed(places)} %`;
const kg = (value) => value.toFixed(1);
const ratio = (value) => (value === null || value === undefined ? 'n/a' : value.toFixed(2));
const span = (one) => (one === null ? '' : ` (${one.low.toFixed(2)} to ${one.high.toFixed(2)})`);
const table = (head, rows) =>
  [`| ${head.join(' | ')} |`, `|${head.map(() => '---').join('|')}|`, ...rows.map((row) => `| ${row.join(' | ')} |`)].join('\n');

export function reportOf(result) {
  const { all, worlds, climates, usual } = result;
  const at = (group, which = 'comparisons') => group[which].find(({ certainty }) => certainty === usual);
  const sides = (name, group) => {
    const one = at(group);
    const none = one.sugarRatio === null;
    return [
      name,
      `${group.colonies}`,
      pc(one.product.starvedFrac),
      kg(one.product.sugarKg),
      `${pc(one.ruleStarvedFrac)} (${one.bestRule})`,
      `${ratio(one.lossRatio)}${span(group.intervals.lossRatio)}`,
      none ? 'no rule loses so few' : `${ratio(one.sugarRatio)}${span(group.intervals.sugarRatio)}`,
    ];
  };
  const head = [
    'where',
    'colonies',
    'starved',
    'sugar [kg/colony]',
    'best rule with that sugar',
    'losses against it',
    'sugar at equal losses',
  ];
  const curve = (group, which) =>
    group[which].map((one) => [
      `${one.certainty}`,
      pc(one.product.starvedFrac),
      kg(one.product.sugarKg),
      `${pc(one.ruleStarvedFrac)} (${one.bestRule})`,
      ratio(one.lossRatio),
      one.sugarRatio === null ? 'no rule loses so few' : ratio(one.sugarRatio),
    ]);
  const curveHead = [
    'certainty asked',
    'starved',
    'sugar [kg/colony]',
    'best rule with that sugar',
    'losses against it',
    'sugar at equal losses',
  ];
  const won = worlds.filter((world) => (at(world).lossRatio ?? 0) > 1);
  return `# Is it worth it?

Simulated keepers over one winter each, in worlds that are not the model (\`worth/world/\`, which imports nothing from \`packages/\`; its
changes are noted in \`worth/README.md\`). Made by \`npm run worth\`, seed ${result.seed}, commit ${result.commit}, ${all.keepers} keepers with ${all.colonies} colonies, ${result.seconds} s.
Ratios below 1 speak for the plan; in brackets 5 to 95 % when the keepers are drawn anew within each world and climate.

Each rule of the trade stands at its best setting, found by a sweep of at least eight in the same world and climate, with hindsight that no
keeper has. The plan is asked for 19 in 20 unless told otherwise and knows only what its keeper read and wrote.

## The whole job: plan in autumn, lifted again from March on, candy where the watch asks for it

${table(head, [sides('all worlds', all), ...worlds.map((world) => sides(world.name, world)), ...climates.map((climate) => sides(climate.name, climate))])}

By the certainty that is asked, all worlds together:

${table(curveHead, curve(all, 'comparisons'))}

The aim was at most half of the best rule's losses with equal sugar, and at most 70 % of its sugar at equal losses.
${won.length === 0 ? 'In no world does a rule do better at 19 in 20.' : `Worlds where a rule does better at 19 in 20: ${won.map(({ name }) => name).join(', ')}.`}

## Against a stronger rule

One target gross in autumn, and one candy board in March for what is more than 13 kg below it by then. It is not one of the trade's five.

${table(curveHead, curve(all, 'againstStronger'))}

## Autumn alone

The same plan without any lift in winter:

${table(curveHead, curve(all, 'autumnAlone'))}

Why so little is gained: with hindsight the best target for a climate already holds that climate's mean need, and what then decides who
starves is the colony's own appetite, the keeper's bees and the spring, which nobody can read off a scale in September. What a plan can add
is the size of the colony, the errors of weighing and combs moved from rich to poor. The rest is known only when the hives are lifted again;
that is why the watch, not a larger reserve, is the answer. Where size tells nothing the plan hedges on a thing that does not exist in
that world, and loses little by it.

## The sweeps

Share starved at kilograms of sugar a colony, all worlds together.

${all.sweeps.map(({ name, setting, points }) => `- ${name} (${setting}): ${points.map((point) => `${point.setting}: ${pc(point.starvedFrac)} at ${kg(point.sugarKg)}`).join('; ')}`).join('\n')}

## What this does not show

One winter each, so that nothing is learnt from year to year; no mites, no disease, no queens lost; uniting switched off; a keeper who
reads, writes and does what is asked. The worlds are invented; the product was not fitted to them, but whoever built it has seen them.
`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const text = reportOf(JSON.parse(readFileSync(LAST, 'utf8')));
  if (!process.argv.includes('--check')) writeFileSync(DOC, text);
  else if (readFileSync(DOC, 'utf8') !== text) {
    console.error('stale: docs/worth.md (run node worth/report.mjs)');
    process.exitCode = 1;
  }
}
