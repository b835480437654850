import type { CandyGift, Move, ProvisionAnswer, Reason, Step, SyrupGift, Uniting } from '@winterheft/core';
import type { UnitFormat } from '../units.ts';

/** How ids are shown, and in which units. */
export interface Naming {
  readonly units: UnitFormat;
  /** Label of a colony's hive. */
  colony(id: string): string;
  lot(id: string): string;
}

const frames = (count: number) => `${count} ${count === 1 ? 'frame' : 'frames'}`;

/** The things a step can point at. */
export interface Deeds {
  readonly move?: Move | undefined;
  /** A later step closes the gap of the taken frame; otherwise it is closed at once. */
  readonly gapLater?: boolean | undefined;
  readonly syrup?: SyrupGift | undefined;
  readonly candy?: CandyGift | undefined;
  readonly union?: Uniting | undefined;
}

/** One step of the walk in a sentence. Every step that lifts a frame says how. */
export function stepSentence(step: Step, deeds: Deeds, naming: Naming): string {
  const at = naming.colony(step.colony);
  const { units } = naming;
  switch (step.do) {
    case 'look':
      return `${at}: look at the brood. Clean: go on. Sunken, ropy, foul or chalky: close it, move nothing, call the inspector.`;
    case 'take': {
      const { move } = deeds;
      if (move === undefined) return `${at}: take frames.`;
      const gap =
        move.fill === null || deeds.gapLater === true
          ? 'leave the gap for now'
          : `hang ${move.count === 1 ? 'a light one' : `${move.count} light ones`} of ${units.mass(move.fill.massKg)} in ${move.count === 1 ? 'its' : 'their'} place`;
      return `${at}: find the queen, take out ${frames(move.count)} of ${units.mass(move.massKg)} (${move.frame}) for ${naming.colony(move.to)}; brush the bees off, drip nothing; ${gap}.`;
    }
    case 'place': {
      const { move } = deeds;
      if (move === undefined) return `${at}: put frames in.`;
      const from =
        move.fromKind === 'colony' ? naming.colony(move.from) : move.fromKind === 'bank' ? `lot ${naming.lot(move.from)}` : 'your hand';
      const outTo = move.out.held ? 'keep it apart for this colony alone' : 'bees off, take it along';
      return `${at}: find the queen, set in ${frames(move.count)} from ${from}, take out ${move.count === 1 ? 'a light one' : `${move.count} light ones`} of ${units.mass(move.out.massKg)} (${outTo}): ${units.mass(move.gainKg, move.gainSdKg)} more.`;
    }
    case 'fill': {
      const { move } = deeds;
      const fill = move?.fill;
      return fill
        ? `${at}: close the gap with ${move?.count === 1 ? 'a light frame' : `${move?.count ?? 1} light frames`} of ${units.mass(fill.massKg)}; the box must be full.`
        : `${at}: close the gap with a light frame.`;
    }
    case 'syrup':
      return deeds.syrup === undefined
        ? `${at}: feed syrup.`
        : `${at}: feed ${units.volume(deeds.syrup.litres)} of 2:1 syrup by weight (${units.mass(deeds.syrup.sugarKg)} of sugar): about ${units.mass(deeds.syrup.storesKg)} more.`;
    case 'candy':
      return deeds.candy === undefined
        ? `${at}: lay on candy.`
        : `${at}: lay on candy of ${units.mass(deeds.candy.sugarKg)} of sugar when the cluster is quiet: about ${units.mass(deeds.candy.storesKg)} more.`;
    case 'unite':
      return deeds.union === undefined
        ? `${at}: unite.`
        : `${at}: unite with ${naming.colony(deeds.union.into)} over paper, one queen only${deeds.union.queenKnown ? '' : ' (find out first whether both have one)'}; together they need ${units.mass(deeds.union.needKg)}.`;
  }
}

