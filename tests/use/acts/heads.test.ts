import { expect, it } from 'vitest';
import { removeHead } from '../../../src/use/acts/matters/heads.ts';
import { madeHead, madeLog, madeRoutine } from '../../keeping/made.ts';
import { nothing } from '../../ui/fake-world.ts';

it('a head goes with its own routines and wash days, in one change', () => {
  const remembered = {
    ...nothing,
    heads: [madeHead({ id: 'mine', name: 'Wren' }), madeHead({ id: 'theirs' })],
    routines: [madeRoutine({ id: 'r1', head: 'mine' }), madeRoutine({ id: 'r2', head: 'theirs' })],
    log: [madeLog({ id: 'l1', head: 'theirs' }), madeLog({ id: 'l2', head: 'mine' })],
  };
  expect(removeHead(remembered, remembered.heads[0]!)).toEqual({
    changes: [
      { do: 'remove', thing: 'heads', id: 'mine' },
      { do: 'remove', thing: 'routines', id: 'r1' },
      { do: 'remove', thing: 'log', id: 'l2' },
    ],
    say: { key: 'hair.removed', values: { name: 'Wren' } },
  });
});
