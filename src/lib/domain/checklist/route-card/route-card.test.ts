import { describe, expect, it } from 'vitest';
import type { Run, RunSegment } from '../../cable';
import type { Fixture } from '../../placement';
import { makePlan } from '../../plan';
import { lineLength, type Point } from '../../shared/geometry';
import { makeSite, type Site } from '../../site';
import { blankYard, examples, type Yard } from '../../yard';
import { mirrored } from '../../yard/mirror.testing';
import { randomYard } from '../../yard/random.testing';
import { findingsOf, routeCards, type RouteCard } from '.';
import { letterOf } from './letters';

const at = (x: number, y: number): Point => ({ x, y });
/** A house front of 10 m, a walk 1.2 m wide straight from the street to its middle with a sleeve 5 m from the street, an oak. */
const yard = (units: 'metres' | 'feet'): Yard => ({
	...blankYard(),
	place: { units },
	house: { sections: [{ id: 'front', width: 10 }], depth: 8, eaves: 3, openings: [], porches: [] },
	walks: [
		{
			id: 'walk',
			name: 'front walk',
			line: [
				{ along: 5, out: 10 },
				{ along: 5, out: 0 }
			],
			width: 1.2,
			crossings: [{ id: 'old', kind: 'sleeve', at: 5 }]
		}
	],
	trees: [{ id: 'oak', name: 'oak', at: { along: 1, out: 5 }, spread: 4, trunk: 0.1 }]
});
const lamp = (label: string, x: number, y: number): Fixture => ({ id: `f-${label}`, label, at: at(x, y) }) as Fixture;
const segment = (from: string, to: string, path: Point[], crossings: RunSegment['crossings'] = []): RunSegment => ({
	from,
	to,
	length: lineLength(path) + 1.5 + (from === 'supply' ? 0.45 : 0),
	ohms: 0.1,
	amps: 1,
	path,
	crossings
});
function run(id: string, lamps: Fixture[], segments: RunSegment[], hub?: Point): Run {
	const node = (fixture: Fixture) => ({ id: fixture.id, fixture: fixture.id, at: fixture.at, volts: 12, band: null });
	const bare = (name: string, where: Point) => ({ id: name, fixture: null, at: where, volts: 12, band: null });
	return {
		id,
		name: id.replace('-', ' '),
		cable: { system: 'mm2', size: 2.5 },
		nodes: [bare('supply', at(10.1, -1)), ...(hub ? [bare('hub', hub)] : []), ...lamps.map(node)],
		segments
	} as Run;
}
const supply = { mountHeight: 0.3 } as Parameters<typeof routeCards>[3];
const [a, b, c] = [lamp('W1', 8, 0.15), lamp('P1', 6, 4.9), lamp('T1', 1, 5.3)];
/** Round the corner of the house, along its front to W1, out to P1, through the sleeve to T1 beside the oak. */
const path = {
	w: [at(10.1, -1), at(10.15, 0.15), at(8, 0.15)],
	p: [at(8, 0.15), at(6, 4.9)],
	t: [at(6, 4.9), at(5.75, 5), at(4.25, 5), at(1, 5.3)]
};
const sleeve = [{ strip: 'walk', crossing: 'old', kind: 'sleeve' as const, length: 1.5 }];
const one = run(
	'run-1',
	[a, b, c],
	[segment('supply', 'f-W1', path.w), segment('f-W1', 'f-P1', path.p), segment('f-P1', 'f-T1', path.t, sleeve)]
);
const cardsOf = (units: 'metres' | 'feet', runs: Run[], fixtures: Fixture[]) =>
	routeCards(makeSite(yard(units)), fixtures, runs, supply);
const legsOf = (card: RouteCard) => card.lines.flatMap((line) => line.legs);
const words = (card: RouteCard) => legsOf(card).map((leg) => `${leg.from.label}: ${leg.words}`);

