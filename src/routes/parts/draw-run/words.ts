/** Words of the page on which cable is laid by hand. */
import type { Cabling, Run } from '$lib/domain/cable';
import type { Plan } from '$lib/domain/plan';
import type { Finding } from '$lib/domain/shared/findings';
import { formatLength } from '$lib/domain/shared/units';
import type { Units } from '$lib/domain/yard';
import { costWords } from '../advice';
import { farLampOf, lampsOf, runLength } from '../runs';
import { transformer, type Step } from './links';

type Name = (id: string) => string;
/** In a sentence: `the transformer`, `P3`. */
export const inSentence = (id: string, name: Name): string => (id === transformer ? 'the transformer' : name(id));

/** The way of a run: `Transformer → P1 → P2; P1 → T3`. */
export function wayWords(steps: readonly Step[], name: Name): string {
	const parts: string[] = [];
	for (const { link, branch } of steps) {
		if (branch || parts.length === 0) parts.push(name(link.from));
		parts[parts.length - 1] += ` → ${name(link.to)}`;
	}
	return parts.join('; ');
}

/** Length, cost and the lamp with the fewest volts of a whole circuit. */
export interface Whole {
	/** Metres of cable. */
	length: number;
	/** Currency: cable, digging, connectors, transformer. */
	cost: number;
	/** Null: the circuit has no solution. */
	far: { name: string; volts: number } | null;
}
export function wholeOf({ runs, supply }: Pick<Cabling, 'runs' | 'supply'>, fixtures: Plan['fixtures']): Whole {
	const lamps = runs.flatMap((run) => lampsOf(run, fixtures));
	const far = lamps.some(({ volts }) => volts === null) ? null : farLampOf(lamps);
	return {
		length: runs.reduce((sum, run) => sum + runLength(run), 0),
		cost: supply?.cost ?? 0,
		far: far && { name: far.name, volts: far.volts! }
	};
}

/** Below this no tape can tell, metres. */
const noLength = 0.05;
/** `4.2 m more cable, about €31 more; the lamp with the fewest volts gets 10.93 V instead of 11.31 V.` */
export function besideAlone(now: Whole, alone: Whole, units: Units, currency: string): string {
	const more = now.length - alone.length;
	const length =
		Math.abs(more) < noLength
			? 'As much cable'
			: `${formatLength(Math.abs(more), units)} ${more > 0 ? 'more' : 'less'} cable`;
	const cost = costWords(now.cost - alone.cost, currency);
	const [a, b] = [now.far?.volts.toFixed(2), alone.far?.volts.toFixed(2)];
	const volts =
		a === undefined
			? 'some lamps have no volts at all'
			: a === b || b === undefined
				? `the lamp with the fewest volts gets ${a} V${b === undefined ? '' : ' either way'}`
				: `the lamp with the fewest volts gets ${a} V instead of ${b} V`;
	return `${length}, ${cost}; ${volts}.`;
}

/** What the plan has to say of a run, its lights and its cables; what stops it first. */
export function findingsOf(run: Run, findings: readonly Finding[]): Finding[] {
	const own = new Set([run.id, ...run.nodes.flatMap(({ fixture }) => fixture ?? [])]);
	return findings.filter(
		({ about, code, rank }) =>
			rank !== 'note' && about && own.has(about.id) && (about.kind === 'run' || /^(cable|circuit)\./.test(code))
	);
}
