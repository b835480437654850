import type { Plan, ProvisionAnswer, Settings } from '@winterheft/core';
import { coreWords, words } from '../app/words.ts';
import { FeedSettings } from '../setup/feed-settings.tsx';
import { figuresOf } from '../walk/figures.ts';
import type { Names } from '../walk/naming.ts';
import { MixLine } from './stop-open.tsx';

/** The plan in a sentence and its figures: what it covers, with how much of what, and how good it is. */
export function PlanHead({ plan, provision, names }: { readonly plan: Plan; readonly provision: ProvisionAnswer; readonly names: Names }) {
  const of = words.provision;
  const figures = figuresOf(plan, provision);
  const { units, figure, brief } = names;
  const covered = figure(figures.coveredKg) === figure(figures.shortKg);
  const title =
    figures.shortKg === 0
      ? of.nothingShort
      : covered
        ? of.coversAll(brief(figures.shortKg), figures.lacking)
        : of.covers(figure(figures.coveredKg), brief(figures.shortKg), figures.lacking);
  return (
    <>
      <h1>{title}</h1>
      {provision.steps.length === 0 ? (
        <p className="lead">{provision.uncovered.length === 0 ? of.nothingToDo : of.nothingCovers}</p>
      ) : (
        <p className="lead">
          {of.summary({
            ...figures,
            syrup: figures.litres === 0 ? '' : units.volume(figures.litres),
            candy: figures.candyKg === 0 ? '' : brief(figures.candyKg),
          })}
          {'. '}
          {provision.method === 'greedy' ? <strong>{`${of.greedyMark}. `}</strong> : null}
          {coreWords.provisionQuality(provision)}
        </p>
      )}
    </>
  );
}

interface PlanNotesProps {
  readonly plan: Plan;
  readonly provision: ProvisionAnswer;
  readonly names: Names;
  readonly settings: Settings;
}

/** What stays open and why, why the moves are as they are, what to mix, hours and money. */
export function PlanNotes({ plan, provision, names, settings }: PlanNotesProps) {
  const of = words.provision;
  const figures = figuresOf(plan, provision);
  const open = new Set(provision.uncovered.map(({ colony }) => colony));
  const isOpen = ({ colony, code }: (typeof provision.reasons)[number]) => colony !== undefined && open.has(colony) && code !== 'short';
  const sentences = (of: typeof provision.reasons) => of.map((reason) => coreWords.reasonSentence(reason, names));
  const left = sentences(provision.reasons.filter(isOpen));
  // what each is short of stands at its stop
  const why = sentences(provision.reasons.filter((reason) => reason.code !== 'short' && !isOpen(reason)));
  const tasks = plan.tasks.filter(({ code }) => code === 'weigh' || code === 'weigh-empty-hive' || code === 'weigh-again');
  return (
    <div className="plan-notes">
      <section>
        <h2>{of.uncoveredTitle}</h2>
        {left.length === 0 ? <p>{of.uncoveredNone}</p> : <Sentences of={left} />}
        {tasks.length === 0 ? null : <Sentences of={tasks.map((task) => sentence(coreWords.taskSentence(task, names.colony)))} />}
      </section>
      <section>
        <h2>{of.mixTitle}</h2>
        <Mix figures={figures} names={names} />
        <p>{of.totals(of.hours(figures.minutes), figures.cost.toFixed(0))}</p>
        {figures.buySugarKg > 0 ? <p>{of.buySugar(names.units.mass(figures.buySugarKg))}</p> : null}
        <details className="plan-feed" open={settings.sugarKg === undefined && figures.buySugarKg > 0}>
          <summary>
            {settings.sugarKg === undefined ? of.sugarNotAsked : of.sugarOnHand(names.units.mass(settings.sugarKg))} <b>{of.sugarChange}</b>
          </summary>
          <FeedSettings now={settings} />
        </details>
        {provision.totals.expectedLosses > 0 ? <p>{of.losses(provision.totals.expectedLosses.toFixed(2))}</p> : null}
      </section>
      {why.length === 0 ? null : (
        <section>
          <h2>{of.whyTitle}</h2>
          <Sentences of={why} />
        </section>
      )}
    </div>
  );
}

function Mix({ figures, names }: { readonly figures: ReturnType<typeof figuresOf>; readonly names: Names }) {
  return (
    <>
      {figures.litres > 0 ? <MixLine litres={figures.litres} names={names} /> : null}
      {figures.litres > 0 ? <p>{words.provision.syrupCare}</p> : null}
      {figures.candyKg > 0 ? <p>{words.provision.candy(names.units.mass(figures.candyKg))}</p> : null}
    </>
  );
}

function Sentences({ of }: { readonly of: readonly string[] }) {
  return (
    <ul className="sentences">
      {of.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  );
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}
