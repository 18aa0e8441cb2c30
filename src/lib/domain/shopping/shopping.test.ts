import { describe, expect, it } from 'vitest';
import type { Cabling, Run } from '../cable';
import { fixtureModels, transformers } from '../shared/catalogue';
import type { Fixture } from '../placement';
import { makeSite } from '../site';
import { blankYard, examples, type Yard } from '../yard';
import { sensorOf } from '../dusk';
import { makePlan } from '../plan';
import { makeShopping } from '.';
import { cents } from './item';
import { pullsOf } from './pulls';

const yardWith = (power: Yard['power']): Yard => ({
	...blankYard(),
	place: { units: 'metres' },
	house: { sections: [{ id: 'front', width: 10 }], depth: 8, eaves: 3, openings: [], porches: [] },
	power
});
const modelOf = (kind: 'led' | 'halogen', mount: 'stake' | 'flush' | 'surface') =>
	fixtureModels.find((model) => model.lamp.kind === kind && model.mount === mount)!;
function fixture(n: number, kind: 'led' | 'halogen' = 'led', mount: 'stake' | 'flush' | 'surface' = 'stake'): Fixture {
	const model = modelOf(kind, mount);
	const at = { x: n, y: 6 };
	return {
		id: `a/path-${n}`,
		label: `P${n}`,
		target: { kind: 'walk', id: 'a' },
		technique: 'path',
		at,
		height: 0.5,
		aim: null,
		model: model.id,
		mount,
		lamp: model.lamp,
		reasons: []
	};
}
/** A chain of `n` fixtures 10 m apart, a branch to one more fixture off the second. */
function chain(n: number, crossings: Run['segments'][number]['crossings'] = []): Run {
	const id = (i: number): string => (i === 0 ? 'supply' : `n${i}`);
	const nodes = Array.from({ length: n + 2 }, (_, i) => ({
		id: id(i),
		fixture: i === 0 ? null : `a/path-${i}`,
		at: { x: i, y: 3 },
		volts: 12,
		band: { low: 11, high: 13 }
	}));
	const leg = (from: number, to: number) => ({
		from: id(from),
		to: id(to),
		length: 10,
		ohms: 0.1,
		amps: 1,
		path: [
			{ x: from, y: 3 },
			{ x: from + 8.5, y: 3 }
		],
		crossings: from === 0 ? crossings : []
	});
	const segments = [...Array.from({ length: n }, (_, i) => leg(i, i + 1)), leg(2, n + 1)];
	return {
		id: 'run-1',
		name: 'run 1',
		tapVolts: 12,
		cable: { system: 'mm2', size: 2.5 },
		conductorTemperature: 30,
		ohmsPerKm: 7.7,
		amps: 3,
		ampsLimit: 20,
		loadVoltAmps: 40,
		nodes,
		segments,
		feed: 'end',
		byHand: [],
		corners: { low: noCorner, high: noCorner }
	};
}
const noCorner = { mains: 1, length: 1, conductorTemperature: 30, ohmsPerKm: 7.7, volts: null, amps: null };
const cabling = (runs: Run[], on: 'wall' | 'post' = 'wall'): Cabling => ({
	supply: {
		at: { x: 0, y: 0.1 },
		on,
		mountHeight: 0.4,
		model: 'transformer-150',
		ratedVoltAmps: 150,
		loadVoltAmps: 90,
		loadWatts: 80,
		taps: [12],
		regulation: 0.05,
		suggested: true,
		because: [],
		cost: 0,
		runnersUp: []
	},
	runs,
	findings: [],
	assumptions: []
});
const list = (yard: Yard, fixtures: Fixture[], cable: Cabling) => {
	const site = makeSite(yard);
	return makeShopping(site, fixtures, cable, sensorOf(site, fixtures, cable.supply, yard), yard);
};
const quantity = (shopping: ReturnType<typeof list>, id: string): number =>
	shopping.items.find((item) => item.id === id)?.quantity ?? 0;
const six = [1, 2, 3, 4, 5, 6].map((n) => fixture(n));

