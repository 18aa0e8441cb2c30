import type { Plan } from '../plan';
import type { RunNode } from '../cable';
import type { Volts } from './types';

/** The node of each fixture that is on a run. */
export const nodesOf = (plan: Plan): Map<string, RunNode> =>
	new Map(
		plan.runs.flatMap((run) => run.nodes.flatMap((node) => (node.fixture === null ? [] : [[node.fixture, node]])))
	);

/** Volts over all lamps; null where no lamp has any that are known. */
export function voltsOf(plan: Plan): Volts | null {
	const nodes = nodesOf(plan);
	const lamps = plan.fixtures.flatMap(({ id, label }) => {
		const node = nodes.get(id);
		if (!node || node.volts === null) return [];
		return [{ label, volts: node.volts, band: node.band, working: node.working ?? null }];
	});
	const ordered = lamps.toSorted((a, b) => a.volts - b.volts);
	const [lowest, highest] = [ordered[0], ordered.at(-1)];
	if (!lowest || !highest) return null;
	const bands = lamps.flatMap(({ band }) => band ?? []);
	return {
		nominal: { low: lowest.volts, high: highest.volts },
		worst:
			bands.length === lamps.length
				? { low: Math.min(...bands.map(({ low }) => low)), high: Math.max(...bands.map(({ high }) => high)) }
				: null,
		lowest: { label: lowest.label, working: lowest.working },
		highest: { label: highest.label, working: highest.working }
	};
}
