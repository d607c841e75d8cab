export type Frame = { tab: number; frame: number };

/** Which page of a frame is the newest: work for an older one ends. */
export function createNewest() {
  const begun = new Map<string, object>();
  return {
    /** Says that this frame shows something newer than all before; the answer tells whether that holds no more. */
    begin({ tab, frame }: Frame): () => boolean {
      const [key, mine] = [`${tab} ${frame}`, {}];
      begun.set(key, mine);
      return () => begun.get(key) !== mine;
    },
    forget(tab: number): void {
      for (const key of begun.keys()) if (key.startsWith(`${tab} `)) begun.delete(key);
    },
  };
}
