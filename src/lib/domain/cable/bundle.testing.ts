/** Seeded layouts for the tests of cables that follow each other: over one ground, as first laid and led along each other. */
import { blankYard } from '../yard';
import { shareTrenches } from './bundle-layout';
import { Sharing } from './bundle-sharing';
import { makeGround, type Terminal } from './ground';
import type { Hand } from './hand';
import { layingOf, type Laying } from './laid';
import { layingCosts } from './costs';
import { layOut, type Layout } from './layout';
import { chooseOptions } from './loads';
import { obstaclesOf, type Obstacle } from './obstacles';
import { findRoutes } from './paths';
import { randomGround } from './random.testing';
import { siteSupply } from './supply';

const yard = blankYard();
export const options = chooseOptions('awg', yard, null);

export interface Case {
	laying: Laying;
	obstacles: Obstacle[];
	terminals: Terminal[];
	layout: Layout;
	shared: Layout;
	/** Price of the layout as first laid, by the true sum. */
	before: number;
}
/** A seeded yard of `count` lights. `apart`: each light on a run of its own. Null where none can be reached. */
export function bundleCase(seed: number, count: number, apart = false): Case | null {
	const { site, fixtures } = randomGround(seed, count);
	const spot = siteSupply(site, yard, fixtures);
	if (!spot) return null;
	const obstacles = obstaclesOf(site, true);
	const ground = makeGround(obstacles);
	const terminals = [ground.terminal(spot.at, 2), ...fixtures.map(({ at }) => ground.terminal(at))];
	const routes = findRoutes(site, ground, terminals, layingCosts, layingCosts.run);
	const reached = fixtures.flatMap((_, k) => (routes.costs[k + 1]! < Infinity ? [k + 1] : []));
	if (reached.length === 0) return null;
	const laying = layingOf({ routes, fixtures, mountHeight: spot.mountHeight, connectorPrice: 2.5 });
	const single = (member: number, k: number): Hand['runs'][number] => ({
		id: `run-${k + 1}`,
		choice: { id: `run-${k + 1}` },
		members: [member],
		size: null,
		tapVolts: null,
		feed: null,
		links: [],
		unused: [],
		drawn: null,
		said: []
	});
	const runs = apart ? reached.map(single) : [];
	const hand: Hand = { runs, rest: apart ? [] : reached, ids: new Set(runs.map(({ id }) => id)) };
	const layout = layOut(laying, hand, options)!;
	const before = new Sharing(laying, hand, options, layout).asLaid(layout.runs, layout.choice).choice.cost;
	return { laying, obstacles, terminals, layout, before, shared: shareTrenches(layout, laying, hand, options) };
}
