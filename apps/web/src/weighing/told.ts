import type { ColonyOutlook } from '@winterheft/core';
import { dayMonth, type UnitFormat } from '@winterheft/words';
import { words } from '../app/words.ts';
import type { Felt } from '../modes/tell.ts';
import type { Shape } from '../ui/states.tsx';
import { figuresOf, verdictOf } from '../verdict/figures.ts';
import { shapeOf } from '../verdict/groups.ts';
import type { Advice } from './advice.ts';
import { figure } from './figures.ts';

/** The verdict as shape and words, the same as on every other screen; they are shown and spoken. */
export function headlineOf(line: ColonyOutlook, units: UnitFormat): { readonly shape: Shape; readonly text: string; readonly felt: Felt } {
  const felt = line.aboveNeedKg === null ? 'field' : line.state === 'enough' || line.state === 'spare' ? 'enough' : 'short';
  return { shape: shapeOf(line), text: verdictOf(line, figuresOf(line, units)), felt };
}

/** What to do now, as a sentence after *Now:*. */
export function adviceSentence(advice: Advice, units: UnitFormat): string {
  const { round } = words;
  const say = round.advice;
  switch (advice.do) {
    case 'close':
      return say.close;
    case 'weigh':
      return say.weigh;
    case 'weigh-other':
      return say.weighOther(round[advice.edge]);
    case 'weigh-scale':
      return say.weighScale;
    case 'mark-frames':
      return say.markFrames(advice.frames);
    case 'feed':
      return say.feed(advice.frames, `${figure(units, advice.sugarKg)} ${units.massUnit}`, dayMonth(advice.until));
    case 'mark-small':
      return say.markSmall;
    case 'look-first':
      return say.lookFirst;
    case 'mark-giver':
      return say.markGiver(advice.frames);
    case 'leave':
      if (advice.why === 'drying') return say.leaveDrying(dayMonth(advice.weighAgainOn ?? ''));
      return advice.why === 'low' ? say.leaveLow : advice.why === 'on-weight-alone' ? say.leaveOnWeight : say.leaveEnough;
  }
}
