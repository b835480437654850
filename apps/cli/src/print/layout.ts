import { columnsOf, shortened } from '@winterheft/words';

/** Every table fits this many columns. */
export const WIDTH = 110;
const GAP = '  ';

export interface Column {
  readonly head: string;
  readonly align?: 'left' | 'right';
  /** Longer cells are cut with an ellipsis. */
  readonly max?: number;
  /** Longer cells break into lines. */
  readonly wrap?: number;
  /** The one column that takes what is left and breaks into lines. */
  readonly flexible?: boolean;
}

const padded = (text: string, columns: number, align: 'left' | 'right' = 'left') => {
  const space = ' '.repeat(Math.max(0, columns - columnsOf(text)));
  return align === 'right' ? space + text : text + space;
};

/** Spaces a line may be broken at: not beside a ±, and not between a figure and its unit. */
const BREAKS = /(?<!±) (?!±|(?:%|°[CF]|kg|lb|L|US gal|gal|mm|in|Pa|W)(?![\p{L}\p{N}]))/u;

/** Words broken into lines of at most `columns`; a word too long for a line is cut. */
function broken(text: string, columns: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(BREAKS)) {
    const fitting = shortened(word, columns);
    if (line === '') line = fitting;
    else if (columnsOf(line) + 1 + columnsOf(fitting) <= columns) line += ` ${fitting}`;
    else {
      lines.push(line);
      line = fitting;
    }
  }
  lines.push(line);
  return lines;
}

/** A paragraph broken at the width, later lines indented under the first. */
export function paragraph(text: string, indent = ''): string {
  return broken(text, WIDTH - columnsOf(indent))
    .map((line) => `${indent}${line}`.trimEnd())
    .join('\n');
}

/** A numbered or marked entry whose later lines hang under its text. */
export function entry(mark: string, text: string): string {
  const hang = ' '.repeat(columnsOf(mark) + 1);
  return broken(text, WIDTH - hang.length)
    .map((line, i) => (i === 0 ? `${mark} ${line}` : `${hang}${line}`).trimEnd())
    .join('\n');
}

/** Label and value in two columns, one fact a line. */
export function facts(rows: readonly (readonly [label: string, value: string])[]): string {
  const labels = Math.max(...rows.map(([label]) => columnsOf(label)));
  return rows
    .map(([label, value]) => {
      const [first = '', ...rest] = broken(value, WIDTH - labels - GAP.length);
      return [`${padded(label, labels)}${GAP}${first}`.trimEnd(), ...rest.map((line) => `${' '.repeat(labels)}${GAP}${line}`)].join('\n');
    })
    .join('\n');
}

/** Cells as lines, and how wide each column is. With no flexible column the widths are what the cells need. */
function laidOut(columns: readonly Column[], rows: readonly (readonly string[])[]) {
  const cells = rows.map((row) =>
    columns.map((column, i) =>
      column.wrap === undefined ? [shortened(row[i] ?? '', column.max ?? WIDTH * 4)] : broken(row[i] ?? '', column.wrap),
    ),
  );
  const widths = columns.map((column, i) => {
    const lines = [...column.head.split('\n'), ...cells.flatMap((row) => row[i] ?? [])];
    return Math.max(0, ...lines.map(columnsOf));
  });
  const flexible = columns.findIndex((column) => column.flexible);
  if (flexible >= 0) {
    const others = widths.reduce((sum, width, i) => (i === flexible ? sum : sum + width + GAP.length), 0);
    const width = Math.max(8, Math.min(widths[flexible] ?? 0, WIDTH - others));
    widths[flexible] = width;
    for (const row of cells) row[flexible] = broken(row[flexible]?.[0] ?? '', width);
  }
  return { cells, widths };
}

/** Head and rows in columns. */
export function table(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const { cells, widths } = laidOut(columns, rows);
  const put = (row: readonly (readonly string[])[], bottom: boolean): string[] => {
    const height = Math.max(...row.map((cell) => cell.length));
    return Array.from({ length: height }, (_, y) => {
      const texts = row.map((cell) => cell[bottom ? y - height + cell.length : y] ?? '');
      return columns
        .map((column, i) => padded(texts[i] ?? '', widths[i] ?? 0, column.align))
        .join(GAP)
        .trimEnd();
    });
  };
  const heads = columns.map((column) => column.head.split('\n'));
  return [...put(heads, true), widths.map((width) => '-'.repeat(width)).join(GAP), ...cells.flatMap((row) => put(row, false))].join('\n');
}
