import type { DamageKind, Head, Porosity, Thickness } from '../../core/hair/head.ts';

// Small line drawings of our own, 48 × 32, one for each answer: what the home test looks like. They repeat the
// words beside them and are hidden from screen readers.
const HairDrawing = ({ children }: { children: preact.ComponentChildren }) => (
  <svg class="home-test" viewBox="0 0 48 32" width="48" height="32" aria-hidden="true">
    {children}
  </svg>
);

/** One strand between two fingertips, and its round end: thin, like thread, like a bristle. */
export function ThicknessDrawing({ of }: { of: Thickness }) {
  const width = { fine: 1, medium: 2.25, coarse: 4 }[of];
  return (
    <HairDrawing>
      <path d="M2 6c6-3 12-2 15 3M2 26c6 3 12 2 15-3" class="faint" />
      <path d="M3 16C14 13 22 19 33 16" stroke-width={width} />
      <circle cx="41" cy="16" r={width + 0.5} class="full" />
    </HairDrawing>
  );
}

/** A drop on the hair's surface: standing, half sunk in, gone in. */
export function PorosityDrawing({ of }: { of: Porosity }) {
  const lines = of === 'high' ? 'M3 23H12M15 23H21M24 23H33M36 23H45' : 'M3 23H45';
  return (
    <HairDrawing>
      <path d={lines} stroke-width="2" />
      <path d="M3 28H45" class="faint" />
      {of === 'low' && (
        <path d="M24 6C29 12 32 14.500 32 18A8 5 0 0 1 16 18C16 14.500 19 12 24 6Z" class="water" />
      )}
      {of === 'medium' && <path d="M12 22C15 15.500 33 15.500 36 22Z M19 24.500H29" class="water" />}
      {of === 'high' && (
        <path
          d="M13 25V28M18 25V30M22.500 25V29M27 25V30M34 25V28M22.500 14V20M19.500 17.500L22.500 20.500L25.500 17.500"
          class="water"
        />
      )}
    </HairDrawing>
  );
}

const damage: Record<DamageKind, string> = {
  bleach: 'M3 16H45M10 12V20M17 10V22M24 12V20M31 10V22M38 12V20',
  'permanent-colour': 'M3 16H45M24 3C28 8 30 9.500 30 12A6 3.500 0 0 1 18 12C18 9.500 20 8 24 3Z',
  relaxer: 'M3 22C8 10 14 10 18 18M22 16H45M40 12L45 16L40 20',
  perm: 'M3 16H18C26 16 30 10 26 7C22 5 19 10 24 14C29 18 38 16 45 16',
  heat: 'M3 16H45M12 3V11M36 21V29M8 8H40M8 24H40',
  'sun-or-salt':
    'M3 24H45M24 6A5 5 0 1 1 23.900 6M24 1V3M33 11H35M13 11H15M30.500 4.500L32 3M17.500 4.500L16 3',
};

/** What was done to a strand. */
export const DamageDrawing = ({ of }: { of: DamageKind }) => (
  <HairDrawing>
    <path d={damage[of]} />
  </HairDrawing>
);

/** A strand from root to tip, worn over part of its length. */
export function LengthDrawing({ of }: { of: NonNullable<NonNullable<Head['damage']>['length']> }) {
  const from = { ends: 36, half: 24, most: 10 }[of];
  const nicks = [];
  for (let x = from + 2; x < 45; x += 4) nicks.push(`M${x} 16l2 -4M${x} 16l2 4`);
  return (
    <HairDrawing>
      <circle cx="4" cy="16" r="2" class="full" />
      <path d="M4 16H45" />
      <path d={nicks.join('')} class="worn" />
    </HairDrawing>
  );
}

export function ShapeDrawing({ of }: { of: NonNullable<Head['shape']> }) {
  const strand = {
    wavy: 'M3 16C9 6 15 6 21 16S33 26 45 12',
    curly: 'M3 20C12 20 17 14 14 9C11 6 8 12 13 17C19 22 28 19 27 11C25 6 21 12 26 17C32 22 40 20 43 12',
    coily: 'M3 20L8 11L11 21L16 10L19 21L24 10L27 21L32 10L35 21L40 10L44 19',
  }[of];
  return (
    <HairDrawing>
      <path d={strand} />
    </HairDrawing>
  );
}

/** A parting: a wide, a clear, a hardly seen line of scalp between rows of strands. */
export function DensityDrawing({ of }: { of: NonNullable<Head['density']> }) {
  const gap = { low: 9, medium: 5, high: 1.5 }[of];
  const step = { low: 7, medium: 4.5, high: 3 }[of];
  const strands = [];
  for (let x = 4; x <= 44; x += step)
    strands.push(`M${x} ${16 - gap}L${x - 2} 2M${x} ${16 + gap}L${x - 2} 30`);
  return (
    <HairDrawing>
      <path d={strands.join('')} />
    </HairDrawing>
  );
}

/** The three steps of the stretch test: a strand on a ruler at rest, pulled, let go. */
export function StretchDrawing({ step }: { step: 'rest' | 'stretch' | 'after' }) {
  const end = { rest: 28, stretch: 42, after: 30 }[step];
  const ticks = [];
  for (let x = 4; x <= 44; x += 4) ticks.push(`M${x} 22v${x % 8 === 4 ? 5 : 3}`);
  return (
    <HairDrawing>
      <path d={`M3 22H45${ticks.join('')}`} class="faint" />
      <path d={step === 'stretch' ? `M4 12H${end}` : `M4 12C9 9 13 15 18 12S${end - 5} 12 ${end} 12`} />
      <circle cx="4" cy="12" r="2" class="full" />
      {step === 'stretch' ? (
        <path d={`M${end - 4} 8L${end} 12L${end - 4} 16`} />
      ) : (
        <circle cx={end} cy="12" r="2" class="full" />
      )}
    </HairDrawing>
  );
}
