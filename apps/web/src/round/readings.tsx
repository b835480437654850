import { useEffect, useRef } from 'react';
import { words } from '../app/words.ts';
import type { Action, Edge, Fields } from '../weighing/entry.ts';
import { cleanText, shownText } from '../weighing/typing.ts';
import { HivePicture } from './hive-picture.tsx';

interface ReadingsProps {
  readonly fields: Fields;
  readonly boxes: readonly string[];
  readonly byHand: boolean;
  readonly unit: string;
  readonly mark: string;
  /** The last reading of each edge as text, or null. */
  readonly last: Readonly<Record<Edge, string | null>>;
  /** Readings that are being asked about. */
  readonly asked: Edge | null;
  readonly desk: boolean;
  readonly onAct: (action: Action) => void;
}

const EDGES: readonly Edge[] = ['front', 'rear'];

/** The picture and both readings: keys to choose the edge on a phone, fields to type in at a desk. */
export function Readings({ boxes, byHand, ...of }: ReadingsProps) {
  const { fields, desk } = of;
  const { round } = words;
  const ref = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // At a desk the focus goes where the round goes, so that Enter is all there is to press between readings.
    if (desk && !byHand) ref.current?.querySelector<HTMLInputElement>(`[data-edge=${fields.edge}]`)?.focus();
  }, [desk, byHand, fields.edge]);
  return (
    <div className="round-readings" ref={ref}>
      <HivePicture boxes={boxes} edge={byHand ? 'rear' : fields.edge} byHand={byHand} />
      {byHand ? (
        <p className="round-hand">
          {round.noScale} <br />
          {round.liftByHand}
        </p>
      ) : (
        EDGES.map((edge) => <Reading key={edge} edge={edge} {...of} />)
      )}
    </div>
  );
}

type ReadingProps = Omit<ReadingsProps, 'boxes' | 'byHand'> & { readonly edge: Edge };

function Reading({ edge, fields, unit, mark, last, asked, desk, onAct }: ReadingProps) {
  const { round } = words;
  const text = shownText(fields[edge], mark);
  const isOn = fields.edge === edge;
  const className = isOn ? 'round-reading round-reading-on' : 'round-reading';
  const title = (
    <span className="round-edge">
      {round[edge]} <span className="visually-hidden">{round.edge}</span>{' '}
      <small>{last[edge] === null || text !== '' ? unit : round.lastReading(shownText(last[edge], mark))}</small>
    </span>
  );
  if (!desk) {
    return (
      <button type="button" className={className} aria-pressed={isOn} onClick={() => onAct({ do: 'edge', edge })}>
        {title}
        <span className="round-digits num">
          {text === '' ? <span className="visually-hidden">{round.nothingTyped}</span> : text}
          {isOn ? <i className="round-caret" /> : null}
        </span>
      </button>
    );
  }
  return (
    <label className={className}>
      {title}
      <input
        type="text"
        inputMode="decimal"
        autoComplete="off"
        className="num"
        aria-invalid={asked === edge || undefined}
        data-edge={edge}
        value={text}
        onFocus={() => onAct({ do: 'edge', edge })}
        onChange={(event) => {
          const typed = cleanText(event.target.value.replace(mark, '.'));
          if (typed !== null) onAct({ do: 'text', edge, text: typed });
        }}
      />
    </label>
  );
}
