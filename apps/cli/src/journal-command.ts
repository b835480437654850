import { bad, climateForPlace, foldHolding, good, type Holding, type Journal, type PlanSetting, type Result } from '@winterheft/core';
import type { Fault } from '@winterheft/words';
import type * as z from 'zod';
import type { Answer, Command, Options, View } from './command.ts';
import { journalOf } from './journal-input.ts';
import { membersOption, seedOption, todayOption } from './option-values.ts';
import { STATION_OPTIONS, stationOption } from './station-option.ts';

/** What a command that reads a journal works from. */
export interface JournalAsked {
  readonly journal: Journal;
  readonly setting: PlanSetting;
  /** Folded until today. */
  readonly holding: Holding;
}

/** A command from a journal and a day: reads both, and leaves to `answer` what is done with them. */
export function journalCommand<T extends object>(of: {
  readonly name: string;
  readonly summary: string;
  readonly contract: { readonly input: z.ZodType; readonly output: z.ZodType; readonly example: string };
  readonly answer: (asked: JournalAsked) => Promise<Result<T, Fault>> | Result<T, Fault>;
  readonly table: (answer: T, view: View) => string;
  /** Options of its own, and the text that is the answer itself where they ask for one; null: print as usual. */
  readonly options?: Command['options'];
  readonly text?: (answer: T, asked: JournalAsked, options: Options) => Result<string | null, Fault>;
}): Command {
  return {
    name: of.name,
    summary: of.summary,
    input: of.contract.input,
    output: of.contract.output,
    example: of.contract.example,
    options: [
      ['--today <date>', "the day it is made for (left out: this machine's date)"],
      ['--seed <n>', 'seed of the random numbers (left out: 1)'],
      ['--place <place>', "climate of this place for every yard, instead of the yards' own"],
      ['--members <n>', 'cases drawn (left out: 1000)'],
      ...STATION_OPTIONS,
      ...(of.options ?? []),
    ],
    async run(file, options, io): Promise<Result<Answer, Fault>> {
      const today = todayOption(options.today, io.now());
      if (!today.ok) return today;
      const seed = seedOption(options.seed);
      if (!seed.ok) return seed;
      const members = membersOption(options.members);
      if (!members.ok) return members;
      const place = options.place === undefined ? null : climateForPlace(options.place);
      if (place !== null && !place.ok) return place;
      const record = await stationOption(options, io);
      if (!record.ok) return record;
      if (file === undefined && io.stdinIsTerminal) return bad({ kind: 'no-input' });
      const bytes = await io.read(file ?? '-');
      if (!bytes.ok) return bytes;
      const journal = journalOf(bytes.value, file === undefined || file === '-' ? 'standard input' : file);
      if (!journal.ok) return journal;
      const { records, unread } = journal.value;
      const setting = { today: today.value, seed: seed.value, members: members.value, place: options.place, record: record.value };
      const begins = records.reduce((first, { at }) => (at.date < first ? at.date : first), '9999-12-31');
      if (begins > today.value) return bad({ kind: 'date-order', field: '--today', value: today.value, notBefore: begins });
      const holding = foldHolding(records, { unread, until: today.value });
      const asked = { journal: journal.value, setting, holding };
      const answer = await of.answer(asked);
      if (answer.ok && of.text !== undefined) {
        const text = of.text(answer.value, asked, options);
        if (!text.ok) return text;
        if (text.value !== null) return good({ text: text.value });
      }
      return answer.ok ? good({ json: answer.value, table: (view) => of.table(answer.value, view) }) : answer;
    },
  };
}

/** So many unread lines are named. */
const SHOWN = 10;

/** What was left out of a journal, told with every answer made from it. */
export function leftOut({ holding, journal }: JournalAsked) {
  return {
    unread: {
      lines: holding.unread.lines,
      byWhy: holding.unread.byWhy,
      first: journal.unread.slice(0, SHOWN).map(({ line, why }) => ({ line, why })),
    },
    later: holding.later.length,
  };
}
