export { kitParameters } from '../tables/parameters-kit.gen.ts';
export {
  CANDY_BOARDS,
  CANDY_USE_KG,
  type CandyBoardAnswer,
  type CandyBoardCaution,
  type CandyBoardInput,
  candyBoard,
} from './candy-board.ts';
export { csvCell, csvOf } from './csv.ts';
export { type BoardCut, type BoardPattern, cutBoards, cutSheets, type Placed, type SheetCut } from './cutting.ts';
export { KIT_ITEMS, KIT_RANGES, KIT_SIZES, type KitAnswer, type KitInput, type KitItem, type KitLine, type KitSize, kit } from './kit.ts';
export { kitCsv } from './kit-csv.ts';
export { type Footprint, footprintOf, KIT_FRAMES, meshSize, type TopPieces, topPieces } from './pieces.ts';
export {
  SYRUP_BATCH_RANGES,
  SYRUP_UNITS,
  type SyrupBatch,
  type SyrupBatchInput,
  type SyrupJars,
  type SyrupUnit,
  syrupBatch,
} from './syrup-batch.ts';
