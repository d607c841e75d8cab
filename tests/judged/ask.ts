// The adaptor: rows of judged cases in, the program's own answers out. One file a table.
export { askAdd } from './ask-add.ts';
export { askAllergens } from './ask-allergens.ts';
export { askBuild } from './ask-build.ts';
export { askDay } from './ask-day.ts';
export { askEstimate } from './ask-estimate.ts';
export { askFit } from './ask-fit.ts';
export { askKind } from './ask-kind.ts';
export { askOrder } from './ask-order.ts';
