/** Volts against distance along one run, as marks in px. */
import type { Fixture } from '../domain/placement';
import type { Run } from '../domain/cable';
import { metresPerFoot, type UnitSystem } from '../domain/shared/units';
import { scale, ticks } from './chart';
import { placeLabels } from './labels';
import { shapeOf } from './fixtures';
import type { Shape, TextMark } from './marks';

export interface VoltPoint {
	id: string;
	label: string;
	shape: Shape;
	/** Metres of cable from the supply. */
	metres: number;
	volts: number;
	/** Worst case; `low` is null where it has no solution: the volts break down. */
	low: number | null;
	high: number;
	/** Worst case outside what the lamp wants. */
	outside: boolean;
	x: number;
	y: number;
	yLow: number;
	yHigh: number;
}
export interface VoltChartMarks {
	width: number;
	height: number;
	plot: { left: number; right: number; top: number; bottom: number };
	yTicks: { y: number; text: string }[];
	xTicks: { x: number; text: string }[];
	/** From each node to the next: px. */
	legs: { key: string; x1: number; y1: number; x2: number; y2: number }[];
	points: VoltPoint[];
	/** Bare tees and hubs. */
	joints: { id: string; x: number; y: number }[];
	labels: TextMark[];
	/** What every lamp of the run can live with; the part within the chart. Null where that is none. */
	window: { top: number; bottom: number; upper: boolean; lower: boolean } | null;
	/** What each lamp wants, behind it, where lamps of the run want different volts. */
	columns: { id: string; left: number; right: number; top: number; bottom: number }[];
	/** What they want, in words, above the plot. */
	caption: string;
}
interface Reached {
	metres: number;
	volts: number;
}

/** Metres of cable from the supply to each node; a node that no segment reaches is left out. */
export function distances(run: Run): Map<string, number> {
	const reached = new Map<string, number>();
	const first = run.nodes[0];
	if (!first) return reached;
	reached.set(first.id, 0);
	const waiting = [first.id];
	for (let id = waiting.shift(); id !== undefined; id = waiting.shift())
		for (const { from, to, length } of run.segments) {
			const next = from === id ? to : to === id ? from : null;
			if (next === null || reached.has(next)) continue;
			reached.set(next, reached.get(id)! + length);
			waiting.push(next);
		}
	return reached;
}

/**
 * The chart of one run, `width` px wide. Null when the circuit has no solution: then there is nothing true to draw, and
 * a stop finding says so.
 */
