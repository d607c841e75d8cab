import type { Item } from './steps.ts';

/** Water under its label names: a second one starts a second list. */
const waterName = /^\W*(?:(?:purified|distilled|deionized) )?(?:aqua|water|eau|вода|정제수|水)(?![a-z])/;

const waterAlone =
  /^\W*(?:destilliertes |renat |saf )?(?:wasser|agua|água|acqua|woda|voda|vatten|vand|vann|vesi|víz|apă|su)\s?(?:[(*†°/]|$)/;

export const isWater = (item: Item | undefined) =>
  item !== undefined && (waterName.test(item.name) || waterAlone.test(item.name));
