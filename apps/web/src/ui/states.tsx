import type { State } from '@winterheft/core';

type Dashed<T extends string> = T extends `${infer A} ${infer B}` ? `${A}-${Dashed<B>}` : T;

/** Silhouettes that stay apart at 12 px, in grey and on paper. The word stands beside them, always. */
const SHAPES: Readonly<Record<Dashed<State> | 'low' | 'look', React.ReactNode>> = {
  enough: <circle cx="8" cy="8" r="5.6" fill="currentColor" />,
  short: <path d="M.8 1.6h14.4L8 15z" fill="currentColor" />,
  spare: <path d="M5.9 1h4.2v4.9H15v4.2h-4.9V15H5.9v-4.9H1V5.9h4.9z" fill="currentColor" />,
  unknown: <path d="M12.6 4.1A6 6 0 1 0 14 8" fill="none" stroke="currentColor" strokeWidth="2.6" />,
  'too-small-alone': (
    <>
      <path d="M4 8h8" stroke="currentColor" strokeWidth="2" />
      <circle cx="3.6" cy="8" r="3" fill="currentColor" />
      <circle cx="12.4" cy="8" r="3" fill="currentColor" />
    </>
  ),
  'set-aside': <path d="M2.2 2.2h11.6v11.6H2.2zM2.2 13.8 13.8 2.2" fill="none" stroke="currentColor" strokeWidth="2.2" />,
  ended: <path d="M1 8h14" stroke="currentColor" strokeWidth="3.4" />,
  low: (
    <>
      <circle cx="8" cy="8" r="6" fill="none" stroke="currentColor" strokeWidth="1.9" />
      <path d="M2 8.6a6 6 0 0 0 12 0z" fill="currentColor" />
    </>
  ),
  look: <path d="M6.2 1.5h3.6v4.7h4.7v3.6H9.8v4.7H6.2V9.8H1.5V6.2h4.7z" fill="none" stroke="currentColor" strokeWidth="1.9" />,
};

export type Shape = keyof typeof SHAPES;

/** The shape of a state. */
export function shapeOf(state: State): Shape {
  return state.replaceAll(' ', '-') as Dashed<State>;
}

export function StateShape({ shape, size = 16 }: { readonly shape: Shape; readonly size?: number }) {
  return (
    <svg className={`state state-${shape}`} viewBox="0 0 16 16" width={size} height={size} aria-hidden="true">
      {SHAPES[shape]}
    </svg>
  );
}
