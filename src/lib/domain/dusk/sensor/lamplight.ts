/** Lamplight on a spot for the sensor, by the light stage: the plan's own lamps and the lights that are there. Metres, lux. */
import { distance, type Point } from '../../shared/geometry';
import { lightField, type LightField } from '../../light';
import { towards } from '../../photometry';
import type { Fixture } from '../../placement';
import type { Site } from '../../site';
import type { Spot } from './faults';

export type Runs = Parameters<typeof lightField>[2];
type Vector = Parameters<LightField['lux']>[0];

/** What one source throws on a spot, in the direction in which the spot gets most of all together. */
export interface Share {
	id: string;
	existing: boolean;
	lux: number;
}
export interface Lamplight {
	/** Lux on a spot the way it gets most. */
	lux: number;
	/** The brightest first; none without light. */
	shares: Share[];
}

/** Up, and to eight sides: which way the window of a photocell will look nobody knows. As the light stage has it. */
const facings: readonly Vector[] = [
	{ x: 0, y: 0, z: 1 },
	...Array.from({ length: 8 }, (_, i) => ({ x: Math.sin((i * Math.PI) / 4), y: Math.cos((i * Math.PI) / 4), z: 0 }))
];
/** Garden lamps further from the transformer than this throw nothing worth counting near it, metres. */
const near = 50;

/**
 * The lamplight of a yard near a place. `runs`: what the circuit gives each lamp; lamps of no run are taken at their rated volts.
 */
export function lamplightOf(
	site: Site,
	fixtures: readonly Fixture[],
	runs: Runs,
	about: Point
): (spot: Spot) => Lamplight {
	const field = lightField(
		site,
		fixtures.filter(({ at }) => distance(at, about) < near),
		runs
	);
	return (spot) => onSpot(field, { x: spot.at.x, y: spot.at.y, z: spot.height });
}

function onSpot({ sources, share }: LightField, point: Vector): Lamplight {
	// Square to the way to each lamp first: most throw nothing here, and then no facing does.
	const lit = sources.flatMap((source, i) => {
		const way = towards(point, source.at);
		return share(i, point, way) > 0 ? [{ source, i }] : [];
	});
	let most: Lamplight = { lux: 0, shares: [] };
	if (lit.length === 0) return most;
	for (const facing of facings) {
		const shares = lit.map(({ source, i }) => ({
			id: source.id,
			existing: source.existing === true,
			lux: share(i, point, facing)
		}));
		const lux = shares.reduce((sum, one) => sum + one.lux, 0);
		if (lux > most.lux) most = { lux, shares };
	}
	return { lux: most.lux, shares: most.shares.filter(({ lux }) => lux > 0).sort((a, b) => b.lux - a.lux) };
}
