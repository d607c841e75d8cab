import type { Good } from '../goods.ts';
import type { Slots } from '../html.ts';
import { dialogs } from './dialogs.ts';
import { late } from './late.ts';
import { machine } from './machine.ts';
import { many } from './many.ts';
import { open } from './open.ts';
import { rows } from './rows.ts';
import { tabs } from './tabs.ts';

/** Every way in which a page of this shop marks up its list, by name. */
export const structures = { ...open, ...rows, ...tabs, ...dialogs, ...late, ...machine, ...many };

export type StructureName = keyof typeof structures;

export const structureNames = Object.keys(structures) as StructureName[];

export const slotsOf = (good: Good, structure: StructureName): Slots => structures[structure](good);
