import { words } from '../app/words.ts';
import { Choice } from '../ui/choice.tsx';

interface YardKeysProps {
  readonly yards: readonly { readonly id: string; readonly name: string }[];
  /** Null: all of them. */
  readonly chosen: string | null;
  readonly onChoose: (yard: string | null) => void;
}

/** All yards together, or one of them with its own forage date. */
export function YardKeys({ yards, chosen, onChoose }: YardKeysProps) {
  const { outlook } = words;
  return (
    <div className="outlook-yards">
      <Choice
        legend={outlook.yards}
        name="outlook-yard"
        value={chosen ?? ''}
        options={[{ value: '', label: outlook.allYards }, ...yards.map((yard) => ({ value: yard.id, label: yard.name }))]}
        onChange={(yard) => onChoose(yard === '' ? null : yard)}
      />
    </div>
  );
}
