import type { Settings } from '@winterheft/core';
import { type Answers, type Hook, hooksSetting } from '../setup/answers.ts';

export { hooksSetting };

/** 75 mm is the middle of the usual boards, 50 to 100 mm (common practice, no source): offered where a hook moves to a board. */
const USUAL_BOARD_MM = 75;

/** The hooks of the journal as the editor takes them. */
export function hooksOf(hooks: Settings['hooks']): Answers['hooks'] {
  const hook = (overhangM = 0): Hook => ({
    where: overhangM > 0 ? 'board' : 'under',
    outMm: overhangM > 0 ? overhangM * 1000 : USUAL_BOARD_MM,
  });
  return { front: hook(hooks?.frontOverhangM), rear: hook(hooks?.rearOverhangM) };
}
