/** Lamplight on the window of a sensor, by the light stage: the plan's own lamps and the lights that are there. Metres, lux. */
import { distance, type Point } from '../../shared/geometry';
import { lightField, type LightField } from '../../light';
import type { Fixture } from '../../placement';
import type { Site } from '../../site';
import type { Pane } from './sky-share';

export type Runs = Parameters<typeof lightField>[2];

/** What one source throws on the window. */
export interface LampShare {
	id: string;
	existing: boolean;
	lux: number;
}
/** Lux on the window: from the plan's lamps, all of them burning, and from lights that are there. */
export interface Lamplight {
	own: number;
	others: number;
	/** The brightest first; none without light. */
	shares: LampShare[];
}
/** Garden lamps further from the transformer than this throw nothing worth counting near it, metres. */
const near = 50;

/**
 * The lamplight of a yard near a place, square to the window it falls on; nothing that is thrown back by walls or ground is
 * counted. `runs`: what the circuit gives each lamp; lamps of no run are taken at their rated volts.
 */
export function lamplightOf(
	site: Site,
	fixtures: readonly Fixture[],
	runs: Runs,
	about: Point
): (pane: Pane) => Lamplight {
	const field = lightField(
		site,
		fixtures.filter(({ at }) => distance(at, about) < near),
		runs
	);
	return (pane) => onWindow(field, pane);
}
function onWindow({ sources, share }: LightField, { x, y, z, nx, ny }: Pane): Lamplight {
	const point = { x, y, z };
	const facing = { x: nx, y: ny, z: 0 };
	const light: Lamplight = { own: 0, others: 0, shares: [] };
	sources.forEach(({ id, at, existing }, i) => {
		if ((at.x - x) * nx + (at.y - y) * ny <= 0) return;
		const lux = share(i, point, facing);
		if (!(lux > 0)) return;
		light[existing ? 'others' : 'own'] += lux;
		light.shares.push({ id, existing: existing === true, lux });
	});
	light.shares.sort((a, b) => b.lux - a.lux);
	return light;
}
