/** What the plan is made from. Masses of combs are of one whole frame: wood, wax and what is in it. */

/** Like combs of one colony or lot. */
export interface CombLot {
  /** Kind of frame; only combs of the same kind are swapped. */
  readonly frame: string;
  readonly count: number;
  /** Of one of them [kg]. */
  readonly massKg: number;
  /** Error of `massKg`, shared by the whole lot [kg]; shown with every gain. */
  readonly massSdKg?: number | undefined;
  /** Holds the last pollen: never leaves. */
  readonly pollenLast?: boolean | undefined;
}

/** Chance that the colony is lost at a shortage, beyond the chance it has without one. */
export interface LossPoint {
  readonly shortKg: number;
  readonly lossFrac: number;
}

/** A look at the brood without signs of disease: its date, true (fresh), false or null (none). */
export type Looked = boolean | string | null;
/** Where the hive stands, for the walk: a number along the row, [x, y] in metres, or a row and a number in it. */
export type Place = number | string | readonly [number, number] | { readonly row: string; readonly place: number };

export interface ProvisionColony {
  readonly id: string;
  readonly yard: string;
  readonly bees: number;
  readonly hasKg: number;
  readonly hasSdKg: number;
  readonly needKg: number;
  readonly build?: unknown;
  readonly looked?: Looked | undefined;
  /** Set aside: true or the reason in a word. */
  readonly flag?: boolean | string | null | undefined;
  readonly capped?: readonly CombLot[] | undefined;
  readonly emptyCombs?: readonly CombLot[] | undefined;
  readonly at?: Place | null | undefined;
  readonly lossCurve?: readonly LossPoint[] | undefined;
  readonly candyRimKg?: number | undefined;
  readonly uptakeLPerDay?: number | undefined;
  readonly refusesSyrup?: boolean | undefined;
  readonly gluingOver?: boolean | undefined;
  /** False where its stores are too little known to give. */
  readonly mayGive?: boolean | undefined;
  /** False where it is not to be united with another, whatever its size. */
  readonly mayUnite?: boolean | undefined;
  readonly tooSmall?: boolean | undefined;
  readonly queen?: 'seen' | 'unknown' | undefined;
}

export interface BankLot {
  readonly lot: string;
  readonly yard: string;
  readonly frame: string;
  readonly count: number;
  readonly massKg: number;
  readonly massSdKg?: number | undefined;
  /** Whether the colonies they came from were looked at when they were taken. */
  readonly looked?: Looked | undefined;
  /** Taken in this walk and not yet placed. */
  readonly inHand?: boolean | undefined;
}

/** What one colony would need after taking in another [kg]; from the winter model. */
export interface Union {
  readonly from: string;
  readonly into: string;
  readonly needKg: number;
}

export interface ProvisionPrices {
  readonly sugarPerKg?: number | undefined;
  readonly workPerHour?: number | undefined;
  /** Of stores taken out of the frame bank. */
  readonly honeyPerKg?: number | undefined;
  readonly opening?: number | undefined;
}

export interface ProvisionRules {
  readonly today?: string | undefined;
  readonly lookDays?: number | undefined;
  readonly allowLookSteps?: boolean | undefined;
  readonly holdLightCombs?: boolean | undefined;
  readonly crossYards?: boolean | undefined;
  readonly unite?: boolean | undefined;
  readonly winterableBees?: number | undefined;
  readonly certaintyFrac?: number | undefined;
  readonly needToleranceKg?: number | undefined;
  readonly lossToleranceColonies?: number | undefined;
  readonly gluingOver?: boolean | undefined;
  readonly ripeningDays?: number | undefined;
  readonly syrupSugarFrac?: number | undefined;
  readonly syrupStepL?: number | undefined;
  readonly leastSyrupL?: number | undefined;
  readonly buySugarUpToKg?: number | undefined;
  /** One sum instead of ranks: what a colony is worth in money. */
  readonly pricePerColony?: number | undefined;
  readonly gapFrac?: number | undefined;
  readonly nodes?: number | undefined;
  readonly brakeSeconds?: number | undefined;
}

export interface ProvisionInput {
  readonly colonies: readonly ProvisionColony[];
  readonly bank?: readonly BankLot[] | undefined;
  /** Light combs without a colony, to fill givers' gaps. */
  readonly shed?: readonly BankLot[] | undefined;
  readonly sugarKg?: number | undefined;
  readonly feeders?: number | undefined;
  readonly daysToLastFeeding?: number | undefined;
  readonly unions?: readonly Union[] | undefined;
  readonly prices?: ProvisionPrices | undefined;
  readonly rules?: ProvisionRules | undefined;
}
