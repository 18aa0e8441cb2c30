import { describe, expect, test } from 'vitest';
import type { Comparison } from '$lib/domain/compare';
import { compareLamps } from '$lib/domain/compare';
import { blankYard, examples } from '$lib/domain/yard';
import { headline, leftOut, rangeWords, tied } from './words';

const yardOf = (id: string) => examples.find((one) => one.id === id)!.yard;
const town = compareLamps(yardOf('town'));
/** The town's comparison with totals and years put in its place. */
function madeUp(
	more: number,
	ahead: Comparison['ledAhead'],
	lead: [low: number, high: number] = [100, 100],
	open: { led?: string[]; halogen?: string[] } = {}
): Comparison {
	const { led, halogen } = town;
	const money = (value: number) => ({ ...led.purchase.total, value });
	return {
		...town,
		ledAhead: ahead,
		led: {
			...led,
			purchase: { ...led.purchase, total: money(1000 + more) },
			total: { low: money(2000), high: money(2000) },
			replaced: { ...led.replaced, unknown: open.led ?? [] }
		},
		halogen: {
			...halogen,
			purchase: { ...halogen.purchase, total: money(1000) },
			total: { low: money(2000 + lead[0]), high: money(2000 + lead[1]) },
			replaced: { ...halogen.replaced, unknown: open.halogen ?? [] }
		}
	};
}

describe('the sentence at the top', () => {
	test.each([
		[120, { earliest: 2, latest: 2 }, 'LED costs $120 more to buy and is ahead after 2 years'],
		[120, { earliest: 1, latest: 1 }, 'LED costs $120 more to buy and is ahead after 1 year'],
		[120, { earliest: 2, latest: 4 }, 'LED costs $120 more to buy and is ahead after 2 to 4 years'],
		[
			1234.4,
			{ earliest: 9, latest: null },
			'LED costs $1,234 more to buy and may be ahead after 9 years, if halogen lamps die soon'
		],
		[120, { earliest: null, latest: null }, 'LED costs $120 more to buy and is not ahead within 10 years']
	])('%d more, ahead %o', (more, ahead, words) => expect(headline(madeUp(more, ahead))).toBe(words));

	const always = { earliest: 0, latest: 0 };
	test('LED cheaper from the start', () => {
		expect(headline(madeUp(-51, always, [430, 520]))).toBe(
			'LED costs $51 less to buy and is $430 to $520 ahead after 10 years'
		);
		expect(headline(madeUp(-51, always, [430, 430]))).toBe(
			'LED costs $51 less to buy and is $430 ahead after 10 years'
		);
		expect(headline(madeUp(0.2, always, [430, 430]))).toBe(
			'LED costs the same to buy, and is $430 ahead after 10 years'
		);
	});
	test('LED cheaper to buy and yet not in the end', () => {
		expect(headline(madeUp(-51, always, [-90, -40]))).toBe('LED costs $51 less to buy but more over 10 years');
		expect(headline(madeUp(-51, always, [-90, 40]))).toBe('LED costs $51 less to buy and about the same over 10 years');
	});
	test('a total that leaves lamps out is not given as the whole', () => {
		expect(headline(madeUp(-51, always, [430, 520], { halogen: ['T1'] }))).toContain('at least $430 ahead');
		expect(headline(madeUp(-51, always, [430, 520], { led: ['T1'] }))).toContain('up to $520 ahead');
	});
	test('nothing to light', () => expect(headline(compareLamps(blankYard()))).toBe('Nothing to compare yet'));
	test('the demo yards say something', () => {
		for (const { yard } of examples)
			expect(headline(compareLamps(yard))).toMatch(/^LED costs [$€][\d,]+ (less|more) to buy/);
	});
});

describe('what is left out', () => {
	test('nothing where every lamp is within a tenth of its rated volts', () => expect(leftOut(town)).toEqual([]));
	test('filament lamps too far from rated volts', () => {
		const [only, ...rest] = leftOut(madeUp(0, { earliest: 0, latest: 0 }, [0, 0], { halogen: ['T1', 'W2'] }));
		expect(rest).toEqual([]);
		expect(only).toContain('With halogen, light and life of 2 of 7 lamps are not known');
		expect(only).toContain('at least that much');
	});
	test('LED lamps outside their window', () => {
		const [only] = leftOut(madeUp(0, { earliest: 0, latest: 0 }, [0, 0], { led: ['T1'] }));
		expect(only).toContain(
			'With LED, light and life of 1 of 6 lamps are not known: their volts are outside their window'
		);
	});
	test('no transformer', () => {
		const bare = { ...town, led: { ...town.led, plan: { ...town.led.plan, supply: null } } };
		expect(leftOut(bare)[0]).toContain('No transformer has a place yet');
	});
	test('no solution', () => {
		const labels = town.halogen.plan.fixtures.map(({ label }) => label);
		const dead = {
			...town,
			halogen: { ...town.halogen, volts: null, replaced: { ...town.halogen.replaced, unknown: labels } }
		};
		expect(leftOut(dead)).toEqual([
			'With halogen the circuit has no solution, so no volts, light or life are known. Lamps replaced are not in its total.'
		]);
	});
});

test('two ends that read the same are one', () => {
	const whole = (value: number) => value.toFixed(0);
	expect(rangeWords({ low: 2.1, high: 2.4 }, whole)).toBe('2');
	expect(rangeWords({ low: 2.1, high: 2.6 }, whole)).toBe('2 to 3');
});
test('a figure and its unit stay together, a figure and a word do not', () => {
	expect(tied('10.38 to 14.51 V')).toBe('10.38 to 14.51\u00a0V');
	expect(tied('86 VA, 71 W, 90 %')).toBe('86\u00a0VA, 71\u00a0W, 90\u00a0%');
	expect(tied('4 more, 2 wells')).toBe('4 more, 2 wells');
});
