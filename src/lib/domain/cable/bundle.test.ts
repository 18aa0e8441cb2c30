import { Coordinate, GeometryFactory } from 'jsts/org/locationtech/jts/geom.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import { describe, expect, it } from 'vitest';
import { transformers } from '../shared/catalogue';
import { distance, type Point } from '../shared/geometry';
import { blankYard } from '../yard';
import { bundled, priceOf, type Cable } from './bundle';
import { BundleGround } from './bundle-ground';
import { bundleCase, options, type Case } from './bundle.testing';
import { layingCosts } from './costs';
import { crossedLegs, placedCrossings } from './crossing-places';
import { makeGround } from './ground';
import { layCable } from './lay';
import { stops } from './layout';
import { findRoutes } from './paths';
import { emptySite, fixtureOf, stripOf, withHouse } from './random.testing';
import { trenchLength } from './trench';
import { tooNear } from './visibility.testing';

const long = Boolean(process.env.LONG);

describe('two cables over open ground, on paper', () => {
	const site = emptySite();
	const ground = makeGround([]);
	const at = [
		{ x: 0, y: 0 },
		{ x: 10, y: 0 },
		{ x: 14, y: 3 }
	];
	const routes = findRoutes(
		site,
		ground,
		at.map((p) => ground.terminal(p)),
		layingCosts
	);
	const bundle = new BundleGround(routes.sought!);
	const cable = (from: number, to: number, price: number): Cable => ({
		chain: bundle.chain(from, to, routes.route(from, to)!)!,
		price,
		isFixed: false
	});
	it('share the way to the nearer light where that is cheaper', () => {
		const cables = [cable(0, 1, 1), cable(0, 2, 1)];
		// Apart: 10 m and √(14² + 3²) = 14.318 m, each at 1 for the cable and 2 for the trench.
		expect(priceOf(bundle, cables, 2)).toBeCloseTo(3 * (10 + Math.sqrt(205)), 9);
		const found = bundled(bundle, cables, 2);
		// Along the first, then 5 m of its own: cable 10 + 15, trench 15.
		expect(priceOf(bundle, found, 2)).toBeCloseTo(25 + 2 * 15, 9);
		expect(found.map(({ chain }) => chain.length)).toEqual([2, 3]);
	});
	it('stay apart where cable is dear, and where one is drawn by hand', () => {
		// The way round is 0.682 m longer and saves 9.318 m of trench: not at 28 a metre of cable.
		const dear = [cable(0, 1, 28), cable(0, 2, 28)];
		expect(bundled(bundle, dear, 2)).toEqual(dear);
		const near = [cable(0, 1, 27), cable(0, 2, 27)];
		expect(priceOf(bundle, near, 2) - priceOf(bundle, bundled(bundle, near, 2), 2)).toBeCloseTo(
			2 * (Math.sqrt(205) - 5) - 27 * (15 - Math.sqrt(205)),
			9
		);
		const drawn = [cable(0, 1, 1), { ...cable(0, 2, 1), isFixed: true }];
		expect(bundled(bundle, drawn, 2)[1]).toEqual(drawn[1]);
	});
});

describe('two runs along one wall', () => {
	const site = {
		...withHouse(emptySite(), 14, 8),
		receptacle: { at: { x: 1, y: 0 }, known: true, gfci: true, inUseCover: true }
	};
	const [near, far] = [fixtureOf('a', 'P1', { x: 6, y: 1.5 }), fixtureOf('b', 'P2', { x: 11, y: 1.5 })];
	const circuit = {
		runs: [
			{ id: 'run-1', lamps: ['a'] },
			{ id: 'run-2', lamps: ['b'] }
		]
	};
	const yard = { ...blankYard(), power: { ...blankYard().power, circuit } };
	const { supply, runs } = layCable(site, [near, far], yard);
	const metres = (path: readonly Point[]) => path.slice(1).reduce((sum, p, k) => sum + distance(p, path[k]!), 0);
	const from = (p: Point) => distance(supply!.at, p);
	it('lie in one trench to the nearer light', () => {
		const [first, second] = runs.map(({ segments }) => segments[0]!.path);
		expect(metres(first!)).toBeCloseTo(from(near.at), 1);
		// On to the second in a straight line of 5 m.
		expect(metres(second!)).toBeCloseTo(metres(first!) + 5, 9);
		expect(supply!.route!.trench).toBeCloseTo(metres(second!), 9);
		expect(supply!.route!.savedBySharing).toBeCloseTo(metres(first!) + from(far.at) - metres(second!), 1);
	});
	it('cost what the sum says: transformer, cable, trench once, two starts', () => {
		const { price } = transformers.find(({ id }) => id === supply!.model)!;
		const cable = runs.reduce((sum, run) => sum + run.segments[0]!.length * options.pricePerMetre(run.cable), 0);
		// Open ground: 2 a metre of trench; 3 m of it for each cable that leaves the transformer.
		const { trench } = supply!.route!;
		expect(supply!.cost).toBeCloseTo(price + cable + 2 * trench + 2 * 2 * layingCosts.run, 6);
	});
});

