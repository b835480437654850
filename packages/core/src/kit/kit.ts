import { SHIPPED_TOPS, type ShippedTop } from '../hivetop/index.ts';
import { bad, good, inRange, type Result, under } from '../result/index.ts';
import { kitParameters } from '../tables/parameters-kit.gen.ts';
import { type CandyBoardAnswer, type CandyBoardInput, candyBoard } from './candy-board.ts';
import { type BoardCut, cutBoards, cutSheets, type SheetCut } from './cutting.ts';
import { footprintOf, KIT_FRAMES, meshSize, type TopPieces, topPieces } from './pieces.ts';
import { type SyrupBatch, type SyrupBatchInput, syrupBatch } from './syrup-batch.ts';

/** Things the list can hold; stock and prices are given by these names. Prices are for one unit bought. */
export const KIT_ITEMS = ['foam', 'boards', 'mesh', 'cloth', 'fill', 'lid', 'sugar', 'jars'] as const;
export type KitItem = (typeof KIT_ITEMS)[number];

export interface KitInput {
  readonly hives: number;
  readonly top?: ShippedTop | undefined;
  readonly frames?: number | undefined;
  /** For all hives together. */
  readonly syrup?: SyrupBatchInput | undefined;
  readonly candy?: CandyBoardInput | undefined;
  /** Finished pieces, or kilograms of fill and sugar, that lie in the shed: foam pieces, rim sets, meshes, cloths, lids, jars. */
  readonly stock?: Readonly<Partial<Record<KitItem, number>>> | undefined;
  readonly prices?: Readonly<Partial<Record<KitItem, number>>> | undefined;
  /** Other sizes than the usual [m, kg]. */
  readonly sizes?: Readonly<Partial<Record<KitSize, number>>> | undefined;
}

export const KIT_SIZES = [
  'sawKerfM',
  'sheetLengthM',
  'sheetWidthM',
  'boardLengthM',
  'meshRollLengthM',
  'meshRollWidthM',
  'clothRollWidthM',
  'pelletBagKg',
  'sugarBagKg',
  'meshInsetM',
  'jarL',
] as const;
export type KitSize = (typeof KIT_SIZES)[number];

export interface KitLine {
  readonly item: KitItem;
  /** What one piece is. */
  readonly piece: {
    readonly lengthM: number | null;
    readonly widthM: number | null;
    readonly thicknessM: number | null;
    readonly kg: number | null;
    readonly material: string | null;
  };
  readonly unit: 'pieces' | 'kg';
  readonly need: number;
  readonly have: number;
  readonly more: number;
  /** What is bought: sheets, boards, rolls, metres, bags, jars. */
  readonly buyUnit: 'sheets' | 'boards' | 'rolls' | 'm' | 'bags' | 'jars';
  readonly buy: number;
  readonly price: number | null;
  readonly cost: number | null;
  readonly sheetCut: SheetCut | null;
  readonly boardCut: readonly (BoardCut & { readonly heightM: number })[] | null;
}

export interface KitAnswer {
  readonly hives: number;
  readonly top: ShippedTop | null;
  readonly lines: readonly KitLine[];
  readonly things: number;
  /** null until something to buy has a price; `unpriced` names what has none. */
  readonly cost: number | null;
  readonly unpriced: readonly KitItem[];
  readonly pieces: TopPieces | null;
  readonly syrup: SyrupBatch | null;
  readonly candy: CandyBoardAnswer | null;
}

export const KIT_RANGES = {
  hives: { low: 1, high: 500, unit: 'hives' },
  stock: { low: 0, high: 100_000, unit: '' },
  prices: { low: 0, high: 1_000_000, unit: '' },
  sizes: { low: 0.0005, high: 2000, unit: '' },
} as const;

type Sizes = (name: KitSize) => number;
type Draft = Omit<KitLine, 'have' | 'more' | 'price' | 'cost' | 'buy' | 'sheetCut' | 'boardCut'> & {
  bought(more: number): {
    readonly buy: number;
    readonly sheetCut?: SheetCut;
    readonly boardCut?: readonly (BoardCut & { heightM: number })[];
  };
};
const PIECE = { lengthM: null, widthM: null, thicknessM: null, kg: null, material: null } as const;

/**
 * One list of what to build and buy for so many hives: pieces and how they come from standard sheets, fill, cloth, sugar, jars, less
 * what lies in the shed.
 *
 * input     hives, a shipped top, syrup, candy; stock, prices, other trade sizes
 * returns   lines of data, cut layouts, cost where the keeper gave prices; or what is wrong
 * source    sizes [kit-sizes], practice [kit-practice]
 * checked   kit.test.ts
 */
