/** Runs drawn by hand, as `layCable` lays them. */
import { describe, expect, it } from 'vitest';
import { solve, type Network } from '../circuit';
import { transformers } from '../shared/catalogue';
import { rules } from '../shared/rules';
import type { Fixture } from '../placement';
import type { Site } from '../site';
import { blankYard, type CircuitChoice, type RunChoice, type RunLink, type Yard } from '../yard';
import { layingCosts } from './costs';
import { drafted, type Drafted } from './drafts';
import { drawnRun } from './drawn';
import { lampsOfRun } from './drawn-changes';
import type { Drawn } from './drawn-links';
import { Bends } from './drawn-way';
import { plainTree, treeWay } from './feeds';
import { makeGround } from './ground';
import { layingOf } from './laid';
import { layCable } from './lay';
import { obstaclesOf } from './obstacles';
import { findRoutes } from './paths';
import { emptySite, fixtureOf, generator, randomGround, stripOf, withHouse } from './random.testing';
import type { Cabling, Run } from './types';

const setBy = (runs: RunChoice[], rest: Omit<CircuitChoice, 'runs'> = {}): Yard => ({
	...blankYard(),
	power: { circuit: { ...rest, runs } }
});
const plugged = (site: Site, x: number): Site => ({
	...site,
	receptacle: { at: { x, y: 0 }, known: true, gfci: true, inUseCover: true }
});
const site = plugged(withHouse(emptySite(), 10, 8), 2);
/** A row of five along the front, three metres apart. */
const row = [0, 1, 2, 3, 4].map((k) => fixtureOf(`row/p-${k}`, `P${k + 1}`, { x: 3 * k - 1, y: 5 }));
const id = (k: number) => `row/p-${k}`;
const link = (from: number | 'supply', to: number, via?: [number, number][]): RunLink => ({
	from: from === 'supply' ? from : id(from),
	to: id(to),
	...(via && { via: via.map(([along, out]) => ({ along, out })) })
});
const drawnAs = (links: RunLink[], more: Partial<RunChoice> = {}): Cabling =>
	layCable(site, row, setBy([{ id: 'run-1', links, ...more }]));
const ends = ({ segments }: Run) => segments.map(({ from, to }) => [from, to]);
const codes = ({ findings }: Cabling) => findings.map(({ code }) => code);
const messagesOf = ({ findings }: Cabling, code: string) =>
	findings.flatMap((one) => (one.code === code ? [one.message] : []));
const slack = 2 * rules['cable.slack'].figures.taken;

