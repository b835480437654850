/** Heights on the paper [mm]. The style sheet has the same ones; what they add up to fits Letter, the shorter of the two papers. */
export const ROW_MM = 7.1;
export const YARD_MM = 6.4;
/** Room for rows on a page: 26 hives in three yards. */
export const PAGE_MM = 26 * ROW_MM + 3 * YARD_MM;
/** Sums of tenths in binary fall a hair off. */
const SLACK_MM = 1e-6;

export interface SheetYard<Row> {
  readonly yard: string;
  readonly rows: readonly Row[];
}

/** One page: parts of yards, in order; a yard that goes on carries its name again. */
export type SheetPage<Row> = readonly SheetYard<Row>[];

/** Rows dealt out onto pages, in order; a page never ends with the name of a yard. */
export function pagesOf<Row>(yards: readonly SheetYard<Row>[]): readonly SheetPage<Row>[] {
  const pages: SheetYard<Row>[][] = [];
  let left = 0;
  for (const { yard, rows } of yards) {
    for (let from = 0; from < rows.length; ) {
      if (left + SLACK_MM < YARD_MM + ROW_MM || pages.length === 0) {
        pages.push([]);
        left = PAGE_MM;
      }
      const most = Math.floor((left - YARD_MM + SLACK_MM) / ROW_MM);
      const part = rows.slice(from, from + most);
      pages.at(-1)?.push({ yard, rows: part });
      left -= YARD_MM + part.length * ROW_MM;
      from += part.length;
    }
  }
  return pages;
}
