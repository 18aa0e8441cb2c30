/** The surfaces of a yard and what lands on each, against what should. Points, lux and bounds: `grids.ts`, `probe.ts`, `aims.ts`. */
import { directionOf, nearestOnLine, type Point } from '../shared/geometry';
import { rules } from '../shared/rules';
import { formatLength } from '../shared/units';
import type { Fixture } from '../placement';
import type { Site, Steps, Strip } from '../site';
import { sensorAim, spillAim, treadAim, verdictOf, walkAim, wallAim } from './aims';
import { crownLevels, crownLux, isLit } from './crowns';
import type { Emitter } from './emitter';
import { areaSpots, stripSpots, treadSpots, uprightSpots, wallSpots } from './grids';
import { levelsAt, luxOf, Tally, type Levels, type Probe, type Spot } from './probe';
import type { Receiver } from './types';
import { averageWorking } from './workings';
import { named } from './words';

/** Of a riser where only the treads are counted, metres (from memory). */
const riser = 0.15;
/** What a tread may fall short by before it is said, as a part of what is wanted: less nobody sees. Our assumption. */
const ofTread = 0.05;
/** Height of eyes at which light over the boundary is told, metres. */
const eyes = 1.5;
/** Middles of a neighbour's windows on two floors, metres; supposed, as nobody asks about next door. */
const floors = [1.5, 4.2] as const;
/**
 * How far beyond the boundary and beyond the street's edge such windows are supposed, metres; at the sides beside the house,
 * from its back to a little before its front, as a neighbour's house stands.
 */
const windowsBeyond = 1;
const acrossStreet = 12;
const beforeFront = 2;

export function receiver(
	{ id, kind, name, aim }: Pick<Receiver, 'id' | 'kind' | 'name' | 'aim'>,
	levels: Levels
): Receiver {
	return {
		id,
		kind,
		name,
		...levels,
		aim,
		verdict: verdictOf(kind, levels, aim),
		working: averageWorking(name, levels)
	};
}

/** All receivers of a yard but the sensor, whose place is chosen later. `fixtures`: of the probe's own sources, in their order. */
export function receiversOf(site: Site, fixtures: readonly Fixture[], probe: Probe): Receiver[] {
	return [
		...site.strips.flatMap((strip) => stripReceivers(strip, fixtures, probe)),
		...site.areas.flatMap((area) =>
			area.kind === 'seating' && area.light !== 'none'
				? [
						receiver(
							{ id: area.id, kind: 'seating', name: named(area.name, 'seating place'), aim: null },
							levelsAt(probe, areaSpots(area))
						)
					]
				: []
		),
		...wallReceivers(site, probe),
		...crownReceivers(site, probe),
		...edgeReceivers(site, probe)
	];
}

function stripReceivers(strip: Strip, fixtures: readonly Fixture[], probe: Probe): Receiver[] {
	const { id, kind } = strip;
	const name = named(strip.name, kind);
	const own = receiver({ id, kind, name, aim: kind === 'walk' ? walkAim() : null }, levelsAt(probe, levelSpots(strip)));
	const flights = strip.steps
		.filter((steps) => steps.end > steps.start)
		.map((steps, i, all) => {
			const which = all.length > 1 ? `, flight ${i + 1} from the street` : '';
			const aim = treadAim();
			const flight = receiver(
				{ id: steps.id, kind: 'steps', name: `the steps on ${name}${which}`, aim },
				flightLevels(strip, steps, fixtures, probe)
			);
			// What is wanted is wanted on each tread: a foot misses the darkest one.
			return flight.least < aim.low! - ofTread * aim.low! ? { ...flight, verdict: 'short' as const } : flight;
		});
	return [own, ...flights];
}

/** Points on a walk or drive but for its flights, whose treads are receivers of their own; all of one that is nothing but steps. */
function levelSpots(strip: Strip): Spot[] {
	const spots = stripSpots(strip);
	if (strip.steps.length === 0) return spots;
	const level = spots.filter(({ point }) => {
		const at = nearestOnLine(point, strip.centre)?.at ?? 0;
		return !strip.steps.some(({ start, end }) => at > start && at < end);
	});
	return level.length > 0 ? level : spots;
}

/**
 * Light on the treads of a flight, one value a tread: the mean of three points across it. The site is flat, so each tread is
 * looked at as the ground, with the flight's own lamps higher or lower by the risers between their tread and it.
 */
