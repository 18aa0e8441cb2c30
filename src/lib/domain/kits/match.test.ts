import { describe, expect, test } from 'vitest';
import { demoShelf } from '../../shelf';
import { makePlan } from '../plan';
import { quickYard, usualAnswers, type QuickAnswers } from '../quick';
import { examples } from '../yard/examples';
import { matchShelf } from './match';
import { needsOf } from './needs';
import { awg, chain, feet, halogen, kit, led, line, shelfOf, transformer } from './shelf.testing';
import type { Match, Needs, Shelf, Solution } from './types';

const quick = (change: Partial<QuickAnswers>): Needs => {
	const { yard } = quickYard({ ...usualAnswers('feet'), ...change });
	return needsOf(makePlan(yard), yard);
};
const asked: { name: string; needs: Needs }[] = [
	...examples.map(({ id, yard }) => ({ name: id, needs: needsOf(makePlan(yard), yard) })),
	{ name: 'a usual walk', needs: quick({}) },
	{ name: 'a long walk', needs: quick({ walk: 18.288, receptacle: 15.24 }) },
	{ name: 'trees and a wall', needs: quick({ walk: 12.192, trees: { small: 1, medium: 1, large: 0 }, wall: 6.096 }) },
	{ name: 'halogen', needs: quick({ walk: 12.192, lamp: 'halogen' }) }
];

/** Everything in a purchase, counted anew from the shelf's lines. */
function inBasket({ buys }: Pick<Solution, 'buys'>, shelf: Shelf) {
	const lines = buys.map(({ code, count }) => ({ count, line: shelf.lines.find((one) => one.code === code)! }));
	const products = (id: string) =>
		lines.reduce(
			(sum, { count, line: { contents } }) =>
				sum + count * contents.fixtures.reduce((n, one) => n + (one.product === id ? one.count : 0), 0),
			0
		);
	const metres = (gauge: string) =>
		lines.reduce(
			(sum, { count, line: { contents } }) =>
				sum +
				count *
					contents.cable.reduce(
						(n, { size, metres: m, count: c }) => n + (`${size.system}${size.size}` === gauge ? m * c : 0),
						0
					),
			0
		);
	const connectors = lines.reduce((sum, { count, line: { contents } }) => sum + count * contents.connectors, 0);
	const cents = lines.reduce((sum, { count, line: { cents: price } }) => sum + count * price, 0);
	return { lines, products, metres, connectors, cents };
}
function expectCovered(solution: Solution, needs: Needs, shelf: Shelf) {
	const basket = inBasket(solution, shelf);
	const { setup } = solution;
	expect(basket.cents).toBe(solution.cents);
	for (const { line: one, count } of basket.lines) expect(count).toBeLessThanOrEqual(one.stock ?? Infinity);
	for (const id of new Set(setup.products)) {
		const lights = needs.fixtures.reduce(
			(n, { fixtures }, k) => n + (setup.products[k] === id ? fixtures.length : 0),
			0
		);
		expect(basket.products(id)).toBeGreaterThanOrEqual(lights);
	}
	for (const key of new Set(setup.sizes.map(({ system, size }) => `${system}${size}`))) {
		const laid = needs.runs.reduce(
			(sum, { metres }, r) => sum + (`${setup.sizes[r]!.system}${setup.sizes[r]!.size}` === key ? metres : 0),
			0
		);
		expect(basket.metres(key)).toBeGreaterThan(laid - 1e-3);
	}
	expect(basket.connectors).toBeGreaterThanOrEqual(needs.connectors);
	expect(basket.lines.some(({ line: { code } }) => code === setup.transformer)).toBe(true);
	expect(solution.judged.ok).toBe(true);
	expect(solution.judged.problems).toEqual([]);
	expect(solution.growth).toBeCloseTo(solution.judged.limitVoltAmps - solution.judged.loadVoltAmps, 9);
}
const kitsIn = ({ buys }: Solution): string =>
	buys
		.filter(({ code }) => code.startsWith('K-'))
		.map(({ code, count }) => `${count} ${code}`)
		.join(' ');
const wordsOf = (match: Match): string[] => [
	...match.lacking,
	...match.kits.flatMap(({ why, remedy }) => [why, ...(remedy === null ? [] : [remedy])])
];

