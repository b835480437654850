/** A piece on a sheet [m]: corner and size as it lies. */
export interface Placed {
  readonly xM: number;
  readonly yM: number;
  readonly lengthM: number;
  readonly widthM: number;
}

export interface SheetCut {
  readonly fromOne: number;
  readonly sheets: number;
  readonly over: number;
  /** Pieces on a full sheet. */
  readonly layout: readonly Placed[];
}

interface Size {
  readonly lengthM: number;
  readonly widthM: number;
}

const EPSILON = 1e-9;

/** How many pieces with a kerf between them fit along a length. */
function along(lengthM: number, pieceM: number, kerfM: number): number {
  return Math.max(0, Math.floor((lengthM + kerfM + EPSILON) / (pieceM + kerfM)));
}

function grid(at: { xM: number; yM: number }, room: Size, piece: Size, kerfM: number): Placed[] {
  const columns = along(room.lengthM, piece.lengthM, kerfM);
  const rows = along(room.widthM, piece.widthM, kerfM);
  return Array.from({ length: columns * rows }, (_, i) => ({
    xM: at.xM + (i % columns) * (piece.lengthM + kerfM),
    yM: at.yM + Math.floor(i / columns) * (piece.widthM + kerfM),
    ...piece,
  }));
}

/**
 * Equal pieces from sheets with straight through cuts: a block of pieces one way and, where that gives more, a second block turned.
 *
 * returns   pieces from one sheet, sheets for `count`, a layout; every piece inside the sheet, a kerf between any two
 * valid     the best of all layouts with two blocks, which saws can cut; a cleverer one may hold a piece more, never this one fewer
 * throws    RangeError for sizes at or below zero
 * checked   kit.test.ts: counted by hand, none overlap, never fewer than a plain grid
 */
export function cutSheets(
  sheet: Size,
  piece: Size,
  { count, kerfM, turn = true }: { count: number; kerfM: number; turn?: boolean },
): SheetCut {
  for (const [name, value] of Object.entries({
    length: sheet.lengthM,
    width: sheet.widthM,
    pieceLength: piece.lengthM,
    pieceWidth: piece.widthM,
  })) {
    if (!(value > 0)) throw new RangeError(`cutSheets: ${name} is ${value} m, must be above 0`);
  }
  const turned = { lengthM: piece.widthM, widthM: piece.lengthM };
  let best: Placed[] = [];
  const keep = (layout: Placed[]) => {
    if (layout.length > best.length) best = layout;
  };
  for (const [one, other] of turn
    ? ([
        [piece, turned],
        [turned, piece],
      ] as const)
    : ([[piece, null]] as const)) {
    const columns = along(sheet.lengthM, one.lengthM, kerfM);
    for (let c = 0; c <= columns; c++) {
      const usedM = c * (one.lengthM + kerfM);
      const rest = { lengthM: sheet.lengthM - usedM, widthM: sheet.widthM };
      const block = c === 0 ? [] : grid({ xM: 0, yM: 0 }, { lengthM: usedM, widthM: sheet.widthM }, one, kerfM);
      keep([...block, ...(other !== null && rest.lengthM > 0 ? grid({ xM: usedM, yM: 0 }, rest, other, kerfM) : [])]);
    }
    const rows = along(sheet.widthM, one.widthM, kerfM);
    for (let r = 0; r <= rows; r++) {
      const usedM = r * (one.widthM + kerfM);
      const rest = { lengthM: sheet.lengthM, widthM: sheet.widthM - usedM };
      const block = r === 0 ? [] : grid({ xM: 0, yM: 0 }, { lengthM: sheet.lengthM, widthM: usedM }, one, kerfM);
      keep([...block, ...(other !== null && rest.widthM > 0 ? grid({ xM: 0, yM: usedM }, rest, other, kerfM) : [])]);
    }
  }
  const fromOne = best.length;
  const sheets = fromOne === 0 ? (count > 0 ? Number.POSITIVE_INFINITY : 0) : Math.ceil(count / fromOne);
  return { fromOne, sheets, over: fromOne === 0 ? 0 : sheets * fromOne - count, layout: best };
}

export interface BoardPattern {
  readonly boards: number;
  /** Lengths in the order they are cut [m]. */
  readonly piecesM: readonly number[];
  readonly leftM: number;
}

export interface BoardCut {
  readonly boards: number;
  readonly patterns: readonly BoardPattern[];
  /** No way of cutting needs fewer than this. */
  readonly atLeast: number;
}

/**
 * Lengths from boards: the longest first, each into the first board with room (first fit, decreasing).
 *
 * returns   boards, patterns with how many boards are cut so, and the fewest any cutting could need
 * valid     at most 11/9 of the fewest and two thirds of a board more, whatever the lengths; the answer tells the bound
 * throws    RangeError where a piece is longer than a board
 */
export function cutBoards(
  boardM: number,
  pieces: readonly { readonly lengthM: number; readonly count: number }[],
  kerfM: number,
): BoardCut {
  const lengths = pieces.flatMap(({ lengthM, count }) => Array.from({ length: count }, () => lengthM)).sort((a, b) => b - a);
  const boards: { piecesM: number[]; leftM: number }[] = [];
  for (const lengthM of lengths) {
    if (!(lengthM > 0 && lengthM <= boardM)) throw new RangeError(`cutBoards: a piece is ${lengthM} m, must be above 0 to ${boardM} m`);
    const fits = boards.find(({ leftM }) => leftM + EPSILON >= lengthM + kerfM);
    if (fits === undefined) boards.push({ piecesM: [lengthM], leftM: boardM - lengthM });
    else {
      fits.piecesM.push(lengthM);
      fits.leftM -= lengthM + kerfM;
    }
  }
  const patterns = new Map<string, { boards: number; piecesM: readonly number[]; leftM: number }>();
  for (const { piecesM, leftM } of boards) {
    const key = piecesM.join();
    const known = patterns.get(key);
    patterns.set(key, { boards: (known?.boards ?? 0) + 1, piecesM, leftM });
  }
  const totalM = lengths.reduce((sum, lengthM) => sum + lengthM + kerfM, 0);
  return { boards: boards.length, patterns: [...patterns.values()], atLeast: Math.ceil(totalM / (boardM + kerfM) - EPSILON) };
}
