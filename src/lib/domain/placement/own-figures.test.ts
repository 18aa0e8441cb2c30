/** Figures of the rules as the person has them: every one of them at both ends of its range, on the demos and on random yards. */
import { describe, expect, it } from 'vitest';
import { makePlan } from '../plan';
import { nearestOnLine } from '../shared/geometry';
import { figuresOf, settings, usual, type SettableKey } from '../shared/settings';
import { makeSite } from '../site';
import { awkward, blankYard, examples, readYard, writeYard, yardSchema, type Yard } from '../yard';
import { awkwardYard } from './awkward.testing';
import { faults } from './faults.testing';
import { placeFixtures, type Fixture } from './index';

const keys = Object.keys(settings) as SettableKey[];
/** Those that placement takes its figures from; what digging costs moves cable only. */
const placing = keys.filter((key) => !key.startsWith('ground.'));
const seeds = Array.from({ length: process.env.LONG ? 1000 : 40 }, (_, i) => i + 1);
const ends = placing.flatMap((key) => [[key, settings[key].least] as const, [key, settings[key].most] as const]);
const withFigures = (yard: Yard, rules: Record<string, number>): Yard => ({ ...yard, rules });
const planned = (yard: Yard) => {
	const site = makeSite(yard);
	return { site, ...placeFixtures(site, yard) };
};
const places = (fixtures: readonly Fixture[]): string =>
	JSON.stringify(fixtures.map(({ at, aim, model }) => [at, aim, model]));

describe('a figure at an end of its range', () => {
	it.each(ends)(
		'%s = %d: all that always holds still does',
		(key, value) => {
			const { figures } = figuresOf({ [key]: value });
			const yards = [...[...examples, ...awkward].map(({ yard }) => yard), ...seeds.map((seed) => awkwardYard(seed))];
			const wrong = yards.flatMap((yard, i) => {
				const { site, fixtures, findings } = planned(withFigures(yard, { [key]: value }));
				return faults(site, fixtures, findings, figures).map((text) => `yard ${i}: ${text}`);
			});
			expect(wrong.slice(0, 10)).toEqual([]);
		},
		60_000
	);
	it.each(placing)(
		'%s moves lights somewhere, and the plan says so',
		(key) => {
			/** Whether a yard's lights move with the figure at one of its ends, and whether that is put into words. */
			const shows = (yard: Yard): { moved: boolean; said: boolean } => {
				const before = places(planned(yard).fixtures);
				let [moved, said] = [false, false];
				for (const value of [settings[key].least, settings[key].most]) {
					if (value === usual(key)) continue;
					const { fixtures, findings } = planned(withFigures(yard, { [key]: value }));
					moved ||= places(fixtures) !== before;
					const words = [
						...fixtures.flatMap(({ reasons }) => reasons.map(({ because }) => because)),
						...findings.map(({ message }) => message)
					];
					said ||= words.some((text) => / Your own figures?: /.test(text));
				}
				return { moved, said };
			};
			const seen = { moved: false, said: false };
			const random = Array.from({ length: 400 }, (_, i) => i + 1);
			for (const one of [...examples.map(({ yard }) => yard), ...random]) {
				const yard = typeof one === 'number' ? awkwardYard(one) : one;
				const { moved, said } = shows(yard);
				seen.moved ||= moved;
				seen.said ||= said;
				if (seen.moved && seen.said) break;
			}
			expect(seen).toEqual({ moved: true, said: true });
		},
		60_000
	);
	it('the whole plan is made of all at their least, and of all at their most', () => {
		for (const end of ['least', 'most'] as const) {
			const rules = Object.fromEntries(keys.map((key) => [key, settings[key][end]]));
			const { figures } = figuresOf(rules);
			for (const { id, yard } of [...examples, ...awkward]) {
				const plan = makePlan(withFigures(yard, rules));
				expect(faults(plan.site, plan.fixtures, plan.findings, figures), `${id}, all at their ${end}`).toEqual([]);
				expect(JSON.stringify(plan)).not.toMatch(/NaN|undefined/);
			}
			for (const seed of seeds) {
				const { site, fixtures, findings } = planned(withFigures(awkwardYard(seed), rules));
				expect(faults(site, fixtures, findings, figures), `yard ${seed}, all at their ${end}`).toEqual([]);
			}
		}
	}, 120_000);
	it('any figures at once, each anywhere in its range', () => {
		const wrong = seeds.flatMap((seed) => {
			// Golden-ratio steps: well spread, the same every time.
			const rules = Object.fromEntries(
				keys.map((key, i) => {
					const share = ((seed * keys.length + i) * 0.618034) % 1;
					return [key, settings[key].least + share * (settings[key].most - settings[key].least)];
				})
			);
			const { figures } = figuresOf(rules);
			const { site, fixtures, findings } = planned(withFigures(awkwardYard(seed), rules));
			return faults(site, fixtures, findings, figures).map((text) => `yard ${seed}: ${text}`);
		});
		expect(wrong.slice(0, 10)).toEqual([]);
	}, 60_000);
});

