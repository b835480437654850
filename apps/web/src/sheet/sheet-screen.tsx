import './sheet.css';
import { epochDayOf, type Holding } from '@winterheft/core';
import { dayMonth, type UnitFormat } from '@winterheft/words';
import { type ReactNode, useMemo, useState } from 'react';
import { useSession } from '../app/session.ts';
import { dayInWords, planDay } from '../app/today.ts';
import { useUnits } from '../app/use-units.ts';
import { coreWords, language, words } from '../app/words.ts';
import { type Outlooks, useOutlooks } from '../plan/use-plan.ts';
import { Icon } from '../ui/icons.tsx';
import { useWidth } from '../ui/use-width.ts';
import { errorFigure } from '../weighing/figures.ts';
import { walkOf } from '../weighing/walk.ts';
import { pagesOf } from './pages.ts';
import { Paper, type PaperHead } from './paper.tsx';
import { sheetRows, stopSdKg } from './rows.ts';

/** The round on paper: a preview of what prints, and the key that prints it. */
export default function SheetScreen() {
  const { snapshot } = useSession();
  const { outlooks, fault } = useOutlooks();
  const units = useUnits();
  const { sheet, shell } = words;
  const holding = snapshot?.holding ?? null;
  const walk = useMemo(() => (holding === null ? [] : walkOf(holding, epochDayOf(planDay()) as number, new Set())), [holding]);
  if (snapshot === null) return <p className="waiting">{shell.opening}</p>;
  const lines = outlooks?.lines ?? [];
  const pages = pagesOf(sheetRows(walk, { holding: snapshot.holding, lines, units }));
  const head = headOf(snapshot.holding, { outlooks, units, records: snapshot.records });
  return (
    <main className="page sheet">
      <div className="sheet-keys">
        <h1>{sheet.title}</h1>
        <p>{sheet.lead}</p>
        {pages.length === 0 ? <p>{sheet.noHives}</p> : null}
        {fault === null || pages.length === 0 ? null : <p className="error">{sheet.notReckoned(coreWords.faultSentence(fault))}</p>}
        <p className="keys">
          <button
            type="button"
            className="key key-solid key-big"
            disabled={pages.length === 0 || (outlooks === null && fault === null)}
            onClick={() => window.print()}
          >
            <Icon name="print" /> {sheet.print}
          </button>
          <a className="key key-big" href="#/sheet/enter">
            {sheet.toEnter}
          </a>
        </p>
        <p className="note" role="status">
          {outlooks === null && fault === null && pages.length > 0 ? sheet.reckoning : sheet.pages(pages.length)}
        </p>
      </div>
      <Preview>
        {pages.map((page, i) => (
          <Paper key={page[0]?.rows[0]?.hive} page={page} n={i + 1} of={pages.length} head={head} />
        ))}
      </Preview>
    </main>
  );
}

/** Width of a page with its border [px]: 188 mm and twice 8 mm in the style sheet. */
const PAPER_PX = 773;

/** The pages shrunk to the width there is, or, on asking, in their true size, which scrolls. */
function Preview({ children }: { readonly children: ReactNode }) {
  const { sheet } = words;
  const [ref, width] = useWidth<HTMLElement>();
  const [isLarge, setLarge] = useState(false);
  const shrinks = width > 0 && width < PAPER_PX;
  const scrolls = shrinks && isLarge;
  return (
    <>
      {shrinks ? (
        <p className="keys sheet-size">
          <button type="button" className="key" onClick={() => setLarge(!isLarge)}>
            {isLarge ? sheet.whole : sheet.enlarge}
          </button>
        </p>
      ) : null}
      <section className="papers" ref={ref} aria-label={sheet.preview} tabIndex={scrolls ? 0 : undefined}>
        <div className="papers-all" style={shrinks && !isLarge ? { zoom: width / PAPER_PX } : undefined}>
          {children}
        </div>
      </section>
    </>
  );
}

function headOf(
  holding: Holding,
  { outlooks, units, records }: { readonly outlooks: Outlooks | null; readonly units: UnitFormat; readonly records: number },
): PaperHead {
  const { sheet } = words;
  const today = outlooks?.made.today ?? planDay();
  const day = `${dayInWords(today, language)} ${today.slice(0, 4)}`;
  const sdKg = stopSdKg(outlooks?.lines ?? []);
  const datesOf = (yard: string): string => {
    const dates = outlooks?.dates.find((one) => one.yard === yard)?.dates;
    const [feeding, forage] = [dates?.['lastFeedingDay']?.p50, dates?.['firstForage']];
    if (feeding == null || forage?.p10 == null || forage.p50 == null || forage.p90 == null) return '';
    return sheet.yardDates(dayMonth(feeding), sheet.forage(dayMonth(forage.p50), dayMonth(forage.p10), dayMonth(forage.p90)));
  };
  return {
    made:
      outlooks === null
        ? day
        : sheet.made(day, coreWords.chanceWords(outlooks.made.certaintyFrac), sheet.masses[units.massUnit] ?? units.massUnit),
    stopAt: sdKg === null ? '' : sheet.stopAt(errorFigure(units, sdKg), units.massUnit),
    record: sheet.record(records),
    yards: new Map([...holding.yards.values()].map(({ id, name }) => [id, { name, dates: datesOf(id) }])),
  };
}