/** Why the plan is as it is. */
export function reasonSentence(reason: Reason, naming: Naming): string {
  const { units } = naming;
  const at = reason.colony === undefined ? '' : naming.colony(reason.colony);
  const lot = reason.lot === undefined ? '' : `lot ${naming.lot(reason.lot)}`;
  const number = (key: string) => Number(reason.figures[key] ?? 0);
  const mass = (key: string) => units.mass(number(key));
  const colony = (key: string) => naming.colony(String(reason.figures[key] ?? ''));
  switch (reason.code) {
    case 'short':
      return `${at} has ${mass('hasKg')} and needs ${mass('needKg')}: short ${mass('shortKg')}.`;
    case 'giver-spare':
      return `${at} has ${mass('spareKg')} to spare, gives ${mass('givesKg')} and keeps ${mass('keepsSpareKg')} above its need.`;
    case 'spare-not-looked':
      return `${at} has ${mass('spareKg')} to spare, but its brood was not looked at: no comb leaves it.`;
    case 'getter-not-looked':
      return `${at}: its brood was not looked at, so no light comb may leave it to make room.`;
    case 'spare-flagged':
      return `${at} has ${mass('spareKg')} to spare, but is set aside: no comb leaves it.`;
    case 'spare-may-not-give':
      return `${at} seems to have ${mass('spareKg')} to spare, but what it holds is too little known to give from.`;
    case 'spare-other-yard':
      return `${at} has ${mass('spareKg')} to spare, but stands in another yard than ${colony('getter')}.`;
    case 'flagged-only-feed':
      return `${at} is set aside: it is only fed, no comb goes in or out.`;
    case 'bank-not-looked':
      return `${lot}: nobody looked at the brood of the colonies its ${frames(number('count'))} came from: not used.`;
    case 'bank-other-yard':
      return `${lot} (${frames(number('count'))}) lies in another yard than ${colony('getter')}.`;
    case 'no-light-comb':
      return `${at} has no light comb that could come out for a full one.`;
    case 'no-heavier-comb':
      return `${at}: no heavier comb of its kind is to be had.`;
    case 'no-comb-for-gap':
      return `${at} has ${mass('spareKg')} to spare, but no light comb is there to close its gap.`;
    case 'feeders-all-used':
      return `${at} gets no syrup: all ${number('feeders')} feeders are in use.`;
    case 'no-feeding-days':
      return `${at} gets no syrup: the last feeding day is past.`;
    case 'uptake-limit':
      return `${at} cannot take in more than ${units.volume(number('litres'))} in the ${number('days')} days left.`;
    case 'refuses-syrup':
      return `${at} refused syrup.`;
    case 'sugar-used-up':
      return `${at}: no sugar is left for it (${mass('sugarLeftKg')} of what was entered as sugar at hand).`;
    case 'rim-full':
      return `${at}: its rim holds no more candy than ${mass('rimKg')} of sugar.`;
    case 'too-small-united':
      return `${at} is too small to winter alone (about ${number('bees')} bees): united with ${colony('into')}.`;
    case 'too-small-alone':
      return `${at} is too small to winter alone (about ${number('bees')} bees) and there is none to unite it with.`;
    case 'queen-unknown':
      return `${at}: whether both it and ${colony('into')} have a queen is not known; look before uniting.`;
    case 'left-by-tolerance':
      return `${at} could be given more, but what it is short of costs so little in expected losses that the work was left.`;
    case 'uncovered':
      return `${at} stays short of ${mass('kg')}: about ${Math.round(number('lossFrac') * 100)} in 100 more risk of loss.`;
    case 'conditional-on-look':
      return `${at}: everything planned here holds only if its brood is clean.`;
    case 'light-comb-held':
      return `${at}: the ${frames(number('count'))} taken out stay apart for this colony alone, for its brood was not looked at.`;
    case 'today-assumed':
      return `No day was given: ${String(reason.figures['today'])} is taken.`;
    case 'buy-sugar':
      return `Buy ${mass('kg')} of sugar.`;
    case 'solver-stopped':
      return `The search stopped at its limit (${String(reason.figures['by'])}): best found${reason.figures['gapFrac'] === null ? '' : `, within ${(number('gapFrac') * 100).toFixed(1)} %`}.`;
    case 'no-solver':
      return 'No solver ran: a plan made step by step, not the best that can be had.';
  }
}

/** How good the plan is, in one sentence. */
export function provisionQuality(answer: Pick<ProvisionAnswer, 'method' | 'gapFrac' | 'solver'>): string {
  if (answer.method === 'greedy') return 'Made step by step without a solver: it keeps every rule, but a better one may exist.';
  if (answer.gapFrac === null || answer.gapFrac === 0) return `No plan loses less (${answer.solver ?? 'solver'}).`;
  return `Best found, within ${(answer.gapFrac * 100).toFixed(answer.gapFrac < 0.001 ? 2 : 1)} % (${answer.solver ?? 'solver'}).`;
}

export const provisionWords = {
  steps: 'Steps in the order of the walk',
  reasons: 'Why',
  uncovered: 'Not covered',
  nothing: 'Nothing has to be done.',
  totals: 'in all',
  total: (minutes: number, sugar: string, losses: string) =>
    `about ${Math.round(minutes)} minutes, ${sugar} of sugar; expected losses from what stays short: ${losses} colonies`,
} as const;
