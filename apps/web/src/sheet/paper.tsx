import type { ReactNode } from 'react';
import { words } from '../app/words.ts';
import { WordMark } from '../ui/icons.tsx';
import { StateShape } from '../ui/states.tsx';
import type { SheetPage } from './pages.ts';
import type { SheetRow } from './rows.ts';

export interface PaperHead {
  readonly made: string;
  readonly stopAt: string;
  readonly record: string;
  /** Name of each yard with its dates. */
  readonly yards: ReadonlyMap<string, { readonly name: string; readonly dates: string }>;
}

interface Column {
  /** Has its width in the style sheet. */
  readonly kind: 'state' | 'last' | 'needs' | 'above' | 'stop' | 'reading' | 'count' | 'brood' | 'notes';
  readonly head: string;
  /** Head over several columns beside each other. */
  readonly group?: string;
  readonly align?: 'end' | 'middle';
  readonly cell: string;
  /** Without it the cell is empty, to be written in. */
  readonly shows?: (row: SheetRow) => ReactNode;
}

const { columns } = words.sheet;

/** From left to right, after the label of the hive. */
const COLUMNS: readonly Column[] = [
  { kind: 'state', head: columns.state, cell: '', shows: (row) => <State row={row} /> },
  { kind: 'last', head: columns.last, cell: '', shows: (row) => <Last row={row} /> },
  { kind: 'needs', head: columns.needs, align: 'end', cell: 'paper-figure', shows: (row) => row.needs },
  { kind: 'above', head: columns.above, align: 'end', cell: 'paper-figure paper-above', shows: (row) => row.above },
  { kind: 'stop', group: columns.stop, head: columns.front, align: 'end', cell: 'paper-figure num', shows: (row) => row.stopFront },
  { kind: 'stop', group: columns.stop, head: columns.rear, align: 'end', cell: 'paper-figure num', shows: (row) => row.stopRear },
  { kind: 'reading', group: columns.read, head: columns.front, align: 'middle', cell: 'paper-empty' },
  { kind: 'reading', group: columns.read, head: columns.rear, align: 'middle', cell: 'paper-empty' },
  { kind: 'count', head: columns.bees, align: 'middle', cell: 'paper-empty' },
  { kind: 'count', group: columns.capped, head: columns.top, align: 'middle', cell: 'paper-empty' },
  { kind: 'count', group: columns.capped, head: columns.below, align: 'middle', cell: 'paper-empty' },
  { kind: 'brood', group: columns.brood, head: columns.clean, align: 'middle', cell: 'paper-empty paper-tick' },
  { kind: 'brood', group: columns.brood, head: columns.signs, align: 'middle', cell: 'paper-empty paper-tick' },
  { kind: 'notes', head: columns.notes, cell: 'paper-empty' },
];
const keyOf = ({ group = '', head }: Column) => `${group} ${head}`;

/** One page of the sheet, in millimetres; the same on the screen and on the paper. */
export function Paper({
  page,
  n,
  of,
  head,
}: {
  readonly page: SheetPage<SheetRow>;
  readonly n: number;
  readonly of: number;
  readonly head: PaperHead;
}) {
  const { sheet } = words;
  return (
    <section className="paper" aria-label={sheet.page(n, of)}>
      <div className="paper-head">
        <WordMark />
        <p>
          {head.made}
          <br />
          {head.stopAt}
        </p>
        <p className="paper-of">
          {sheet.page(n, of)}
          <br />
          {head.record}
        </p>
      </div>
      <dl className="paper-blanks">
        {Object.entries(sheet.blanks).map(([name, label]) => (
          <div key={name} className={`paper-blank-${name}`}>
            <dt>{label}</dt>
            <dd />
          </div>
        ))}
      </dl>
      <table className="paper-table">
        <colgroup>
          <col className="paper-label" />
          {COLUMNS.map((column) => (
            <col key={keyOf(column)} className={`paper-${column.kind}`} />
          ))}
        </colgroup>
        <thead>
          <tr>
            <th rowSpan={2} scope="col">
              {columns.label}
            </th>
            {COLUMNS.map((column, i) => (
              <TopHead key={keyOf(column)} column={column} before={COLUMNS[i - 1]} />
            ))}
          </tr>
          <tr>
            {COLUMNS.filter(({ group }) => group !== undefined).map((column) => (
              <th key={keyOf(column)} scope="col" className={`paper-${column.align}`}>
                {column.head}
              </th>
            ))}
          </tr>
        </thead>
        {page.map(({ yard, rows }) => (
          <tbody key={yard}>
            <tr className="paper-yard">
              <th colSpan={COLUMNS.length + 1} scope="rowgroup">
                <strong>{head.yards.get(yard)?.name}</strong> {head.yards.get(yard)?.dates}
              </th>
            </tr>
            {rows.map((row) => (
              <Row key={row.hive} row={row} />
            ))}
          </tbody>
        ))}
      </table>
      <div className="paper-foot">
        <p>
          {sheet.foot} {sheet.typeBack}
        </p>
        <p className="paper-notes">{sheet.notes}</p>
      </div>
    </section>
  );
}

/** The head of a column alone, or of its group at the first of it. */
function TopHead({ column, before }: { readonly column: Column; readonly before: Column | undefined }) {
  const { group, head, align } = column;
  if (group === undefined)
    return (
      <th rowSpan={2} scope="col" className={align === undefined ? undefined : `paper-${align}`}>
        {head}
      </th>
    );
  if (group === before?.group) return null;
  return (
    <th colSpan={COLUMNS.filter((one) => one.group === group).length} scope="colgroup" className="paper-group">
      {group}
    </th>
  );
}

function Row({ row }: { readonly row: SheetRow }) {
  return (
    <tr className={row.isShort ? 'paper-row paper-short' : 'paper-row'}>
      <th scope="row" className="num">
        {row.label}
      </th>
      {COLUMNS.map((column) => (
        <td key={keyOf(column)} className={column.cell}>
          {column.shows?.(row)}
        </td>
      ))}
    </tr>
  );
}

function State({ row }: { readonly row: SheetRow }) {
  return (
    <span className="paper-shape">
      {row.shape === null ? null : <StateShape shape={row.shape} size={11} />} {row.state}
    </span>
  );
}

function Last({ row }: { readonly row: SheetRow }) {
  return (
    <span className="paper-last">
      {row.last.map((reading) => (
        <span key={reading.edge}>{reading.text}</span>
      ))}
      <small>{row.lastDay}</small>
    </span>
  );
}
