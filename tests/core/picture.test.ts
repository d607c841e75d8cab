// Print with places → text with places: drawn data, made here.
import { describe, expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { namesToCheck, problemOf, putRight } from '../../src/core/picture/check-names.ts';
import { columnsOf } from '../../src/core/picture/columns.ts';
import { greyOf, levelled } from '../../src/core/picture/grey.ts';
import { joinLines, type PrintedLine } from '../../src/core/picture/join-lines.ts';
import { bowOf, risenBy } from '../../src/core/picture/measure-bow.ts';
import { edgeWidth, lineHeight, slopeOf } from '../../src/core/picture/measure-print.ts';
import { printedWord } from '../../src/core/picture/misread-letters.ts';
import { readLabel } from '../../src/core/reading/reading.ts';

/** Lines of words, ten pixels a letter and twenty a line; `?` after a word makes it doubtful. */
const printed = (...blocks: string[][]): PrintedLine[][] => {
  let top = 0;
  return blocks.map((lines) =>
    lines.map((line) => {
      top += 20;
      let left = 0;
      return line.split(' ').map((word) => {
        const text = word.replace(/\?(?=,?$)/, '');
        const box = { left, top, right: left + text.length * 10, bottom: top + 14 };
        left = box.right + 10;
        return { text, box, sure: text === word ? 95 : 30 };
      });
    }),
  );
};
const lookup = createLookup(entries, patterns, limits);

describe('lines of print are joined', () => {
  it.each<[what: string, blocks: string[][], text: string]>([
    ['lines go on', [['Aqua, Cetearyl', 'Alcohol, Parfum']], 'Aqua, Cetearyl Alcohol, Parfum'],
    ['a hyphen that only breaks', [['Aqua, Behentri-', 'monium Chloride']], 'Aqua, Behentrimonium Chloride'],
    ['in capitals', [['AQUA, BEHENTRI-', 'MONIUM CHLORIDE']], 'AQUA, BEHENTRIMONIUM CHLORIDE'],
    [
      'a hyphen before a number',
      [['Aqua, Polyquaternium-', '11, Parfum']],
      'Aqua, Polyquaternium-11, Parfum',
    ],
    ['a hyphen after a number', [['Aqua, 1,2-', 'Hexanediol']], 'Aqua, 1,2-Hexanediol'],
    [
      'a hyphen before a capital',
      [['Aqua, Bis-', 'Cetearyl Amodimethicone']],
      'Aqua, Bis-Cetearyl Amodimethicone',
    ],
    ['a name a line', [['Aqua', 'Glycerin', 'Cetearyl Alcohol']], 'Aqua\nGlycerin\nCetearyl Alcohol'],
    [
      'a name a line, with commas of their own',
      [
        [
          'Aqua',
          '5-Amino-2,6-Dimethoxy-3-Hydroxypyridine',
          "4,4'-Diaminodiphenylamine Sulfate",
          '1,2-Hexanediol',
        ],
      ],
      "Aqua\n5-Amino-2,6-Dimethoxy-3-Hydroxypyridine\n4,4'-Diaminodiphenylamine Sulfate\n1,2-Hexanediol",
    ],
    [
      'a list cut into blocks',
      [['Aqua, Glycerin,'], ['Panthenol, Parfum']],
      'Aqua, Glycerin, Panthenol, Parfum',
    ],
    ['a heading of its own', [['Ingredients'], ['Aqua, Glycerin']], 'Ingredients\nAqua, Glycerin'],
    ['nothing', [], ''],
  ])('%s', (_, blocks, text) => {
    expect(joinLines(printed(...blocks)).text).toBe(text);
  });

  it('and every word is still found by its letters', () => {
    const { text, spots } = joinLines(
      printed(['Aqua, Behentri-', 'monium Chloride, Poly-', 'quaternium-', '11']),
    );
    expect(spots.map(({ from, to }) => text.slice(from, to))).toEqual([
      'Aqua,', 'Behentri', 'monium', 'Chloride,', 'Poly', 'quaternium-', '11',
    ]); // biome-ignore format: one line reads best
  });
});

it.each([
  ['Undecy!', 'Undecyl'],
  ['Methyl!', 'Methyl'],
  ['Hexyldecy!,', 'Hexyldecyl,'],
  ['GLYCER!N,', 'GLYCERIN,'],
  ['~~', ''],
  ['|', '|'],
  ['Aqua/Water/Eau,', 'Aqua/Water/Eau,'],
  ['(Wheat)', '(Wheat)'],
])('a word read as %s', (read, printed) => {
  expect(printedWord(read)).toBe(printed);
});

describe('names are shown for checking', () => {
  const { text, spots } = joinLines(
    printed(['Aqua, Glycerin?, Behentri-', 'monium Chloride, Niacinadmide,', 'Flumberol, Parfum']),
  );
  const reading = readLabel(text, lookup);
  const names = namesToCheck(reading, { text, spots });

  it('doubtful ones first, each with why', () => {
    expect(names.map(({ mention, doubt }) => `${mention.raw} ${doubt ?? ''}`.trim())).toEqual([
      'Glycerin faint',
      'Niacinadmide mended',
      'Flumberol unknown',
      'Aqua',
      'Behentrimonium Chloride',
      'Parfum',
    ]);
  });

  it('with a box for each line that it stands in', () => {
    const boxes = names.find(({ mention }) => mention.raw.startsWith('Behen'))?.boxes;
    expect(boxes?.map(({ top }) => top)).toEqual([20, 40]);
    expect(boxes?.[1]).toEqual({ left: 0, top: 40, right: 160, bottom: 54 });
  });

  it('and put right in the text', () => {
    const right = new Map([
      [4, 'Panthenol'],
      [1, ' Propanediol '],
    ]);
    expect(putRight(text, reading, right)).toBe(
      'Aqua, Propanediol, Behentrimonium Chloride, Niacinadmide, Panthenol, Parfum',
    );
  });
});

describe('what holds no list is said', () => {
  const read = (text: string, print: { lineHeight: number; edge: number }) =>
    problemOf(readLabel(text, lookup), { text, spots: [], shown: '', width: 1, height: 1, print });
  it.each([
    ['a list', 'Aqua, Glycerin, Parfum', 5, 9, undefined],
    ['one name', 'Ingredients: Simmondsia Chinensis Seed Oil', 20, 1, undefined],
    ['other words', 'Open Monday to Friday', 20, 2, 'no-list'],
    ['small print', 'Aqxq, Gkrccn, Pxfn', 5, 2, 'too-small'],
    ['a blur', 'Aqxq, Gkrccn, Pxfn', 20, 14, 'blurred'],
    ['no print at all', '', 0, Number.POSITIVE_INFINITY, 'no-list'],
  ] as const)('%s', (_, text, lines, edge, problem) => {
    expect(read(text, { lineHeight: lines, edge })).toBe(problem);
  });
});

describe('print is measured', () => {
  /** Dark bars for lines, ten high and thirty apart, running at an angle; edges over so many pixels. */
  function bars(angle: number, { soft = 0, dark = 40, light = 220 } = {}) {
    const [width, height] = [600, 300];
    const slope = Math.tan((angle * Math.PI) / 180);
    const rgba = new Uint8ClampedArray(width * height * 4);
    for (let y = 0; y < height; y++)
      for (let x = 0; x < width; x++) {
        const at = (((y - x * slope) % 30) + 30) % 30;
        const along = x % 12; // letters: gaps along the line
        const within = (place: number, half: number, every: number) =>
          half - Math.min(Math.abs(place - half), Math.abs(place - half - every));
        const inside = Math.min(within(at, 5, 30), within(along, 4, 12));
        const ink = soft === 0 ? (inside > 0 ? 1 : 0) : Math.min(1, Math.max(0, inside / soft + 0.5));
        const value = light + (dark - light) * ink;
        rgba.set([value, value, value, 255], (y * width + x) * 4);
      }
    return levelled(greyOf(rgba, width, height));
  }

  it.each([0, 2, -3.5, 4])('lines that run at %d°', (angle) => {
    expect(Math.abs(slopeOf(bars(angle)) - angle)).toBeLessThanOrEqual(0.5);
  });

  it('how high lines are', () => {
    expect(lineHeight(bars(0))).toBeGreaterThanOrEqual(8);
    expect(lineHeight(bars(0))).toBeLessThanOrEqual(11);
  });

  it('light print on dark is turned round', () => {
    const shareDark = ({ pixels }: { pixels: Uint8Array }) =>
      pixels.filter((pixel) => pixel < 128).length / pixels.length;
    expect(shareDark(bars(0))).toBeLessThan(0.5);
    expect(shareDark(bars(0, { dark: 230, light: 30 }))).toBeCloseTo(shareDark(bars(0)), 2);
  });

  it('sharp edges are thinner than soft ones', () => {
    expect(edgeWidth(bars(0))).toBeLessThan(1.5);
    expect(edgeWidth(bars(0, { soft: 4 }))).toBeGreaterThan(3);
  });

  it('an even ground has neither lines nor a slope', () => {
    const grey = levelled(greyOf(new Uint8ClampedArray(40_000).fill(200), 100, 100));
    expect([slopeOf(grey), lineHeight(grey)]).toEqual([0, 0]);
  });
});

describe('print across a round bottle', () => {
  /** Lines of dots, ten pixels apart, that sink by `sag` pixels towards both ends. */
  const bent = (sag: number) => {
    const [width, height] = [400, 200];
    const pixels = new Uint8Array(width * height).fill(255);
    for (let line = 20; line < 150; line += 12)
      for (let x = 40; x < 360; x++)
        for (let y = 0; y < 5; y++)
          if ((x * 7 + y * 3) % 5 < 3)
            pixels[(line + y + Math.round(sag * ((x - 200) / 160) ** 2)) * width + x] = 0;
    return { pixels, width, height };
  };

  it.each([6, 12, 18, -10])('its lines sink by %i pixels', (sag) => {
    const bow = bowOf(bent(sag))!;
    expect(Math.abs(risenBy(bow, 360, 400) - sag)).toBeLessThan(2.5);
    expect(Math.abs(risenBy(bow, 200, 400))).toBeLessThan(1);
  });

  it('straight lines and empty pictures have none', () => {
    expect(bowOf(bent(0))).toBeUndefined();
    expect(bowOf({ pixels: new Uint8Array(4000).fill(255), width: 80, height: 50 })).toBeUndefined();
  });
});

describe('print in columns', () => {
  /** Lines of dots in these columns, [from, to). */
  const drawn = (...columns: [number, number][]) => {
    const [width, height] = [400, 200];
    const pixels = new Uint8Array(width * height).fill(255);
    for (let line = 20; line < 150; line += 12)
      for (const [from, to] of columns)
        for (let x = from; x < to; x++)
          for (let y = 0; y < 6; y++) if ((x + y) % 3 > 0) pixels[(line + y) * width + x] = 0;
    return { pixels, width, height };
  };

  it('is read column by column where a gutter runs through all lines', () => {
    const columns = columnsOf(drawn([20, 180], [204, 380]), 9);
    expect(columns.map(({ left, right }) => [left, right])).toEqual([
      [15, 185],
      [199, 384],
    ]);
  });

  it.each<[what: string, columns: [number, number][]]>([
    ['one column', [[20, 380]]],
    [
      'a gap between words',
      [
        [20, 180],
        [186, 380],
      ],
    ],
    [
      'a sign at the edge',
      [
        [20, 40],
        [70, 380],
      ],
    ],
    ['nothing', []],
  ])('%s is no columns', (_, columns) => {
    expect(columnsOf(drawn(...columns), 9)).toEqual([]);
  });
});
