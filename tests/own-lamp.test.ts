/** Real lamps in whole plans: what follows from them, and what a bad one does not do. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { lightField } from '../src/lib/domain/light';
import { beam, intensity, pathHead, writeLm63, type Distribution } from '../src/lib/domain/photometry';
import { faultOf, modelsAlike, ownLampOf, withOwnLamp, withoutOwnLamp } from '../src/lib/domain/placement';
import { disc, lampOf, radians, steps, tableOf } from '../src/lib/domain/placement/own-lamp/own-lamp.testing';
import { makePlan, type Plan } from '../src/lib/domain/plan';
import { fixtureModels, type FixtureModel } from '../src/lib/domain/shared/catalogue';
import { examples, readYard, writeYard, type OwnLamp, type Yard } from '../src/lib/domain/yard';
import { randomYard } from '../src/lib/domain/yard/random.testing';

const demo = examples.find(({ title }) => title === 'Alder Bend')!.yard;
const withLamps = (yard: Yard, ...lamps: OwnLamp[]): Yard => ({ ...yard, power: { ...yard.power, lamps } });
const listed = makePlan(demo);
const modelIn = (plan: Plan, body: FixtureModel['body']): FixtureModel =>
	fixtureModels.find((model) => model.body === body && plan.fixtures.some((fixture) => fixture.model === model.id))!;
const of = (plan: Plan, body: FixtureModel['body']) =>
	plan.fixtures.filter(({ model }) => fixtureModels.find(({ id }) => id === model)!.body === body);
/** Only of the walk, so that a lamp of another model there does not count. */
const walkOf = (plan: Plan) => plan.light.receivers.find(({ kind }) => kind === 'walk')!;

/** A law as the file that a laboratory would write of it: every half degree, and close about a rim. */
function fileOf(law: Distribution, name: string, watts?: number): string {
	const rim = (Math.acos(law.cosCut) * 180) / Math.PI;
	const vertical = [...new Set([...steps(0, 90, 0.5), rim, rim + 1e-3])].filter((g) => g <= 90).sort((a, b) => a - b);
	const table = tableOf((g) => intensity(law, Math.cos(radians(g)) + (g <= rim ? 1e-12 : 0)), vertical);
	return writeLm63(table, { name, ...(watts === undefined ? {} : { watts }) });
}
function read(text: string, models: string[]): OwnLamp {
	const found = ownLampOf(text, models);
	if (!found.ok) throw new Error(found.message);
	return { id: 'lamp-1', ...found.lamp };
}

describe('a file of the light that the list takes changes nothing', () => {
	test('path lights: the same lux on the walk', () => {
		const model = modelIn(listed, 'path');
		const lamp = read(fileOf(pathHead(model.lamp.lumens, model.lamp.beamAngle), 'Same head'), modelsAlike(model.id));
		const plan = makePlan(withLamps(demo, lamp));
		const heads = of(plan, 'path');
		expect(heads.length).toBeGreaterThan(2);
		for (const { lamp: own } of heads) {
			expect(own.measured?.name).toBe('Same head');
			expect(Math.abs(own.lumens / model.lamp.lumens - 1)).toBeLessThan(0.005);
			expect(own.beamAngle).toBeCloseTo(model.lamp.beamAngle, 0);
			expect([own.watts, own.voltAmps]).toEqual([model.lamp.watts, model.lamp.voltAmps]);
		}
		const same = of(listed, 'path').every(({ model: id }) => id === model.id);
		expect(same, 'the demo yard has one kind of path light').toBe(true);
		expect(heads.map(({ at }) => at)).toEqual(of(listed, 'path').map(({ at }) => at));
		expect(Math.abs(walkOf(plan).average / walkOf(listed).average - 1)).toBeLessThan(0.01);
		expect(Math.abs(walkOf(plan).least / walkOf(listed).least - 1)).toBeLessThan(0.01);
	});
	test('wall washes: the same places, spacing and lux on the wall', () => {
		const model = modelIn(listed, 'wash');
		const lamp = read(fileOf(beam(model.lamp.lumens, model.lamp.beamAngle), 'Same wash'), modelsAlike(model.id));
		const [before, after] = [of(listed, 'wash'), of(makePlan(withLamps(demo, lamp)), 'wash')];
		expect(after.length).toBe(before.length);
		for (const [i, { at }] of after.entries()) {
			expect(Math.hypot(at.x - before[i]!.at.x, at.y - before[i]!.at.y)).toBeLessThan(0.02);
		}
	});
});