describe('quantities', () => {
	const shopping = list(yardWith({ hours: { kind: 'dusk-to-dawn' } }), six, cabling([chain(5)]));
	it('fixtures by model, one spare of a model used four times or more', () => {
		const id = modelOf('led', 'stake').id;
		expect(quantity(shopping, id)).toBe(6);
		expect(quantity(shopping, `spare-${id}`)).toBe(1);
		expect(quantity(list(yardWith({}), six.slice(0, 3), cabling([])), `spare-${id}`)).toBe(0);
	});
	it('connectors, two to a joint: six fixtures and one branch; two ends; a pair for every ten in reserve', () => {
		expect(quantity(shopping, 'connector')).toBe(14);
		expect(quantity(shopping, 'end-cap')).toBe(2);
		expect(quantity(shopping, 'spare-connector')).toBe(2);
	});
	it('cable: 60 m and 5 % is 63 m, 50 + 25 m at 158 rather than 100 m at 189', () => {
		// 2.5 mm² at 2.10 a metre: 25 m 53, 50 m 105, 100 m 189. 63 m: 50 + 25 = 158 < 189.
		expect([
			quantity(shopping, 'cable-mm2-2-5-25m'),
			quantity(shopping, 'cable-mm2-2-5-50m'),
			quantity(shopping, 'cable-mm2-2-5-100m')
		]).toEqual([1, 1, 0]);
	});
	it('a halogen lamp in reserve for every four', () => {
		const halogen = list(
			yardWith({}),
			[1, 2, 3, 4, 5].map((n) => fixture(n, 'halogen')),
			cabling([chain(4)])
		);
		expect(quantity(halogen, `spare-lamp-${modelOf('halogen', 'stake').id}`)).toBe(2);
	});
	it('gravel for flush fixtures, anchors for those on a wall', () => {
		const flush = list(
			yardWith({}),
			[1, 2, 3].map((n) => fixture(n, 'led', 'flush')),
			cabling([chain(2)])
		);
		// 250 mm across, 150 mm deep, 1500 kg/m³: 11.0 kg each, 33 kg, two bags of 20 kg.
		expect(quantity(flush, 'gravel')).toBe(2);
		const surface = list(yardWith({}), [fixture(1, 'led', 'surface')], cabling([]));
		expect(quantity(surface, 'wall-anchor')).toBeGreaterThanOrEqual(4 + 2);
	});
	it('a timer only where the lights go off before dawn', () => {
		expect(quantity(shopping, 'timer')).toBe(0);
		expect(quantity(shopping, 'photocell')).toBe(1);
		expect(
			quantity(list(yardWith({ hours: { kind: 'until', clock: '23:00' } }), six, cabling([chain(5)])), 'timer')
		).toBe(1);
	});
	it('a post, and gravel for its foot, only for a transformer on a post', () => {
		expect(quantity(shopping, 'post')).toBe(0);
		const post = list(yardWith({}), six, cabling([chain(5)], 'post'));
		expect([quantity(post, 'post'), quantity(post, 'gravel')]).toEqual([1, 1]);
	});
	it('an in-use cover where it is known to be missing', () => {
		const power = { receptacle: { along: 0, out: 0 }, gfci: true } as const;
		const cover = (inUseCover: boolean | 'unsure') =>
			quantity(list(yardWith({ ...power, inUseCover }), six, cabling([])), 'in-use-cover');
		expect([cover(false), cover(true), cover('unsure')]).toEqual([1, 0, 0]);
	});
});

describe('crossings', () => {
	type Crossing = Run['segments'][number]['crossings'][number];
	/** Two runs that cross on their first leg, the second one `aside` metres further along. */
	const bought = (crossing: Crossing, aside = 0) => {
		const crossed = (name: string, x: number): Run => {
			const run = chain(5, [crossing]);
			const path = [1, 2, 2 + crossing.length, 8.5].map((y) => ({ x, y }));
			const segments = run.segments.map((one, k) => (k === 0 ? { ...one, path } : one));
			return { ...run, id: name.replace(' ', '-'), name, segments };
		};
		return list(yardWith({}), six, cabling([crossed('run 1', 0), crossed('run 2', aside)]));
	};
	it('a bore takes sleeves for its length and 150 mm past both edges, once for all cables in it', () => {
		const bore = (length: number): Crossing => ({ strip: 'drive', crossing: null, kind: 'bore', length });
		// 3.3 m of sleeve in lengths of 3 m, and 3.0 m of it.
		expect(quantity(bought(bore(3)), 'sleeve')).toBe(2);
		expect(quantity(bought(bore(2.7)), 'sleeve')).toBe(1);
		expect(quantity(bought(bore(3), 1.5), 'sleeve')).toBe(4);
		expect(quantity(bought(bore(2.7), 1.5), 'sleeve')).toBe(2);
	});
	it('a joint shared by two cables is filled once', () => {
		const shopping = bought({ strip: 'drive', crossing: 'middle', kind: 'joint', length: 12 });
		// 13 mm × 75 mm × 12 m × 1600 kg/m³ = 18.7 kg: one bag.
		expect(quantity(shopping, 'joint-sand')).toBe(1);
		expect(quantity(shopping, 'tool-joint-tool')).toBe(1);
	});
	it('a sleeve that is there needs nothing', () => {
		const shopping = bought({ strip: 'drive', crossing: 'old', kind: 'sleeve', length: 3 });
		for (const id of ['sleeve', 'joint-sand', 'tool-bore', 'tool-joint-tool']) expect(quantity(shopping, id)).toBe(0);
	});
});

