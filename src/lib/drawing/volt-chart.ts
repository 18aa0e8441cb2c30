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
	low: number;
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
	labels: TextMark[];
	/** What every lamp of the run can live with; the part within the chart. */
	window: { top: number; bottom: number; upper: boolean; lower: boolean; text: string; textY: number } | null;
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
	const lit = run.nodes.flatMap((node) => {
		const fixture = node.fixture === null ? undefined : byId.get(node.fixture);
		const reached = known.get(node.id);
		return fixture && reached && node.band ? [{ fixture, ...reached, low: node.band.low, high: node.band.high }] : [];
	});
	if (lit.length === 0) return null;

	const wants = {
		low: Math.max(...lit.map((p) => p.fixture.lamp.minVolts)),
		high: Math.min(...lit.map((p) => p.fixture.lamp.maxVolts))
	};
	const all = [...[...known.values()].map((p) => p.volts), ...lit.flatMap((p) => [p.low, p.high])];
	const near = (limit: number) => limit > Math.min(...all) - 1.2 && limit < Math.max(...all) + 1.2;
	const shown = [...all, ...[wants.low, wants.high].filter(near)];
	const low = Math.floor(Math.min(...shown) * 2 + 1e-6) / 2;
	const high = Math.max(low + 0.5, Math.ceil(Math.max(...shown) * 2 - 1e-6) / 2);
	const height = Math.round(Math.min(340, Math.max(230, width * 0.42)));
	const plot = { left: 56, right: width - 14, top: 14, bottom: height - 40 };
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
			outside: low < minVolts || high > maxVolts,
			x: x(metres),
			y: y(volts),
			yLow: y(low),
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
		{ minX: plot.left, maxX: width, minY: 0, maxY: plot.bottom }
	);
	const top = Math.max(plot.top, y(wants.high));
	const bottom = Math.min(plot.bottom, y(wants.low));
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
		labels,
		window:
			bottom > top
				? {
						top,
						bottom,
						upper: y(wants.high) >= plot.top,
						lower: y(wants.low) <= plot.bottom,
						text: `what these lamps want: ${wants.low.toFixed(1)} to ${wants.high.toFixed(1)} V`,
						textY: emptiest(top, bottom, points)
					}
				: null
	};
}

/** Height at which words at the right end of the window meet the fewest points. */
function emptiest(top: number, bottom: number, points: readonly VoltPoint[]): number {
	const inner = [top + 13, bottom - 7].filter((y) => y > top && y < bottom + 1);
	const busy = (y: number) => points.filter((p) => p.x > 200 && y > p.yHigh - 14 && y < p.yLow + 14).length;
	return inner.reduce((best, y) => (busy(y) < busy(best) ? y : best), inner[0] ?? top + 13);
}
