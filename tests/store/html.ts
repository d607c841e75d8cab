/** Text as it may stand in HTML, in an attribute too. */
export const plain = (text: string) =>
  text.replace(
    /[&<>"]/g,
    (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign] as string,
  );

/** What a structure puts where on a product page. */
export type Slots = {
  /** In the column with the name and the price. */
  beside?: string;
  /** Below picture and column, full width. */
  below?: string;
  /** At the end of the body, far from everything (dialogs, panels). */
  end?: string;
  /** In the head. */
  head?: string;
};