describe('what a figure does', () => {
	const demo = examples[0]!.yard;
	const paths = (yard: Yard) => planned(yard).fixtures.filter(({ technique }) => technique === 'path');
	it('wider spacing takes fewer path lights, closer spacing no fewer', () => {
		const count = (spacing: number) =>
			examples.reduce((sum, { yard }) => sum + paths(withFigures(yard, { 'path.spacing/spacing': spacing })).length, 0);
		const now = examples.reduce((sum, { yard }) => sum + paths(yard).length, 0);
		expect(count(4)).toBeLessThan(now);
		expect(count(6)).toBeLessThanOrEqual(count(4));
		expect(count(2)).toBeGreaterThan(now);
	});
	it('the stake of a drive light stands where it is told', () => {
		const stake = 0.6;
		let count = 0;
		for (const { yard } of examples) {
			const { site, fixtures } = planned(withFigures(yard, { 'drive.setback/stake': stake }));
			for (const { at, target } of fixtures.filter(({ technique }) => technique === 'drive')) {
				const strip = site.strips.find(({ kind, id }) => kind === 'drive' && id === target.id)!;
				expect(nearestOnLine(at, strip.centre)!.distance - strip.width / 2).toBeCloseTo(stake, 2);
				count++;
			}
		}
		expect(count).toBeGreaterThan(0);
	});
	it('a reason names the figure as yours, with the trade’s beside it, and your answer as its source', () => {
		const own = paths(withFigures(demo, { 'path.spacing/spacing': 4 }))[0]!.reasons.find(
			({ rule }) => rule === 'path.spacing'
		)!;
		expect(own.because).toContain(
			'Your own figure: path lights along one edge, apart 13 ft 1 1/2 in (the trade’s is 9 ft 10 in).'
		);
		expect(own.source).toBe('asked');
		const others = paths(withFigures(demo, { 'path.spacing/spacing': 4 }))[0]!.reasons.filter(
			({ rule }) => rule !== 'path.spacing'
		);
		expect(others.some(({ because }) => because.includes('Your own figure'))).toBe(false);
	});
	it('lights set by hand are judged by your figures too', () => {
		const light = paths(demo)[0]!;
		const yard: Yard = {
			...demo,
			fixtures: {
				added: [
					{
						id: 'extra',
						technique: 'path',
						target: { kind: 'walk', id: light.target.id },
						at: { along: light.at.x, out: light.at.y + 2.5 }
					}
				]
			}
		};
		const near = (rules?: Record<string, number>) =>
			planned(rules ? withFigures(yard, rules) : yard).findings.filter(({ code }) => code === 'placement.hand-spacing');
		expect(near({ 'path.spacing/spacing': 2 })).toEqual([]);
		expect(near({ 'path.spacing/spacing': 6 })[0]?.message).toMatch(/Your own figure: /);
	});
});

describe('figures that are the trade’s, or are none', () => {
	const bare = (yard: Yard): string => JSON.stringify(makePlan(yard));
	it('no figures, no list of them, and the trade’s own figures give the same plan to the byte', () => {
		const all = Object.fromEntries(keys.map((key) => [key, usual(key)]));
		for (const { yard } of examples) {
			expect(bare(withFigures(yard, {}))).toBe(bare(yard));
			expect(bare(withFigures(yard, all))).toBe(bare(yard));
		}
	});
	it('one beyond its range is kept, not applied, and said', () => {
		for (const { key, value } of keys.flatMap((key) => [
			{ key, value: settings[key].least - 0.01 },
			{ key, value: settings[key].most + 0.01 },
			{ key, value: -1e6 }
		])) {
			const { yard } = examples[0]!;
			const told = withFigures(yard, { [key]: value });
			expect(yardSchema.safeParse(told).success).toBe(true);
			const { fixtures, findings } = planned(told);
			expect(places(fixtures)).toBe(places(planned(yard).fixtures));
			const said = findings.filter(({ code }) => code === 'placement.rule-figure');
			expect(said).toHaveLength(1);
			expect(said[0]).toMatchObject({ rank: 'note', rule: key.split('/')[0], about: null });
			expect(said[0]!.message).toMatch(
				/^Your own figure for “.+”, .+, is not from .+ to .+\. The trade’s .+ is used\. Yours is kept/
			);
		}
	});
	it('an unknown one, and one that may not be set, are one note together', () => {
		const strange = {
			'water.clear/clear': 0.5,
			'supply.load/fraction': 1,
			'drive.setback/clear': 0,
			constructor: 1,
			toString: 2
		};
		const { figures, refused, own } = figuresOf(strange);
		expect(refused).toHaveLength(5);
		expect(own.size).toBe(0);
		expect(figures['water.clear'].clear).toBe(3.05);
		const said = planned(withFigures(blankYard(), strange)).findings;
		expect(said).toHaveLength(1);
		expect(said[0]!.message).toContain(
			'5 figures in this yard are of no rule whose figures may be set (“water.clear/clear”'
		);
	});
	it('no standard’s figure and no safety figure may be set', () => {
		expect(keys.filter((key) => /^(water|supply|cable|dig|sensor|lamp|warm|glare)\./.test(key))).toEqual([]);
		expect(keys).not.toContain('drive.setback/clear');
	});
	it('every range holds the trade’s figure', () => {
		for (const key of keys) {
			expect(usual(key), key).toBeGreaterThanOrEqual(settings[key].least);
			expect(usual(key), key).toBeLessThanOrEqual(settings[key].most);
		}
	});
	it('a yard keeps them when it is saved and read again', () => {
		const yard = withFigures(examples[0]!.yard, { 'path.spacing/spacing': 4, 'later.rule/figure': 7 });
		const read = readYard(writeYard(yard));
		expect(read.ok && read.yard.rules).toEqual(yard.rules);
	});
	it('what is no number is no yard', () => {
		for (const value of ['4', null, Number.NaN, Infinity, 1e9])
			expect(yardSchema.safeParse({ ...blankYard(), rules: { 'path.spacing/spacing': value } }).success).toBe(false);
	});
});
