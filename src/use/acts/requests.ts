import * as z from 'zod/mini';
import type { MessageName, Messages } from '../../contract/messages.ts';
import { endings, unreadReasons } from '../../contract/shelf.ts';
import {
  change,
  kind,
  met,
  photo,
  pin,
  readAs,
  type SameShape,
  schemaOf,
  smallPicture,
  use,
} from '../../store/schema/schemas.ts';

/** Who asks: a script of ours in a page, or a page of the extension itself. */
export type Asker = 'page' | 'view';

const word = z.string().check(z.maxLength(2000));
const id = word.check(z.minLength(1));
const label = z.string().check(z.maxLength(100_000));
const letters = z.string().check(z.maxLength(3_000_000));
const whole = z.int().check(z.nonnegative());
const few = <T extends z.ZodMiniType>(of: T, most: number) => z.array(of).check(z.maxLength(most));
const nothing = z.null();

const element = z.object({
  tag: word,
  parent: z.int().check(z.gte(-1)),
  role: z.exactOptional(word),
  hidden: z.exactOptional(z.boolean()),
  label: z.exactOptional(letters),
});
const numbers = few(z.int().check(z.gte(-1)), 200_000);

/** Letters of a page. Elements come after those they stand in, so that no way up turns in a circle. */
const pageText = z
  .object({
    text: letters,
    starts: numbers,
    lengths: numbers,
    parents: numbers,
    elements: few(element, 200_000),
    pointed: z.exactOptional(z.object({ from: whole, to: whole, via: z.enum(['selection', 'chosen']) })),
  })
  .check(
    z.refine(
      ({ starts, lengths, parents, elements }) =>
        lengths.length === starts.length &&
        parents.length === starts.length &&
        parents.every((at) => at < elements.length) &&
        elements.every(({ parent }, at) => parent < at),
    ),
  );

const clues = z.object({
  base: letters,
  heading: letters,
  title: letters,
  said: z.record(letters, letters),
  data: few(letters, 10_000),
  properties: few(z.tuple([letters, letters]), 10_000),
  chosen: few(letters, 10_000),
  near: letters,
  crumbs: letters,
});

const changes = few(change, 50_000);
const said = z.object({
  key: word,
  values: z.exactOptional(z.record(word, z.union([z.string(), z.number()]))),
});

const longestPhoto = 2_000_000; // letters
/** What is to be kept, with a photo of its label where the user wishes it. */
const kept = z.extend(met, { photo: z.exactOptional(photo.check(z.maxLength(longestPhoto))) });

const stamp = z.exactOptional(id);
const stamps = z.object({
  heads: stamp,
  products: stamp,
  routines: stamp,
  log: stamp,
  sites: stamp,
  readAs: stamp,
  settings: stamp,
});

/** Everything that may be asked to be done. */
export const actSchema = z.union([
  z.object({
    act: z.literal('keep'),
    met: kept,
    id,
    owned: z.exactOptional(z.boolean()),
    as: z.exactOptional(id),
    picture: z.exactOptional(smallPicture),
  }),
  z.object({ act: z.literal('remove'), product: id }),
  z.object({ act: z.literal('merge'), kept: id, other: id }),
  z.object({ act: z.literal('correct-kind'), met, kind: z.exactOptional(kind) }),
  z.object({
    act: z.literal('add'),
    met: kept,
    kind,
    how: z.exactOptional(z.enum(['fill', 'beside'])),
    routine: schemaOf.routines,
    ids: z.object({ product: id, step: id }),
    picture: z.exactOptional(smallPicture),
  }),
  z.object({ act: z.literal('fill-step'), routine: id, step: id, product: z.exactOptional(id) }),
  z.object({ act: z.enum(['pin', 'unpin']), pin }),
  z.object({ act: z.enum(['pause', 'resume', 'unlearn']), url: id }),
  z.object({ act: z.literal('not-a-list'), url: id, text: label }),
  z.object({ act: z.literal('list-is-here'), url: id, selector: id }),
  z.object({ act: z.literal('read-as'), printed: id, name: z.nullable(readAs) }),
  z.object({ act: z.literal('change'), changes, say: z.exactOptional(said) }),
]);

