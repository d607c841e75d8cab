import type { Keeper, StoreState } from '../keeper.ts';
import type { Remembered } from '../remembered.ts';
import { logCsv, productsCsv } from './csv.ts';
import type { Everything } from './everything.ts';
import { type ImportHow, type ImportPlan, planImport } from './import-plan.ts';
import { type PlanReading, readPlanFile } from './plan-file.ts';
import { type FileReading, readFile } from './read-file.ts';

/** What the panel may ask of the store beyond changes: files in and out, how it stands, photos. */
export type PanelStore = {
  state(): Promise<StoreState>;
  /** Everything as one JSON file. */
  everything(): Promise<string>;
  /** The copy made before the last update or import, as a file; undefined where there is none. */
  copy(why: 'migration' | 'import'): Promise<{ when: string; text: string } | undefined>;
  readFile(text: string): FileReading;
  /** A plan that somebody sent. */
  readPlan(text: string): PlanReading;
  plan(file: Everything, how: ImportHow): Promise<ImportPlan>;
  csv(what: 'products' | 'log', remembered: Remembered): string;
  photo(key: string): Promise<string | undefined>;
};

export type { FileIssue, FileReading } from './read-file.ts';
export type { ImportHow, ImportPlan, StoreState };

/** Opens it over a keeper. Files are written with an indent, so that a line says something. */
export function openPanelStore(keeper: Keeper): PanelStore {
  return {
    state: keeper.state,
    everything: async () => JSON.stringify(await keeper.everything(), null, 1),
    copy: async (why) => {
      const copy = await keeper.copy(why);
      return copy && { when: String(copy.made), text: JSON.stringify(copy, null, 1) };
    },
    readFile,
    readPlan: readPlanFile,
    plan: async (file, how) => planImport(file, await keeper.everything(), how),
    csv: (what, remembered) => (what === 'products' ? productsCsv(remembered) : logCsv(remembered)),
    photo: keeper.photo,
  };
}
