import type { Drawing } from '../../../contract/paint-order.ts';
import type { Translate } from '../../words/index.ts';

/** What came of an act, in the page; `undo` is the key that takes it back. */
export const drawNotice = (words: string, t: Translate, undo?: string): Drawing[] => [
  ['p', {}, words],
  [
    'div',
    { class: 'actions' },
    ...(undo ? [['button', { 'data-key': undo }, t('shell.undo')] as Drawing] : []),
    ['button', {}, t('shell.dismiss')],
  ],
];