test('a flat diffuse disc over the ground: E = I0·h² ÷ (h² + r²)², worked by hand', () => {
	const model = modelIn(listed, 'path');
	const plan = makePlan(withLamps(demo, lampOf(disc(40), modelsAlike(model.id))));
	const head = of(plan, 'path')[0]!;
	// One lamp alone, at its rated volts: no run feeds it.
	const alone = { ...head, at: { x: 40, y: 60 } };
	const field = lightField({ ...plan.site, existing: [] }, [alone], []);
	const h = head.height;
	for (const r of [0, 0.5, 1, 2]) {
		const lux = field.lux({ x: 40 + r, y: 60, z: 0 }, { x: 0, y: 0, z: 1 });
		// 0.9 × 0.85 kept after age and dirt: rule light.maintained.
		const worked = ((40 * h ** 2) / (h ** 2 + r ** 2) ** 2) * (field.sources[0]!.lumens / head.lamp.lumens);
		expect(Math.abs(lux / worked - 1)).toBeLessThan(0.01);
	}
	expect(head.lamp.lumens).toBeCloseTo(40 * Math.PI, 0);
});

test('the circuit carries the watts that are told: watts ÷ 0.8 for LED', () => {
	const model = modelIn(listed, 'path');
	const heads = of(listed, 'path').length;
	const plan = makePlan(withLamps(demo, lampOf(disc(40), modelsAlike(model.id), { watts: 6 })));
	const own = of(plan, 'path');
	expect(own.every(({ lamp }) => lamp.watts === 6 && lamp.voltAmps === 7.5)).toBe(true);
	expect(own.length).toBe(heads);
	const sum = plan.fixtures.reduce((total, { lamp }) => total + lamp.voltAmps, 0);
	const before = listed.fixtures.reduce((total, { lamp }) => total + lamp.voltAmps, 0);
	expect(plan.supply!.loadVoltAmps).toBeGreaterThanOrEqual(sum);
	// What the cables lose may fall, where the heavier lamps take thicker ones.
	expect(plan.supply!.loadVoltAmps - listed.supply!.loadVoltAmps).toBeGreaterThan(0.8 * (sum - before));
});

test('lists call it by its name and share its table', () => {
	const model = modelIn(listed, 'path');
	const lamp = lampOf(disc(40), modelsAlike(model.id), { name: 'Old brass' });
	const plan = makePlan(withLamps(demo, lamp));
	expect(plan.shopping.items.map(({ name }) => name)).toContain('Path light with your own lamp: Old brass');
	expect(JSON.stringify(plan.checklist)).toContain('Path light with your own lamp: Old brass');
	const tables = new Set(plan.fixtures.flatMap(({ lamp: { measured } }) => (measured ? [measured] : [])));
	expect(tables.size).toBe(1);
	expect([...tables][0]!.candela).toBe(lamp.candela);
	// Nor another one for the next plan.
	const again = makePlan({ ...withLamps(demo, lamp), name: 'Again' });
	expect(tables.has(of(again, 'path')[0]!.lamp.measured!)).toBe(true);
});

test('one that is not alike all round says how it is turned', () => {
	const model = modelIn(listed, 'path');
	const lobe = tableOf(
		(g, c) => 60 * Math.cos(radians(g)) * (c === 0 ? 2 : 1),
		steps(0, 90, 5),
		[0, 90, 180],
		'bilateral'
	);
	const plan = makePlan(withLamps(demo, lampOf(lobe, modelsAlike(model.id))));
	expect(plan.assumptions.filter(({ path }) => path === 'power.lamps').map(({ message }) => message)).toEqual([
		expect.stringContaining('C0 is taken to point up, or away from the house')
	]);
});

