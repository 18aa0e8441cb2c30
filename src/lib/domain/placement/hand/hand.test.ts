/** The hand in the plan, on seeded yards with seeded changes: what holds whatever was changed. */
import { describe, expect, it } from 'vitest';
import { distance, type Point } from '../../shared/geometry';
import { fixtureModels } from '../../shared/catalogue';
import { rules } from '../../shared/rules';
import { sources } from '../../shared/sources';
import { makeSite } from '../../site';
import { examples, yardSchema, type FixtureEdit, type HandFixtures, type Yard } from '../../yard';
import { randomYard } from '../../yard/random.testing';
import { placeFixtures, type Fixture, type Placement } from '../index';
import { isThere, pointOf } from './edits';
import { dice, pinned, randomHand } from './hand.testing';

const seeds = Array.from({ length: process.env.LONG ? 3000 : 100 }, (_, i) => i + 1);
const planOf = (yard: Yard): Placement => placeFixtures(makeSite(yard), yard);
const withHand = (yard: Yard, fixtures: HandFixtures | undefined): Yard => {
	const { fixtures: _, ...rest } = yard;
	return fixtures ? { ...rest, fixtures } : rest;
};
const demo = (id: string): Yard => structuredClone(examples.find((one) => one.id === id)!.yard);
const firstOf = (yard: Yard, technique: Fixture['technique']): Fixture =>
	planOf(yard).fixtures.find((fixture) => fixture.technique === technique)!;
const codesOf = ({ findings }: Placement): string[] =>
	findings.flatMap(({ code }) => (code.startsWith('placement.hand-') ? [code.slice('placement.hand-'.length)] : []));

