/** Runs of cable as a table shows them. */
import { voltsIn } from '$lib/domain/cable/figures';
import { loadOf } from '$lib/domain/cable/loads';
import type { Run } from '$lib/domain/cable';
import { lampAt, type Feed } from '$lib/domain/circuit';
import type { Fixture } from '$lib/domain/placement';
import type { Finding } from '$lib/domain/shared/findings';
import { distances } from '$lib/drawing/volt-chart';
import { nodeNames } from '$lib/print/words';

/** A place on a run: the transformer's terminals, a lamp, a bare tee or hub. */
export interface PlaceRow {
	id: string;
	name: string;
	fixture: Fixture | null;
	/** Metres of cable from the supply. */
	metres: number;
	volts: number | null;
	/** Worst case, volts. */
	low: number | null;
	high: number | null;
	/** Light of a filament lamp at its nominal volts, percent of what is marked; beyond ±10 % of its volts a guess. */
	light: { percent: number; guess: boolean } | null;
	/** What the worst case breaks, and whether it is broken in the nominal case already. Without a worst case, too little. */
	fault: { side: 'low' | 'high'; nominal: boolean } | null;
}
export interface LampRow extends PlaceRow {
	fixture: Fixture;
}
export const runLength = (run: Run): number => run.segments.reduce((sum, { length }) => sum + length, 0);
export const feedWords: Record<Feed, string> = {
	end: 'its end',
	middle: 'a tee in its middle',
	hub: 'a hub'
};

/** What the solver's own rounding may add, volts. */
const rounding = 1e-6;
function faultOf({ lamp }: Fixture, volts: number | null, low: number | null, high: number | null): PlaceRow['fault'] {
	if (volts === null) return null;
	const { minVolts, maxVolts } = lamp;
	if (volts < minVolts - rounding) return { side: 'low', nominal: true };
	if (volts > maxVolts + rounding) return { side: 'high', nominal: true };
	// The hot and long case has no solution: the cable cannot carry what the lamps then ask for.
	if (low === null || high === null || low < minVolts - rounding) return { side: 'low', nominal: false };
	return high > maxVolts + rounding ? { side: 'high', nominal: false } : null;
}

function lightOf({ lamp }: Fixture, volts: number): PlaceRow['light'] {
	const { filament, isBeyondPublished } = lampAt(loadOf(lamp), volts);
	return filament && { percent: 100 * filament.light, guess: isBeyondPublished };
}

/** The places of a run, nearest first; the transformer's terminals are the first. */
export function placesOf(run: Run, fixtures: readonly Fixture[]): PlaceRow[] {
	const far = distances(run);
	const names = nodeNames(run, fixtures);
	const [lowest, highest] = [voltsIn(run, 'low'), voltsIn(run, 'high')];
	return run.nodes
		.map((node, n): PlaceRow => {
			const fixture = fixtures.find(({ id }) => id === node.fixture) ?? null;
			const low = node.band?.low ?? lowest?.[n] ?? null;
			const high = node.band?.high ?? highest?.[n] ?? null;
			return {
				id: node.id,
				name: names.get(node.id) ?? node.id,
				fixture,
				metres: far.get(node.id) ?? 0,
				volts: node.volts,
				low,
				high,
				light: fixture && node.volts !== null ? lightOf(fixture, node.volts) : null,
				fault: fixture ? faultOf(fixture, node.volts, low, high) : null
			};
		})
		.toSorted((a, b) => a.metres - b.metres);
}

/** The lamps of a run, nearest first. */
export const lampsOf = (run: Run, fixtures: readonly Fixture[]): LampRow[] =>
	placesOf(run, fixtures).filter((place): place is LampRow => place.fixture !== null);

/** The lamp with the fewest volts; null where the run has no solution. */
export const farLampOf = (lamps: readonly LampRow[]): LampRow | null =>
	lamps.reduce<LampRow | null>(
		(least, lamp) => (lamp.volts !== null && (!least || lamp.volts < least.volts!) ? lamp : least),
		null
	);

/** What the lamps want: `10.8 to 12.0 V`, each window once. */
export const windowsOf = (lamps: readonly LampRow[]): string[] => [
	...new Set(lamps.map(({ fixture: { lamp } }) => `${lamp.minVolts.toFixed(1)} to ${lamp.maxVolts.toFixed(1)} V`))
];

/** How a run stands, by what the plan says about it and its lamps. */
export function rankOf(run: Run, findings: readonly Finding[]): 'stop' | 'look' | 'sound' {
	const own = new Set([run.id, ...run.nodes.flatMap(({ fixture }) => fixture ?? [])]);
	const about = findings.filter(
		({ about, code }) => about && own.has(about.id) && (about.kind === 'run' || /^(cable|circuit)\./.test(code))
	);
	if (about.some(({ rank }) => rank === 'stop')) return 'stop';
	return about.some(({ rank }) => rank === 'look') ? 'look' : 'sound';
}