export function drawVolts(
	run: Run,
	fixtures: readonly Fixture[],
	units: UnitSystem,
	width: number
): VoltChartMarks | null {
	const far = distances(run);
	const byId = new Map(fixtures.map((fixture) => [fixture.id, fixture]));
	const known = new Map<string, Reached>();
	for (const node of run.nodes) {
		const metres = far.get(node.id);
		if (metres !== undefined && node.volts !== null) known.set(node.id, { metres, volts: node.volts });
	}
	const lit = run.nodes.flatMap((node, n) => {
		const fixture = node.fixture === null ? undefined : byId.get(node.fixture);
		const reached = known.get(node.id);
		if (!fixture || !reached) return [];
		const high = node.band?.high ?? run.corners.high.volts?.[n] ?? reached.volts;
		return [{ fixture, ...reached, low: node.band?.low ?? run.corners.low.volts?.[n] ?? null, high }];
	});
	if (lit.length === 0) return null;

	const wants = {
		low: Math.max(...lit.map((p) => p.fixture.lamp.minVolts)),
		high: Math.min(...lit.map((p) => p.fixture.lamp.maxVolts))
	};
	const differ = lit.some(({ fixture: { lamp } }) => lamp.minVolts < wants.low || lamp.maxVolts > wants.high);
	const all = [...[...known.values()].map((p) => p.volts), ...lit.flatMap((p) => [p.low ?? p.volts, p.high])];
	const shown = [...all, ...limitsShown(lit, Math.min(...all), Math.max(...all))];
	const low = Math.floor(Math.min(...shown) * 2 + 1e-6) / 2;
	const high = Math.max(low + 0.5, Math.ceil(Math.max(...shown) * 2 - 1e-6) / 2);
	const height = Math.round(Math.min(356, Math.max(246, width * 0.42 + 16)));
	const plot = { left: 56, right: width - 14, top: 30, bottom: height - 40 };
	const unit = units === 'feet' ? metresPerFoot : 1;
	const furthest = Math.max(...[...known.values()].map((p) => p.metres)) || 1;
	const x = scale([0, furthest * 1.06], [plot.left, plot.right]);
	const y = scale([low, high], [plot.bottom, plot.top]);
	const points = lit.map(({ fixture, metres, volts, low, high }): VoltPoint => {
		const { minVolts, maxVolts } = fixture.lamp;
		return {
			id: fixture.id,
			label: fixture.label,
			shape: shapeOf[fixture.technique],
			metres,
			volts,
			low,
			high,
			outside: low === null || low < minVolts || high > maxVolts,
			x: x(metres),
			y: y(volts),
			yLow: low === null ? plot.bottom : y(low),
			yHigh: y(high)
		};
	});
	const legs = run.segments.flatMap(({ from, to }) => {
		const [a, b] = [known.get(from), known.get(to)];
		return a && b ? [{ key: `${from}-${to}`, x1: x(a.metres), y1: y(a.volts), x2: x(b.metres), y2: y(b.volts) }] : [];
	});
	const labels = placeLabels(
		points.map((p) => ({
			key: p.id,
			text: p.label,
			anchors: [{ x: p.x, y: p.y }],
			clear: 9,
			size: 13,
			ink: p.outside ? ('look' as const) : ('house' as const),
			bold: true,
			optional: false
		})),
		{
			boxes: points.map((p) => ({ minX: p.x - 8, maxX: p.x + 8, minY: p.y - 8, maxY: p.y + 8 })),
			lines: [
				...legs.map(({ x1, y1, x2, y2 }) => [
					{ x: x1, y: y1 },
					{ x: x2, y: y2 }
				]),
				...points.map((p) => [
					{ x: p.x, y: p.yLow },
					{ x: p.x, y: p.yHigh }
				])
			],
			near: [],
			walls: []
		},
		1,
		{ minX: plot.left, maxX: width, minY: plot.top - 10, maxY: plot.bottom }
	);
	const inside = (volts: number) => y(Math.min(high, Math.max(low, volts)));
	const [top, bottom] = [inside(wants.high), inside(wants.low)];
	const window = wants.high > wants.low && bottom > top;
	const volts = ticks(low, high, 6);
	const digits = volts.some((v) => !Number.isInteger(v)) ? 1 : 0;
	return {
		width,
		height,
		plot,
		yTicks: volts.map((v) => ({ y: y(v), text: `${v.toFixed(digits)} V` })),
		xTicks: ticks(0, (furthest * 1.06) / unit, width < 420 ? 4 : 7).map((d) => ({ x: x(d * unit), text: String(d) })),
		legs,
		points,
		joints: run.nodes.slice(1).flatMap(({ id, fixture }) => {
			const at = known.get(id);
			return fixture === null && at ? [{ id, x: x(at.metres), y: y(at.volts) }] : [];
		}),
		labels,
		window: window ? { top, bottom, upper: wants.high <= high, lower: wants.low >= low } : null,
		columns: differ
			? lit.map(({ fixture: { id, lamp }, metres }) => ({
					id,
					left: x(metres) - 9,
					right: x(metres) + 9,
					top: inside(lamp.maxVolts),
					bottom: inside(lamp.minVolts)
				}))
			: [],
		caption: captionOf(wants, differ)
	};
}

interface Lit {
	fixture: Fixture;
	volts: number;
	low: number | null;
	high: number;
}
/** Nearer than this a limit is shown though no lamp comes to it, volts. */
const nearby = 1.2;
/** Of a window that a lamp is outside of, so much is shown, volts. */
const some = 0.5;
/** Volts that the chart has to reach: limits that a lamp breaks, with some of the window behind them, and limits close by. */
function limitsShown(lit: readonly Lit[], least: number, most: number): number[] {
	return lit.flatMap(({ fixture: { lamp }, volts, low, high }) => [
		...((low ?? volts) < lamp.minVolts ? [lamp.minVolts, Math.min(lamp.minVolts + some, lamp.maxVolts)] : []),
		...(high > lamp.maxVolts ? [lamp.maxVolts, Math.max(lamp.maxVolts - some, lamp.minVolts)] : []),
		...(lamp.minVolts > least - nearby ? [lamp.minVolts] : []),
		...(lamp.maxVolts < most + nearby ? [lamp.maxVolts] : [])
	]);
}
function captionOf({ low, high }: { low: number; high: number }, differ: boolean): string {
	if (high <= low) return 'no volts suit all these lamps';
	return `${differ ? 'common to all these lamps' : 'what these lamps want'}: ${low.toFixed(1)} to ${high.toFixed(1)} V`;
}