describe('in hand', () => {
	it('a transformer that is large enough costs nothing, a small one is named', () => {
		const mine = list(yardWith({ owned: { transformerVoltAmps: 150 } }), six, cabling([chain(5)]));
		expect(mine.items.find((item) => item.id === 'transformer-in-hand')).toMatchObject({ quantity: 1, cost: 0 });
		expect(quantity(mine, 'transformer-150')).toBe(0);
		const small = list(yardWith({ owned: { transformerVoltAmps: 60 } }), six, cabling([chain(5)]));
		expect(small.items.find((item) => item.id === 'transformer-150')?.why).toContain('60 VA, is too small');
	});
	it('cable of the right size is taken off, of another size not', () => {
		const enough = list(yardWith({ owned: { cableSize: 2.5, cableLength: 70 } }), six, cabling([chain(5)]));
		expect(enough.items.filter((item) => item.group === 'cable').map((item) => item.id)).toEqual(['cable-in-hand']);
		const other = list(yardWith({ owned: { cableSize: 4, cableLength: 70 } }), six, cabling([chain(5)]));
		expect(other.items.map((item) => item.id)).not.toContain('cable-in-hand');
	});
});

describe('money', () => {
	it('is exact: every line and the total in whole hundredths, at one’s own prices in one’s own currency', () => {
		const id = modelOf('led', 'stake').id;
		const shopping = list(
			yardWith({
				prices: { [id]: 19.99, connector: 0.1, 'transformer-150': 0 },
				price: { perKwh: 0.3, currency: '€' }
			}),
			six,
			cabling([chain(5)])
		);
		expect(shopping.currency).toBe('€');
		expect(shopping.items.find((item) => item.id === id)).toMatchObject({ unitPrice: 19.99, cost: 119.94 });
		expect(shopping.items.find((item) => item.id === 'connector')?.cost).toBe(1.4);
		for (const item of shopping.items) expect(cents(item.cost)).toBe(cents(item.unitPrice) * item.quantity);
		expect(cents(shopping.total)).toBe(shopping.items.reduce((sum, item) => sum + cents(item.cost), 0));
	});
	it('takes a price typed on any line, spares too, by the goods the line names', () => {
		for (const lamp of ['led', 'halogen'] as const) {
			const at = (prices: Record<string, number>) =>
				makePlan({ ...yard, power: { ...yard.power, lamp, prices } }).shopping;
			const { yard } = examples[1]!;
			const priced = at({}).items.filter((one) => one.group !== 'tools');
			expect(priced.some((one) => one.group === 'spares' && one.priceOf)).toBe(true);
			const own = priced.filter((one) => one.group === 'spares' || one.group === 'fixtures');
			const typed = at(Object.fromEntries(own.map(({ priceOf, id }) => [priceOf ?? id, 3.21])));
			for (const { id } of own) expect(typed.items.find((one) => one.id === id)?.unitPrice, id).toBe(3.21);
		}
	});
	it('tools are not priced', () => {
		for (const item of list(yardWith({}), six, cabling([chain(5)])).items.filter((one) => one.group === 'tools'))
			expect(item).toMatchObject({ cost: 0, why: expect.stringMatching(/^Borrow or own: /) });
	});
});

describe('pulls', () => {
	it('go straight on the longest way and start anew at a tee', () => {
		expect(pullsOf(chain(5)).map((pull) => pull.legs.length)).toEqual([5, 1]);
	});
	it('hold every leg once, whatever the run looks like', () => {
		for (const { yard } of examples.slice(0, 2)) {
			for (const run of makePlan(yard).runs) {
				const laid = run.segments.reduce((sum, segment) => sum + segment.length, 0);
				const pulled = pullsOf(run).flatMap((pull) => pull.legs);
				expect(pulled).toHaveLength(run.segments.length);
				expect(pulled.reduce((sum, leg) => sum + leg.length, 0)).toBeCloseTo(laid, 9);
			}
		}
	});
});

it('is empty for a yard with nothing to build', () => {
	expect(list(blankYard(), [], { supply: null, runs: [], findings: [], assumptions: [] })).toEqual({
		items: [],
		rolls: [],
		currency: '$',
		total: 0
	});
});
it('has one line to an id, known ids where the catalogue has them, on every example', () => {
	for (const { yard } of examples) {
		const { items } = makePlan(yard).shopping;
		expect(new Set(items.map((item) => item.id)).size).toBe(items.length);
		for (const item of items) expect(item.quantity).toBeGreaterThan(0);
		expect(
			items.some((item) => transformers.some((model) => model.id === item.id) || item.id === 'transformer-in-hand')
		).toBe(true);
	}
});
