import { describe, expect, test } from 'vitest';
import type { PlanLight, Receiver } from '$lib/domain/light';
import { makePlan, type Plan } from '$lib/domain/plan';
import { blankYard, examples } from '$lib/domain/yard';
import { litTrees, watcherOf } from './trees';
import { aimWords, evennessWords, groups, hourWords, lightHeading, pictureWords } from './words';

const walk: Receiver = {
	id: 'walk',
	kind: 'walk',
	name: 'the front walk',
	average: 6,
	least: 2,
	most: 20,
	evenness: 3,
	fromPlan: { average: 6, most: 20 },
	aim: { low: 5, high: null, evenness: 5, rule: 'path.level' },
	verdict: 'right',
	points: 30
};
const light = (...receivers: Receiver[]): PlanLight => ({
	receivers,
	glare: [],
	upward: { lumens: 0, share: 0, skyShare: 0 },
	findings: [],
	assumptions: []
});
const demo = makePlan(examples[0]!.yard);
const lit = (...receivers: Receiver[]): Plan => ({ ...demo, light: light(...receivers) });

describe('what should be', () => {
	test.each([
		[walk, '5 lx or more on average, evenness 5 to 1 or better'],
		[{ ...walk, kind: 'steps', aim: { low: 11, high: null, evenness: null, rule: '' } }, '11 lx or more on each tread'],
		[{ ...walk, kind: 'wall', aim: { low: 5, high: 20, evenness: null, rule: '' } }, '5 to 20 lx on average'],
		[{ ...walk, kind: 'boundary', aim: { low: null, high: 2, evenness: null, rule: '' } }, 'at most 2 lx anywhere'],
		[{ ...walk, aim: null }, null]
	] as [Receiver, string | null][])('case %#', (one, words) => expect(aimWords(one)).toBe(words));
	test('evenness', () => {
		expect(evennessWords(walk)).toBe('3.0 to 1');
		expect(evennessWords({ ...walk, evenness: 18.2 })).toBe('18 to 1');
		expect(evennessWords({ ...walk, evenness: null })).toBe('–');
		expect(evennessWords({ ...walk, kind: 'boundary' })).toBe('');
	});
});

describe('the heading', () => {
	const short: Receiver = { ...walk, id: 'other', name: 'the side walk', verdict: 'short' };
	test('nothing lit', () => expect(lightHeading(makePlan(blankYard()))).toBe('Nothing is lit yet'));
	test('all right', () => expect(lightHeading(lit(walk))).toBe('Light lands where it should, as much as it should'));
	test('one that is not, by name', () =>
		expect(lightHeading(lit(walk, short))).toBe('The side walk: less than it should be'));
	test('several, counted; what has no figure does not count', () =>
		expect(lightHeading(lit(walk, short, { ...short, id: 'third' }, { ...walk, verdict: 'no-aim' }))).toBe(
			'Light is right in 1 of 3 places'
		));
});

describe('the picture in words', () => {
	test('says the brightest first, and what stays dark', () => {
		const drive: Receiver = { ...walk, id: 'drive', kind: 'drive', name: 'the drive', average: 0.1 };
		const wall: Receiver = { ...walk, id: 'wall', kind: 'wall', name: 'the front', average: 12 };
		const words = pictureWords({ ...lit(walk, drive, wall), fixtures: demo.fixtures.slice(0, 1) }, 'street');
		expect(words).toContain(
			'The house from the street, after dark. Lit: the front (12 lx) and the front walk (6.0 lx).'
		);
		expect(words).toContain('All but dark: the drive.');
	});
	test('nothing lit', () =>
		expect(pictureWords(makePlan(blankYard()), 'above')).toBe('The yard from above, after dark. Nothing is lit.'));
	test('the slider in words', () => {
		expect([0, 20, 50, 80, 100].map(hourWords)).toEqual(['full day', 'late in the day', 'dusk', 'last light', 'night']);
	});
});

describe.each(examples.map(({ id, yard }) => [id, makePlan(yard)] as const))('%s', (_, plan) => {
	test('every receiver stands in a table: in a group, or as a crown', () => {
		const kinds = new Set(groups.flatMap((group) => group.kinds));
		for (const { kind } of plan.light.receivers) expect(kind === 'crown' || kinds.has(kind)).toBe(true);
	});
	test('every light aimed at a tree can be shown with it, and somebody stands where there is an eye', () => {
		const all = litTrees(plan);
		const aimed = plan.fixtures.filter(({ target }) => target.kind === 'tree');
		for (const { id } of aimed) expect(all.some(({ fixture }) => fixture.id === id)).toBe(true);
		for (const one of all) {
			const { at, candela } = watcherOf(plan, one);
			expect(at.z).toBeGreaterThan(0.5);
			const seen = plan.light.glare.filter(({ fixture, eye }) => fixture === one.fixture.id && eye.kind !== 'window');
			expect(candela).toBe(seen.length === 0 ? null : Math.max(...seen.map((glare) => glare.candela)));
		}
	});
});
