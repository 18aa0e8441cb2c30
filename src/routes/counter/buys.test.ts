import { describe, expect, it } from 'vitest';
import type { Judged, Match, Needs, Solution } from '$lib/domain/kits/types';
import { demoShelf } from '$lib/shelf';
import { basketWords, hoursWords, linesOf, lumensOf, nameOfBuys, tightest, trenchWords, whyThis } from './buys';

const judged: Judged = {
	ok: true,
	lamps: [],
	taps: [12],
	loadVoltAmps: 20,
	limitVoltAmps: 48,
	margin: 1,
	problems: [],
	notes: []
};
const solution = (buys: Solution['buys'], cents: number): Solution => ({
	buys,
	cents,
	setup: { products: ['0201'], sizes: [{ system: 'awg', size: 16 }], transformer: 'K-101' },
	judged,
	spare: [],
	growth: 28,
	notes: []
});
const kit = solution([{ code: 'K-101', count: 2 }], 33_000);
const mixed = solution(
	[
		{ code: '0201', count: 3 },
		{ code: 'K-101', count: 1 }
	],
	40_000
);
const match: Match = { isProven: true, best: kit, runnersUp: [mixed], kits: [], lacking: [] };
const lamp = (label: string, low: number, high: number) => ({
	fixture: label,
	label,
	volts: (low + high) / 2,
	low,
	high,
	least: 9,
	most: 15
});

describe('what is bought', () => {
	it('stands in the order of the shelf, each with what it comes to', () => {
		const lines = linesOf(mixed.buys, demoShelf);
		expect(lines.map(({ line, count, cents }) => [line.code, count, cents === count * line.cents])).toEqual([
			['K-101', 1, true],
			['0201', 3, true]
		]);
		expect(basketWords(kit.buys, demoShelf)).toBe('2 × Short walk kit, 4 path lights');
		expect(basketWords(mixed.buys, demoShelf)).toBe('Short walk kit, 4 path lights, and 3 loose pieces');
	});
	it('has one name for one basket, whatever the codes are made of', () => {
		expect(nameOfBuys(kit.buys)).not.toBe(nameOfBuys(mixed.buys));
		expect(nameOfBuys([{ code: '1 + 2', count: 1 }])).not.toBe(
			nameOfBuys([
				{ code: '1', count: 1 },
				{ code: '2', count: 1 }
			])
		);
	});
	it('gives the light of the lamps that are bought', () => {
		const need = { id: 'n', kind: 'path', fixtures: ['a', 'b', 'c'], labels: [], lumens: 1, beam: null, source: 'led' };
		const needs = { fixtures: [need], runs: [], connectors: 0, system: 'awg', units: 'feet', hours: null } as Needs;
		const each = demoShelf.lines.find(({ code }) => code === '0201')?.contents.fixtures[0]?.fixture.lamp.lumens ?? 0;
		expect(each).toBeGreaterThan(0);
		expect(lumensOf(kit, needs, demoShelf)).toBe(3 * each);
	});
	it('names the lamp nearest to either end of its window', () => {
		expect(tightest(judged)).toBeNull();
		expect(tightest({ ...judged, lamps: [lamp('P1', 10, 12), lamp('P2', 12, 14.5)] })).toMatchObject({
			label: 'P2',
			spare: 0.5
		});
	});
	it('says what another choice costs more', () => {
		expect(whyThis(mixed, match, demoShelf)).toMatch(/costs \$70\.00 more than the cheapest/);
		expect(whyThis(kit, match, demoShelf)).toMatch(/cheapest/);
		const perhaps = { ...match, isProven: false };
		expect(whyThis(mixed, perhaps, demoShelf)).toMatch(/more than the cheapest found\.$/);
		expect(whyThis(mixed, { ...perhaps, best: mixed }, demoShelf)).toMatch(/cheapest found/);
	});
	it('says hours and trenches in round figures', () => {
		expect([0.5, 1, 1.5, 2, 7.5].map(hoursWords)).toEqual([
			'about ½ hour',
			'about 1 hour',
			'about 1½ hours',
			'about 2 hours',
			'about 7½ hours'
		]);
		// 1 ft = 0.3048 m exactly (international foot, 1959).
		expect([trenchWords(30.48, 'feet'), trenchWords(30.48, 'metres')]).toEqual(['100 ft', '30 m']);
	});
});