describe('a small yard, worked by hand', () => {
	it('in metres', () =>
		expect(words(cardsOf('metres', [one], [a, b, c])[0]!)).toEqual([
			'transformer: Towards the street along the right side of the house, 130 mm off it, 1.15 m, to a, 210 mm from the right front corner of the house.',
			'a: Left along the front of the house, 150 mm off it, 2.15 m, to W1.',
			'W1: Left and towards the street, 5.15 m, to P1.',
			'P1: Left, 269 mm, to b, 150 mm from the edge of the front walk.',
			'b: Across the front walk in the sleeve, left, 1.50 m, to c.',
			'c: Left, 3.26 m, to T1.'
		]));
	it('in feet', () =>
		expect(words(cardsOf('feet', [one], [a, b, c])[0]!)).toEqual([
			'transformer: Towards the street along the right side of the house, 5 in off it, 3 ft 9 1/2 in, to a, 8 1/2 in from the right front corner of the house.',
			'a: Left along the front of the house, 6 in off it, 7 ft 1/2 in, to W1.',
			'W1: Left and towards the street, 16 ft 11 in, to P1.',
			'P1: Left, 10 1/2 in, to b, 6 in from the edge of the front walk.',
			'b: Across the front walk in the sleeve, left, 4 ft 11 in, to c.',
			'c: Left, 10 ft 8 1/2 in, to T1.'
		]));
	it('places by two tapes, depth, roots, slack and rise', () => {
		const [card] = cardsOf('metres', [one], [a, b, c]);
		expect(card!.points.map(({ label, place }) => `${label}: ${place}`)).toEqual([
			'transformer: 10.10 m along, 1.00 m back',
			'a: 10.15 m along, 150 mm out',
			'W1: 8.00 m along, 150 mm out',
			'P1: 6.00 m along, 4.90 m out',
			'b: 5.75 m along, 5.00 m out',
			'c: 4.25 m along, 5.00 m out',
			'T1: 1.00 m along, 5.30 m out'
		]);
		expect(legsOf(card!).map(({ cover }) => cover)).toEqual([0.15, 0.15, 0.15, 0.15, null, 0.15]);
		// 12 × 0.1 m round the oak.
		expect(legsOf(card!).map(({ roots }) => roots.length)).toEqual([0, 0, 0, 0, 0, 1]);
		expect(card!.cautions.join(' ')).toContain('Among the roots of the oak dig by hand');
		expect(card!.slack).toBeCloseTo(3 * 1.5, 9);
		expect(card!.rise).toBeCloseTo(0.3 + 0.15, 9);
		expect(card!.lines.map(({ title }) => title)).toEqual(['Main line, the transformer to T1']);
	});
	it('a tee: the longest way is the main line, then the branch from its joint', () => {
		const d = lamp('P2', 6, 7.9);
		const tee = { ...one, nodes: [...one.nodes, { ...one.nodes[1]!, id: d.id, fixture: d.id, at: d.at }] };
		const forked = { ...tee, segments: [segment('f-P1', 'f-P2', [b.at, d.at]), ...one.segments] };
		const [card] = cardsOf('metres', [forked], [a, b, c, d]);
		expect(card!.lines.map(({ title }) => title)).toEqual(['Main line, the transformer to T1', 'Branch from P1 to P2']);
		expect(card!.points.filter(({ branches }) => branches).map(({ label }) => label)).toEqual(['P1']);
		expect(words(card!).at(-1)).toBe('P1: Towards the street along the front walk, 400 mm off it, 3.00 m, to P2.');
	});
	it('a hub has a letter, and each lead starts there', () => {
		const hub = at(6, 3);
		const hubbed = run(
			'run-1',
			[a, b],
			[
				segment('supply', 'hub', [at(10.1, -1), at(10.15, 0.15), hub]),
				segment('hub', 'f-W1', [hub, a.at]),
				segment('hub', 'f-P1', [hub, b.at])
			],
			hub
		);
		expect(cardsOf('metres', [hubbed], [a, b])[0]!.lines.map(({ title }) => title)).toEqual([
			'Main line, the transformer to b',
			'Branch from the hub b to W1',
			'Branch from the hub b to P1'
		]);
	});
	it('the second run lies in the first one’s trench as far as they go together, and its way across is made', () => {
		const two = { ...one, id: 'run-2', name: 'run 2' };
		const [, card] = cardsOf('metres', [one, two], [a, b, c]);
		expect(legsOf(card!).map(({ sharedWith }) => sharedWith)).toEqual(Array(6).fill('run 1'));
		expect(legsOf(card!)[4]!.way).toBe('Across the front walk, the way already made, left');
	});
	it('a light on the spot of the one before has no way to go', () => {
		const twin = lamp('T2', 1, 5.3);
		const pair = run(
			'run-1',
			[a, twin],
			[segment('supply', 'f-W1', path.w), segment('f-W1', 'f-T2', [twin.at, twin.at])]
		);
		expect(words(cardsOf('metres', [pair], [a, twin])[0]!).at(-1)).toBe('W1: On the same spot, to T2.');
	});
	it('joints and bores say how deep the table wants them, and point at the findings', () => {
		const by = (kind: 'joint' | 'bore', crossing: string | null) => {
			const crossed = [{ strip: 'walk', crossing, kind, length: 1.5 }];
			const segments = [...one.segments.slice(0, 2), segment('f-P1', 'f-T1', path.t, crossed)];
			return legsOf(cardsOf('metres', [{ ...one, segments }], [a, b, c])[0]!)[4]!;
		};
		expect(by('joint', 'old')).toMatchObject({ cover: null, findings: ['cable.joint-shallow'] });
		expect(by('joint', 'old').protection).toContain('Shallower than the 150 mm of the table: ask the authority.');
		expect(by('bore', null)).toMatchObject({ cover: 0.15, findings: ['cable.bore-needed'] });
		expect(by('bore', 'old')).toMatchObject({ cover: 0.15, findings: [] });
	});
	it('a short stretch goes with its neighbour where the trench stays on its line, and stays where it does not', () => {
		const bent = (path: Point[]) => {
			const bends = run('run-1', [c], [segment('supply', 'f-T1', path)]);
			return legsOf(cardsOf('metres', [bends], [c])[0]!).map(({ length }) => length);
		};
		// 0.2 m at 0.08 m off the line, and 0.2 m at 0.2 m off it.
		expect(bent([at(0, 9), at(3, 9), at(3.2, 9.08), at(6, 9.08)])).toHaveLength(1);
		expect(bent([at(0, 9), at(3, 9), at(3, 9.2), at(6, 9.2)])).toHaveLength(3);
	});
});
it('letters are not read as figures, and go on after z', () => {
	const first = Array.from({ length: 600 }, (_, n) => letterOf(n));
	expect(first.slice(0, 12).join('')).toBe('abcdefghjkmn');
	expect(first[22]).toBe('z');
	expect(first[23]).toBe('aa');
	expect(new Set(first).size).toBe(600);
	expect(first.join('')).not.toMatch(/[ilo]/);
});