export function kit(input: KitInput): Result<KitAnswer> {
  const wrong = checkInput(input);
  if (!wrong.ok) return wrong;
  const sizes: Sizes = (name) => input.sizes?.[name] ?? kitParameters[name].value;
  const frames = (input.frames ?? 10) as (typeof KIT_FRAMES)[number];
  const batch =
    input.syrup === undefined
      ? null
      : syrupBatch({ hives: input.hives, jarL: sizes('jarL'), sugarBagKg: sizes('sugarBagKg'), ...input.syrup });
  if (batch !== null && !batch.ok) return under('syrup', batch.error);
  const inside = footprintOf(frames);
  const boards =
    input.candy === undefined
      ? null
      : candyBoard({
          boards: input.hives,
          ...(input.candy.sugarKg === undefined ? { lengthM: inside.insideLengthM, widthM: inside.insideWidthM } : {}),
          ...input.candy,
        });
  if (boards !== null && !boards.ok) return under('candy', boards.error);
  const pieces = input.top === undefined ? null : topPieces(input.top, frames);
  const drafts: Draft[] = [];
  if (pieces !== null) {
    const mesh = meshSize(pieces.footprint, sizes('meshInsetM'));
    if (!mesh.ok) return under('sizes', mesh.error);
    const top = topDrafts(pieces, { hives: input.hives, sizes, mesh: mesh.value });
    if (!top.ok) return top;
    drafts.push(...top.value);
  }
  const sugarKg = (batch?.value.syrup.sugarKg ?? 0) + (boards?.value.allSugarKg ?? 0);
  if (sugarKg > 0) {
    drafts.push({
      item: 'sugar',
      piece: PIECE,
      unit: 'kg',
      need: sugarKg,
      buyUnit: 'bags',
      bought: (more) => ({ buy: Math.ceil(more / sizes('sugarBagKg') - 1e-9) }),
    });
  }
  const jars = batch?.value.jars;
  if (jars)
    drafts.push({ item: 'jars', piece: PIECE, unit: 'pieces', need: jars.jars, buyUnit: 'jars', bought: (more) => ({ buy: more }) });
  const lines = drafts.map((draft) => lineOf(draft, input));
  const bought = lines.filter(({ buy }) => buy > 0);
  const priced = bought.filter(({ cost }) => cost !== null);
  return good({
    hives: input.hives,
    top: input.top ?? null,
    lines,
    things: bought.length,
    cost: priced.length === 0 ? null : priced.reduce((sum, { cost }) => sum + cost!, 0),
    unpriced: bought.filter(({ cost }) => cost === null).map(({ item }) => item),
    pieces,
    syrup: batch?.value ?? null,
    candy: boards?.value ?? null,
  });
}

function checkInput(input: KitInput): Result<null> {
  const hives = inRange('hives', input.hives, KIT_RANGES.hives);
  if (!hives.ok) return hives;
  if (!Number.isInteger(hives.value)) return bad({ kind: 'implausible', field: 'hives', value: hives.value, unit: '', why: 'not-whole' });
  if (input.top !== undefined && !SHIPPED_TOPS.includes(input.top))
    return bad({ kind: 'unknown-choice', field: 'top', value: String(input.top), choices: SHIPPED_TOPS });
  if (input.frames !== undefined && !(KIT_FRAMES as readonly number[]).includes(input.frames))
    return bad({ kind: 'unknown-choice', field: 'frames', value: String(input.frames), choices: KIT_FRAMES.map(String) });
  if (input.top === undefined && input.syrup === undefined && input.candy === undefined)
    return bad({ kind: 'missing-all', ways: [['top'], ['syrup'], ['candy']] });
  for (const [table, known] of [
    ['stock', KIT_ITEMS],
    ['prices', KIT_ITEMS],
    ['sizes', KIT_SIZES],
  ] as const) {
    for (const [key, value] of Object.entries(input[table] ?? {})) {
      if (!(known as readonly string[]).includes(key)) return bad({ kind: 'unknown-choice', field: table, value: key, choices: known });
      const checked = inRange(
        `${table}.${key}`,
        value,
        table === 'sizes' && key === 'meshInsetM' ? { ...KIT_RANGES.sizes, low: 0 } : KIT_RANGES[table],
      );
      if (!checked.ok) return checked;
    }
  }
  return good(null);
}

