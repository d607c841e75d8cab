import { type AspectRule, mentionsOf, tell } from '../asked.ts';

/** Is enough of the label read to tell at all? */
export const tooLittleRead: AspectRule = {
  id: 'too-little-read',
  aspect: 'label',
  ask(product) {
    const { read, unread } = product.traits;
    if (read === 'enough') return [];
    const values = { n: unread.length, of: product.reading?.mentions.length ?? 0 };
    return [
      tell(
        this,
        product,
        'cannot-tell',
        { key: `rules.too-little-read.${read === 'none' ? 'no-label' : 'little'}`, values },
        {
          mentions: mentionsOf(product, unread),
          ...(read === 'little' && { unknown: { key: 'rules.unknown.unread', values } }),
        },
      ),
    ];
  },
};
