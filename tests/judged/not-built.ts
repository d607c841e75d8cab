/** What the program cannot answer yet says so: an error counts as a wrong row, never as a right one. */
export function notBuilt(what: string): never {
  throw new Error(`${what}: not built yet`);
}
