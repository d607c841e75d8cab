import { useRef, useState } from 'preact/hooks';
import type { Head } from '../../core/hair/head.ts';
import type { ProductKind } from '../../core/product/product.ts';
import '../hair/hair.css';
import { keepHead, newHead } from '../../use/acts/matters/heads.ts';
import { headInUse } from '../../use/in-use.ts';
import { carryOut } from '../carry-out.ts';
import { Questions } from '../hair/questions.tsx';
import { ListReading } from '../page/list-reading.tsx';
import { Button } from '../parts/controls/button.tsx';
import { Choice } from '../parts/controls/choice.tsx';
import { TextField } from '../parts/controls/field.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import { type Announcement, Toast } from '../parts/toast.tsx';
import { Unread } from '../parts/waiting/pending.tsx';
import type { World } from '../world.ts';
import { PaintedSample } from './painted-sample.tsx';

/**
 * First run, one page: what it does, with the answer for a sample that changes as three questions are answered; which
 * sites it reads; off to a shop. A label of one's own, and who sees it all (nobody), when asked for.
 */
export function Welcome(props: { world: World; said: Announcement | undefined; onDismiss: () => void }) {
  const { world } = props;
  const { t } = world;
  const done = async (go: 'page' | 'hair') => {
    await world.change({ do: 'set', settings: { welcomed: true } });
    world.go(go);
  };
  return (
    <div class="panel welcome" lang={t.lang} dir={t.dir}>
      <main class="leaflet">
        <header class="leaflet-head">
          <p class="over">{t('welcome.over')}</p>
          <h1>{t('shell.name')}</h1>
          <p class="lead">{t('welcome.lead')}</p>
          <Unread world={world} />
          <PaintedSample t={t} text={t('welcome.sample')} world={world} />
        </header>
        <div class="leaflet-asks">
          <Hair world={world} />
          <Where world={world} />
          <section class="stack">
            <h2>{t('welcome.go')}</h2>
            <p>{t('welcome.go.how')}</p>
            <div class="actions">
              <Button look="strong" onClick={() => done('page')}>
                {t('welcome.go.panel')}
              </Button>
            </div>
          </section>
        </div>
        <div class="leaflet-more">
          <Disclosure summary={t('welcome.try')}>
            <Try world={world} />
          </Disclosure>
          <Disclosure summary={t('welcome.kept')}>
            <p>{t('welcome.kept.what')}</p>
            <p>{t('settings.privacy.where')}</p>
            <p>
              <strong>{t('welcome.kept.nobody')}</strong> {t('settings.privacy.sent')}
            </p>
            <p>{t('welcome.kept.shelf')}</p>
          </Disclosure>
          <p class="hint">{t('welcome.care')}</p>
        </div>
      </main>
      <Toast world={world} said={props.said} onDismiss={props.onDismiss} />
    </div>
  );
}

function Try({ world }: { world: World }) {
  const { t } = world;
  const [text, setText] = useState(t('welcome.sample'));
  const [read, setRead] = useState<string | undefined>();
  const [kind, setKind] = useState<ProductKind | undefined>();
  return (
    <div class="stack">
      <TextField
        label={t('panel.paste.list')}
        hint={t('welcome.try.hint')}
        rows={4}
        value={text}
        onInput={setText}
      />
      <div class="actions">
        <Button look="strong" onClick={() => setRead(text)} disabled={!text.trim()}>
          {t('panel.paste.read')}
        </Button>
      </div>
      {read && (
        <ListReading
          key={`${read}`}
          world={world}
          met={{ text: read, facts: { name: t('welcome.try.name'), ...(kind && { kind }) } }}
          onKind={setKind}
        />
      )}
    </div>
  );
}

function Where({ world }: { world: World }) {
  const { t, reach } = world;
  if (!reach) return null;
  return (
    <section class="stack">
      <h2>{t('welcome.where')}</h2>
      <Choice
        legend={t('settings.sites.which')}
        layout="list"
        options={(['press', 'shops', 'everywhere'] as const).map((value) => ({
          value,
          label: t(`welcome.where.${value}`),
          hint: t(`welcome.where.${value}.hint`),
        }))}
        value={
          reach.everywhere ? 'everywhere' : world.remembered.settings.reach === 'shops' ? 'shops' : 'press'
        }
        onChange={(to) => {
          // Straight from the press: nothing before the browser's own question.
          const asked =
            to === 'everywhere'
              ? reach.allow('everywhere')
              : reach.everywhere
                ? reach.withdraw('everywhere')
                : Promise.resolve(true);
          void asked.then(async (done) => {
            if (done) await world.change({ do: 'set', settings: { reach: to } });
            else world.say(t('panel.reach.refused'));
          });
        }}
      />
    </section>
  );
}

function Hair({ world }: { world: World }) {
  const { t } = world;
  const head = headInUse(world.remembered);
  // Before the first answer there is no head to keep; the first answer makes one.
  const first = useRef<Head | undefined>(undefined);
  if (!head) first.current ??= newHead(world, t('hair.my-hair'));
  const asked = head ?? first.current!;
  return (
    <section class="stack">
      <h2>{t('welcome.hair')}</h2>
      <Questions
        key={asked.id}
        head={asked}
        t={t}
        onAnswer={(changed) => void carryOut(world, keepHead(world.remembered, changed))}
      />
    </section>
  );
}
