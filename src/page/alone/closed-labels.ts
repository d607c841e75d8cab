/** Sent alone into the page: words of what is closed there (accordions, tabs, dialogs). */
export const closedLabels = (): string[] => {
  const ask = Document.prototype.querySelectorAll;
  const closed =
    'details:not([open]) > summary, [aria-expanded="false"], [role="tab"]:not([aria-selected="true"]), [data-toggle="tab"]:not(.active), [aria-haspopup="dialog"]';
  return [...ask.call(document, closed)]
    .slice(0, 300)
    .map((element) => String(element.textContent).replace(/\s+/g, ' ').trim())
    .filter((words) => words.length > 0 && words.length <= 60);
};
