/** What every file of ours in a document counts on: brought by the first that comes, and by the picker. */
import { ours } from './ours.ts';
import { native, parentOf, tagOf } from './read/dom.ts';

const letter = (byte: number) => String.fromCharCode(97 + (byte % 26));

ours.dom ??= { native, parentOf, tagOf };
ours.hosts ??= new WeakSet();
ours.seed ??=
  import.meta.env?.MODE === 'localhost'
    ? 'strandline-'
    : [...crypto.getRandomValues(new Uint8Array(9))].map(letter).join('');