describe('a run as drawn', () => {
	it('is a chain, in the order drawn, and says that its route was set by hand', () => {
		const chain = [link('supply', 4), link(4, 0), link(0, 3), link(3, 1), link(1, 2)];
		const [run, ...others] = drawnAs(chain).runs;
		expect(others).toEqual([]);
		expect(ends(run!)).toEqual(chain.map(({ from, to }) => [from, to]));
		expect(run!.segments.every(({ byHand }) => byHand)).toBe(true);
		expect(run).toMatchObject({ byHand: ['route'], feed: 'end' });
	});
	it('is a tee where two cables go on from the first light, and a star where all leave the transformer', () => {
		const tee = drawnAs([link('supply', 2), link(2, 1), link(2, 3), link(1, 0), link(3, 4)]).runs[0]!;
		expect(tee.feed).toBe('middle');
		expect(ends(tee)).toEqual([['supply', id(2)], [id(2), id(1)], [id(2), id(3)], [id(1), id(0)], [id(3), id(4)]]); // prettier-ignore
		const star = drawnAs([0, 1, 2, 3, 4].map((k) => link('supply', k))).runs[0]!;
		expect(star.segments.map(({ from }) => from)).toEqual(Array(5).fill('supply'));
		const { mountHeight } = layCable(site, row, blankYard()).supply!;
		// Each lead climbs to the transformer by itself.
		for (const { length, path } of star.segments) {
			const metres = path.slice(1).reduce((sum, p, k) => sum + Math.hypot(p.x - path[k]!.x, p.y - path[k]!.y), 0);
			expect(length).toBeCloseTo(metres + slack + mountHeight + rules['cable.depth'].figures.lawn, 2);
		}
	});
	it('takes more cable by as much as a bend leads it about, and its volts follow', () => {
		const chain = [link('supply', 0), link(0, 1), link(1, 2), link(2, 3), link(3, 4)];
		const straight = drawnAs(chain, { size: 12, tap: 12 }).runs[0]!;
		const bent = drawnAs([...chain.slice(0, 3), link(2, 3, [[6.5, 9]]), chain[4]!], { size: 12, tap: 12 }).runs[0]!;
		// From (5, 5) by (6.5, 9) to (8, 5): two sides of an isosceles triangle in place of its base of 3.
		expect(bent.segments[3]!.length - straight.segments[3]!.length).toBeCloseTo(2 * Math.hypot(1.5, 4) - 3, 2);
		expect(bent.segments[3]!.path).toEqual([{ x: 5, y: 5 }, { x: 6.5, y: 9 }, { x: 8, y: 5 }]); // prettier-ignore
		expect(bent.segments[3]!.ohms).toBeCloseTo((2 * bent.ohmsPerKm * bent.segments[3]!.length) / 1000, 9);
		expect(bent.nodes[5]!.volts!).toBeLessThan(straight.nodes[5]!.volts! - 1e-4);
	});
	it('costs what its cable costs: bends are in the price, the trench and the length of routes', () => {
		const chain = [link('supply', 0), link(0, 1), link(1, 2), link(2, 3), link(3, 4)];
		const straight = drawnAs(chain).supply!;
		const bent = drawnAs([...chain.slice(0, 4), link(3, 4, [[9.5, 9]])]).supply!;
		const more = 2 * Math.hypot(1.5, 4) - 3;
		expect(bent.cost).toBeGreaterThan(straight.cost + more);
		expect(bent.route!.length - straight.route!.length).toBeCloseTo(more, 6);
		expect(bent.route!.trench - straight.route!.trench).toBeCloseTo(more, 6);
		expect(bent.route!.bound).toBeCloseTo(straight.route!.bound, 9);
		expect(bent.route!.gap).toBeGreaterThan(straight.route!.gap);
	});
	it('has a bound that a drawn short cut is not below', () => {
		const paved = { ...site, strips: [stripOf('walk', 'walk', [{ x: 6.4, y: 20 }, { x: 6.4, y: 0 }], 1.2)] }; // prettier-ignore
		const cut = [link('supply', 0), link(0, 1), link(1, 2), link(2, 3, [[6, 5.0001], [7.2, 5]]), link(3, 4)]; // prettier-ignore
		const { route } = layCable(paved, row, setBy([{ id: 'run-1', links: cut }])).supply!;
		expect(route!.length).toBeGreaterThanOrEqual(route!.bound - 1e-9);
		expect(route!.gap).toBeGreaterThanOrEqual(0);
	});
});

