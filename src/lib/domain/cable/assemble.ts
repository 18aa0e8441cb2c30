import { loopOhms, ohmsPerKm as perKm, type ChosenRun } from '../circuit';
import { rules } from '../shared/rules';
import type { Point } from '../shared/geometry';
import type { Fixture } from '../placement';
import { nodeWorking, terminalWorking } from './describe';
import type { LaidRun, Layout } from './layout';
import type { Run, RunCorner, RunNode, RunSegment } from './types';

/** Name of the first node of every run. */
const supplyNode = 'supply';

/** Runs as the plan shows them: volts, amperes and their working put to the lengths laid. */
export function assembleRuns(layout: Layout, supplyAt: Point, fixtures: readonly Fixture[]): Run[] {
	const { choice } = layout;
	const tapVoltAmps = choice.runs.reduce(
		(sum, run) => sum + (run.nominal.ok ? run.tapVolts * run.nominal.sourceAmps : 0),
		0
	);
	return layout.runs.map((laid, k) => {
		const chosen = choice.runs.find((run) => run.id === laid.shape.id)!;
		const { nominal, ohmsPerKm } = chosen;
		const idOf = (node: number) => (node === 0 ? supplyNode : fixtures[laid.nodes[node]! - 1]!.id);
		const segments = laid.segments.map(({ from, to, length, route }, s): RunSegment => ({
			from: idOf(from),
			to: idOf(to),
			length,
			ohms: loopOhms(ohmsPerKm, length),
			amps: nominal.ok ? nominal.segmentAmps[s]! : null,
			path: route.path,
			crossings: route.crossings
		}));
		const first: RunNode = {
			id: supplyNode,
			fixture: null,
			at: supplyAt,
			volts: nominal.ok ? nominal.volts[0]! : null,
			band: null
		};
		if (nominal.ok)
			first.working = terminalWorking(nominal.volts[0]!, chosen.tapVolts, choice.transformer, tapVoltAmps);
		return {
			id: laid.shape.id,
			name: `run ${k + 1}`,
			tapVolts: chosen.tapVolts,
			cable: chosen.size,
			feed: chosen.shape.feed ?? 'end',
			byHand: [],
			conductorTemperature: rules['cable.temperature'].figures.nominal,
			ohmsPerKm,
			amps: nominal.ok ? nominal.sourceAmps : null,
			ampsLimit: chosen.ampsLimit,
			loadVoltAmps: nominal.ok ? nominal.sourceAmps * nominal.volts[0]! : markedVoltAmps(laid, fixtures),
			nodes: [first, ...lampNodes(laid, layout, fixtures)],
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
	laid.nodes.slice(1).reduce((sum, node) => sum + fixtures[node - 1]!.lamp.voltAmps, 0);

function lampNodes(laid: LaidRun, layout: Layout, fixtures: readonly Fixture[]): RunNode[] {
	const chosen = layout.choice.runs.find((run) => run.id === laid.shape.id)!;
	const { nominal } = chosen;
	return laid.nodes.slice(1).map((terminal, k): RunNode => {
		const fixture = fixtures[terminal - 1]!;
		const lamp = chosen.lamps[k]!;
		const node: RunNode = {
			id: fixture.id,
			fixture: fixture.id,
			at: fixture.at,
			volts: lamp.volts,
			band: lamp.low !== null && lamp.high !== null ? { low: lamp.low, high: lamp.high } : null
		};
		const segment = laid.segments[k]!;
		if (!nominal.ok) return node;
		const before = segment.from === 0 ? 'the transformer' : fixtures[laid.nodes[segment.from]! - 1]!.label;
		const from = { name: before, volts: nominal.volts[segment.from]! };
		const amps = nominal.segmentAmps[k]!;
		return { ...node, working: nodeWorking(nominal.volts[k + 1]!, from, segment.length, chosen.ohmsPerKm, amps) };
	});
}
