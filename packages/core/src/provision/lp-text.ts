import type { LpModel, LpSum } from './solve.ts';

/** Names every reader of the format takes: no operators, no leading digit or e (which could be read as a power of ten), at most 16 characters. */
const LEGAL = /^(?![eE])[A-Za-z][A-Za-z0-9_]{0,15}$/;
const WORDS = new Set([
  'st',
  'subject',
  'bounds',
  'bound',
  'free',
  'inf',
  'infinity',
  'general',
  'generals',
  'gen',
  'binary',
  'binaries',
  'bin',
  'end',
]);
const TERMS_PER_LINE = 6;

/**
 * The model as text in CPLEX LP format, the one that HiGHS, CBC and glpsol all read.
 *
 * Use it to feed a solver or to print what was asked. The order of rows and variables is that of the model,
 * numbers are written so that they read back exactly, so that the same model gives the same bytes.
 *
 * throws      RangeError on a name the format does not allow, an empty row or a number that is not finite
 * checked     provision-lp.test.ts: read back by HiGHS and by CBC with the same optimum
 */
export function toLp(model: LpModel): string {
  for (const { name } of [...model.variables, ...model.rows]) {
    if (!LEGAL.test(name) || WORDS.has(name.toLowerCase())) throw new RangeError(`toLp: name "${name}" is not allowed in an LP file`);
  }
  const variables = model.variables.length > 0 ? model.variables : [{ name: 'nothing', low: 0, high: 0, whole: false }];
  const objective: LpSum = model.objective.length > 0 ? model.objective : [[variables[0]!.name, 0]];
  const lines = [`\\ ${model.title.replace(/[^\x20-\x7e]/g, '?')}`, 'Minimize', ...written('obj', objective, ''), 'Subject To'];
  for (const row of model.rows) {
    if (row.sum.length === 0) throw new RangeError(`toLp: row ${row.name} is empty`);
    if (row.low !== null && row.low === row.high) lines.push(...written(row.name, row.sum, ` = ${figure(row.low)}`));
    else {
      if (row.high !== null) lines.push(...written(row.name, row.sum, ` <= ${figure(row.high)}`));
      if (row.low !== null) lines.push(...written(row.high === null ? row.name : `${row.name}_l`, row.sum, ` >= ${figure(row.low)}`));
    }
  }
  if (model.rows.length === 0) lines.push(...written('all', [[variables[0]!.name, 1]], ` >= ${figure(variables[0]!.low)}`));
  lines.push('Bounds');
  for (const v of variables) {
    lines.push(v.low === v.high ? ` ${v.name} = ${figure(v.low)}` : ` ${figure(v.low)} <= ${v.name} <= ${figure(v.high)}`);
  }
  const whole = variables.filter((v) => v.whole).map((v) => v.name);
  if (whole.length > 0) {
    lines.push('Generals');
    for (let i = 0; i < whole.length; i += TERMS_PER_LINE) lines.push(` ${whole.slice(i, i + TERMS_PER_LINE).join(' ')}`);
  }
  return `${lines.join('\n')}\nEnd\n`;
}

function written(name: string, sum: LpSum, end: string): string[] {
  const terms = sum.map(([variable, factor], i) => {
    const sign = factor < 0 ? '- ' : i === 0 ? '' : '+ ';
    return `${sign}${figure(Math.abs(factor))} ${variable}`;
  });
  const lines: string[] = [];
  for (let i = 0; i < terms.length; i += TERMS_PER_LINE) lines.push(`  ${terms.slice(i, i + TERMS_PER_LINE).join(' ')}`);
  lines[0] = ` ${name}: ${lines[0]!.trimStart()}`;
  lines[lines.length - 1] += end;
  return lines;
}

function figure(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`toLp: a number is ${value}, must be finite`);
  return String(value === 0 ? 0 : value);
}