describe('volts of a drawn run', () => {
	const links = [link('supply', 2), link(2, 0, [[2, 9]]), link(2, 4), link(4, 3), link(0, 1)];
	const cabling = drawnAs(links, { size: 16, tap: 13 });
	const run = cabling.runs[0]!;
	const { ratedVoltAmps, regulation, model } = cabling.supply!;
	it('are those of the same network put together by hand', () => {
		expect(transformers.find((one) => one.id === model)!.voltAmps).toBe(ratedVoltAmps);
		const ohms = (metres: number) => (2 * metres * run.ohmsPerKm) / 1000;
		const place = new Map(['supply', id(2), id(0), id(4), id(1), id(3)].map((name, k) => [name, k]));
		const network: Network = {
			sourceVolts: 13,
			sourceOhms: (regulation * 13 ** 2) / ratedVoltAmps,
			nodes: 6,
			segments: run.segments.map(({ from, to, length }) => ({
				from: place.get(from)!,
				to: place.get(to)!,
				ohms: ohms(length)
			})),
			loads: row.map(({ lamp: { voltAmps, minVolts, maxVolts } }, k) => ({
				node: place.get(id(k))!,
				load: { kind: 'led', voltAmps, minVolts, maxVolts }
			}))
		};
		const solution = solve(network);
		if (!solution.ok) throw new Error(solution.message);
		for (const node of run.nodes) expect(node.volts!).toBeCloseTo(solution.volts[place.get(node.id)!]!, 9);
	});
	it('obey Ohm and Kirchhoff at every light, an LED drawing its volt-amperes', () => {
		const volts = new Map(run.nodes.map(({ id: node, volts: v }) => [node, v!]));
		for (const { from, to, ohms, amps } of run.segments) {
			expect(volts.get(from)! - volts.get(to)!).toBeCloseTo(ohms * amps!, 9);
			const onward = run.segments.reduce((sum, one) => sum + (one.from === to ? one.amps! : 0), 0);
			const { voltAmps } = row.find((one) => one.id === to)!.lamp;
			expect(amps! - onward).toBeCloseTo(voltAmps / volts.get(to)!, 9);
		}
	});
});

describe('what is left open', () => {
	it('is joined on from what is drawn, the nearest first; one cable leaves the transformer', () => {
		const run = drawnAs([link('supply', 3), link(3, 1)]).runs[0]!;
		expect(ends(run)).toEqual([['supply', id(3)], [id(3), id(1)], [id(3), id(2)], [id(3), id(4)], [id(1), id(0)]]); // prettier-ignore
		expect(run.segments.map(({ byHand }) => byHand ?? false)).toEqual([true, true, false, false, false]);
	});
	it('a part that does not reach the transformer is joined at the light that it was drawn from', () => {
		const run = drawnAs([link(4, 3), link(3, 2), link(2, 1), link(1, 0)]).runs[0]!;
		expect(ends(run)[0]).toEqual(['supply', id(4)]);
		expect(run.segments.map(({ byHand }) => byHand ?? false)).toEqual([false, true, true, true, true]);
	});
	it('rings and second ways are kept, not laid, and named', () => {
		const cabling = drawnAs([link('supply', 0), link(0, 1), link(1, 2), link(2, 0), link('supply', 2)]);
		expect(messagesOf(cabling, 'cable.drawn-unused')).toEqual([
			'Run 1: the cables you drew from P3 to P1 and from the transformer to P3 are not laid, because what they lead to is joined already. Each light is fed by one cable.'
		]);
		expect(cabling.runs[0]!.segments).toHaveLength(5);
	});
	it('so are cables to lights of other runs, and to lights that are gone', () => {
		const runs: RunChoice[] = [
			{ id: 'run-1', lamps: [id(0), id(1)], links: [link(0, 1), link(1, 3), { from: id(0), to: 'row/gone-1' }] },
			{ id: 'run-2', lamps: [id(2), id(3), id(4)] }
		];
		const cabling = layCable(site, row, setBy(runs));
		expect(messagesOf(cabling, 'cable.drawn-unused')).toEqual([
			'Run 1: the cable you drew from P2 to P4 is not laid, because it leads to a light of another run. Move that light to this run, or take the cable away.'
		]);
		expect(cabling.assumptions.map(({ message }) => message)).toContain(
			'Run 1: the cable you drew from P1 to row/gone-1 leads to a light no longer there, and is not laid. The drawing is kept.'
		);
		expect(cabling.runs.map((run) => lampsOfRun(run).toSorted())).toEqual([[id(0), id(1)], [id(2), id(3), id(4)]]); // prettier-ignore
	});
	it('lights that links name belong to a run without a list; the first such run feeds the rest', () => {
		const runs: RunChoice[] = [{ id: 'rest' }, { id: 'mine', links: [link('supply', 3), link(3, 1)] }];
		const [rest, mine] = layCable(site, row, setBy(runs)).runs;
		expect([lampsOfRun(rest!).toSorted(), lampsOfRun(mine!)]).toEqual([[id(0), id(2), id(4)], [id(3), id(1)]]); // prettier-ignore
		expect(lampsOfRun(drawnAs([link('supply', 3), link(3, 1)]).runs[0]!)).toHaveLength(5);
	});
	it('a run whose every cable leads to lights that are gone or of other runs is not laid, and that is said', () => {
		const runs: RunChoice[] = [{ id: 'run-1' }, { id: 'mine', links: [{ from: 'supply', to: 'row/gone-1' }] }];
		const { runs: laid, assumptions } = layCable(site, row, setBy(runs));
		expect(laid.map((run) => run.id)).toEqual(['run-1']);
		expect(assumptions.map(({ message }) => message)).toContain(
			'The run you called mine has no light left to feed, so it is not laid. The choice is kept.'
		);
	});
	it('a feed that is asked for gives way to what is drawn, and that is said', () => {
		const cabling = drawnAs([link('supply', 0), link(0, 1)], { feed: 'hub' });
		expect(cabling.runs[0]).toMatchObject({ feed: 'end', byHand: ['route'] });
		expect(messagesOf(cabling, 'cable.hand-unmet')[0]).toContain(
			'Run 1 cannot be fed from a hub: its cables are laid as you drew them'
		);
	});
});