describe('changes by hand on any yard', () => {
	const cases = seeds.map((seed) => {
		const yard = randomYard(seed);
		const site = makeSite(yard);
		const alone = placeFixtures(site, yard);
		return { seed, site, alone, yard: withHand(yard, randomHand(site, alone.fixtures, seed)) };
	});
	it('are valid answers, and the plan of them is whole', () => {
		let hand = 0;
		for (const { seed, yard, site } of cases) {
			expect(yardSchema.safeParse(yard).success, `seed ${seed}`).toBe(true);
			const { fixtures, findings } = placeFixtures(site, yard);
			expect(new Set(fixtures.map(({ id }) => id)).size, `seed ${seed}: ids`).toBe(fixtures.length);
			expect(new Set(fixtures.map(({ label }) => label)).size, `seed ${seed}: labels`).toBe(fixtures.length);
			for (const fixture of fixtures) {
				const { aim, at, height } = fixture;
				const numbers = [
					at.x,
					at.y,
					height,
					...(aim ? [aim.bearing, aim.tilt, aim.point.x, aim.point.y, aim.point.z] : [])
				];
				expect(numbers.every(Number.isFinite), `seed ${seed}: ${fixture.id}`).toBe(true);
				const model = fixtureModels.find(({ id }) => id === fixture.model);
				expect(model?.lamp).toEqual(fixture.lamp);
				for (const { rule, source } of fixture.reasons) {
					expect(rules).toHaveProperty([rule]);
					expect(sources).toHaveProperty([source]);
				}
				if (!fixture.byHand) continue;
				hand++;
				expect(fixture.reasons[0]?.rule).toBe('hand.placed');
			}
			for (const { rule, message } of findings) {
				if (rule) expect(rules).toHaveProperty([rule]);
				expect(message).not.toMatch(/NaN|undefined|Infinity|null/);
			}
		}
		expect(hand).toBeGreaterThan(seeds.length / 2);
	});
	it('give the same plan twice', () => {
		for (const { seed, yard } of cases.slice(0, 60))
			expect(JSON.stringify(planOf(yard)), `seed ${seed}`).toBe(JSON.stringify(planOf(structuredClone(yard))));
	});
	it('stand where they were set; what was taken away is gone', () => {
		for (const { seed, yard, site, alone } of cases) {
			const { fixtures } = placeFixtures(site, yard);
			for (const { id, at, removed } of yard.fixtures!.set!) {
				const fixture = fixtures.find((one) => one.id === id);
				if (removed) expect(fixture, `seed ${seed}: ${id} is back`).toBeUndefined();
				else if (at && alone.fixtures.some((one) => one.id === id))
					expect(fixture?.at, `seed ${seed}: ${id}`).toEqual(pointOf(at));
			}
			for (const { id, at } of yard.fixtures!.added!)
				expect(fixtures.find((one) => one.id === `added/${id}`)?.at, `seed ${seed}: ${id}`).toEqual(pointOf(at));
		}
	});
	it('leave the others in peace: the lights of the plan keep clear of those set by hand', () => {
		for (const { seed, yard, site } of cases) {
			const { fixtures } = placeFixtures(site, yard);
			const byHand = fixtures.filter(
				(one) => one.byHand && !one.byHand.every((mark) => mark === 'lamp' || mark === 'turned')
			);
			for (const own of fixtures.filter((one) => !one.byHand))
				for (const hand of byHand)
					expect(distance(own.at, hand.at), `seed ${seed}: ${own.id} by ${hand.id}`).toBeGreaterThan(0.3 - 1e-4);
		}
	});
	it('do not renumber or move a light that they do not touch: a pin where the plan has it changes nothing else', () => {
		for (const { seed, yard, site, alone } of cases) {
			const fixture = alone.fixtures[seed % Math.max(1, alone.fixtures.length)];
			if (!fixture) continue;
			const { fixtures } = placeFixtures(site, withHand(yard, { set: [pinned(fixture)] }));
			expect(
				fixtures.map(({ id, label, at }) => ({ id, label, at })),
				`seed ${seed}`
			).toEqual(alone.fixtures.map(({ id, label, at }) => ({ id, label, at })));
		}
	});
	it('put back, give the plan as it was, to the byte', () => {
		for (const { seed, yard, site, alone } of cases) {
			const plain = JSON.stringify(alone);
			expect(JSON.stringify(placeFixtures(site, withHand(yard, undefined))), `seed ${seed}`).toBe(plain);
			expect(JSON.stringify(placeFixtures(site, withHand(yard, { set: [], added: [] }))), `seed ${seed}`).toBe(plain);
		}
	});
	it('say what the plan alone would have done', () => {
		for (const { yard, site, alone } of cases.slice(0, 60)) {
			for (const { id, planned, byHand } of placeFixtures(site, yard).fixtures) {
				if (!byHand) expect(planned).toBeUndefined();
				const own = alone.fixtures.find((one) => one.id === id);
				if (byHand && own) expect(planned).toEqual({ at: own.at, aim: own.aim, model: own.model });
			}
		}
	});
});

/** Ten later answers, each on top of those before. */
const later: ((yard: Yard, roll: () => number) => Yard)[] = [
	(yard) => ({
		...yard,
		trees: [...(yard.trees ?? []), { id: 'new-tree', name: 'New tree', at: { along: 2, out: 4 }, light: 'bright' }]
	}),
	(yard) => ({ ...yard, walks: yard.walks?.map((walk) => ({ ...walk, width: 1.9 })) }),
	(yard) => ({ ...yard, power: { ...yard.power, lamp: 'halogen' } }),
	(yard) => ({ ...yard, trees: yard.trees?.map((tree) => ({ ...tree, spread: 9, height: 12 })) }),
	(yard) => ({ ...yard, house: { ...yard.house, texture: yard.house.texture === 'rough' ? 'smooth' : 'rough' } }),
	(yard) => ({ ...yard, walks: yard.walks?.map((walk) => ({ ...walk, lights: 'both' })) }),
	(yard) => ({
		...yard,
		walks: yard.walks?.map((walk) => ({
			...walk,
			steps: [...(walk.steps ?? []), { id: `new-steps-${walk.id}`, at: 2, treads: 3 }]
		}))
	}),
	(yard) => ({ ...yard, place: { ...yard.place, units: 'metres', faces: 77, surroundings: 'town' } }),
	(yard, roll) => ({
		...yard,
		trees: yard.trees?.map((tree) =>
			tree.at ? { ...tree, at: { along: tree.at.along + roll() * 2, out: tree.at.out + roll() } } : tree
		)
	}),
	(yard) => ({
		...yard,
		trees: yard.trees?.map((tree) => ({ ...tree, light: 'none' })),
		drives: yard.drives?.map((drive) => ({ ...drive, lights: 'none' }))
	})
];

