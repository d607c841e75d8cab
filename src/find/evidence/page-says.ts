import type { Finder } from '../finder.ts';
import { isKnownKind } from '../names/kinds.ts';
import type { Item } from '../names/step.ts';
import type { Page } from '../text/lines.ts';
import type { Evidence } from './judged.ts';
import { aboutPoints } from './thresholds.ts';

export function pageSays({ low }: Page, names: Item[], about: string, { words }: Finder): Evidence[] {
  const near = `${low.slice(Math.max(0, names[0]!.from - 500), names[0]!.from)}\n${low.slice(names.at(-1)!.to, names.at(-1)!.to + 500)}`;
  const say = (where: string, text: string, weight: number): Evidence[] => {
    const [cosmetic, elsewise] = [words.cosmetic.test(text), words.elsewise.test(text)];
    if (cosmetic === elsewise) return [];
    const what = cosmetic ? 'cosmetic' : 'elsewise';
    return [
      {
        what: `${where} speaks of ${cosmetic ? 'cosmetics' : 'other goods'}`,
        count: 1,
        points: aboutPoints[what] * weight,
      },
    ];
  };
  const title = say('the page’s name', about, 1);
  if (title.length === 0) return say('the text around', near, 0.5);
  const all = title[0]!.points > 0 && names.every(({ kind }) => isKnownKind(kind));
  return all
    ? [...title, { what: 'and every name is known', count: 1, points: aboutPoints.allKnown }]
    : title;
}

const nearEnough = 500; // letters around a list that speak of what it is for

const homeWords = 2; // of them in the text around, where the page's name says nothing

/** Whether the page's name, or several words around the names, speak of rooms, dishes or cloth, and none of a body. */
export function isForHome({ low }: Page, names: Item[], about: string, { words }: Finder): boolean {
  let other = about; // "dish soap" is no soap
  for (const { index, length } of words.home.every(about).toReversed())
    other = `${other.slice(0, index)} ${other.slice(index + length)}`;
  if (words.cosmetic.test(other)) return false;
  if (other !== about) return true;
  const [from, to] = [names[0]!.from, names.at(-1)!.to];
  const near = `${low.slice(Math.max(0, from - nearEnough), from)}\n${low.slice(to, to + nearEnough)}`;
  const said = new Set(words.home.every(near).map(({ index, length }) => near.slice(index, index + length)));
  return (said.size >= homeWords || words.detergent.test(near)) && !words.cosmetic.test(near);
}
