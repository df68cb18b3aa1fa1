/** A browser's storage for tests; `room` is how many characters fit into it. */
export function fakeStore(start: Readonly<Record<string, string>> = {}, room = Number.POSITIVE_INFINITY) {
  const kept = new Map(Object.entries(start));
  const used = () => [...kept].reduce((sum, [key, value]) => sum + key.length + value.length, 0);
  return {
    kept,
    get length() {
      return kept.size;
    },
    key: (index: number) => [...kept.keys()][index] ?? null,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem(key: string, value: string) {
      const before = kept.get(key);
      kept.set(key, value);
      if (used() <= room) return;
      if (before === undefined) kept.delete(key);
      else kept.set(key, before);
      throw new DOMException("full", "QuotaExceededError");
    },
    removeItem: (key: string) => void kept.delete(key),
  };
}
