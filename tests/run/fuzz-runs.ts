/** How often a fuzzing test tries: `usual` in `npm test`, as often as it is told in `npm run fuzz`. */
export const runs = (usual: number): number => Number(process.env.STRANDLINE_FUZZ) || usual;
