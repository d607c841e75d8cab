// The lookup's address for checks from outside.
export * from './names/lookup.ts';