/** What a top needs, in the order of the list. */
function topDrafts(pieces: TopPieces, of: { hives: number; sizes: Sizes; mesh: { lengthM: number; widthM: number } }): Result<Draft[]> {
  const { hives, sizes, mesh } = of;
  const { footprint, foam, rims, fill, cloth, lidM } = pieces;
  const outside = { lengthM: footprint.outsideLengthM, widthM: footprint.outsideWidthM };
  const sheet = { lengthM: sizes('sheetLengthM'), widthM: sizes('sheetWidthM') };
  const kerfM = sizes('sawKerfM');
  const long = footprint.outsideLengthM;
  const short = footprint.insideWidthM;
  const tooSmall = [
    ['sheetLengthM', sheet.lengthM, outside.lengthM],
    ['sheetWidthM', sheet.widthM, outside.widthM],
    ['boardLengthM', sizes('boardLengthM'), long],
    ['meshRollWidthM', sizes('meshRollWidthM'), mesh.widthM],
    ['meshRollLengthM', sizes('meshRollLengthM'), mesh.lengthM],
    ['clothRollWidthM', sizes('clothRollWidthM'), outside.widthM],
  ] as const;
  for (const [name, size, least] of tooSmall) {
    if (size < least)
      return bad({ kind: 'out-of-range', field: `sizes.${name}`, value: size, unit: 'm', low: least, high: KIT_RANGES.sizes.high });
  }
  const cut = (stock: { lengthM: number; widthM: number }, piece: { lengthM: number; widthM: number }, kerf: number) => (more: number) => {
    const sheetCut = cutSheets(stock, piece, { count: more, kerfM: kerf });
    return { buy: sheetCut.sheets, sheetCut };
  };
  const drafts: Draft[] = [];
  if (foam !== null)
    drafts.push({
      item: 'foam',
      piece: { ...PIECE, ...outside, thicknessM: foam.thicknessM, material: foam.material },
      unit: 'pieces',
      need: hives,
      buyUnit: 'sheets',
      bought: cut(sheet, outside, kerfM),
    });
  if (rims.length > 0)
    drafts.push({
      item: 'boards',
      piece: { ...PIECE, lengthM: long, widthM: short, thicknessM: footprint.wallM, material: 'pine' },
      unit: 'pieces',
      need: hives,
      buyUnit: 'boards',
      bought: (more) => {
        const boardCut = rims.map(({ heightM }) => ({
          heightM,
          ...cutBoards(
            sizes('boardLengthM'),
            [
              { lengthM: long, count: 2 * more },
              { lengthM: short, count: 2 * more },
            ],
            kerfM,
          ),
        }));
        return { buy: boardCut.reduce((sum, { boards }) => sum + boards, 0), boardCut };
      },
    });
  if (pieces.mesh > 0)
    drafts.push({
      item: 'mesh',
      piece: { ...PIECE, ...mesh },
      unit: 'pieces',
      need: hives,
      buyUnit: 'rolls',
      bought: cut({ lengthM: sizes('meshRollLengthM'), widthM: sizes('meshRollWidthM') }, mesh, 0),
    });
  if (cloth > 0)
    drafts.push({
      item: 'cloth',
      piece: { ...PIECE, ...outside, material: 'burlap' },
      unit: 'pieces',
      need: hives,
      buyUnit: 'm',
      bought: (more) => ({ buy: clothMetres(sizes('clothRollWidthM'), outside, more) }),
    });
  if (fill !== null)
    drafts.push({
      item: 'fill',
      piece: { ...PIECE, thicknessM: fill.depthM, kg: fill.kg, material: fill.material },
      unit: 'kg',
      need: fill.kg * hives,
      buyUnit: 'bags',
      bought: (more) => ({ buy: Math.ceil(more / sizes('pelletBagKg') - 1e-9) }),
    });
  drafts.push({
    item: 'lid',
    piece: { ...PIECE, ...outside, thicknessM: lidM, material: 'plywood' },
    unit: 'pieces',
    need: hives,
    buyUnit: 'sheets',
    bought: cut(sheet, outside, kerfM),
  });
  return good(drafts);
}

/** Length of cloth off a roll for so many pieces, the better of the two ways to lay them, up to the next tenth of a metre. */
function clothMetres(rollM: number, piece: { lengthM: number; widthM: number }, count: number): number {
  const ways = [
    [piece.widthM, piece.lengthM],
    [piece.lengthM, piece.widthM],
  ] as const;
  const metres = ways
    .filter(([across]) => across <= rollM)
    .map(([across, down]) => Math.ceil(count / Math.floor(rollM / across + 1e-9)) * down);
  return Math.ceil(Math.min(...metres) * 10 - 1e-9) / 10;
}

function lineOf({ bought, ...draft }: Draft, input: KitInput): KitLine {
  const have = input.stock?.[draft.item] ?? 0;
  const more = Math.max(0, draft.need - have);
  const whole = draft.unit === 'pieces' ? Math.max(0, Math.ceil(more - 1e-9)) : more;
  const { buy, sheetCut, boardCut } = whole > 0 ? bought(whole) : { buy: 0, sheetCut: undefined, boardCut: undefined };
  const price = input.prices?.[draft.item] ?? null;
  return {
    ...draft,
    have,
    more: whole,
    buy,
    price,
    cost: price === null ? null : price * buy,
    sheetCut: sheetCut ?? null,
    boardCut: boardCut ?? null,
  };
}
