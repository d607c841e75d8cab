import { expect, it } from 'vitest';
import { type Answers, answer, ask, type Runtime } from '../../src/contract/messages.ts';

/** A runtime whose worker may be killed: `dies` messages are lost before an answer comes. */
function runtime(answers: Answers, dies = 0, id = 'ours') {
  let hear: Parameters<Runtime['onMessage']['addListener']>[0] | undefined;
  let sent = 0;
  const made: Runtime = {
    id: 'ours',
    sendMessage: (message) =>
      new Promise((settle, fail) => {
        if (sent++ < dies) return fail(new Error('The message port closed before a response was received.'));
        if (!hear?.(structuredClone(message), { id }, settle)) settle(undefined);
      }),
    onMessage: {
      addListener: (heard) => {
        hear = heard;
      },
      removeListener: () => {
        hear = undefined;
      },
    },
  };
  return { made, undo: answer(made, answers), sent: () => sent };
}

it('asks again when the worker was killed, a few times and no more', async () => {
  const close: Answers = { close: (names) => names.map((name) => [name]) };
  const once = runtime(close, 1);
  expect(await ask(once.made, 'close', ['a'])).toEqual([['a']]);
  expect(once.sent()).toBe(2);
  expect(await ask(runtime(close, 3).made, 'close', ['a'])).toEqual([['a']]);
  const never = runtime(close, 9);
  await expect(ask(never.made, 'close', ['a'])).rejects.toThrow('message port closed');
  expect(never.sent()).toBe(4);
});

it('hands on the reason of an answer that failed', async () => {
  const { made } = runtime({
    'labels-met': () => {
      throw new Error('no room');
    },
  });
  await expect(ask(made, 'labels-met', null)).rejects.toThrow('no room');
});

it('leaves alone what is not ours: other senders, other messages, names of Object', async () => {
  const other = runtime({ 'labels-met': () => Promise.reject() }, 0, 'another extension');
  await expect(ask(other.made, 'labels-met', null)).rejects.toThrow('no answer');
  const { made, undo } = runtime({ close: () => [] });
  expect(await made.sendMessage('hello')).toBeUndefined();
  expect(await made.sendMessage({ strandline: 'toString' })).toBeUndefined();
  undo();
  expect(await made.sendMessage({ strandline: 'close', request: [] })).toBeUndefined();
});

it('where nobody is there to answer it is not asked again', async () => {
  let sent = 0;
  const sendMessage = async () => {
    sent++;
    throw new Error('Could not establish connection. Receiving end does not exist.');
  };
  await expect(ask({ sendMessage }, 'labels-met', null)).rejects.toThrow('does not exist');
  expect(sent).toBe(1);
});