describe.each(asked)('the demo shelf for $name', ({ needs }) => {
	const match = matchShelf(needs, demoShelf);
	const shown = [match.best, ...match.runnersUp].filter((one) => one !== null);

	test('what is bought covers the plan, is in stock, costs what is said and passes', () => {
		if (!match.best) expect(match.lacking.length).toBeGreaterThan(0);
		else expect(match.lacking).toEqual([]);
		for (const one of shown) expectCovered(one, needs, demoShelf);
	});
	test('runners-up cost no less and are other choices of kits', () => {
		for (const one of match.runnersUp) expect(one.cents).toBeGreaterThanOrEqual(match.best!.cents);
		expect(new Set(shown.map(kitsIn)).size).toBe(shown.length);
	});
	test('every kit has its verdict, in the order of the shelf; with it nothing is cheaper than the best', () => {
		expect(match.kits.map(({ code }) => code)).toEqual(
			demoShelf.lines.filter(({ kind }) => kind === 'kit').map(({ code }) => code)
		);
		for (const { code, isIn, withIt } of match.kits) {
			expect(isIn).toBe(match.best?.buys.some((one) => one.code === code) ?? false);
			if (isIn) expect(withIt).toEqual({ buys: match.best!.buys, moreCents: 0 });
			if (!withIt) continue;
			expect(withIt.moreCents).toBeGreaterThanOrEqual(0);
			expect(withIt.buys.some((one) => one.code === code)).toBe(true);
			expect(inBasket(withIt, demoShelf).cents).toBe(match.best!.cents + withIt.moreCents);
		}
	});
	test('words are whole sentences with figures in them', () => {
		for (const words of wordsOf(match)) {
			expect(words).toMatch(/^[A-Z0-9].*\.$/);
			expect(words).not.toMatch(/undefined|NaN|null|Infinity|\.\.|\s\s| \./);
		}
	});
	test('a dim lamp is one that the kit by itself leaves below its window', () => {
		for (const { dim, alone } of match.kits) {
			if (!dim) continue;
			const lamp = alone!.lamps.find(({ label }) => label === dim.label)!;
			expect([lamp.volts, lamp.low]).toContain(dim.volts);
			expect(dim.volts).toBeLessThan(dim.least);
			expect(alone!.ok).toBe(false);
		}
	});
	test('the same again, from copies', () => {
		expect(matchShelf(structuredClone(needs), structuredClone(demoShelf))).toEqual(match);
	});
});

describe('laws', () => {
	const needs = asked[4]!.needs;
	const best = matchShelf(needs, demoShelf).best!;
	test('prices twice as high: the same purchase at twice the sum', () => {
		const dear = { ...demoShelf, lines: demoShelf.lines.map((one) => ({ ...one, cents: one.cents * 2 })) };
		const { best: now } = matchShelf(needs, dear);
		expect(now!.buys).toEqual(best.buys);
		expect(now!.cents).toBe(2 * best.cents);
	});
	test('one more item on the shelf never makes it dearer; taking away what was bought never makes it cheaper', () => {
		const more = { ...demoShelf, lines: [...demoShelf.lines, kit('K-999', 25000, { count: 6, size: 12 })] };
		expect(matchShelf(needs, more).best!.cents).toBeLessThanOrEqual(best.cents);
		for (const { code } of best.buys) {
			const less = { ...demoShelf, lines: demoShelf.lines.filter((one) => one.code !== code) };
			expect(matchShelf(needs, less).best?.cents ?? Infinity).toBeGreaterThanOrEqual(best.cents);
		}
	});
	test('a plan without lights needs nothing', () => {
		const none: Needs = { ...needs, fixtures: [], runs: [], connectors: 0 };
		const match = matchShelf(none, demoShelf);
		expect(match.best).toBeNull();
		expect(match.lacking).toEqual(['The plan has no lights yet: there is nothing to buy.']);
		for (const words of wordsOf(match)) expect(words).toMatch(/\.$/);
	});
});

describe('ties', () => {
	const loose = [
		line('L', 'fixture', 1000, { fixtures: [{ product: 'P', fixture: led('path', 3, 150), count: 1 }] }),
		line('T', 'transformer', 3000, { transformer: transformer(60) }),
		line('C', 'cable', 2000, { cable: [{ size: awg(16), metres: feet(100), count: 1 }] }),
		line('X', 'connectors', 100, { connectors: 2 })
	];
	const needs = chain(4, 5, 3);
	test('at the same price the kit in one piece is taken, and what it uses is told', () => {
		const match = matchShelf(needs, shelfOf(...loose, kit('K', 9400)));
		expect(match.best!.buys).toEqual([{ code: 'K', count: 1 }]);
		expect(match.best!.cents).toBe(9400);
		expect(match.kits[0]).toMatchObject({ isIn: true, short: [], dim: null, remedy: null });
		expect(match.kits[0]!.why).toBe(
			'Part of the cheapest that works: it brings 4 path lights, the 60 VA transformer and 100 ft of 16 AWG cable.'
		);
		expect(match.runnersUp[0]!.buys.map(({ code, count }) => `${count} ${code}`)).toEqual(['4 L', '1 T', '1 C', '4 X']);
	});
	test('a cent dearer it is out, and by how much is told', () => {
		const { kits } = matchShelf(needs, shelfOf(...loose, kit('K', 9401)));
		expect(kits[0]).toMatchObject({ isIn: false, withIt: { moreCents: 1 } });
		expect(kits[0]!.why).toBe('It would do. With it the cheapest that works costs $0.01 more.');
	});
});

test('LED where halogen is wished and not to be had is bought, and said', () => {
	const needs = chain(4, 5, 3, { source: 'halogen' });
	const { best } = matchShelf(needs, shelfOf(kit('K', 9000)));
	expect(best!.notes).toEqual(['P1, P2, P3 and P4: LED, because the shelf has no halogen path light that suits.']);
	const both = shelfOf(kit('K', 9000), kit('H', 12000, { product: 'H', fixture: halogen('path', 10, 140), size: 12 }));
	expect(matchShelf(needs, both).best!.buys).toEqual([{ code: 'H', count: 1 }]);
});
