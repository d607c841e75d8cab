// The bar of a shelf and our buttons, as any driven browser finds and presses them.
import { until } from './harness.ts';

export type Driven = {
  evaluate<R, A>(read: (given: A) => R, given: A): Promise<R>;
  mouse: { move(x: number, y: number): Promise<unknown>; down(): Promise<unknown>; up(): Promise<unknown> };
};

/** What the bar says. */
export const shelfBar = (page: Pick<Driven, 'evaluate'>): Promise<string> =>
  page.evaluate(() => {
    const roots = [...document.documentElement.children].flatMap(({ shadowRoot }) => shadowRoot ?? []);
    const bar = roots.map((root) => root.querySelector('.bar')).find((found) => found !== null);
    return [...(bar?.querySelectorAll<HTMLElement>('[data-t]') ?? [])]
      .map(({ dataset }) => dataset.t)
      .join(' ');
  }, null);

/** Waits until the bar says it. */
export const shelfBarSays = (page: Driven, wanted: RegExp, ms = 30_000): Promise<string> =>
  until(
    () => shelfBar(page),
    (bar) => wanted.test(bar),
    ms,
  );

/** Marks that are shown on cards, in the order they were drawn. */
export const shelfMarks = (
  page: Pick<Driven, 'evaluate'>,
): Promise<{ label: string; read: boolean; left: number; top: number }[]> =>
  page.evaluate(
    () =>
      [...document.documentElement.children]
        .flatMap(({ shadowRoot }) => [...(shadowRoot?.querySelectorAll<HTMLElement>('.mark') ?? [])])
        .filter(({ hidden }) => !hidden)
        .map((mark) => {
          const { left, top } = mark.getBoundingClientRect();
          const label = mark.getAttribute('aria-label') ?? '';
          return { label, read: mark.classList.contains('read'), left, top };
        }),
    null,
  );

/** Presses one of our buttons with the mouse, once it has stood still for a few looks; `held` is what is waited for before it is let go. */
export async function pressOurs(page: Driven, words: string, held?: () => Promise<unknown>): Promise<void> {
  const find = () =>
    page.evaluate((wanted) => {
      const roots = [...document.documentElement.children].flatMap(({ shadowRoot }) => shadowRoot ?? []);
      for (const root of roots)
        for (const button of root.querySelectorAll<HTMLElement>('button')) {
          const name =
            button.getAttribute('aria-label') ?? button.getAttribute('title') ?? button.dataset.t ?? '';
          const { left, top, width, height } = button.getBoundingClientRect();
          if (width > 0 && new RegExp(wanted).test(name.trim()))
            return { x: left + width / 2, y: top + height / 2 };
        }
      return undefined;
    }, words);
  let [before, same] = ['', 0];
  const at = await until(find, (spot) => {
    const now = JSON.stringify(spot) ?? '';
    same = now === before ? same + 1 : 0;
    before = now;
    return spot !== undefined && same > 1;
  });
  await page.mouse.move(at!.x, at!.y);
  await page.mouse.down();
  await held?.();
  await page.mouse.up();
}
