/** A straight walk with a row of path lights from side to side, and the light along its middle by the plan's own law. Metres, lux, maintained. */
import { Tally } from '../../light';
import { fill, groundLux } from '../../placement';
import { fixtureModels, type FixtureModel } from '../../shared/catalogue';
import { rules } from '../../shared/rules';
import type { XY } from '../pictures';

/** The brighter of the path lights with an LED lamp. */
export const head: FixtureModel = fixtureModels.find(
	({ body, strength, lamp }) => body === 'path' && strength === 'bright' && lamp.kind === 'led'
)!;
export interface Row {
	length: number;
	width: number;
	spacing: number;
	/** x along the walk, y across it from the middle. */
	lamps: XY[];
	lux: { x: number; lux: number }[];
	average: number;
	least: { x: number; lux: number };
	/** Average ÷ least; null where the least is none. */
	evenness: number | null;
	points: number;
}
/** Places along a walk of lights so far apart, the first and the last at its ends; the step comes out even. */
export const stationsOf = (length: number, spacing: number): number[] => [
	0,
	...fill(0, length, spacing, false, 0, true),
	length
];
/** Points of the middle of a walk between two lights: the darkest, midway, is one of them. */
const between = 24;

/** A row at a spacing. Stakes stand the least clear distance (rule path.setback) and half a head outside the edges, left and right in turn. */
export function rowOf(length: number, width: number, spacing: number): Row {
	const out = width / 2 + rules['path.setback'].figures.low + head.headDiameter / 2;
	const stations = stationsOf(length, spacing);
	const lamps = stations.map((x, i) => ({ x, y: i % 2 === 0 ? -out : out }));
	const from = groundLux(head);
	const count = between * (stations.length - 1);
	const tally = new Tally();
	const lux = Array.from({ length: count + 1 }, (_, i) => {
		const x = (length * i) / count;
		const here = lamps.reduce((sum, lamp) => sum + from(lamp, { x, y: 0 }), 0);
		tally.add(here, 0);
		return { x, lux: here };
	});
	const { average, evenness, points } = tally.levels();
	const least = lux.reduce((dark, one) => (one.lux < dark.lux - 1e-12 ? one : dark));
	return { length, width, spacing: length / (stations.length - 1), lamps, lux, average, least, evenness, points };
}
