import { useMemo } from 'react';
import { encode } from 'uqr';

/** Modules that have to stay white round a code (ISO/IEC 18004). */
const QUIET = 4;

/** A code as one path on a grid of modules, quiet zone included. Level H: up to 30 % of it may be frosted or scraped off. */
export function TagPicture({ text, label }: { readonly text: string; readonly label: string }) {
  const { size, path } = useMemo(() => drawn(text), [text]);
  return (
    <svg className="tag-code" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label} shapeRendering="crispEdges">
      <path d={path} />
    </svg>
  );
}

function drawn(text: string): { readonly size: number; readonly path: string } {
  const { data, size } = encode(text, { ecc: 'H', border: QUIET });
  const runs = data.flatMap((row, y) =>
    row.flatMap((isDark, x) => {
      if (!isDark || row[x - 1] === true) return [];
      const end = row.indexOf(false, x);
      return [`M${x} ${y}h${(end < 0 ? row.length : end) - x}v1H${x}z`];
    }),
  );
  return { size, path: runs.join('') };
}