describe('one bore for two runs', () => {
	// A drive from the house to the street, no crossing declared, both lights beyond it.
	const drive = stripOf(
		'drive',
		'drive',
		[
			{ x: 8, y: 20 },
			{ x: 8, y: -80 }
		],
		3
	);
	const site = {
		...withHouse(emptySite(), 6, 8),
		strips: [drive],
		receptacle: { at: { x: 5, y: 0 }, known: true, gfci: true, inUseCover: true }
	};
	const lights = [fixtureOf('a', 'D1', { x: 10.5, y: 2 }), fixtureOf('b', 'D2', { x: 10.5, y: 9 })];
	const circuit = {
		runs: [
			{ id: 'run-1', lamps: ['a'] },
			{ id: 'run-2', lamps: ['b'] }
		]
	};
	const { runs, findings } = layCable(site, lights, { ...blankYard(), power: { ...blankYard().power, circuit } });
	it('is made in one place, and said once', () => {
		const places = runs.flatMap(({ segments }) =>
			segments.flatMap(({ path, crossings }) => placedCrossings(path, crossings).map(({ place }) => place))
		);
		expect(places).toHaveLength(2);
		expect(new Set(places).size).toBe(1);
		const said = findings.filter(({ code }) => code === 'cable.bore-needed');
		expect(said).toHaveLength(1);
		expect(said[0]!.message).toContain('run 1 and run 2');
	});
});

/** Metres dug by JSTS: each leg less the strips of 0.1 m on both sides of those before it that run its way. */
const factory = new GeometryFactory();
const lineOf = (a: Point, b: Point) => factory.createLineString([a, b].map(({ x, y }) => new Coordinate(x, y)));
const flat = new BufferParameters(8, BufferParameters.CAP_FLAT);
function dugByJsts({ shared }: Case): number {
	const legs = shared.runs.flatMap(({ segments }) =>
		segments.flatMap(({ route: { path, crossings } }) => {
			const crossed = crossedLegs(path, crossings);
			return path.slice(1).flatMap((b, k) => (crossed.includes(k + 1) ? [] : [[path[k]!, b] as const]));
		})
	);
	const sine = ([a, b]: readonly [Point, Point], [c, d]: readonly [Point, Point]) =>
		Math.abs((b.x - a.x) * (d.y - c.y) - (b.y - a.y) * (d.x - c.x)) / (distance(a, b) * distance(c, d));
	let sum = 0;
	legs.forEach((leg, k) => {
		if (distance(...leg) < 1e-9) return;
		let left = lineOf(...leg);
		for (const other of legs.slice(0, k)) {
			if (distance(...other) < 1e-9 || sine(leg, other) > 0.1) continue;
			left = OverlayOp.difference(left, BufferOp.bufferOp(lineOf(...other), 0.1, flat));
		}
		sum += left.getLength() as number;
	});
	return sum;
}

/** Each leg of a cable that was led anew keeps clear, save where a light or the transformer itself stands nearer. */
function keepsClear({ shared, laying, obstacles, terminals }: Case): void {
	for (const run of shared.runs)
		for (const { from, to, route } of run.segments) {
			const [a, b] = [run.nodes[from]!.terminal, run.nodes[to]!.terminal];
			expect([route.path[0], route.path.at(-1)]).toEqual([terminals[a]!.at, terminals[b]!.at]);
			if (a === b || route.path === laying.routes.route(a, b)!.path) continue;
			const crossed = crossedLegs(route.path, route.crossings);
			expect(crossed).toHaveLength(route.crossings.length);
			const ends = [terminals[a]!.at, terminals[b]!.at];
			for (let k = 1; k < route.path.length; k++) {
				const leg = [route.path[k - 1]!, route.path[k]!];
				// From what stands in an edge to open ground.
				const isStub =
					leg.some((p) => ends.includes(p)) && terminals.some((t) => t.at !== t.ground && leg.includes(t.at));
				if (isStub) continue;
				const strip = crossed.includes(k) ? route.crossings[crossed.indexOf(k)]!.strip : null;
				const standing = terminals.filter((t) => leg.includes(t.ground));
				const kept = obstacles.flatMap((o, i) => {
					if (strip !== null && o.id === strip) return [];
					return [{ ...o, clearance: Math.min(o.clearance, ...standing.map(({ stand }) => stand[i]!)) }];
				});
				expect(tooNear(leg, kept)).toBeLessThan(1e-6);
			}
		}
}

describe('random yards', { timeout: 3_600_000 }, () => {
	const rounds = long ? 3000 : 300;
	it(`are never dearer for it, nor have more problems, and every cable keeps clear and joins its ends, on ${rounds}`, () => {
		let cheaper = 0;
		let saved = 0;
		let spent = 0;
		for (let seed = 1; seed <= rounds; seed++) {
			const one = bundleCase(seed, 2 + (seed % 13), seed % 5 === 0);
			if (!one) continue;
			const { layout, shared, before } = one;
			expect(shared.choice.cost, `seed ${seed}`).toBeLessThanOrEqual(before + 1e-9);
			expect(stops(shared.choice), `seed ${seed}`).toBeLessThanOrEqual(stops(layout.choice));
			expect(shared.choice.problems.length, `seed ${seed}`).toBeLessThanOrEqual(layout.choice.problems.length);
			keepsClear(one);
			spent += before;
			saved += before - shared.choice.cost;
			if (shared.choice.cost < before - 0.01) cheaper++;
		}
		expect(cheaper).toBeGreaterThan(rounds / 4);
		expect(saved / spent).toBeGreaterThan(0.02);
	});
	it('dig what JSTS finds when each leg is cut by the strips of those before it', () => {
		for (let seed = 1; seed <= (long ? 400 : 80); seed++) {
			const one = bundleCase(seed, 2 + (seed % 9), seed % 3 === 0);
			if (!one) continue;
			const { trench } = trenchLength(one.shared.runs.flatMap(({ segments }) => segments.map(({ route }) => route)));
			const theirs = dugByJsts(one);
			// Strips end square to their own line, by up to 0.1 m × 0.1 off square to the other's.
			expect(Math.abs(trench - theirs), `seed ${seed}`).toBeLessThan(0.005 * theirs + 0.05);
		}
	});
});