test('what it stands for: in use first, no lamp in two places', () => {
	const [a, b] = ['spot-led-4w-24-2700', 'spot-led-7w-24-2700'] as const;
	expect(modelsAlike(a)[0]).toBe(a);
	expect(modelsAlike(a)).toContain('spot-led-4w-24-3000');
	expect(modelsAlike(a)).not.toContain(b);
	expect(modelsAlike('wash-led-3w-3000')).toHaveLength(12);
	expect(modelsAlike('nothing')).toEqual([]);
	const { id: _, ...first } = lampOf(disc(40), [a, b]);
	const one = withOwnLamp(undefined, first);
	const two = withOwnLamp(one, { ...first, for: [b] });
	expect(two.map(({ id, for: models }) => [id, models])).toEqual([
		['lamp-1', [a]],
		['lamp-2', [b]]
	]);
	expect(withOwnLamp(two, { ...first, for: [a] }).map(({ id }) => id)).toEqual(['lamp-2', 'lamp-3']);
	expect(withoutOwnLamp(one, 'lamp-1')).toBeUndefined();
});

const path = modelIn(listed, 'path');
const good = lampOf(disc(40), modelsAlike(path.id));
describe('a lamp that cannot be reckoned with', () => {
	test.each<[string, Partial<OwnLamp>, RegExp]>([
		['too few candela', { candela: good.candela.slice(1) }, /90 candela .* want 91/],
		['angles that fall', { vertical: [0, ...good.vertical.slice(2), 1] }, /angles off its axis that do not climb/],
		['angles that stand', { vertical: [0, 0, ...good.vertical.slice(2)] }, /do not climb/],
		[
			'planes that fall',
			{ vertical: [0, 90], horizontal: [0, 90, 45], symmetry: 'quadrant', candela: [1, 1, 1, 1, 1, 1] },
			/planes .* do not climb/
		],
		[
			'planes too short',
			{ vertical: [0, 90], horizontal: [0, 45], symmetry: 'quadrant', candela: [9, 9, 9, 9] },
			/0° to 45° where .* 0° to 90°/
		],
		[
			'two planes all round',
			{ vertical: [0, 90], horizontal: [0, 90], candela: [9, 9, 9, 9] },
			/same all round, yet has 2/
		],
		['no light', { candela: good.candela.map(() => 0) }, /no light/]
	])('%s: said, and the lamps of the list are taken', (_, wrong, words) => {
		const yard = withLamps(demo, { ...good, ...wrong });
		// It comes from a file so: the schema cannot know.
		const read = readYard(writeYard(yard));
		expect(read.ok).toBe(true);
		const plan = makePlan(yard);
		const found = plan.findings.filter(({ code }) => code === 'lamp.own');
		expect(found.map(({ rank, about }) => [rank, about])).toEqual([['look', { kind: 'lamp', id: 'own' }]]);
		expect(found[0]!.message).toMatch(words);
		expect(faultOf({ ...good, ...wrong })).not.toBeNull();
		expect(plan.fixtures).toEqual(listed.fixtures);
	});
	test('one for no lamp, or for the lights of another, is a note', () => {
		const none = makePlan(withLamps(demo, { ...good, for: ['no-such-lamp'] }));
		expect(none.findings.find(({ code }) => code === 'lamp.own')).toMatchObject({ rank: 'note' });
		const twice = makePlan(withLamps(demo, good, { ...good, id: 'other', name: 'Second' }));
		expect(twice.findings.find(({ code }) => code === 'lamp.own')?.message).toMatch(
			/“Second” and “Test lamp” are both/
		);
	});
});

test('one too faint to have a pool stands in a bed no nearer than room for a spade', () => {
	const beds = demo.spots.beds!.map((bed) => ({ ...bed, light: 'bright' as const }));
	const yard = { ...withLamps(demo, lampOf(disc(0.4), modelsAlike(path.id))), spots: { ...demo.spots, beds } };
	const lights = makePlan(yard).fixtures.filter(({ target }) => target.kind === 'bed');
	expect(lights.length).toBeGreaterThan(0);
	for (const { at } of lights)
		// Rule place.clear: room for a spade between any two.
		expect(lights.filter((other) => Math.hypot(other.at.x - at.x, other.at.y - at.y) < 0.299)).toHaveLength(1);
});