describe('a cable that cannot lie as drawn', () => {
	it('stops the plan, names what it hits and where, and lies as the plan would lay it', () => {
		const through = drawnAs([link('supply', 0), link(0, 1, [[-1, -3], [3, -3]])]); // prettier-ignore
		const [message] = messagesOf(through, 'cable.drawn-blocked');
		expect(message).toBe(
			'The cable you drew from P1 to P2 on run 1 runs into the house, 0" along and −9 ft 10" out. The plan lays its own way there. Lead your bends round it.'.replaceAll(
				'"',
				' in'
			)
		);
		expect(through.findings.find(({ code }) => code === 'cable.drawn-blocked')).toMatchObject({
			rank: 'stop',
			about: { kind: 'run', id: 'run-1' }
		});
		expect(through.runs).toEqual(drawnAs([link('supply', 0), link(0, 1)]).runs);
	});
	it('is looked at where it comes closer than the plan keeps, or passes under a wall', () => {
		const wall = { ...site.walls[0]!, id: 'low', name: 'the low wall', of: 'garden' as const, from: { x: 5.5, y: 7 }, to: { x: 7.5, y: 7 } }; // prettier-ignore
		const walled = { ...site, walls: [...site.walls, wall] };
		const links = [link(0, 1, [[0, 0.05]]), link(2, 3, [[6.5, 9]])];
		const cabling = layCable(walled, row, setBy([{ id: 'run-1', links: [links[0]!, link(2, 3, [[6, 6], [6.5, 8]])] }])); // prettier-ignore
		expect(codes(cabling)).toEqual(expect.arrayContaining(['cable.drawn-close', 'cable.under-wall']));
		expect(codes(cabling)).not.toContain('cable.drawn-blocked');
		expect(messagesOf(cabling, 'cable.under-wall')[0]).toContain('from P3 to P4 on run 1 passes under the low wall');
	});
	it('brings the findings of the paving that it crosses', () => {
		const paved = { ...site, strips: [stripOf('walk', 'walk', [{ x: 6.4, y: 20 }, { x: 6.4, y: 0 }], 1.2)] }; // prettier-ignore
		const cabling = layCable(paved, row, setBy([{ id: 'run-1', links: [link(2, 3, [[5, 8], [8, 8]])] }])); // prettier-ignore
		expect(cabling.runs[0]!.segments.find(({ to }) => to === id(3))!.crossings).toEqual([
			expect.objectContaining({ strip: 'walk', crossing: null, kind: 'bore' })
		]);
		expect(codes(cabling)).toContain('cable.bore-needed');
	});
});

