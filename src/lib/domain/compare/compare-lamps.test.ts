import { describe, expect, test } from 'vitest';
import { evaluate } from '../shared/evaluate';
import { fixed, showWorking } from '../shared/show-working';
import { makePlan } from '../plan';
import { sources } from '../shared/sources';
import type { Working } from '../shared/working';
import { blankYard, examples, type Yard } from '../yard';
import { randomYard } from '../yard/random.testing';
import { compareLamps, withLamp } from './compare-lamps';
import type { Comparison, Side } from './types';

const sides = (comparison: Comparison): Side[] => [comparison.led, comparison.halogen];
const cents = (value: number) => Math.round(value * 100);
/** Without the plan inside, whose own figures have tests of their own. */
const ownOf = ({ plan: _, ...own }: Side) => own;

const isWorking = (value: object): value is Working => 'expression' in value && 'inputs' in value;
const workingsIn = (value: unknown): Working[] =>
	typeof value === 'object' && value !== null
		? [...(isWorking(value) ? [value] : []), ...Object.values(value).flatMap(workingsIn)]
		: [];
function* strangeNumbers(value: unknown, path = ''): Generator<string> {
	if (typeof value === 'number') {
		if (!Number.isFinite(value)) yield `${path}: ${value}`;
	} else if (value && typeof value === 'object')
		for (const [key, item] of Object.entries(value)) yield* strangeNumbers(item, `${path}.${key}`);
}
/** Every sum done again by other means: straight from the plan, lamp by lamp. */
function expectToReAdd(side: Side): void {
	const { plan } = side;
	expect(side.watts.value).toBeCloseTo(
		plan.fixtures.reduce((sum, { lamp }) => sum + lamp.watts, 0),
		6
	);
	const lit = side.lamps.filter(({ light }) => light !== null);
	expect(side.light.real?.value ?? 0).toBe(lit.reduce((sum, { light }) => sum + light!.value, 0));
	expect(side.light.unknown.length).toBe(side.lamps.length - lit.length);
	expect(side.purchase.total.value).toBe(plan.shopping.total);
	for (const end of ['low', 'high'] as const) {
		const count = side.lamps.reduce((sum, { lives }) => sum + Math.floor((lives?.[end].value ?? 0) + 1e-9), 0);
		expect(side.replaced.count[end].value).toBe(count);
		const total = cents(plan.shopping.total) + 10 * cents(plan.dusk.cost) + cents(side.replaced.cost[end].value);
		expect(cents(side.total[end].value)).toBe(total);
		expect(cents(side.byYear.at(-1)![end])).toBe(total);
		expect(cents(side.byYear[0]![end])).toBe(cents(plan.shopping.total));
		for (const [year, range] of side.byYear.entries())
			if (year > 0) expect(range[end]).toBeGreaterThanOrEqual(side.byYear[year - 1]![end]);
	}
	expect(side.total.low.value).toBeLessThanOrEqual(side.total.high.value);
}
/** The year found by looking, not by the function's own way. */
function aheadByLooking(mine: number[], theirs: number[]): number | null {
	for (let year = 0; year < mine.length; year++)
		if (mine.slice(year).every((value, later) => value <= theirs[year + later]!)) return year;
	return null;
}

describe.each(examples.map(({ id, yard }) => [id, yard] as const))('%s', (_, yard) => {
	const comparison = compareLamps(yard);

	test('both plans are what makePlan makes, and the yard is left as it was', () => {
		const before = JSON.stringify(yard);
		const again = compareLamps(yard);
		expect(again.led.plan).toEqual(makePlan({ ...yard, power: { ...yard.power, lamp: 'led' } }));
		expect(again.halogen.plan).toEqual(makePlan({ ...yard, power: { ...yard.power, lamp: 'halogen' } }));
		expect(JSON.stringify(yard)).toBe(before);
	});
	test('the sums add up again', () => {
		for (const side of sides(comparison)) expectToReAdd(side);
	});
	test('every figure re-evaluates from what is displayed, and names a source that exists', () => {
		const workings = sides(comparison).map(ownOf).flatMap(workingsIn);
		const ids = new Set<string>(Object.values(sources).map(({ id }) => id));
		expect(workings.length).toBeGreaterThan(50);
		const wrong = workings.flatMap((working) => {
			const shown = showWorking(working, yard.place.units);
			const value = fixed(evaluate(shown.line), working.decimals);
			const right = shown.holds && (working.unit ? `${value} ${working.unit}` : value) === shown.result;
			return right && ids.has(working.source) ? [] : [`${working.label}: ${shown.line} = ${value}, ${shown.result}`];
		});
		expect([...new Set(wrong)]).toEqual([]);
	});
	test('an input that was worked out has the value of its working', () => {
		const torn = sides(comparison)
			.map(ownOf)
			.flatMap(workingsIn)
			.flatMap(({ label, inputs }) =>
				inputs.flatMap(({ name, value, unit, from }) =>
					// whole lamps out of lives used up: rounded down, and the name says so
					from && value !== from.value && !(unit === '' && value === Math.floor(from.value))
						? [`${label}: ${name}`]
						: []
				)
			);
		expect(torn).toEqual([]);
	});
	test('halogen draws more, and LED keeps its marked light', () => {
		const { led, halogen } = comparison;
		expect(halogen.watts.value).toBeGreaterThan(3 * led.watts.value);
		expect(halogen.plan.dusk.energy).toBeGreaterThan(led.plan.dusk.energy);
		expect(led.light.unknown).toEqual([]);
		expect(led.light.real!.value).toBe(led.light.rated.value);
		expect(led.light.lowest!.percent.value).toBe(100);
	});
	test('the year from which LED is ahead', () => {
		const { led, halogen, ledAhead } = comparison;
		const of = (side: Side, end: 'low' | 'high') => side.byYear.map((range) => range[end]);
		expect(ledAhead.latest).toBe(aheadByLooking(of(led, 'high'), of(halogen, 'low')));
		expect(ledAhead.earliest).toBe(aheadByLooking(of(led, 'low'), of(halogen, 'high')));
	});
	test('feet and metres come to the same', () => {
		const units = yard.place.units === 'feet' ? 'metres' : 'feet';
		const other = compareLamps({ ...yard, place: { ...yard.place, units } });
		const figures = (side: Side) =>
			[side.total, side.light.real, side.watts, side.volts].map((part) => JSON.stringify(part));
		for (const kind of ['led', 'halogen'] as const) {
			expect(other[kind].total.low.value).toBe(comparison[kind].total.low.value);
			expect(other[kind].total.high.value).toBe(comparison[kind].total.high.value);
			expect(figures(other[kind])[1]).toBe(figures(comparison[kind])[1]);
		}
	});
});