describe('changes by hand under ten later answers', () => {
	const from = [...examples.map(({ yard }) => yard), ...seeds.slice(0, 40).map(randomYard)];
	it('pinned stays pinned, removed stays removed', () => {
		let held = 0;
		let gone = 0;
		for (const [index, start] of from.entries()) {
			const { fixtures } = planOf(start);
			const { roll } = dice(index + 1);
			const pins = fixtures.filter((_, i) => i % 3 === 0);
			const away = fixtures.filter((_, i) => i % 3 === 1);
			const set: FixtureEdit[] = [
				...pins.map(pinned),
				...away.map(({ id, at }) => ({ id, from: { along: at.x, out: at.y }, removed: true }))
			];
			let yard = withHand(start, { set });
			for (const [step, change] of later.entries()) {
				yard = change(yard, roll);
				const site = makeSite(yard);
				const plan = placeFixtures(site, yard);
				for (const pin of pins) {
					if (!isThere(site, pin.target)) continue;
					const now = plan.fixtures.find(({ id }) => id === pin.id);
					expect(now?.at, `yard ${index}, change ${step}: ${pin.id}`).toEqual(pin.at);
					expect(now?.byHand?.[0]).toBe('pinned');
					held++;
				}
				for (const { id } of away) {
					expect(
						plan.fixtures.some((one) => one.id === id),
						`yard ${index}, change ${step}: ${id}`
					).toBe(false);
					gone++;
				}
			}
		}
		expect(held).toBeGreaterThan(1000);
		expect(gone).toBeGreaterThan(1000);
	});
	it('when steps are added before it, a light that was taken away stays dark and the pinned one is not doubled', () => {
		const yard = demo('suburban');
		const walk = yard.walks![0]!;
		const straight: Yard = {
			...yard,
			walks: [
				{
					...walk,
					steps: [],
					curved: false,
					line: [
						{ along: 20, out: 16 },
						{ along: 20, out: 0 }
					],
					crossings: []
				}
			],
			drives: [],
			trees: [],
			spots: {}
		};
		const lights = planOf(straight).fixtures.filter(({ target }) => target.kind === 'walk');
		expect(lights.length).toBeGreaterThanOrEqual(4);
		const [, , third, fourth] = lights.toSorted((a, b) => b.at.y - a.at.y);
		const set: FixtureEdit[] = [
			pinned(third!),
			{ id: fourth!.id, from: { along: fourth!.at.x, out: fourth!.at.y }, removed: true }
		];
		const stepped: Yard = {
			...straight,
			walks: [{ ...straight.walks![0]!, steps: [{ id: 'flight', at: 1, treads: 2 }] }],
			fixtures: { set }
		};
		const { fixtures } = planOf(stepped);
		const on = (p: Point): number =>
			fixtures.filter(({ at, target }) => target.kind === 'walk' && distance(at, p) < 1).length;
		expect(on(third!.at)).toBe(1);
		expect(on(fourth!.at)).toBe(0);
	});
	it('what is lit being gone, the change is kept and said; it comes back with it', () => {
		const yard = demo('suburban');
		const light = firstOf(yard, 'uplight');
		const set = [{ id: light.id, at: { along: 1, out: 5 } }];
		const felled = planOf({
			...yard,
			fixtures: { set },
			trees: yard.trees!.filter(({ id }) => id !== light.target.id)
		});
		expect(felled.fixtures.some(({ id }) => id === light.id)).toBe(false);
		expect(codesOf(felled)).toContain('gone');
		expect(planOf({ ...yard, fixtures: { set } }).fixtures.find(({ id }) => id === light.id)?.at).toEqual({
			x: 1,
			y: 5
		});
	});
	it('the plan wanting no light there any more, a pinned one stays and it is said', () => {
		const yard = demo('suburban');
		const light = firstOf(yard, 'uplight');
		const plan = planOf({
			...yard,
			fixtures: { set: [pinned(light)] },
			trees: yard.trees!.map((tree) => ({ ...tree, light: 'none' as const }))
		});
		const now = plan.fixtures.find(({ id }) => id === light.id);
		expect(now?.at).toEqual(light.at);
		expect(now?.planned).toBeNull();
		expect(codesOf(plan)).toContain('kept');
	});
});

