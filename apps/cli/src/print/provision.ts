import type { ProvisionAnswer } from '@winterheft/core';
import { decimals, type Naming } from '@winterheft/words';
import type { View } from '../command.ts';
import { entry, paragraph } from './layout.ts';

export interface NumberedStep {
  /** Whom it concerns: both colonies where two are united. */
  readonly colonies: readonly string[];
  readonly text: string;
}

/** Steps with their numbers in the order of the walk. */
export function provisionSteps(answer: ProvisionAnswer, view: View, naming: Naming): readonly NumberedStep[] {
  const stepById = new Map(answer.steps.map((step) => [step.id, step]));
  const find = <T extends { readonly id: string }>(things: readonly T[], ref: string) => things.find((thing) => thing.id === ref);
  return answer.order.flatMap((id) => {
    const step = stepById.get(id);
    if (step === undefined) return [];
    const deeds = {
      move: find(answer.moves, step.ref),
      gapLater: answer.steps.some((other) => other.do === 'fill' && other.ref === step.ref),
      syrup: find(answer.syrup, step.ref),
      candy: find(answer.candy, step.ref),
      union: find(answer.unite, step.ref),
    };
    const colonies = deeds.union === undefined ? [step.colony] : [step.colony, deeds.union.into];
    return [{ colonies, text: view.words.stepSentence(step, deeds, naming) }];
  });
}

/** Steps, what stays short, why, how good it is. */
export function provisionLines(answer: ProvisionAnswer, view: View, naming: Naming): string {
  const w = view.words.provision;
  const steps = provisionSteps(answer, view, naming);
  const width = String(steps.length).length;
  const uncovered = answer.uncovered.map(({ colony, kg }) => `${naming.colony(colony)} ${view.units.mass(kg)}`).join(', ');
  const { minutes, sugarKg, expectedLosses } = answer.totals;
  return [
    w.steps,
    ...(steps.length === 0 ? [w.nothing] : steps.map(({ text }, i) => entry(`${String(i + 1).padStart(width)}.`, text))),
    '',
    ...(uncovered === '' ? [] : [paragraph(`${w.uncovered}: ${uncovered}`)]),
    paragraph(w.total(minutes, view.units.mass(sugarKg), decimals(expectedLosses, 2))),
    paragraph(view.words.provisionQuality(answer)),
    ...(answer.reasons.length === 0
      ? []
      : ['', w.reasons, ...answer.reasons.map((reason) => entry('-', view.words.reasonSentence(reason, naming)))]),
    '',
    paragraph(view.words.cautions.disease),
    paragraph(view.words.cautions.lifting),
  ].join('\n');
}