const example = (id: string): Yard => examples.find((one) => one.id === id)!.yard;

test('filament lamps too far from rated volts are said, and what is not known of them is not counted', () => {
	// The transformer half a kilometre off: whatever tap and cable, filament lamps near and far cannot all be right.
	const yard = example('rural');
	const far = { at: { along: -480, out: 0 }, on: 'post' as const };
	const { halogen, stops } = compareLamps({ ...yard, power: { ...yard.power, transformer: far } });
	expect(stops.halogen.length + stops.both.length).toBeGreaterThan(0);
	expect(halogen.light.unknown.length).toBeGreaterThan(0);
	expect(halogen.replaced.unknown).toEqual(halogen.light.unknown);
	expectToReAdd(halogen);
});
test('lights that only one kind needs are named', () => {
	const { led, halogen, differences } = compareLamps(example('town'));
	const more = halogen.plan.fixtures.length - led.plan.fixtures.length;
	expect(more).toBe(1);
	expect(differences.find(({ code }) => code === 'only-halogen')?.message).toContain('1 light');
});
test('what is set by hand stays in both plans and is said', () => {
	const yard = example('town');
	const set = compareLamps({
		...yard,
		power: { ...yard.power, circuit: { transformerVoltAmps: 300, runs: [{ id: 'run-1', size: 10 }] } }
	});
	expect(set.kept.length).toBe(2);
	expect(set.kept.join(' ')).toMatch(/run of cable by hand.*300 VA/);
	expect(compareLamps(yard).kept).toEqual([]);
});
test('spares in the list are used before more lamps are bought', () => {
	const { halogen } = compareLamps(example('town'));
	const spares = halogen.plan.shopping.items.filter(({ id }) => id.startsWith('spare-lamp-'));
	const stock = spares.reduce((sum, { quantity }) => sum + quantity, 0);
	const used = halogen.replaced.count.low.value;
	expect(used).toBeGreaterThan(stock);
	// one price for all halogen lamps, and here each kind wears out more than its spares
	expect(halogen.replaced.cost.low.value).toBe((used - stock) * spares[0]!.unitPrice);
});
test('a dearer power bill brings the halogen plan further behind', () => {
	const yard = example('town');
	const behind = (perKwh: number) => {
		const { led, halogen } = compareLamps({ ...yard, power: { ...yard.power, price: { perKwh, currency: '$' } } });
		return halogen.total.low.value - led.total.low.value;
	};
	expect(behind(0.4)).toBeGreaterThan(behind(0.1));
});
test('a yard with nothing in it compares nothing, without fail', () => {
	const empty = compareLamps(blankYard());
	expect(empty.places).toEqual([]);
	for (const side of sides(empty)) {
		expect(side.volts).toBeNull();
		expect(side.light.real).toBeNull();
		expect([...strangeNumbers(ownOf(side))]).toEqual([]);
		expectToReAdd(side);
	}
	expect(empty.ledAhead.latest).toBe(0);
});
test('random yards: sums re-add, no strange number, every figure holds', () => {
	const runs = process.env.LONG ? 400 : 30;
	let lit = 0;
	for (let seed = 1; seed <= runs; seed++) {
		const comparison = compareLamps(randomYard(seed));
		lit += comparison.places.length > 0 ? 1 : 0;
		for (const side of sides(comparison)) {
			const own = ownOf(side);
			expect([...strangeNumbers(own)], `seed ${seed}`).toEqual([]);
			expectToReAdd(side);
			if (seed % 5 === 0)
				expect(
					workingsIn(own)
						.filter((working) => !showWorking(working).holds)
						.map(({ label }) => label),
					`seed ${seed}`
				).toEqual([]);
		}
	}
	expect(lit).toBeGreaterThan(runs / 2);
});
test('only the lamp is changed', () => {
	const yard = example('town');
	expect(withLamp(yard, 'halogen')).toEqual({ ...yard, power: { ...yard.power, lamp: 'halogen' } });
});