describe('on random ground', { timeout: 600_000 }, () => {
	const rounds = process.env.LONG ? 300 : 40;
	/** One run for all, as the plan lays it. */
	const one = (choice: Partial<RunChoice> = {}): Yard => setBy([{ id: 'run-1', feed: 'end', ...choice }]);

	/** By pair of places metres of cable, and what laying costs, before cables are led along each other. */
	const comesTo = ({ draft: { terminals }, shape }: Drafted) => ({
		cables: shape.segments
			.map(
				({ from, to, metres }) => [terminals[from]!, terminals[to]!].toSorted((a, b) => a - b).join(' ') + `: ${metres}`
			)
			.toSorted(),
		laying: shape.laying!.toFixed(6)
	});

	it(`the plan's own tree, drawn, is the plan's, in whole and in part, on ${2 * rounds} of them`, () => {
		let trees = 0;
		for (let seed = 1; seed <= 2 * rounds; seed++) {
			const { site: bare, fixtures } = randomGround(seed, 10);
			const ground = makeGround(obstaclesOf(bare, true));
			const terminals = [{ x: 1, y: 0.1 }, ...fixtures.map(({ at }) => at)].map((at) => ground.terminal(at));
			const routes = findRoutes(bare, ground, terminals, layingCosts, layingCosts.run);
			const members = fixtures.flatMap((_, k) => (Number.isFinite(routes.costs[k + 1]!) ? [k + 1] : []));
			if (members.length < 3) continue;
			trees++;
			const laying = layingOf({ routes, fixtures, mountHeight: 0.5, connectorPrice: 2 });
			const own = treeWay('run-1', 'end', plainTree(members, laying), laying);
			const { terminals: places, from } = own.draft;
			const all = from.map((before, k): Drawn => {
				const [a, b] = [places[before]!, places[k + 1]!];
				const name = (terminal: number) => (terminal === 0 ? 'supply' : fixtures[terminal - 1]!.id);
				return { link: { from: name(a), to: name(b) }, from: a, to: b };
			});
			const random = generator(seed);
			for (const share of [1, 0.6, 0.2]) {
				const links = all.filter(() => random() < share).toSorted(() => random() - 0.5);
				const { draft } = drawnRun(members, links, { routes, bending: new Bends(bare, ground, terminals).way });
				expect(draft === null, `seed ${seed}`).toBe(links.length === 0);
				if (draft) expect(comesTo(drafted('run-1', draft, laying)), `seed ${seed}`).toEqual(comesTo(own));
			}
		}
		expect(trees).toBeGreaterThan(rounds);
	});
	it(`no drawing is lost, none of a run's lights goes unfed, and taking links away brings the plan back, on ${rounds} of them`, () => {
		let laid = 0;
		for (let seed = 1; seed <= rounds; seed++) {
			const { site: ground, fixtures } = randomGround(seed, 8);
			const random = generator(3 * seed);
			const own = layCable(ground, fixtures, one());
			const pick = (): Fixture => fixtures[Math.floor(fixtures.length * random())]!;
			const links = Array.from({ length: 12 }, (): RunLink => {
				const from = random() < 0.2 ? 'supply' : pick().id;
				const via = random() < 0.5 ? [{ along: 24 * random() - 8, out: ground.street * random() }] : null;
				return { from, to: pick().id, ...(via && { via }) };
			});
			const cabling = layCable(ground, fixtures, one({ links }));
			expect(cabling.runs.flatMap(lampsOfRun).toSorted()).toEqual(own.runs.flatMap(lampsOfRun).toSorted());
			for (const { segments, nodes } of cabling.runs) {
				expect(segments).toHaveLength(nodes.length - 1);
				laid += segments.filter(({ byHand }) => byHand).length;
			}
			if (cabling.supply?.route) {
				const { length, bound, gap } = cabling.supply.route;
				expect(length, `seed ${seed}`).toBeGreaterThan(bound - 1e-6);
				expect(gap).toBeGreaterThanOrEqual(0);
			}
			expect(JSON.stringify(cabling)).not.toMatch(/NaN|undefined|Infinity|null,null/);
			expect(layCable(ground, fixtures, one())).toEqual(own);
		}
		expect(laid).toBeGreaterThan(2 * rounds);
	});
});
