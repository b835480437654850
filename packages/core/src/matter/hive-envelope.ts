import { good, inRange, type Result } from '../result/index.ts';
import { envelopeParameters } from '../tables/parameters-envelope.gen.ts';
import type { Build } from '../tables/parts.ts';
import { type BuildFacts, readBuild } from './build-facts.ts';
import { stackFlowKgPerS } from './stack-flow.ts';

/** Heat a hive loses per kelvin between the air around the cluster and outside [W/K]. */
export interface HiveConductance {
  /** What the cluster sees. */
  readonly wPerK: number;
  /** 5 % and 95 % bounds from the bounds of every figure behind it. */
  readonly low: number;
  readonly high: number;
  /** Where it leaves [W/K]; they add up to wPerK. */
  readonly parts: { readonly wallsWPerK: number; readonly topWPerK: number; readonly belowWPerK: number; readonly airWPerK: number };
  /** If the whole inside were as warm as the air around the cluster [W/K]. */
  readonly whole: { readonly wallsWPerK: number; readonly topWPerK: number; readonly floorWPerK: number; readonly airWPerK: number };
}

export interface EnvelopeOptions {
  /** Free area of an opening near the top, and of the entrance [m2]. */
  readonly upperOpeningM2?: number;
  readonly entranceM2?: number;
  /** Sides that touch another hive, 0 to 3. */
  readonly sharedSides?: number;
  /** Wind along the walls [m/s]; left out: the moving air of the code tables. */
  readonly windMPerS?: number | undefined;
  /** Share of the height of the walls that snow is banked against, from below: 1 is to the eaves. Left out: none. */
  readonly snowFrac?: number | undefined;
}

export const ENVELOPE_RANGES = {
  windMPerS: { low: 0, high: 15, unit: 'm/s' },
  snowFrac: { low: 0, high: 1, unit: '' },
} as const;

/** One hollow box with a lid and a floor: sizes inside [m], walls as layers from the inside, resistances without films. */
export interface HiveShape {
  readonly insideLengthM: number;
  readonly insideWidthM: number;
  readonly heightM: number;
  readonly walls: readonly { readonly thicknessM: number; readonly m2KPerW: number }[];
  readonly lidM2KPerW: number;
  readonly floorM2KPerW: number;
  readonly outsideFilms: { readonly wallM2KPerW: number; readonly underM2KPerW: number };
  readonly entranceM2: number;
  readonly upperOpeningM2: number;
  readonly sharedSides: number;
  /** Share of the walls' height in snow, from below. */
  readonly snowFrac: number;
}

type Name = keyof typeof envelopeParameters;
type Figures = (name: Name) => number;
const NAMES = Object.keys(envelopeParameters) as readonly Name[];
const AIR_J_PER_KG_K = 1006;
const FREEZING_K = 273.15;

/**
 * Conductance of a hive around its cluster, from what it is made of.
 *
 * Only a pocket around the cluster is warm. It loses heat through the walls beside it (as far as a pocket of its width and height
 * touches them), through the whole lid (warm air spreads under it), with the air that leaves above, and down through combs and bee
 * spaces into the rest of the hive, which loses it through its own walls and the floor.
 *
 * build     parts; frames may be left out
 * returns   [W/K] with its bounds; more or thicker insulation never raises it
 * errors    BadInput of `readBuild`
 * valid     dry materials. Wind changes the outer film alone: what gusts carry through openings is left out. A bank of snow stops wind and
 *           adds its own layer to the walls it covers and, in proportion, under the floor
 * source    [film-resistance], [outside-film], [softwood-conductivity], [insulation-conductivity], [near-cluster]
 * checked   checks/envelope.ts: heater tests and field temperatures from geometry alone; envelope.test.ts: the laws
 */
