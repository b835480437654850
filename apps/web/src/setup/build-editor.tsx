import './setup.css';
import { words } from '../app/words.ts';
import { Choice } from '../ui/choice.tsx';
import { type BuildChoice, boxesOf, STACKS, type Stack } from './builds.ts';

/** Which boxes, how many frames, wood or foam; by picture. */
export function BuildEditor({ build, onChange }: { readonly build: BuildChoice; readonly onChange: (build: BuildChoice) => void }) {
  const { begin } = words;
  return (
    <>
      <Choice
        legend={begin.built}
        name="stack"
        value={build.stack}
        options={STACKS.map((stack) => ({ value: stack, label: begin.buildNames[stack], picture: <StackPicture stack={stack} /> }))}
        onChange={(stack) => onChange({ ...build, stack })}
      />
      <div className="choice-pair">
        <Choice
          legend={begin.frames}
          name="frames"
          value={String(build.frames)}
          options={['10', '8', '5'].map((frames) => ({ value: frames, label: frames }))}
          onChange={(frames) => onChange({ ...build, frames: Number(frames) as BuildChoice['frames'] })}
        />
        <Choice
          legend={begin.material}
          name="material"
          value={build.material}
          options={(['wood', 'foam'] as const).map((material) => ({ value: material, label: begin.materials[material] }))}
          onChange={(material) => onChange({ ...build, material })}
        />
      </div>
    </>
  );
}

const GROUND = 40;

/** The boxes as they stand, heights to scale among each other. */
function StackPicture({ stack }: { readonly stack: Stack }) {
  const heights = boxesOf(stack).map((depth) => (depth === 'deep' ? 15 : 10));
  const tops = heights.map((_, i) => GROUND - 2 - heights.slice(0, i + 1).reduce((sum, height) => sum + height, 0));
  return (
    <svg className="stack" viewBox="0 0 44 42" width="44" height="42" aria-hidden="true">
      <path d={`M3 ${GROUND}h38M5 ${(tops.at(-1) ?? GROUND) - 1}h34`} />
      {tops.map((top, i) => (
        <rect key={top} x="8" y={top} width="28" height={heights[i]} />
      ))}
    </svg>
  );
}
