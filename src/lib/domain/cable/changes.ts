/** Changes to the circuit's answers that an advice stands for. */
import type { Feed } from '../circuit';
import type { Advice } from '../shared/findings';
import type { CircuitChoice, RunChoice, Yard } from '../yard';
import { lampsOfLinks } from './drawn-links';
import { runChoices } from './hand';
import type { LaidRun, Layout } from './layout';

export type Change = Advice['changes'];

/** What is to be held of a run, undefined: no longer held. `groups`: lamps of the runs that stand in for it. */
interface Held {
	size?: number | undefined;
	tap?: number | undefined;
	feed?: Feed;
	groups?: readonly (readonly string[])[];
}

/** Without what is undefined, as it is read from a file; nothing at all is no answer. */
export function changedCircuit(yard: Yard, part: Partial<CircuitChoice>): Change {
	const { runs = [], ...rest } = { ...yard.power.circuit, ...part };
	const value = JSON.parse(JSON.stringify(runs.length > 0 ? { ...rest, runs } : rest)) as CircuitChoice;
	return [{ path: 'power.circuit', value: Object.keys(value).length > 0 ? value : null }];
}

/** The yard with a change made; null takes an answer back. */
export function withChange(yard: Yard, change: Change): Yard {
	const power: Record<string, unknown> = { ...yard.power };
	for (const { path, value } of change) {
		const key = path.replace(/^power\./, '');
		if (value === null) delete power[key];
		else power[key] = value;
	}
	return { ...yard, power: power as Yard['power'] };
}

const lampsOf = ({ shape }: LaidRun): string[] => shape.loads.map(({ id }) => id);

/** An id of the form `run-7` that no run bears. */
export function freeId(taken: readonly string[]): string {
	let n = 1;
	while (taken.includes(`run-${n}`)) n++;
	return `run-${n}`;
}

/**
 * The answers with a run held to what is asked. A run that the plan made itself is named by its lamps, so that the choice
 * stays with them, unless it is the only one.
 */
export function changedRun(yard: Yard, { runs }: Pick<Layout, 'runs'>, id: string, { groups, ...held }: Held): Change {
	const choices = runChoices(yard);
	const laid = runs.find(({ shape }) => shape.id === id)!;
	const known = choices.find((choice) => choice.id === id);
	const own: RunChoice = known ?? { id, ...(runs.length > 1 ? { lamps: lampsOf(laid) } : {}) };
	const next = (changed: readonly RunChoice[]): Change =>
		changedCircuit(yard, {
			runs: known ? choices.flatMap((one) => (one === known ? changed : [one])) : [...choices, ...changed]
		});
	if (!groups) return next([{ ...own, ...held } as RunChoice]);
	const taken = [...choices.map((one) => one.id), ...runs.map(({ shape }) => shape.id)];
	const { feed: _, links = [], ...kept } = own;
	const parts = groups.map((lamps, k) => {
		const partId = k === 0 ? id : freeId(taken);
		taken.push(partId);
		// Cable drawn from one part to another goes with the split.
		const drawn = links.filter((link) => lampsOfLinks([link]).every((lamp) => lamps.includes(lamp)));
		const within = drawn.length > 0 ? { links: drawn } : {};
		return { ...kept, ...held, ...within, id: partId, lamps: [...lamps] } as RunChoice;
	});
	return next(parts);
}

/** The answers with a run set by hand put back to `kept`, or taken out: its lamps are then the plan's to share out. */
export const releasedRun = (yard: Yard, id: string, kept: RunChoice | null): Change =>
	changedCircuit(yard, {
		runs: runChoices(yard).flatMap((choice) => (choice.id !== id ? [choice] : kept ? [kept] : []))
	});
