import kindWords from '../../../dictionary/kinds.json' with { type: 'json' };
import { createKindReader } from '../../../src/core/product/kind.ts';
import type { KindWords } from '../../../src/core/product/kind-words.ts';

/** Tells the kind of a product from what its page calls it. */
export const { withKind } = createKindReader(kindWords as KindWords);