/** What holds of every card of a plan. */
function expectSound(plan: ReturnType<typeof makePlan>, where: string) {
	const cards = routeCards(plan.site, plan.fixtures, plan.runs, plan.supply);
	expect(cards).toHaveLength(plan.runs.length);
	cards.forEach((card, i) => {
		const from = plan.runs[i]!;
		const legs = legsOf(card);
		const ground = from.segments.reduce((sum, one) => sum + lineLength(one.path), 0);
		expect(
			legs.reduce((sum, leg) => sum + leg.length, 0),
			where
		).toBeCloseTo(ground, 9);
		expect(
			card.lines.reduce((sum, line) => sum + line.ground, 0),
			where
		).toBeCloseTo(ground, 9);
		expect(card.laid, where).toBeCloseTo(
			from.segments.reduce((sum, one) => sum + one.length, 0),
			9
		);
		// Lengths laid are rounded to the centimetre, stretch by stretch.
		expect(Math.abs(card.slack - 1.5 * from.segments.length), where).toBeLessThan(0.006 * from.segments.length);
		const reached = legs.flatMap(({ to }) => (to.kind === 'light' ? [to.label] : []));
		const fed = from.nodes.flatMap(({ fixture }) => plan.fixtures.find(({ id }) => id === fixture)?.label ?? []);
		expect(reached.toSorted(), where).toEqual(fed.toSorted());
		expect(new Set(card.points.map(({ label }) => label)).size, where).toBe(card.points.length);
		for (const { legs: line } of card.lines)
			line.forEach((leg, k) => {
				if (k > 0) expect(leg.from, where).toBe(line[k - 1]!.to);
			});
		const crossed = legs.filter(({ crossing }) => crossing).length;
		expect(crossed, where).toBe(from.segments.reduce((sum, one) => sum + one.crossings.length, 0));
		for (const leg of legs) expect(leg.words, where).toMatch(/^\p{Lu}.*[.]$/u);
		expect(JSON.stringify(card), where).not.toMatch(/undefined|NaN|null m|unknown|\[object|Infinity/);
	});
	return cards;
}
describe('each example', () => {
	for (const { id, yard: told } of examples)
		it(`${id}: sums, letters, lights; every code it names of a crossing is a finding of the plan`, () => {
			const plan = makePlan(told);
			for (const card of expectSound(plan, id)) {
				const codes = legsOf(card).flatMap((leg) => (leg.crossing ? leg.findings : []));
				const found = findingsOf(card, plan.findings).map(({ code }) => code);
				expect(new Set(found)).toEqual(new Set(codes));
			}
		});
	it.each(examples.map(({ id, yard: told }) => [id, told] as const))(
		'%s: what the cards have one dig is the trench of the plan',
		(_, told) => {
			const plan = makePlan(told);
			const cards = routeCards(makeSite(told), plan.fixtures, plan.runs, plan.supply);
			const open = cards.flatMap(legsOf).filter(({ crossing, sharedWith }) => !crossing && sharedWith === null);
			const dug = open.reduce((sum, { length }) => sum + length, 0);
			const { trench } = plan.supply!.route!;
			// A stretch that lies beside another cable for a part of its way only is dug whole on the card.
			expect(Math.abs(dug / trench - 1)).toBeLessThan(0.03);
		}
	);
});

const swapped = (text: string): string =>
	text.replace(/\b(left|right)\b/gi, (side) => {
		const other = side.toLowerCase() === 'left' ? 'right' : 'left';
		return /^[A-Z]/.test(side) ? other.charAt(0).toUpperCase() + other.slice(1) : other;
	});
/** Without lengths, which a mirror may round the other way. */
const unmeasured = (text: string): string => text.replace(/(\d+ ft )?[\d][\d ./]* (mm|m|in|ft)\b/g, '#');
/** Names of one’s own may hold a side, which no mirror turns. */
const unnamed = (site: Site): Site => ({
	...site,
	trees: site.trees.map((one, i) => ({ ...one, name: `tree ${i}` })),
	strips: site.strips.map((one, i) => ({ ...one, name: `strip ${i}` })),
	areas: site.areas.map((one, i) => ({ ...one, name: `area ${i}` })),
	walls: site.walls.map((one) => ({ ...one, name: `wall ${one.id.replace(/left|right/, 'side')}` }))
});
function mirrorOf(told: Yard, runs: readonly Run[]): { site: Site; runs: Run[] } {
	const width = (told.house.sections ?? []).reduce((sum, section) => sum + section.width, 0);
	const point = ({ x, y }: Point) => ({ x: width - x, y });
	return {
		site: unnamed(makeSite(mirrored(told))),
		runs: runs.map((one) => ({
			...one,
			nodes: one.nodes.map((node) => ({ ...node, at: point(node.at) })),
			segments: one.segments.map((part) => ({ ...part, path: part.path.map(point) }))
		}))
	};
}
describe('random yards', () => {
	const seeds = process.env['LONG'] ? 600 : 12;
	it('in metres and in feet: sums exact, letters unique, every light reached once, no broken word', () => {
		for (let seed = 1; seed <= seeds; seed += 1) {
			const told = randomYard(seed);
			for (const units of ['metres', 'feet'] as const)
				expectSound(makePlan({ ...told, place: { ...told.place, units } }), `seed ${seed}, ${units}`);
		}
	});
	it('in a mirror: left for right, nothing else', () => {
		let compared = 0;
		for (let seed = 1; seed <= seeds; seed += 1) {
			const told = randomYard(seed);
			const plan = makePlan(told);
			const plain = routeCards(unnamed(plan.site), plan.fixtures, plan.runs, plan.supply);
			const turned = mirrorOf(told, plan.runs);
			const other = routeCards(turned.site, plan.fixtures, turned.runs, plan.supply);
			const said = other.flatMap(words).map(swapped);
			compared += said.length;
			expect(said.map(unmeasured), `seed ${seed}`).toEqual(plain.flatMap(words).map(unmeasured));
			const lengths = (cards: RouteCard[]) => cards.flatMap(legsOf).map((leg) => leg.length);
			lengths(other).forEach((length, i) => expect(length, `seed ${seed}`).toBeCloseTo(lengths(plain)[i]!, 6));
		}
		expect(compared).toBeGreaterThan(10 * seeds);
	});
});
