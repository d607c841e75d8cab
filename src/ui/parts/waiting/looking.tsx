/** Stands while a search runs; `share` of it is behind, 0 to 1, once that is told. */
export const Looking = ({ words, share }: { words: string; share: number | undefined }) => (
  <label class="stack hint">
    {words}
    <progress value={share} />
  </label>
);
