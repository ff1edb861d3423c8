/** Works out each figure of a run once. */
import type { Run } from './run-tree.ts';

/** The value of a run by a key, computed where it is asked for the first time; kept as long as the function is. */
export function oncePerRun<T>(): (run: Run, key: string, compute: () => T) => T {
  const known = new Map<Run, Map<string, T>>();
  return (run, key, compute) => {
    const ofRun = known.get(run) ?? new Map<string, T>();
    known.set(run, ofRun);
    const before = ofRun.get(key);
    if (before !== undefined) return before;
    const value = compute();
    ofRun.set(key, value);
    return value;
  };
}
