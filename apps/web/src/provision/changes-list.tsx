import { words } from '../app/words.ts';
import type { Adopted } from '../walk/adopted.ts';
import { type Change, changesBetween } from '../walk/changes.ts';
import type { Names } from '../walk/naming.ts';

/** What a plan made on the way changes against the one before, and who has to wait. */
export function ChangesList({
  before,
  after,
  names,
}: {
  readonly before: Adopted;
  readonly after: Pick<Adopted, 'because' | 'about' | 'stops' | 'plan'>;
  readonly names: Names;
}) {
  const of = words.provision;
  const why = of.because[after.because];
  const about = after.about === undefined ? '' : names.colony(after.about);
  const changes = changesBetween(before, after);
  return (
    <section className="changes" role="status">
      <h2>{of.changesTitle}</h2>
      <p>{typeof why === 'function' ? why(about) : why}</p>
      <ul>
        {changes.map((change) => (
          <li key={change.colony}>{changeSentence(change, names)}</li>
        ))}
      </ul>
      {changes.length === 0 ? <p>{of.changesNone}</p> : null}
    </section>
  );
}

function changeSentence({ colony, wasKg, isKg, leftKg }: Change, names: Names): string {
  const of = words.provision;
  const mass = (kg: number) => (names.figure(Math.abs(kg)) === names.figure(0) ? of.nothing : names.brief(Math.abs(kg)));
  const at = names.colony(colony);
  const [was, is] = [mass(wasKg), mass(isKg)];
  const turns = wasKg * isKg < 0;
  const gets = turns ? isKg > 0 : wasKg + isKg > 0;
  const says = gets ? (turns ? of.change.getsNow : of.change.gets) : turns ? of.change.givesNow : of.change.gives;
  return [was === is ? '' : says(at, was, is), leftKg > 0 ? of.waitsFor(at, names.brief(leftKg)) : '']
    .filter((text) => text !== '')
    .join(' ');
}
