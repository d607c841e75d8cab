import type { Avoid } from '../../hair/head.ts';
import type { Mention } from '../../reading/reading.ts';
import { type Against, type AspectRule, type Judged, mentionsOf, tell } from '../asked.ts';
import type { Finding } from '../finding.ts';

/** Does it hold something on the avoid list: a name, a family or an allergen? */
export const avoidList: AspectRule = {
  id: 'avoid-list',
  aspect: 'avoid',
  ask: (product, against) => askOf(product, against),
};

const plain = (name: string) => name.toLowerCase().replace(/\s+/g, ' ').trim();

const names = ({ raw, found }: Mention) => [raw, ...(found.how === 'none' ? [] : [found.name])].map(plain);

function holds(avoid: Avoid, mention: Mention) {
  if (avoid.family && mention.allergens.includes(avoid.family)) return true;
  if (avoid.role && mention.roles.includes(avoid.role)) return true;
  if (avoid.family === 'fragrance' && mention.roles.some((role) => role.startsWith('fragrance'))) return true;
  return avoid.name !== undefined && names(mention).includes(plain(avoid.name));
}

/** The avoided name stands inside a longer one, or is a close spelling of an unread one: offered, not decided. */
function nearly(avoid: Avoid, mention: Mention) {
  if (!avoid.name || plain(avoid.name) === '') return false;
  const wanted = plain(avoid.name);
  if (mention.found.how === 'none' && mention.found.close.some((name) => plain(name) === wanted)) return true;
  return names(mention).some((name) => ` ${name.replace(/[^\p{L}\p{N}]+/gu, ' ')} `.includes(` ${wanted} `));
}

function askOf(product: Judged, { head }: Against): Finding[] {
  const { traits, reading } = product;
  if (!head || head.avoid.length === 0 || !reading || traits.read === 'none') return [];
  const where = (test: (mention: Mention) => boolean) =>
    reading.mentions.flatMap((mention, index) => (test(mention) ? [index] : []));
  const answers = head.avoid.flatMap((avoid) => {
    const what = {
      name: avoid.name ?? '',
      family: avoid.name ? 'none' : (avoid.family ?? avoid.role ?? 'none'),
    };
    const say = (answer: Finding['answer'], key: string, at: number[], unknown?: string) =>
      tell(
        avoidList,
        product,
        answer,
        { key: `rules.avoid-list.${key}`, values: { ...what, n: at.length } },
        {
          mentions: mentionsOf(product, at),
          ...(unknown && { unknown: { key: unknown, values: { n: at.length } } }),
        },
      );
    const held = where((mention) => holds(avoid, mention));
    const stated = (of: 'allergens' | 'mayBe') =>
      avoid.family && reading.statements?.some((each) => each[of].includes(avoid.family!));
    if (held.length > 0 || stated('allergens'))
      return [say('does-not-suit', avoid.reacted ? 'reacted' : 'holds', held)];
    const may = where(({ mayBe }) => avoid.family !== undefined && mayBe.includes(avoid.family));
    if (may.length > 0) return [say('cannot-tell', 'may-be', may)];
    if (stated('mayBe')) return [say('cannot-tell', 'stated', [])];
    const near = where((mention) => nearly(avoid, mention));
    if (near.length > 0) return [say('cannot-tell', 'nearly', near)];
    // After a reaction an unread name is no small thing; otherwise it is only said.
    if (avoid.reacted && traits.unread.length > 0)
      return [say('cannot-tell', 'reacted-unread', traits.unread, 'rules.unknown.unread')];
    return [];
  });
  if (answers.length > 0) return answers;
  return [
    tell(
      avoidList,
      product,
      'suits',
      { key: 'rules.avoid-list.clear', values: { n: head.avoid.length } },
      {
        ...(traits.unread.length > 0 && {
          unknown: {
            key: 'rules.unknown.unread',
            values: { n: traits.unread.length, of: reading.mentions.length },
          },
        }),
      },
    ),
  ];
}
