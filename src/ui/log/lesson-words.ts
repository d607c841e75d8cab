import type { Difference } from '../../core/learn/differed.ts';
import type { Proposed } from '../../core/learn/lesson.ts';
import type { WashDayInput } from '../../core/wash-day/add-up.ts';
import { cadenceWords } from '../routine/steps/step-editor.tsx';
import { moveWords, wishWords } from '../routine/suggestions.tsx';
import type { Translate } from '../words/index.ts';
import type { World } from '../world.ts';
import { degreesWords } from './units.ts';

/** One thing that was otherwise than the time before. */
export function differenceWords(world: World, difference: Difference): string {
  const { t } = world;
  if (difference.what === 'air') {
    const imperial = world.remembered.settings.units === 'imperial';
    const degrees = (celsius: number) => degreesWords(Math.round(celsius), imperial, t.lang);
    return t('log.differed.air', { dew: degrees(difference.dew), before: degrees(difference.before) });
  }
  const kind = t(`routine.kind.${difference.kind}`);
  const name = difference.name || kind;
  if (difference.what === 'other')
    return t('log.differed.other', { kind, name, before: difference.before || kind });
  return t(`log.differed.${difference.what}`, { kind, name });
}

/** What is proposed, in a sentence each; empty where nothing is. */
export function proposedWords(world: World, input: WashDayInput, proposed: Proposed): string[] {
  const { t } = world;
  if (proposed.change === 'none') return [];
  if (proposed.change === 'wish') return [t('routine.suggest.a', { what: wishWords(world, proposed.wish) })];
  if (proposed.change === 'profile')
    return [t('log.learn.profile', { from: levelWords(t, proposed.from), to: levelWords(t, proposed.to) })];
  return proposed.moves.map((move) => {
    const added = proposed.moves.some(({ do: what, step }) => what === 'add' && step === move.step);
    return move.do === 'space' && added ? cadenceWords(t, move.cadence) : moveWords(world, input, move);
  });
}

const levelWords = (t: Translate, level: string) => t(`hair.allowance.level.${level}`);
