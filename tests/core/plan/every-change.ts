// The search for a settling change, slow and sure: every set of changes there is.
import { speaksAgainst } from '../../../src/core/judge/finding.ts';
import { type MoveOption, optionsOf, type StepChoice, withOptions } from '../../../src/core/plan/moves.ts';
import type { SuggestInput } from '../../../src/core/plan/suggest.ts';
import { dayOf, findingsOf } from '../../../src/core/wash-day/add-up.ts';
import { dayStep } from '../../../src/core/wash-day/rules/day.ts';
import { practice } from '../hand-read.ts';

export const clashes = (input: SuggestInput, options: MoveOption[] = []) =>
  findingsOf(withOptions(dayOf(input), options)).filter(speaksAgainst);

/** Size of the smallest set of changes that settles a day, up to a size; undefined where none does. */
export function bruteForce(input: SuggestInput, upTo: number): number | undefined {
  const choices = input.candidates.map(
    ({ product, kind, use, reading, owned }): StepChoice => ({
      step: dayStep(
        { id: `new-${product}`, kind, use, product, optional: false, cadence: { every: 'wash' } },
        reading,
        practice,
      ),
      fill: { product, alternatives: [], owned },
    }),
  );
  const options = optionsOf(dayOf(input), choices);
  const spot = ({ move, to }: MoveOption) => (move.do === 'add' ? to!.id : move.step);
  const settledWith = (from: number, chosen: MoveOption[], size: number): boolean => {
    if (chosen.length === size) return clashes(input, chosen).length === 0;
    for (let at = from; at < options.length; at++) {
      const option = options[at]!;
      if (chosen.some((other) => spot(other) === spot(option))) continue;
      if (settledWith(at + 1, [...chosen, option], size)) return true;
    }
    return false;
  };
  for (let size = 0; size <= upTo; size++) if (settledWith(0, [], size)) return size;
  return undefined;
}
