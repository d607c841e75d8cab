// The reading's address for checks from outside.
export * from './reading/reading.ts';