function flightLevels(strip: Strip, steps: Steps, fixtures: readonly Fixture[], probe: Probe): Levels {
	const going = (steps.end - steps.start) / Math.max(1, steps.treads);
	const treadOf = ({ at }: Fixture): number => {
		const near = nearestOnLine(at, strip.centre);
		return near ? Math.min(steps.treads - 1, Math.max(0, Math.floor((near.at - steps.start) / going))) : 0;
	};
	const lamps = new Map<number, number>();
	fixtures.forEach((fixture, i) => {
		if (fixture.target.kind === 'steps' && fixture.target.id === steps.id) lamps.set(i, treadOf(fixture));
	});
	const tally = new Tally();
	const others = probe.own.filter((_, i) => !lamps.has(i));
	treadSpots(strip, steps).forEach((spots, tread) => {
		const beside = [...lamps].map(([i, at]) => probe.own[i]!.raised((at - tread) * riser));
		const own = [...others, ...beside];
		const mean = (emitters: readonly Emitter[]): number =>
			spots.reduce((sum, spot) => sum + luxOf(emitters, probe.shadows, spot), 0) / spots.length;
		tally.add(mean(own), mean(probe.there));
	});
	return tally.levels();
}

function wallReceivers(site: Site, probe: Probe): Receiver[] {
	const { mostLit } = rules['wall.setback'].figures;
	return (
		site.walls
			.filter(({ light, length }) => light !== 'none' && length > 0)
			.map((wall) => ({ wall, spots: wallSpots(wall, mostLit) }))
			// A wall that is one large door has no face to light.
			.filter(({ spots }) => spots.length > 0)
			.map(({ wall, spots }) =>
				receiver(
					{ id: wall.id, kind: 'wall', name: named(wall.name, 'wall'), aim: wallAim(site, wall) },
					levelsAt(probe, spots)
				)
			)
	);
}

function crownReceivers(site: Site, probe: Probe): Receiver[] {
	return site.trees.filter(isLit).flatMap((tree) =>
		crownLevels.map(([part, share]) => {
			const height = tree.crownBase + share * (tree.height - tree.crownBase);
			const name = `the crown of ${named(tree.name, 'tree')}, ${formatLength(height, site.units)} up`;
			return receiver({ id: `${tree.id}/${part}`, kind: 'crown', name, aim: null }, crownLux(probe, tree, share));
		})
	);
}

interface Edge {
	id: 'left' | 'right' | 'street';
	/** Unit vector back into the yard. */
	inward: Point;
	/** Ends of the boundary; ends of the line on which windows are supposed. */
	boundary: [from: Point, to: Point];
	windows: [from: Point, to: Point];
	boundaryName: string;
	windowName: string;
}
function edgesOf(site: Site): Edge[] {
	const { leftBoundary: left, rightBoundary: right, street, bounds, house } = site;
	const ys = house.map((p) => p.y);
	const back = Math.min(bounds.minY, ...ys);
	const [first, last] =
		house.length > 0 ? [Math.min(...ys), Math.min(street, Math.max(...ys) + beforeFront)] : [back, street];
	const side = (id: 'left' | 'right', x: number, inward: 1 | -1): Edge => ({
		id,
		inward: { x: inward, y: 0 },
		boundary: [
			{ x, y: back },
			{ x, y: street }
		],
		windows: [
			{ x: x - inward * windowsBeyond, y: first },
			{ x: x - inward * windowsBeyond, y: last }
		],
		boundaryName: `the ${id} boundary`,
		windowName: `a window next door on the ${id}`
	});
	return [
		side('left', left, 1),
		side('right', right, -1),
		{
			id: 'street',
			inward: { x: 0, y: -1 },
			boundary: [
				{ x: left, y: street },
				{ x: right, y: street }
			],
			windows: [
				{ x: left, y: street + acrossStreet },
				{ x: right, y: street + acrossStreet }
			],
			boundaryName: 'the boundary at the street',
			windowName: 'a window across the street'
		}
	];
}
/** An upright face at the boundary, and windows supposed beyond it, both turned to the yard. */
function edgeReceivers(site: Site, probe: Probe): Receiver[] {
	const aim = spillAim(site);
	return edgesOf(site).flatMap(({ id, inward, boundary, windows, boundaryName, windowName }) => {
		const face = uprightSpots(...boundary, 1, [eyes], inward);
		const panes = uprightSpots(...windows, 2, floors, inward);
		return [
			receiver({ id: `boundary/${id}`, kind: 'boundary', name: boundaryName, aim }, levelsAt(probe, face)),
			receiver({ id: `window/${id}`, kind: 'neighbour-window', name: windowName, aim }, levelsAt(probe, panes))
		];
	});
}

/** Light on the window of the sensor: upright, looking along a bearing, degrees clockwise from north. */
export function sensorReceiver(probe: Probe, site: Site, { at, height, view }: SensorWindow): Receiver {
	const point = { x: at.x, y: at.y, z: height };
	const normal = { ...directionOf(view.faces, site.faces), z: 0 };
	return receiver(
		{ id: 'sensor', kind: 'sensor', name: 'the sensor', aim: sensorAim() },
		levelsAt(probe, [{ point, normal }])
	);
}
/** Where the dusk sensor hangs, metres, and which way its window looks. */
export interface SensorWindow {
	at: Point;
	height: number;
	view: { faces: number };
}
