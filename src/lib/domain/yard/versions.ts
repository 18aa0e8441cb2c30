/**
 * Versions of the saved yard. A saved file carries the version it was written by; reading takes it to today's one step at a
 * time. To change the format: raise `today`, and add to `steps`, under the version it starts from, the function
 * that rewrites such a file; a test in `versions.test.ts` proves that each has run.
 */
export const today = 1;

export type Saved = Record<string, unknown>;
/** From version n (the key) to n + 1. Version 1 is the first: there is nothing to come from yet. */
export const steps: Readonly<Record<number, (saved: Saved) => Saved>> = {};

/**
 * A saved yard brought to `target` from the version it was written by. `Error` names the first version that no step
 * leads on from: a hole in `steps`, never the fault of a file.
 */
export function bringUp(saved: Saved, from: number, table = steps, target = today): Saved {
	let current = saved;
	for (let version = from; version < target; version += 1) {
		const step = table[version];
		if (!step) throw new Error(`No step leads on from version ${version} of the yard`);
		current = { ...step(current), version: version + 1 };
	}
	return current;
}
