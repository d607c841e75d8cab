import type { World } from '../../src/ui/world.ts';

/** Files and photos: read in this window, with the code for them loaded when it is first asked for. */
export const openStore: NonNullable<World['store']> = async () => {
  const [{ openPanelStore }, { createKeeper }] = await Promise.all([
    import('../../src/store/files/panel-store.ts'),
    import('../../src/store/keeper.ts'),
  ]);
  return openPanelStore(createKeeper());
};

/** Hands the user a file: a link that is pressed for them. */
export function save(name: string, type: string, content: string | Blob) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(content instanceof Blob ? content : new Blob([content], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
