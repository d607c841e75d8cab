import { proteinCarriers } from './count-protein.ts';
import { type Day, finding, type Rule } from './day.ts';

/** Is there no protein at all where the hair is fine, porous or damaged? */
export const noProtein: Rule = {
  id: 'no-protein',
  of: 'day',
  aspect: 'protein',
  sees: (step) => (step.filled ? step.traits.protein : ''),
  mayHelp: (_, after) => after === 'yes' || after === 'maybe',
  ask(day) {
    const { sure, maybe } = proteinCarriers(day);
    if (sure.length > 0) return [];
    const wants = wantsProtein(day);
    const say = (key: string) => ({ key: `rules.no-protein.${key}`, values: { n: maybe.length } });
    if (wants === 'no') return [finding(this, 'suits', say('not-missed'))];
    if (wants === 'maybe')
      return [finding(this, 'cannot-tell', say('hair-unknown'), { unknown: { key: 'rules.unknown.hair' } })];
    if (maybe.length > 0)
      return [
        finding(this, 'cannot-tell', say('maybe'), {
          steps: maybe,
          unknown: { key: 'rules.unknown.maybe-protein', values: { n: maybe.length } },
        }),
      ];
    return [finding(this, 'does-not-suit', say('missing'))];
  },
};

/** Fine, porous or damaged hair does; not where the allowance, as overruled by the reader, is a careful one. */
function wantsProtein({ head, numbers, practice }: Day): 'yes' | 'no' | 'maybe' {
  if (numbers && numbers.products <= practice.allowance.levels.sparingly.products) return 'no';
  if (!head) return 'maybe';
  if (head.thickness === 'fine' || head.porosity === 'high' || head.damage?.kinds.length) return 'yes';
  return head.thickness && head.porosity && head.damage ? 'no' : 'maybe';
}