export function hiveConductance(build: Build, options: EnvelopeOptions = {}): Result<HiveConductance> {
  const read = readBuild(build);
  if (!read.ok) return read;
  for (const name of ['windMPerS', 'snowFrac'] as const) {
    const asked = inRange(`hive.${name}`, options[name] ?? 0, ENVELOPE_RANGES[name]);
    if (!asked.ok) return asked;
  }
  const at = (figures: Figures) => conductanceOfShape(shapeOf(read.value, options, figures), figures);
  const value = (name: Name) => envelopeParameters[name].value;
  const middle = at(value);
  const total = sum(middle.parts);
  // Each figure at its bounds with the others in the middle; independent, so that the logarithms add as squares.
  let [below, above] = [0, 0];
  for (const moved of NAMES) {
    const ends = (['low', 'high'] as const).map((end) =>
      sum(at((name) => (name === moved ? envelopeParameters[name][end] : value(name))).parts),
    );
    below += Math.log(Math.min(total, ...ends) / total) ** 2;
    above += Math.log(Math.max(total, ...ends) / total) ** 2;
  }
  return good({ wPerK: total, low: total * Math.exp(-Math.sqrt(below)), high: total * Math.exp(Math.sqrt(above)), ...middle });
}

/** The same for any shape: what leaves the pocket by way, and what the whole shell would lose. Figures by name, see the table `envelope`. */
export function conductanceOfShape(shape: HiveShape, figures: Figures = (name) => envelopeParameters[name].value) {
  const { insideLengthM, insideWidthM, heightM } = shape;
  const free = (4 - shape.sharedSides) / 4;
  const bareWPerMK = free * wallPerMetre(shape, figures('filmWallM2KPerW'));
  const snowM2KPerW = figures('snowBankM') / figures('snowWPerMK');
  const snowed = { ...shape, walls: [...shape.walls, { thicknessM: figures('snowBankM'), m2KPerW: snowM2KPerW }] };
  const bankedWPerMK = shape.snowFrac === 0 ? bareWPerMK : Math.min(bareWPerMK, free * wallPerMetre(snowed, figures('filmWallM2KPerW')));
  const inSnow = (share: number) => bareWPerMK + share * (bankedWPerMK - bareWPerMK);
  // Lid and floor are as large as the box; what is wrapped around it makes them no larger.
  const thicknessM = shape.walls[0]?.thicknessM ?? 0;
  const insideM2 = insideLengthM * insideWidthM;
  const plateM2 = (insideM2 + (insideLengthM + 2 * thicknessM) * (insideWidthM + 2 * thicknessM)) / 2;
  const topWPerK = plateM2 / (figures('filmCeilingM2KPerW') + shape.lidM2KPerW + shape.outsideFilms.wallM2KPerW);
  const underM2KPerW = shape.outsideFilms.underM2KPerW + shape.snowFrac * snowM2KPerW;
  const floorWPerK = plateM2 / (figures('filmFloorM2KPerW') + shape.floorM2KPerW + underM2KPerW);
  const airWPerK = airLoss(shape, figures);

  const pocketHeightM = Math.min(figures('pocketHeightM'), heightM);
  const touchedM = Math.min(figures('pocketWidthM'), insideWidthM) + Math.min(figures('pocketWidthM'), insideLengthM);
  const besideM = (pocketHeightM * touchedM) / (insideWidthM + insideLengthM);
  // the warm pocket hangs under the lid, so that a bank of snow reaches it last
  const pocketInSnow = Math.max(0, (shape.snowFrac * heightM - (heightM - pocketHeightM)) / pocketHeightM);
  const wallWPerMK = inSnow(shape.snowFrac);
  const restWPerK = wallWPerMK * (heightM - besideM) + floorWPerK;
  const downWPerK = (figures('downWPerMK') * insideM2) / (heightM / 2);
  return {
    parts: { wallsWPerK: inSnow(pocketInSnow) * besideM, topWPerK, belowWPerK: 1 / (1 / downWPerK + 1 / restWPerK), airWPerK },
    whole: { wallsWPerK: wallWPerMK * heightM, topWPerK, floorWPerK, airWPerK },
  };
}

/** Conductance of all four walls per metre of height [W/(m·K)]: films and layers in series, each on the perimeter it has. */
function wallPerMetre({ insideLengthM, insideWidthM, walls, outsideFilms }: HiveShape, insideFilm: number): number {
  let perimeterM = 2 * (insideLengthM + insideWidthM);
  let resistance = insideFilm / perimeterM;
  for (const { thicknessM, m2KPerW } of walls) {
    resistance += m2KPerW / (perimeterM + 4 * thicknessM);
    perimeterM += 8 * thicknessM;
  }
  return 1 / (resistance + outsideFilms.wallM2KPerW / perimeterM);
}