const one = z.object({ tab: whole });
const why = z.enum(unreadReasons);
const address = word.check(z.regex(/^https?:/));
const card = z.object({
  address,
  name: word,
  state: z.enum(['met', 'reading', 'failed']),
  why: z.exactOptional(why),
});
const bar = z.object({
  open: z.boolean(),
  products: whole,
  read: whole,
  left: whole,
  failed: z.partialRecord(why, whole),
  running: z.exactOptional(z.object({ done: whole, of: whole })),
  ended: z.exactOptional(z.enum(endings)),
  again: z.exactOptional(z.number()),
  told: z.boolean(),
  filters: few(word, 30),
  passing: z.record(word, whole),
  hides: z.boolean(),
});

/** Of each message the background answers: who may ask, and the shape and size of what is asked. */
export const requests = {
  'page-lists': {
    from: 'page',
    shape: z.object({
      url: letters,
      title: letters,
      texts: few(pageText, 500),
      clues,
      canPaint: z.boolean(),
    }),
  },
  'line-rules': {
    from: 'page',
    shape: z.object({ seed: word.check(z.regex(/^[a-z-]+$/)), selectors: few(letters, 10_000) }),
  },
  'page-left': { from: 'page', shape: nothing },
  'site-here': { from: 'page', shape: nothing },
  'strip-act': {
    from: 'page',
    shape: z.object({
      list: whole,
      action: z.enum(['panel', 'compare', 'add', 'person', 'keep', 'picture', 'pause', 'not-a-list']),
      id,
    }),
  },
  'bring-shelf': { from: 'page', shape: nothing },
  shelf: { from: 'page', shape: z.object({ cards: few(card, 2000), bar }) },
  'shelf-page': {
    from: 'page',
    shape: z.object({
      address,
      name: word,
      at: address,
      texts: few(pageText, 50),
      clues,
      letters: z.number(),
      asksPassword: z.boolean(),
    }),
  },
  'shelf-act': { from: 'page', shape: z.object({ address: word, act: word, id }) },
  'shelf-rows': { from: 'view', shape: one },
  'press-shelf': { from: 'view', shape: one },
  'labels-met': { from: 'view', shape: nothing },
  'forget-labels': { from: 'view', shape: nothing },
  'strip-undo': { from: 'page', shape: z.object({ key: id }) },
  'list-is-here': { from: 'page', shape: z.object({ selector: id }) },
  act: { from: 'view', shape: z.object({ act: actSchema, id, tab: z.exactOptional(whole) }) },
  undo: { from: 'view', shape: z.object({ key: id }) },
  read: {
    from: 'view',
    shape: few(
      z.object({
        text: letters,
        use: z.exactOptional(use),
        kind: z.exactOptional(kind),
        market: z.exactOptional(z.enum(['eu', 'other'])),
        readAs: z.exactOptional(z.record(z.string(), readAs)),
      }),
      20_000,
    ),
  },
  close: { from: 'view', shape: few(letters, 10_000) },
  'look-up': { from: 'view', shape: letters },
  'remembered-parts': { from: 'view', shape: stamps },
  forget: { from: 'view', shape: nothing },
  'read-tab': { from: 'view', shape: one },
  'pick-list': { from: 'view', shape: one },
  'closed-parts': { from: 'view', shape: one },
} satisfies { [N in MessageName]?: { from: Asker; shape: z.ZodMiniType } };

// Shapes and types of messages are one: a field added there and forgotten here does not compile.
// The keeper reads changes again, in its own words.
type Doors = Omit<typeof requests, 'act'>;
const _same: {
  [N in keyof Doors]: SameShape<Doors[N]['shape'], Messages[N]['request']>;
} = {} as { [N in keyof Doors]: true };
void _same;

/** The request as it may be answered; throws for anybody or anything else. */
export function admitted<N extends MessageName>(
  name: N,
  request: unknown,
  asker: Asker,
): Messages[N]['request'] {
  const door = (requests as { [name: string]: { from: Asker; shape: z.ZodMiniType } | undefined })[name];
  if (!door || door.from !== asker) throw new Error(`${name} is not for a ${asker} to ask`);
  const read = door.shape.safeParse(request ?? null);
  if (!read.success) {
    const [issue] = read.error.issues;
    throw new Error(`${name} asked wrongly: ${issue?.path.join('.')} ${issue?.code}`);
  }
  return read.data as Messages[N]['request'];
}
