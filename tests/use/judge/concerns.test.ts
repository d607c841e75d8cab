import { describe, expect, it } from 'vitest';
import type { TabPage } from '../../../src/contract/messages.ts';
import { defaultSettings, type Remembered } from '../../../src/store/remembered.ts';
import { concerns, type Stored, sitesIn, toldOf } from '../../../src/use/judge/concerns.ts';
import { madeHead, madeLog, madeProduct, madeRoutine } from '../../keeping/made.ts';
import { nothing } from '../knowing.ts';

const page: TabPage = {
  url: 'https://shop.example/tidepool?size=2',
  title: 'Tidepool',
  lists: [
    { id: 0, frame: 0, text: 'Aqua, Panthenoll', via: 'names', product: { name: 'Tidepool Curl Cream' } },
  ],
};
const remembered: Remembered = {
  ...nothing,
  heads: [madeHead(), madeHead({ id: 'robin' })],
  routines: [madeRoutine(), madeRoutine({ id: 'r2' })],
  products: [madeProduct()],
};
const of = (changes: Stored) => concerns(changes, remembered, page);
const settings = (over: object) => ({
  settings: { oldValue: defaultSettings, newValue: { ...defaultSettings, ...over } },
});
const other = madeProduct({ id: 'p9', name: 'Another Foam', sources: [] });

describe('a painted page is read again', () => {
  it.each<[string, Stored]>([
    ['the head in use', { 'heads:wren': { newValue: madeHead() } }],
    ['a head that is gone', { 'heads:x': { oldValue: madeHead({ id: 'x' }) } }],
    ['the routine in use', { 'routines:r1': { newValue: madeRoutine() } }],
    ['a product of the routine in use', { 'products:p1': { newValue: madeProduct() } }],
    ['the product it shows', { 'products:p5': { newValue: madeProduct({ id: 'p5' }) } }],
    ['the product it shows, forgotten', { 'products:p5': { oldValue: madeProduct({ id: 'p5' }) } }],
    ['a wash day of that head', { 'log:l1': { newValue: madeLog() } }],
    ['a name it prints', { 'read-as:PANTHENOLL': { newValue: 'Panthenol' } }],
    ['its own site', { 'sites:https://shop.example': { newValue: {} } }],
    ['what is underlined', settings({ underline: { protein: true, moisture: false } })],
    ['the head chosen', settings({ headInUse: 'robin' })],
  ])('for %s', (_, changes) => expect(of(changes)).toBe(true));
});

describe('a painted page is left alone', () => {
  it.each<[string, Stored]>([
    ['another head', { 'heads:robin': { oldValue: {}, newValue: madeHead({ id: 'robin' }) } }],
    ['another routine', { 'routines:r2': { newValue: madeRoutine({ id: 'r2' }) } }],
    ['another product', { 'products:p9': { newValue: other } }],
    ['a wash day of another head', { 'log:l2': { newValue: madeLog({ head: 'robin' }) } }],
    ['a name it does not print', { 'read-as:Glycerine': { newValue: 'Glycerin' } }],
    ['another site', { 'sites:https://other.example': { newValue: {} } }],
    ['a pin', settings({ pinned: [{ product: 'p1' }] })],
    ['units', settings({ units: 'imperial' })],
    ['units set for the first time', { settings: { newValue: { ...defaultSettings, units: 'imperial' } } }],
    [
      'the same in another order, as browsers hand it out',
      settings({ underline: { moisture: true, protein: true } }),
    ],
    ['a photo', { 'photo:x': { newValue: 'data:image/png;base64,AA' } }],
    ['the version and the journal', { store: { newValue: { version: 2 } }, journal: {} }],
    ['a value that is none of ours', { 'products:p7': { newValue: 'half' }, other: { newValue: 1 } }],
  ])('for %s', (_, changes) => expect(of(changes)).toBe(false));
});

describe('a tab is told', () => {
  const told = (changes: Stored, sites: Remembered['sites'] = []) =>
    toldOf(changes, { ...remembered, sites }, page);
  const site = { origin: 'https://shop.example', paused: true, notLists: [], listsAt: [] };
  const paused = { 'sites:https://shop.example': { newValue: site } };

  it.each<[string, string | undefined, Stored, Remembered['sites']]>([
    ['to stop where its site is paused', 'stop', paused, [site]],
    ['to stop there by any other change too', 'stop', { 'heads:wren': { newValue: madeHead() } }, [site]],
    ['to read again what the change concerns', 'again', { 'heads:wren': { newValue: madeHead() } }, []],
    ['nothing of what does not concern it', undefined, { 'products:p9': { newValue: other } }, []],
  ])('%s', (_, what, changes, sites) => expect(told(changes, sites)).toBe(what));

  it('the sites that were taught something are named by their origins', () => {
    expect(sitesIn({ ...paused, 'heads:wren': {}, settings: {} })).toEqual(['https://shop.example']);
  });
});
