import './setup.css';
import { words } from '../app/words.ts';
import { Choice } from '../ui/choice.tsx';
import type { Answers, Hook } from './answers.ts';

/** Boards that stick out, as they are sold and sawn: 50 to 100 mm, 2 to 4 inches (common practice, no source). */
const OUT_MM = { mm: [50, 75, 100], in: [50.8, 76.2, 101.6] } as const;
const MM_PER_INCH = 25.4;

interface HookEditorProps {
  readonly hooks: Answers['hooks'];
  readonly lengthUnit: string;
  readonly onChange: (hooks: Answers['hooks']) => void;
}

/** Where the scale takes hold of each edge, by picture. */
export function HookEditor({ hooks, lengthUnit, onChange }: HookEditorProps) {
  const { begin } = words;
  return (
    <>
      <p className="note">{begin.hookWhy}</p>
      <EdgeHook
        edge="front"
        legend={begin.hookFront}
        hook={hooks.front}
        lengthUnit={lengthUnit}
        onChange={(front) => onChange({ ...hooks, front })}
      />
      <EdgeHook
        edge="rear"
        legend={begin.hookRear}
        hook={hooks.rear}
        lengthUnit={lengthUnit}
        onChange={(rear) => onChange({ ...hooks, rear })}
      />
    </>
  );
}

interface EdgeHookProps {
  readonly edge: 'front' | 'rear';
  readonly legend: string;
  readonly hook: Hook;
  readonly lengthUnit: string;
  readonly onChange: (hook: Hook) => void;
}

function EdgeHook({ edge, legend, hook, lengthUnit, onChange }: EdgeHookProps) {
  const { begin } = words;
  const inches = lengthUnit === 'in';
  const lengths: readonly number[] = inches ? OUT_MM.in : OUT_MM.mm;
  const nearest = lengths.reduce((best, mm) => (Math.abs(mm - hook.outMm) < Math.abs(best - hook.outMm) ? mm : best));
  return (
    <>
      <Choice
        legend={legend}
        name={`hook-${edge}`}
        value={hook.where}
        options={(['under', 'board'] as const).map((where) => ({
          value: where,
          label: begin.hooks[where],
          picture: <HookPicture edge={edge} where={where} />,
        }))}
        onChange={(where) => onChange({ where, outMm: nearest })}
      />
      {hook.where === 'board' ? (
        <Choice
          legend={begin.hookOut}
          name={`hook-out-${edge}`}
          value={String(nearest)}
          options={lengths.map((mm) => ({ value: String(mm), label: inches ? `${Math.round(mm / MM_PER_INCH)} in` : `${mm} mm` }))}
          onChange={(mm) => onChange({ ...hook, outMm: Number(mm) })}
        />
      ) : null}
    </>
  );
}

/** One edge of a hive lifted by a hook: close under the box, or out on the board. The front is at the left. */
function HookPicture({ edge, where }: { readonly edge: 'front' | 'rear'; readonly where: Hook['where'] }) {
  const hookX = where === 'under' ? 71 : 83;
  return (
    <svg className="hook-picture" viewBox="0 0 100 64" width="100" height="64" aria-hidden="true">
      <g transform={edge === 'front' ? 'matrix(-1 0 0 1 100 0)' : undefined}>
        <path d="M4 60h92" className="hook-ground" />
        <g transform="rotate(-6 20 56)">
          <path d="M22 14h50v20H22zM22 34h50v18H22z" className="hook-box" />
          <path d="M18 11h58" className="hook-lid" />
          <path d={where === 'under' ? 'M18 55h56' : 'M18 55h70'} className="hook-floor" />
        </g>
        <path d={`M${hookX + 4} 10v34q0 6-7 6M${hookX - 2} 10h12`} className="hook-hook" />
      </g>
    </svg>
  );
}

/** In one line, for the row. */
export function hookWords({ front, rear }: Answers['hooks']): string {
  const { begin } = words;
  if (front.where === 'under' && rear.where === 'under') return begin.hookShort.under;
  return begin.hookBoth(begin.hooks[front.where], begin.hooks[rear.where]);
}
