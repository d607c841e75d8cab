import { useRef } from 'preact/hooks';
import type { Head } from '../../core/hair/head.ts';
import { allowanceOf } from '../../core/hair/tolerance.ts';
import { WideDrawing } from '../charts/drawing.tsx';
import { Matrix } from '../charts/matrix.tsx';
import { pictureFile } from '../charts/picture-file.ts';
import '../hair/hair.css';
import { keepHead, newHead } from '../../use/acts/matters/heads.ts';
import { headInUse } from '../../use/in-use.ts';
import { carryOut } from '../carry-out.ts';
import { AllowanceCard } from '../hair/allowance-card.tsx';
import { AvoidList } from '../hair/avoid-list.tsx';
import { HeadPicker } from '../hair/head-picker.tsx';
import { MatrixWords } from '../hair/matrix-words.tsx';
import { MoreAbout } from '../hair/more-about.tsx';
import { Questions } from '../hair/questions.tsx';
import { StretchTestCard } from '../hair/stretch-test.tsx';
import { RemovedLately } from '../keeping/removed-lately.tsx';
import { Card } from '../parts/card.tsx';
import { Columns } from '../parts/columns.tsx';
import { Button } from '../parts/controls/button.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import { PersonSheetCard } from '../people/person-sheet.tsx';
import type { World } from '../world.ts';

/** A head of hair: three questions, what they come to and why, the picture of it, and the rest when wanted. */
export function HairPlace({ world }: { world: World }) {
  const { t, remembered } = world;
  const head = headInUse(world.remembered);
  // Before the first answer there is no head to keep; the first answer makes one.
  const first = useRef<Head | undefined>(undefined);
  if (!head) first.current ??= newHead(world, t('hair.my-hair'));
  const asked = head ?? first.current!;
  const keep = (changed: Head) => void carryOut(world, keepHead(world.remembered, changed));
  if (!head)
    return (
      <>
        <h2>{t('shell.place.hair')}</h2>
        <div class="stack">
          <h3>{t('hair.intro.title')}</h3>
          <p>{t('hair.intro')}</p>
        </div>
        <Questions key={asked.id} head={asked} t={t} onAnswer={keep} />
        <RemovedLately world={world} thing="heads" />
      </>
    );
  const allowance = allowanceOf(head, world.practice.allowance, {
    today: world.today,
    log: remembered.log,
  });
  return (
    <>
      <h2>{remembered.heads.length > 1 ? head.name : t('shell.place.hair')}</h2>
      <HeadPicker world={world} />
      <Columns
        start={
          <>
            <Questions key={head.id} head={head} t={t} onAnswer={keep} />
            {(allowance.level || head.damage) && (
              <AllowanceCard
                t={t}
                head={head}
                allowance={allowance}
                practice={world.practice.allowance}
                onChange={keep}
              />
            )}
            {allowance.level && <MatrixCard world={world} head={head} allowance={allowance} />}
          </>
        }
        end={
          <>
            {allowance.level && <StretchTestCard key={`${head.id}-stretch`} world={world} head={head} />}
            <AvoidList key={`${head.id}-avoid`} world={world} head={head} />
          </>
        }
      />
      <MoreAbout key={`${head.id}-more`} world={world} head={head} />
      <PersonSheetCard key={`${head.id}-sheet`} world={world} head={head} />
      <RemovedLately world={world} thing="heads" />
      <p class="hint">{t('hair.care')}</p>
    </>
  );
}

function MatrixCard(props: { world: World; head: Head; allowance: ReturnType<typeof allowanceOf> }) {
  const { world, head, allowance } = props;
  const { t } = world;
  const figure = useRef<HTMLElement>(null);
  const save = () => {
    const svg = figure.current?.querySelector('svg');
    if (svg) world.save('strand-and-porosity.svg', 'image/svg+xml', pictureFile(svg));
  };
  return (
    <Card
      title={t('hair.matrix')}
      actions={
        <Button look="quiet" onClick={save}>
          {t('hair.save-picture')}
        </Button>
      }
    >
      <figure class="stack" ref={figure}>
        <WideDrawing label={t('hair.matrix')}>
          <Matrix t={t} base={world.practice.allowance.base} head={head} allowance={allowance} />
        </WideDrawing>
        <figcaption class="hint">
          {t('hair.matrix.caption')} {t('hair.matrix.steps')}
        </figcaption>
      </figure>
      <Disclosure summary={t('hair.matrix.table')}>
        <MatrixWords t={t} practice={world.practice.allowance} head={head} />
      </Disclosure>
    </Card>
  );
}