function airLoss(shape: HiveShape, figures: Figures): number {
  const temps = { insideK: FREEZING_K + figures('airExcessK'), outsideK: FREEZING_K };
  const openings = {
    lowM2: shape.entranceM2,
    highM2: shape.upperOpeningM2,
    heightM: shape.heightM,
    discharge: figures('dischargeCoefficient'),
  };
  return AIR_J_PER_KG_K * stackFlowKgPerS(temps, openings);
}

function shapeOf(facts: BuildFacts, options: EnvelopeOptions, figures: Figures): HiveShape {
  const first = facts.boxes[0]!.part;
  const heightM = facts.boxes.reduce((total, { part, count }) => total + part.heightM * count, 0);
  // Boxes of different materials on one hive: their walls in parallel by height.
  const conductance = facts.boxes.reduce(
    (total, { part, count }) => total + (part.heightM * count) / (part.wallM / conductivity(part.material, figures)),
    0,
  );
  const wraps = facts.lines.flatMap(({ part, count }) => (part.kind === 'wrap' ? Array.from({ length: count }, () => part) : []));
  const has = (kind: string) => facts.lines.some(({ part }) => part.kind === kind);
  const spaces = (has('inner cover') ? 1 : 0) + (has('rim') && !has('fill') ? 1 : 0);
  return {
    insideLengthM: facts.lengthM - 2 * first.wallM,
    insideWidthM: facts.widthM - 2 * first.wallM,
    heightM,
    walls: [
      { thicknessM: first.wallM, m2KPerW: heightM / conductance },
      ...wraps.map(({ thicknessM, material }) => ({
        thicknessM,
        m2KPerW: figures('wrapGapM2KPerW') + thicknessM / conductivity(material, figures),
      })),
    ],
    lidM2KPerW: layers(facts, ['inner cover', 'cover', 'insulation', 'fill'], figures) + spaces * figures('airSpaceM2KPerW'),
    floorM2KPerW: layers(facts, ['floor'], figures),
    outsideFilms: {
      wallM2KPerW: options.windMPerS === undefined ? figures('filmOutsideM2KPerW') : filmInWind(options.windMPerS, figures),
      underM2KPerW: figures('filmUnderM2KPerW'),
    },
    entranceM2: options.entranceM2 ?? figures('entranceM2'),
    upperOpeningM2: options.upperOpeningM2 ?? figures('upperOpeningM2'),
    sharedSides: options.sharedSides ?? 0,
    snowFrac: options.snowFrac ?? 0,
  };
}

/** Film of an outer surface in a wind [m2K/W]. Source: [outside-film]. */
export function filmInWind(windMPerS: number, figures: Figures = (name) => envelopeParameters[name].value): number {
  return 1 / (figures('filmStillWPerM2K') + figures('filmPerWindWPerM2K') * windMPerS);
}

/** Resistance of the layers of some kinds, one on the other [m2K/W]. */
function layers(facts: BuildFacts, kinds: readonly string[], figures: Figures): number {
  return facts.lines.reduce(
    (total, { part, count }) =>
      total + (kinds.includes(part.kind) && 'thicknessM' in part ? (count * part.thicknessM) / conductivity(part.material, figures) : 0),
    0,
  );
}

/** Conductivity by the material of the parts table [W/(m·K)]; a mesh stops no heat. */
function conductivity(material: string, figures: Figures): number {
  switch (material) {
    case 'pine':
      return figures('pineWPerMK');
    case 'plywood':
      return figures('plywoodWPerMK');
    case 'eps':
      return figures('epsWPerMK');
    case 'xps':
      return figures('xpsWPerMK');
    case 'shavings':
      return figures('shavingsWPerMK');
    case 'corrugated plastic':
      return figures('corrugatedWPerMK');
    case 'felt':
      return figures('feltWPerMK');
    case 'mesh':
      return Number.POSITIVE_INFINITY;
    default:
      throw new RangeError(`conductivity: no figure for the material ${material}`);
  }
}

function sum(parts: HiveConductance['parts']): number {
  return parts.wallsWPerK + parts.topWPerK + parts.belowWPerK + parts.airWPerK;
}