describe('what a change by hand breaks is said', () => {
	const yard = demo('suburban');
	const site = makeSite(yard);
	const moved = (fixture: Fixture, at: Point, also: Partial<FixtureEdit> = {}, base: Yard = yard): Placement =>
		planOf({ ...base, fixtures: { set: [{ id: fixture.id, at: { along: at.x, out: at.y }, ...also }] } });
	const path = firstOf(yard, 'path');
	const walk = site.strips.find(({ id }) => id === path.target.id)!;
	const middle = walk.centre[Math.floor(walk.centre.length / 2)]!;
	const say = (plan: Placement, what: string) => plan.findings.find(({ code }) => code === `placement.hand-${what}`);

	it('in the paving', () => {
		const finding = say(moved(path, middle), 'paving');
		expect(finding).toMatchObject({ rank: 'look', rule: 'path.setback', about: { kind: 'fixture', id: path.id } });
		expect(finding?.message).toContain('moved by you');
	});
	it('in the house: a stop', () => expect(say(moved(path, { x: 4, y: -4 }), 'house')?.rank).toBe('stop'));
	it('nearer than the setback, and further than it', () => {
		const edge = walk.left[1]!;
		const next = walk.left[2] ?? walk.left[0]!;
		const along = { x: next.x - edge.x, y: next.y - edge.y };
		const size = Math.hypot(along.x, along.y);
		const out = (metres: number): Point => {
			const mid = { x: (edge.x + next.x) / 2, y: (edge.y + next.y) / 2 };
			const one = { x: mid.x + (along.y / size) * metres, y: mid.y - (along.x / size) * metres };
			const two = { x: mid.x - (along.y / size) * metres, y: mid.y + (along.x / size) * metres };
			const to = walk.centre[1]!;
			return distance(one, to) > distance(two, to) ? one : two;
		};
		// Head of a path light: 200 mm across.
		expect(say(moved(path, out(0.15)), 'setback')?.message).toMatch(/nearer/);
		expect(say(moved(path, out(0.3)), 'setback')).toBeUndefined();
		expect(say(moved(path, out(0.7)), 'setback')?.message).toMatch(/further/);
	});
	it('too near water: a stop', () => {
		const pond: Yard = {
			...yard,
			spots: {
				...yard.spots,
				water: [{ id: 'pond', name: 'Pond', kind: 'pond', at: { along: 3, out: 8 }, length: 1, width: 1 }]
			}
		};
		const inside = moved(path, { x: 3, y: 10.5 }, {}, pond);
		expect(say(inside, 'water')).toMatchObject({ rank: 'stop', rule: 'water.clear' });
		expect(say(moved(path, { x: 3, y: 12 }, {}, pond), 'water')).toBeUndefined();
	});
	it('too near another light', () => {
		const [one, two] = planOf(yard).fixtures.filter(({ technique }) => technique === 'path');
		const set = [pinned(two!), { id: one!.id, at: { along: two!.at.x + 0.2, out: two!.at.y } }];
		expect(say(planOf({ ...yard, fixtures: { set } }), 'near')?.rule).toBe('place.clear');
	});
	it('outside the lot', () => expect(say(moved(path, { x: site.rightBoundary + 2, y: 3 }), 'lot')?.rank).toBe('look'));
	it('spaced closer than 3 m on an edge', () => {
		const lights = planOf(yard).fixtures.filter(
			({ technique, target }) => technique === 'path' && target.id === path.target.id
		);
		const other = lights.at(-1)!;
		const plan = moved(lights[0]!, { x: other.at.x, y: other.at.y + 0.6 });
		expect(say(plan, 'spacing')?.rule).toBe('path.spacing');
	});
	it('leaning more than 35°, and shining at someone who walks by', () => {
		const light = firstOf(yard, 'uplight');
		const turned = planOf({
			...yard,
			fixtures: { set: [{ id: light.id, aim: { along: light.at.x + 3, out: light.at.y, height: 1 } }] }
		});
		expect(turned.fixtures.find(({ id }) => id === light.id)?.byHand).toEqual(['turned']);
		expect(say(turned, 'lean')?.rule).toBe('tree.aim');
		const beside = walk.centre[0]!;
		const at = { along: beside.x + 2, out: beside.y - 0.5 };
		const dazzling = planOf({
			...yard,
			fixtures: { set: [{ id: light.id, at, aim: { along: beside.x, out: beside.y, height: 1.6 } }] }
		});
		expect(say(dazzling, 'sight')?.message).toContain('eyes');
	});
	it('in front of a door and of a garage door', () => {
		const fronts = site.walls
			.flatMap((wall) => wall.openings.map((opening) => ({ wall, opening })))
			.filter(({ wall }) => wall.front);
		for (const kind of ['door', 'garage'] as const) {
			const found = fronts.find(({ opening }) => opening.kind === kind);
			if (!found) continue;
			const { wall, opening } = found;
			const share = (opening.start + opening.end) / 2 / wall.length;
			const at = {
				x: wall.from.x + (wall.to.x - wall.from.x) * share + wall.outward.x * 0.6,
				y: wall.from.y + (wall.to.y - wall.from.y) * share + wall.outward.y * 0.6
			};
			const bare: Yard = { ...yard, walks: [], drives: [], house: { ...yard.house, porches: [] } };
			const tree = firstOf(bare, 'uplight');
			const plan = moved(tree, at, {}, bare);
			// The eaves catch an uplight's beam there as well; what stands nearest is said first.
			expect(
				codesOf(plan).some((code) => ['door', 'garage', 'eaves'].includes(code)),
				kind
			).toBe(true);
			const added = planOf({
				...bare,
				fixtures: { added: [{ id: 'one', technique: 'path', at: { along: at.x, out: at.y } }] }
			});
			expect(codesOf(added)).toContain(kind);
		}
		expect(fronts.some(({ opening }) => opening.kind === 'door')).toBe(true);
	});
	it('a light of the steps taken away', () => {
		const step = firstOf(demo('rural'), 'step') ?? firstOf(yard, 'step');
		const base = [yard, demo('rural'), demo('town')].find((one) =>
			planOf(one).fixtures.some(({ id }) => id === step.id)
		)!;
		const finding = say(planOf({ ...base, fixtures: { set: [{ id: step.id, removed: true }] } }), 'removed');
		expect(finding).toMatchObject({ rank: 'look' });
		expect(finding?.message).toContain('steps');
	});
	it('a lamp of another kind', () => {
		const light = firstOf(yard, 'uplight');
		const model = fixtureModels.find(({ body, lamp }) => body === 'spot' && lamp.kind === 'halogen')!;
		const plan = planOf({
			...yard,
			power: { ...yard.power, lamp: 'led' },
			fixtures: { set: [{ id: light.id, model: model.id }] }
		});
		expect(plan.fixtures.find(({ id }) => id === light.id)).toMatchObject({
			byHand: ['lamp'],
			model: model.id,
			lamp: model.lamp
		});
		expect(say(plan, 'lamp')?.rule).toBe('cable.volts');
	});
	it('a path light added with nothing to light gets a letter of its own, and every change its reason', () => {
		const plan = planOf({
			...yard,
			fixtures: { added: [{ id: 'gate', technique: 'path', at: { along: -1, out: 6 } }] }
		});
		expect(plan.fixtures.find(({ id }) => id === 'added/gate')).toMatchObject({
			label: 'L1',
			byHand: ['added'],
			planned: null
		});
	});
	it('nothing, where a pin keeps a light where the plan has it', () => {
		const plan = planOf(yard);
		expect(codesOf(planOf({ ...yard, fixtures: { set: plan.fixtures.map(pinned) } }))).toEqual([]);
	});
});
