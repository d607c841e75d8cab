import type { Good } from '../goods.ts';
import { plain, type Slots } from '../html.ts';

// Lists in dialogs whose buttons stand far from them.
export const dialogs = {
  dialog: (good: Good): Slots => ({
    beside: `<p><button type="button" class="quiet" data-opens="label-dialog" aria-haspopup="dialog">See the label</button></p>`,
    end: `<dialog id="label-dialog" aria-label="The label"><h2>Ingredients</h2><p>${plain(good.list)}</p><form method="dialog"><button class="quiet">Close</button></form></dialog>`,
  }),

  'custom-dialog': (good: Good): Slots => ({
    beside: `<label-opener data-for="label-box"><button type="button" class="quiet" aria-haspopup="dialog">Ingredients</button></label-opener>`,
    end: `<label-box id="label-box"><div role="dialog" aria-modal="true" aria-label="Ingredients" tabindex="-1"><button type="button" class="quiet" data-shuts>Shut</button>
      <h1 class="h2">Ingredients</h1><p>${plain(good.list)}</p></div></label-box>`,
  }),
};
