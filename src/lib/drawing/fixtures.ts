/** Fixtures, their glow, and the devices that feed and switch them. The shape says how a fixture throws its light. */
import type { Fixture, Technique } from '../domain/placement';
import type { Plan } from '../domain/plan';
import type { GlowMark, Mark, Shape, Sizes, SymbolMark } from './marks';
import { bearingVector } from './sheet';
import { circlePath, segmentPath } from './path';
import type { Point } from '../domain/shared/geometry';

export const shapeOf: Readonly<Record<Technique, Shape>> = {
	uplight: 'triangle',
	wash: 'half-disc',
	graze: 'half-disc',
	path: 'circle',
	step: 'bar',
	drive: 'square',
	area: 'diamond',
	number: 'pentagon'
};
/** What each shape means, for the key beside the drawing. */
export const shapeWords: Readonly<Record<Shape, string>> = {
	triangle: 'aimed up; the tick shows which way',
	'half-disc': 'washes a wall; its round side faces it',
	circle: 'lights a walk from above',
	square: 'low light that marks a drive',
	bar: 'lights a step',
	diamond: 'lights a place to sit',
	pentagon: 'lights the house number',
	transformer: 'transformer',
	sensor: 'dusk sensor',
	receptacle: 'receptacle',
	'lamp-post': 'light that is there already'
};
/** How far the glow reaches, metres: a sign that light is there, not how much. */
const glowRadius: Readonly<Record<Technique, number>> = {
	uplight: 1.25,
	wash: 1.2,
	graze: 0.9,
	path: 1.3,
	step: 0.8,
	drive: 1,
	area: 1.2,
	number: 0.7
};

/** Degrees clockwise on the sheet from straight up towards which a fixture is aimed; null when it has no direction there. */
function directionOf(fixture: Fixture, faces: number): number | null {
	if (!fixture.aim || fixture.aim.tilt < 2) return null;
	const way = bearingVector(fixture.aim.bearing, faces);
	const turn = (Math.atan2(way.x, -way.y) * 180) / Math.PI;
	return Number.isFinite(turn) ? Math.round(turn) || 0 : null;
}

export const drawGlow = (fixtures: readonly Fixture[], px: number): GlowMark[] =>
	fixtures.map((fixture) => ({
		kind: 'glow',
		key: `glow-${fixture.id}`,
		at: fixture.at,
		radius: Math.min(48 * px, Math.max(glowRadius[fixture.technique], 13 * px))
	}));

/** A half disc turns its round side to the wall; an uplight stays upright and points with a tick. */
export const drawFixtures = (fixtures: readonly Fixture[], faces: number, sizes: Sizes): SymbolMark[] =>
	fixtures.map((fixture) => {
		const shape = shapeOf[fixture.technique];
		const direction = directionOf(fixture, faces);
		return {
			kind: 'symbol',
			key: `fixture-${fixture.id}`,
			at: fixture.at,
			shape,
			turn: shape === 'half-disc' ? (direction ?? 0) : 0,
			size: sizes.symbol,
			...(shape === 'triangle' && direction !== null ? { aim: direction } : {})
		};
	});

export interface Device {
	key: 'transformer' | 'receptacle' | 'sensor';
	/** Where it hangs. */
	at: Point;
	/** Where its symbol stands: beside the place when another symbol stands there. */
	shown: Point;
	/** Its size in fixtures. */
	times: number;
}

/** Transformer, receptacle and sensor; those that share a spot are set side by side, tied to it by a thin line. */
export function devicesOf(plan: Plan, px: number, sizes: Sizes): Device[] {
	const { site, supply, dusk } = plan;
	const wanted = [
		...(supply ? [{ key: 'transformer' as const, at: supply.at, times: 1.3 }] : []),
		...(site.receptacle?.known ? [{ key: 'receptacle' as const, at: site.receptacle.at, times: 0.95 }] : []),
		...(dusk.sensor ? [{ key: 'sensor' as const, at: dusk.sensor.at, times: 1 }] : [])
	];
	const placed: Device[] = [];
	for (const device of wanted) {
		const gap = (other: Device) => (device.times + other.times) * sizes.symbol * px + 3 * px;
		let shown = device.at;
		for (const other of placed) {
			const apart = shown.x - other.shown.x;
			if (Math.abs(apart) < gap(other) && Math.abs(shown.y - other.shown.y) < gap(other))
				shown = { x: other.shown.x + (apart < 0 ? -1 : 1) * gap(other), y: shown.y };
		}
		placed.push({ ...device, shown });
	}
	return placed;
}

/** Devices, and the lights that are there already with the circle they are known to light. */
export function drawDevices(plan: Plan, px: number, sizes: Sizes): Mark[] {
	const { site } = plan;
	const symbol = (key: string, at: Point, shape: Shape, times: number): SymbolMark => ({
		kind: 'symbol',
		key,
		at,
		shape,
		turn: 0,
		size: sizes.symbol * times
	});
	const devices = devicesOf(plan, px, sizes);
	return [
		...site.existing.map((light): Mark => ({
			kind: 'path',
			key: `reach-${light.id}`,
			d: circlePath(light.at, light.reach),
			ink: 'soft',
			weight: 0.7,
			fill: 'none',
			dash: [1.5, 5]
		})),
		...site.existing.map((light) => symbol(`existing-${light.id}`, light.at, 'lamp-post', 1.05)),
		...devices
			.filter(({ at, shown }) => shown !== at)
			.map(({ key, at, shown }): Mark => ({
				kind: 'path',
				key: `${key}-tie`,
				d: segmentPath(at, shown),
				ink: 'soft',
				weight: 0.8,
				fill: 'none'
			})),
		...devices.map((device) => symbol(device.key, device.shown, device.key, device.times)).toReversed()
	];
}
