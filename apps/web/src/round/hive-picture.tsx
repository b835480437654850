import { words } from '../app/words.ts';
import type { Edge } from '../weighing/entry.ts';

const HEIGHT_PX: Readonly<Record<string, number>> = { deep: 27, medium: 19, shallow: 16 };
const WIDTH = 78;
const FLOOR_Y = 78;

interface HivePictureProps {
  readonly boxes: readonly string[];
  readonly edge: Edge;
  readonly byHand: boolean;
}

/** Which edge is lifted: the hive from the side, standing on its other edge, held by a hook scale or by hand. */
export function HivePicture({ boxes, edge, byHand }: HivePictureProps) {
  const { round } = words;
  const stack = boxes.length === 0 ? ['deep', 'deep'] : boxes.slice(-4);
  // Four deep boxes are drawn lower so that the lid stays in the picture.
  const tall = stack.reduce((sum, depth) => sum + (HEIGHT_PX[depth] ?? 27), 0);
  const shrink = Math.min(1, 58 / tall);
  const heights = stack.map((depth) => (HEIGHT_PX[depth] ?? 27) * shrink);
  const tops = heights.map((_height, i) => FLOOR_Y - 1 - heights.slice(0, i + 1).reduce((sum, height) => sum + height, 0));
  const drawn = tops.map((top, i) => <rect key={top} x="44" y={top} width={WIDTH} height={heights[i]} className="hive-box" />);
  const lidY = (tops.at(-1) ?? FLOOR_Y) - 3;
  const isFront = edge === 'front';
  return (
    <svg className="hive-picture" viewBox="0 0 162 104" role="img" aria-label={byHand ? round.pictureHand : round.picture(round[edge])}>
      <path d="M6 88H156" className="hive-ground" />
      {/* The rear stands at the right; lifting the front is the same drawing mirrored, all but its entrance. */}
      <g transform={isFront ? 'translate(166 0) scale(-1 1)' : undefined}>
        <g transform="rotate(-3.6 40 84)">
          <path d="M38 82h92" className="hive-floor" />
          {drawn}
          <path d={`M39 ${lidY + 6}v-6h88v6`} className="hive-lid" />
          {isFront ? <path d="M124 80h12" className="hive-board" /> : <path d="M30 80h12" className="hive-board" />}
        </g>
        {byHand ? (
          <path d="M144 86V54M135 64l9-10 9 10" className="hive-lift" />
        ) : (
          <>
            <path d="M129 79V64M129 38v-8M119 29h20" className="hive-lift" />
            <rect x="120" y="38" width="18" height="26" className="hive-scale" />
            <path d="M124.500 46h9" className="hive-lift" />
          </>
        )}
      </g>
      <text x="34" y="101">
        {round.front}
      </text>
      <text x="132" y="101" textAnchor="end">
        {round.rear}
      </text>
    </svg>
  );
}