/** Repeatable numbers from 0 to below 1 (mulberry32). */
function seeded(seed: number): () => number {
	let state = seed;
	return () => {
		state = (state + 0x6d2b79f5) | 0;
		let t = Math.imul(state ^ (state >>> 15), 1 | state);
		t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
		return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
	};
}
/** Any lamp that the schema lets in: sound ones, wild ones and broken ones. */
function anyLamp(next: () => number, id: string): OwnLamp {
	const whole = (low: number, high: number) => low + Math.floor(next() * (high - low + 1));
	const pick = <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)]!;
	const symmetry = pick(['rotational', 'quadrant', 'bilateral', 'bilateral-90', 'none'] as const);
	const [from, to] = {
		rotational: [0, 0],
		quadrant: [0, 90],
		bilateral: [0, 180],
		'bilateral-90': [90, 270],
		none: [0, 360]
	}[symmetry] as [number, number];
	const between = (low: number, high: number, count: number) =>
		[low, ...Array.from({ length: count }, () => low + next() * (high - low)), high].sort((a, b) => a - b);
	const vertical = between(pick([0, 0, 0, 30]), pick([90, 180, 60.5]), whole(0, 20));
	const horizontal = symmetry === 'rotational' ? [0] : between(from, to, whole(0, 8));
	const size = 10 ** (6 * next());
	const odd = pick([null, null, null, 'short', 'zero', 'fall', 'spike'] as const);
	const candela = Array.from({ length: vertical.length * horizontal.length }, () => (next() < 0.2 ? 0 : next() * size));
	if (odd === 'short') candela.pop();
	if (odd === 'zero') candela.fill(0);
	if (odd === 'fall') vertical.reverse();
	if (odd === 'spike') candela.fill(0).splice(whole(0, candela.length - 1), 1, size);
	const lamp: OwnLamp = {
		id,
		name: pick(['', 'Lamp', '<b>"x"</b>']),
		for: Array.from({ length: whole(1, 60) }, () => (next() < 0.1 ? 'none such' : pick(fixtureModels).id)),
		vertical,
		horizontal,
		symmetry,
		candela
	};
	return next() < 0.5 ? lamp : { ...lamp, watts: 0.1 + next() * 99 };
}
const runs = process.env.LONG ? 600 : 25;
test(`whatever lamps the schema lets in, a plan is made, with finite figures: ${runs} random yards`, () => {
	let used = 0;
	let faulty = 0;
	for (let seed = 1; seed <= runs; seed++) {
		const next = seeded(seed);
		const lamps = Array.from({ length: 1 + Math.floor(next() * 3) }, (_, i) => anyLamp(next, `lamp-${i}`));
		const yard = withLamps(randomYard(seed), ...lamps);
		expect(readYard(writeYard(yard)).ok, `seed ${seed}`).toBe(true);
		const plan = makePlan(yard);
		expect(plan, `seed ${seed}`).toEqual(makePlan(structuredClone(yard)));
		for (const { lamp } of plan.fixtures) {
			if (lamp.measured) used++;
			expect([lamp.lumens, lamp.beamAngle, lamp.watts, lamp.voltAmps].every((n) => Number.isFinite(n) && n > 0)).toBe(
				true
			);
		}
		for (const { average, least, most } of plan.light.receivers)
			expect(
				[average, least, most].every((lux) => Number.isFinite(lux) && lux >= 0),
				`seed ${seed}`
			).toBe(true);
		faulty += plan.findings.filter(({ code, rank }) => code === 'lamp.own' && rank === 'look').length;
	}
	expect(used).toBeGreaterThan(runs);
	expect(faulty).toBeGreaterThan(runs / 10);
}, 600_000);

test('the command prints such a plan, and it is as the published schema says', () => {
	const folder = mkdtempSync(join(tmpdir(), 'duskwright-own-'));
	const file = join(folder, 'yard.json');
	writeFileSync(file, writeYard(withLamps(demo, good)));
	const json = execFileSync('npm', ['run', '--silent', 'plan', '--', file, '--json'], {
		encoding: 'utf8',
		maxBuffer: 1e8
	});
	rmSync(folder, { recursive: true });
	const plan = JSON.parse(json) as Plan;
	const { measured } = of(plan, 'path')[0]!.lamp;
	expect(measured).toMatchObject({ name: 'Test lamp', symmetry: 'rotational', candela: good.candela });
	const schema = readFileSync(new URL('../static/plan.schema.json', import.meta.url), 'utf8');
	expect(schema.includes('"measured"')).toBe(true);
});
