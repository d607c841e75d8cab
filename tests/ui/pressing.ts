import { act } from 'preact/test-utils';

/** Lets promises and effects of a press come to rest. */
export const settle = () => act(() => new Promise((done) => setTimeout(done, 20)));

/** The first element of a selector with these words in it. */
export const withWords = (selector: string, words: string | RegExp) =>
  [...document.querySelectorAll<HTMLElement>(selector)].find((element) =>
    typeof words === 'string' ? element.textContent?.includes(words) : words.test(element.textContent ?? ''),
  );

export async function press(selector: string, words: string | RegExp) {
  const element = withWords(selector, words);
  if (!element) throw new Error(`nothing to press: ${selector} ${words}`);
  await act(() => element.click());
  await settle();
}

/** Types into the field with this label. */
export async function type(label: string | RegExp, text: string) {
  const id = withWords('label', label)?.getAttribute('for');
  const field = document.getElementById(id ?? '') as HTMLInputElement | null;
  if (!field) throw new Error(`no field: ${label}`);
  await act(() => {
    field.value = text;
    field.dispatchEvent(new Event('input', { bubbles: true }));
  });
  await act(() => void field.dispatchEvent(new Event('focusout', { bubbles: true })));
  await settle();
}

/** Chooses in the menu with this label. */
export async function choose(label: string | RegExp, value: string) {
  const select = withWords('.field', label)?.querySelector('select');
  if (!select) throw new Error(`no menu: ${label}`);
  await act(() => {
    select.value = value;
    select.dispatchEvent(new Event('change', { bubbles: true }));
  });
  await settle();
}
