import { isLightComb } from '@winterheft/core';
import { words } from '../app/words.ts';
import type { Flow } from '../walk/hand.ts';
import { boxCount } from '../walk/hand.ts';
import type { Names } from '../walk/naming.ts';
import type { Stop } from '../walk/stop.ts';

export function placeOf(stop: Stop, names: Names): string {
  return stop.colony === null ? words.provision.shed : names.colony(stop.colony);
}

/** What is done at a stop, in a few words. */
export function deedOf(stop: Stop, names: Names): string {
  const { provision } = words;
  switch (stop.kind) {
    case 'look':
      return provision.lookAt;
    case 'syrup':
      return provision.feed(names.units.volume(stop.syrup?.litres ?? 0));
    case 'candy':
      return provision.candy(names.brief(stop.candy?.sugarKg ?? 0));
    case 'unite':
      return provision.unite(names.colony(stop.union?.into ?? ''));
    case 'shed':
      return shedDeed(stop);
    case 'swap': {
      const swapped = sum(stop.flows.filter(({ out }) => out !== undefined));
      const taken = sum(stop.flows.filter(({ from }) => 'colony' in from));
      const closed = sum(stop.flows.filter(({ from, out }) => 'hand' in from && out === undefined));
      return provision.deeds(
        [
          closed === 0 ? '' : provision.close(closed),
          swapped === 0 ? '' : provision.swap(swapped),
          taken === 0 ? '' : provision.take(taken),
        ].filter((part) => part !== ''),
      );
    }
  }
}

function shedDeed({ flows }: Stop): string {
  const { provision } = words;
  const load = boxCount(flows.filter(({ to }) => 'hand' in to).map((flow) => ({ ...flow, from: '' })));
  const unload = boxCount(flows.filter(({ from }) => 'hand' in from).map((flow) => ({ ...flow, from: '' })));
  const loads = load.capped + load.light > 0 ? provision.load(load.capped, load.light) : '';
  const unloads = unload.capped + unload.light > 0 ? provision.unload(unload.capped, unload.light) : '';
  return provision.deeds([unloads, loads].filter((part) => part !== ''));
}

/** Which combs, in a line: where those going in come from, and how many come out. */
export function combsLine(stop: Stop, names: Names): string {
  const { provision } = words;
  if (stop.kind === 'shed') {
    const loaded = countsBy(
      stop.flows.filter(({ from }) => 'lot' in from || 'shed' in from),
      ({ from }) => ('lot' in from ? from.lot : 'shed'),
    );
    const banked = stop.flows.flatMap(({ to }) => ('lot' in to ? [provision.toBank(to.lot)] : []));
    return [...loaded.map(([from, n]) => provision.someFrom(n, names.origin(from))), ...banked].join(', ');
  }
  if (stop.kind === 'syrup')
    return provision.syrupLine(names.units.mass(stop.syrup?.sugarKg ?? 0), names.units.mass(stop.syrup?.storesKg ?? 0));
  if (stop.kind === 'candy') return provision.candyLine(names.units.mass(stop.candy?.storesKg ?? 0));
  if (stop.kind === 'unite') return stop.union?.queenKnown === false ? provision.uniteUnknown : '';
  const into = stop.flows.filter(({ from }) => 'hand' in from);
  const capped = into.filter((flow) => !isLight(flow));
  const light = sum(into.filter(isLight));
  const out = stop.flows.flatMap(({ from, out: back, ...combs }) => ('colony' in from ? [combs] : back === undefined ? [] : [back]));
  const outLight = sum(out.filter(isLight));
  const outCapped = sum(out.filter((combs) => !isLight(combs)));
  const sources = countsBy(capped, ({ from }) => ('hand' in from ? from.hand : '')).map(([from, n]) =>
    provision.someFrom(n, names.origin(from)),
  );
  return [
    outCapped === 0 ? '' : provision.outCapped(outCapped),
    sources.length === 0 ? '' : provision.inFrom(sources.join(', ')),
    light === 0 ? '' : provision.inLight(light),
    outLight === 0 ? '' : provision.outLight(outLight),
    stop.flows.some(({ from }) => 'colony' in from) ? provision.takeGap : '',
  ]
    .filter((part) => part !== '')
    .join('; ');
}

function isLight({ frame, massKg }: Pick<Flow, 'frame' | 'massKg'>): boolean {
  return isLightComb(frame, massKg);
}

function sum(flows: readonly { readonly count: number }[]): number {
  return flows.reduce((n, { count }) => n + count, 0);
}

function countsBy(flows: readonly Flow[], key: (flow: Flow) => string): readonly (readonly [string, number])[] {
  const counts = new Map<string, number>();
  for (const flow of flows) counts.set(key(flow), (counts.get(key(flow)) ?? 0) + flow.count);
  return [...counts];
}
