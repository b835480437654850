import { type CandyAnswer, candy, matterParameters } from '../matter/index.ts';
import { bad, good, inRange, type Result } from '../result/index.ts';
import { kitParameters } from '../tables/parameters-kit.gen.ts';

export interface CandyBoardInput {
  /** Inside of the rim, with the depth of candy; or the sugar for one board. */
  readonly lengthM?: number | undefined;
  readonly widthM?: number | undefined;
  readonly depthM?: number | undefined;
  readonly sugarKg?: number | undefined;
  readonly boards?: number | undefined;
  /** What this colony eats [kg honey/day] when it lives on the board. */
  readonly useKgPerDay?: number | undefined;
  /** Date after which no more flying days are expected, ISO; the board goes on then. */
  readonly clusterDate?: string | undefined;
  readonly kind?: 'no-cook' | 'boiled' | undefined;
}

export type CandyBoardCaution = CandyAnswer['cautions'][number] | 'hot-sugar-burns' | 'after-warm-days' | 'heat-makes-harm';

export interface CandyBoardAnswer {
  readonly kind: 'no-cook' | 'boiled';
  readonly boards: number;
  /** One board. */
  readonly sugarKg: number;
  readonly waterKg: number;
  readonly massKg: number;
  readonly volumeL: number;
  readonly allSugarKg: number;
  readonly allWaterKg: number;
  /** Set and dry before it goes on [h]. */
  readonly dryHours: number;
  /** null for no-cook candy. Hard and soft end of cooking, and where it is stirred white. */
  readonly cook: { readonly hardC: number; readonly softC: number; readonly stirAtC: number } | null;
  /** How long one board lasts if the colony eats nothing else; null where its use is not known. */
  readonly lastsHours: number | null;
  readonly lastsDays: number | null;
  readonly onFrom: string | null;
  readonly onAboveC: number;
  readonly cautions: readonly CandyBoardCaution[];
}

export const CANDY_BOARDS = { low: 1, high: 500, unit: 'boards' } as const;
export const CANDY_USE_KG = { low: 0.001, high: 0.5, unit: 'kg/day' } as const;

/**
 * Candy boards: what goes in, how it is made, when it goes on and how long it feeds.
 *
 * By mass, and without acid unless the keeper adds it against this advice: acid and heat make hydroxymethylfurfural, which harms bees.
 *
 * input     rim inside and depth, or sugar; how many boards; what the colony eats
 * source    [candy-no-cook], [boiled-candy]; opening [candy-opening]
 * checked   kit.test.ts
 */
export function candyBoard(input: CandyBoardInput): Result<CandyBoardAnswer> {
  const boards = inRange('boards', input.boards ?? 1, CANDY_BOARDS);
  if (!boards.ok) return boards;
  if (!Number.isInteger(boards.value))
    return bad({ kind: 'implausible', field: 'boards', value: boards.value, unit: '', why: 'not-whole' });
  const { lengthM, widthM, depthM, sugarKg } = input;
  const recipe = candy({ lengthM, widthM, depthM, sugarKg });
  if (!recipe.ok) return recipe;
  const p = kitParameters;
  const kind = input.kind ?? 'no-cook';
  const { volumeL } = recipe.value;
  const sugar = recipe.value.sugarKg;
  const water = kind === 'no-cook' ? recipe.value.waterKg : sugar * p.boiledWaterPerSugarFrac.value;
  let lastsDays: number | null = null;
  if (input.useKgPerDay !== undefined) {
    const use = inRange('useKgPerDay', input.useKgPerDay, CANDY_USE_KG);
    if (!use.ok) return use;
    lastsDays = (sugar * p.sugarEnergyMJPerKg.value) / matterParameters.honeyEnergyMJPerKg.value / use.value;
  }
  const kept = recipe.value.cautions.filter((code) => kind === 'no-cook' || code !== 'no-boiling');
  return good({
    kind,
    boards: boards.value,
    sugarKg: sugar,
    waterKg: water,
    massKg: sugar + water,
    volumeL,
    allSugarKg: sugar * boards.value,
    allWaterKg: water * boards.value,
    dryHours: p.dryHours.value,
    cook: kind === 'boiled' ? { hardC: p.boilHardC.value, softC: p.boilSoftC.value, stirAtC: p.stirAtC.value } : null,
    lastsHours: lastsDays === null ? null : lastsDays * 24,
    lastsDays,
    onFrom: input.clusterDate ?? null,
    onAboveC: p.candyOnAboveC.value,
    cautions: [...kept, ...(kind === 'boiled' ? (['hot-sugar-burns', 'heat-makes-harm'] as const) : []), 'after-warm-days'],
  });
}
