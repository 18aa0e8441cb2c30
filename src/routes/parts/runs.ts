/** Runs of cable as a table shows them. */
import type { Run } from '$lib/domain/cable';
import type { CableSize } from '$lib/domain/circuit';
import type { Fixture } from '$lib/domain/placement';
import type { Working } from '$lib/domain/shared/working';

export interface LampRow {
	label: string;
	/** Metres of cable from the supply. */
	metres: number;
	volts: number | null;
	low: number | null;
	high: number | null;
	/** Inside the lamp's own window in every case; null when there is no solution. */
	sound: boolean | null;
	wants: { low: number; high: number };
	working: Working | null;
}
export const cableName = ({ system, size }: CableSize): string => (system === 'awg' ? `${size} AWG` : `${size} mm²`);
export const runLength = (run: Run): number => run.segments.reduce((sum, { length }) => sum + length, 0);

/** Metres of cable from the first node of a run to each of its nodes. */
function distances(run: Run): Map<string, number> {
	const found = new Map<string, number>();
	const first = run.nodes[0];
	if (first) found.set(first.id, 0);
	for (let round = 0; round < run.segments.length; round++) {
		for (const { from, to, length } of run.segments) {
			const [a, b] = [found.get(from), found.get(to)];
			if (a !== undefined && b === undefined) found.set(to, a + length);
			else if (b !== undefined && a === undefined) found.set(from, b + length);
		}
	}
	return found;
}

/** The lamps of a run, nearest first. */
export function lampsOf(run: Run, fixtures: readonly Fixture[]): LampRow[] {
	const far = distances(run);
	return run.nodes
		.flatMap((node) => {
			const fixture = fixtures.find(({ id }) => id === node.fixture);
			if (!fixture) return [];
			const { minVolts, maxVolts } = fixture.lamp;
			const low = node.band?.low ?? node.volts;
			const high = node.band?.high ?? node.volts;
			return [
				{
					label: fixture.label,
					metres: far.get(node.id) ?? 0,
					volts: node.volts,
					low,
					high,
					sound: low === null || high === null ? null : low >= minVolts && high <= maxVolts,
					wants: { low: minVolts, high: maxVolts },
					working: node.working ?? null
				}
			];
		})
		.toSorted((a, b) => a.metres - b.metres);
}
