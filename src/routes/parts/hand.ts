/** What is set by hand on the circuit page, as the answer `power.circuit` that it makes. Undefined: nothing is left set. */
import { moveLamp as movedLamp, type Run } from '$lib/domain/cable';
import { blankYard, type CircuitChoice, type RunChoice } from '$lib/domain/yard';

type Choice = CircuitChoice | undefined;
/** What a run may have set, besides its lamps. */
export type Setting = { size: number } | { tap: number } | { feed: 'end' | 'middle' | 'hub' };

const lampsOf = (run: Run): string[] => run.nodes.flatMap(({ fixture }) => fixture ?? []);

/**
 * The entry that a run of the plan comes from; null when all of it is the plan's own choice. By id, else by a lamp that
 * the entry names, else the one that takes what no other names.
 */
export function entryOf(choice: Choice, runs: readonly Run[], run: Run): RunChoice | null {
	const entries = choice?.runs ?? [];
	const own = entries.find(({ id }) => id === run.id);
	if (own) return own;
	if (run.byHand.length === 0) return null;
	const lamps = new Set(lampsOf(run));
	const free = entries.filter((entry) => !runs.some(({ id }) => id === entry.id));
	return free.find((entry) => entry.lamps?.some((lamp) => lamps.has(lamp))) ?? free.find(({ lamps }) => !lamps) ?? null;
}

/** The choice without what says nothing. */
function tidy({ runs = [], ...rest }: CircuitChoice): Choice {
	const kept = runs.filter(({ id: _, ...set }) => Object.keys(set).length > 0 && set.lamps?.length !== 0);
	const next = { ...rest, ...(kept.length > 0 ? { runs: kept } : {}) };
	return Object.values(next).some((value) => value !== undefined) ? next : undefined;
}
const withEntry = (choice: Choice, entry: RunChoice): CircuitChoice => {
	const runs = choice?.runs ?? [];
	const known = runs.some(({ id }) => id === entry.id);
	return { ...choice, runs: known ? runs.map((one) => (one.id === entry.id ? entry : one)) : [...runs, entry] };
};
/** The run's entry, a new one where it has none. Among several runs it names its lamps, so that they stay together. */
const held = (choice: Choice, runs: readonly Run[], run: Run): RunChoice =>
	entryOf(choice, runs, run) ?? { id: run.id, ...(runs.length > 1 ? { lamps: lampsOf(run) } : {}) };

/** One thing of one run set. */
export const setOnRun = (choice: Choice, runs: readonly Run[], run: Run, set: Setting): Choice =>
	tidy(withEntry(choice, { ...held(choice, runs, run), ...set }));

/** One thing of one run left to the plan again. The lamps named go with the last of the rest. */
export function freeOnRun(
	choice: Choice,
	runs: readonly Run[],
	run: Run,
	what: 'size' | 'tap' | 'feed' | 'lamps'
): Choice {
	const entry = entryOf(choice, runs, run);
	if (!entry) return choice;
	const { [what]: _, ...rest } = entry;
	return tidy(withEntry(choice, rest));
}
/** All of one run left to the plan again. */
export function freeRun(choice: Choice, runs: readonly Run[], run: Run): Choice {
	const entry = entryOf(choice, runs, run);
	return entry ? tidy({ ...choice, runs: choice?.runs?.filter((one) => one !== entry) }) : choice;
}

/** A lamp led to another run, or to a run of its own. Both runs then name their lamps; cable drawn to the lamp goes. */
export const moveLamp = (choice: Choice, runs: readonly Run[], lamp: string, to: Run | 'own'): Choice => {
	const yard = { ...blankYard(), power: choice ? { circuit: choice } : {} };
	return movedLamp(yard, runs, lamp, to === 'own' ? 'new' : to.id) ?? undefined;
};

/** The transformer's size set, or with null left to the plan. */
export function setTransformer(choice: Choice, voltAmps: number | null): Choice {
	const { transformerVoltAmps: _, ...rest } = choice ?? {};
	return tidy(voltAmps === null ? rest : { ...rest, transformerVoltAmps: voltAmps });
}
