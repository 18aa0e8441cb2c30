import { loopOhms, ohmsPerKm as perKm, type ChosenRun } from '../circuit';
import { rules } from '../shared/rules';
import type { Point } from '../shared/geometry';
import type { Fixture } from '../placement';
import { nodeWorking, terminalWorking } from './describe';
import type { LaidNode } from './laid';
import type { LaidRun, Layout } from './layout';
import type { Run, RunCorner, RunNode, RunSegment } from './types';

/** Name of the first node of every run. */
export const supplyNode = 'supply';

export const runName = (place: number): string => `run ${place + 1}`;

/** Runs as the plan shows them: volts, amperes and their working put to the lengths laid. */
export function assembleRuns(layout: Layout, supplyAt: Point, fixtures: readonly Fixture[]): Run[] {
	const { choice } = layout;
	const tapVoltAmps = choice.runs.reduce(
		(sum, run) => sum + (run.nominal.ok ? run.tapVolts * run.nominal.sourceAmps : 0),
		0
	);
	return layout.runs.map((laid, place) => {
		const chosen = choice.runs.find((run) => run.id === laid.shape.id)!;
		const { nominal, ohmsPerKm } = chosen;
		const nodes = nodesOf(laid, chosen, supplyAt, fixtures);
		if (nominal.ok)
			nodes[0]!.working = terminalWorking(nominal.volts[0]!, chosen.tapVolts, choice.transformer, tapVoltAmps);
		const segments = laid.segments.map(({ from, to, length, route, byHand }, s): RunSegment => ({
			from: nodes[from]!.id,
			to: nodes[to]!.id,
			length,
			ohms: loopOhms(ohmsPerKm, length),
			amps: nominal.ok ? nominal.segmentAmps[s]! : null,
			path: route.path,
			crossings: route.crossings,
			...(byHand && { byHand })
		}));
		return {
			id: laid.shape.id,
			name: runName(place),
			tapVolts: chosen.tapVolts,
			cable: chosen.size,
			feed: laid.shape.feed ?? 'end',
			byHand: laid.byHand,
			conductorTemperature: rules['cable.temperature'].figures.nominal,
			ohmsPerKm,
			amps: nominal.ok ? nominal.sourceAmps : null,
			ampsLimit: chosen.ampsLimit,
			loadVoltAmps: nominal.ok ? nominal.sourceAmps * nominal.volts[0]! : markedVoltAmps(laid, fixtures),
			nodes,
			segments,
			corners: { low: cornerOf(chosen, 'low'), high: cornerOf(chosen, 'high') }
		};
	});
}
/** Rule cable.corners: hot, long, mains low; cold, short, mains high. */
function cornerOf({ size, low, high }: ChosenRun, which: 'low' | 'high'): RunCorner {
	const solution = which === 'low' ? low : high;
	const { length, mains } = rules['cable.corners'].figures;
	const { hot, cold } = rules['cable.temperature'].figures;
	const sign = which === 'low' ? 1 : -1;
	const conductorTemperature = which === 'low' ? hot : cold;
	return {
		mains: 1 - sign * mains,
		length: 1 + sign * length,
		conductorTemperature,
		ohmsPerKm: perKm(size, conductorTemperature),
		volts: solution.ok ? solution.volts : null,
		amps: solution.ok ? solution.segmentAmps : null
	};
}
const markedVoltAmps = (laid: LaidRun, fixtures: readonly Fixture[]): number =>
	laid.nodes.reduce(
		(sum, { terminal, bare }) => sum + (terminal === 0 || bare ? 0 : fixtures[terminal - 1]!.lamp.voltAmps),
		0
	);

/** Least and most volts over the nominal case and both corners. */
function bandOf({ nominal, low, high }: ChosenRun, node: number): RunNode['band'] {
	if (!nominal.ok || !low.ok || !high.ok) return null;
	const all = [nominal.volts[node]!, low.volts[node]!, high.volts[node]!];
	return { low: Math.min(...all), high: Math.max(...all) };
}

function nodesOf(laid: LaidRun, chosen: ChosenRun, supplyAt: Point, fixtures: readonly Fixture[]): RunNode[] {
	const { nominal } = chosen;
	const nameOf = ({ terminal, bare }: LaidNode) =>
		terminal === 0 ? 'the transformer' : bare ? 'the hub' : fixtures[terminal - 1]!.label;
	return laid.nodes.map((place, k): RunNode => {
		const { terminal, bare } = place;
		const fixture = terminal === 0 ? null : fixtures[terminal - 1]!;
		const id = fixture === null ? supplyNode : bare ? `${laid.shape.id}-hub` : fixture.id;
		const node: RunNode = {
			id,
			fixture: bare ? null : (fixture?.id ?? null),
			at: fixture?.at ?? supplyAt,
			volts: nominal.ok ? nominal.volts[k]! : null,
			band: fixture ? bandOf(chosen, k) : null
		};
		const segment = laid.segments[k - 1];
		if (!nominal.ok || !segment) return node;
		const from = { name: nameOf(laid.nodes[segment.from]!), volts: nominal.volts[segment.from]! };
		const amps = nominal.segmentAmps[k - 1]!;
		return { ...node, working: nodeWorking(nominal.volts[k]!, from, segment.length, chosen.ohmsPerKm, amps) };
	});
}
