import { TroubleLine } from '../app/lines.tsx';
import { coreWords, words } from '../app/words.ts';
import { Icon } from '../ui/icons.tsx';

/** What to mind before lifting; one tap from every hive. */
export function Cautions({ onClose }: { readonly onClose: () => void }) {
  const { round } = words;
  const { cautions } = coreWords;
  return (
    <main className="round-list">
      <TroubleLine />
      <h1>{round.liftingTitle}</h1>
      <button type="button" className="round-back" onClick={onClose}>
        <Icon name="back" /> {round.closeCautions}
      </button>
      <ul className="round-cautions">
        {[cautions.lifting, cautions.stings, cautions.cold, cautions.disease].map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </main>
  );
}
