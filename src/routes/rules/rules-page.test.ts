/** What the rules page is made of. */
import { describe, expect, it } from 'vitest';
import { makePlan } from '$lib/domain/plan';
import { figuresIn, figureWords, fixedWhy, formatFigure } from '$lib/domain/shared/rule-words';
import { rules, type Rule, type RuleId } from '$lib/domain/shared/rules';
import { isSettable, settings, usual, type SettableKey } from '$lib/domain/shared/settings';
import { awkward, examples } from '$lib/domain/yard/examples';
import { readFigure, withFigure, writeFigure } from './figures';
import { groups, groupsOf } from './groups';
import { usesOf } from './uses';

const all = Object.values<Rule>(rules);
const keys = Object.keys(settings) as SettableKey[];

describe('the groups', () => {
	it('hold every rule once', () => {
		expect(groups.flatMap(({ list }) => list.map(({ id }) => id)).toSorted()).toEqual(Object.keys(rules).toSorted());
		expect(groups.map(({ title }) => title)).not.toContain('Others');
	});
	it('know every prefix there is; a new one gets a group, not a gap', () => {
		expect(groups).toHaveLength(13);
		const later = groupsOf([...all, { ...all[0]!, id: 'pond.edge' }]);
		expect(later.at(-1)).toMatchObject({ title: 'pond', list: [{ id: 'pond.edge' }] });
	});
});

describe('the figures', () => {
	it('of every rule have words, a unit and a value that can be read', () => {
		for (const rule of all)
			for (const { label, value, unit } of figuresIn(rule)) {
				expect(label).toMatch(/^\S.*\S$/);
				for (const units of ['feet', 'metres'] as const)
					expect(formatFigure(value, unit, units)).not.toMatch(/NaN|undefined|unknown/);
			}
		expect(Object.keys(figureWords).toSorted()).toEqual(
			all
				.filter(({ figures }) => Object.keys(figures).length > 0)
				.map(({ id }) => id)
				.toSorted()
		);
	});
	it('that are fixed say why', () => {
		const unsaid = all
			.filter((rule) => Object.keys(rule.figures).some((figure) => !isSettable(`${rule.id}/${figure}`)))
			.filter(({ id }) => !fixedWhy[id as RuleId]);
		expect(unsaid.map(({ id }) => id)).toEqual([]);
	});
	it.each(keys)('%s is read as it is written, at the ends of its range and at the trade’s', (key) => {
		for (const units of ['feet', 'metres'] as const)
			for (const value of [settings[key].least, settings[key].most, usual(key)]) {
				const read = readFigure(key, writeFigure(key, value, units), units);
				expect(read.ok, `${value} in ${units}`).toBe(true);
				const off = settings[key].unit === 'm' ? 0.0064 : 0.0005;
				if (read.ok) expect(Math.abs(read.value - value)).toBeLessThanOrEqual(off);
			}
	});
	it.each(keys)('%s refuses in words what is beyond its range or no figure', (key) => {
		const { unit, least, most } = settings[key];
		const scale = unit === 'share' ? 100 : 1;
		const texts = [String(most * scale * 1.2), String(least * scale * 0.5), 'plenty', '-1'];
		for (const text of texts) {
			const read = readFigure(key, text, 'metres');
			expect(read.ok, text).toBe(false);
			if (!read.ok) expect(read.message).toMatch(/^[A-Z].*\.$/);
		}
	});
	it('are taken as people write them', () => {
		expect(readFigure('path.spacing/spacing', '13 ft', 'feet')).toMatchObject({ ok: true, value: 3.9624 });
		expect(readFigure('path.spacing/spacing', '4', 'metres')).toMatchObject({ ok: true, value: 4 });
		expect(readFigure('wall.setback/low', '20 %', 'metres')).toMatchObject({ ok: true, value: 0.2 });
		expect(readFigure('wall.spacing/ratio', '4 to 1', 'metres')).toMatchObject({ ok: true, value: 4 });
		expect(readFigure('tree.aim/maxLean', '30°', 'feet')).toMatchObject({ ok: true, value: 30 });
	});
	it('are kept one by one; the trade’s own is none', () => {
		const one = withFigure(undefined, 'path.spacing/spacing', 4);
		expect(one).toEqual({ 'path.spacing/spacing': 4 });
		expect(withFigure({ ...one, 'later/figure': 1 }, 'path.spacing/spacing', null)).toEqual({ 'later/figure': 1 });
		expect(withFigure(one, 'path.spacing/spacing', 3)).toBeUndefined();
		expect(withFigure(one, 'path.spacing/spacing', null)).toBeUndefined();
	});
});

describe('what a rule did in a plan', () => {
	it.each([...examples, ...awkward].map((start) => [start.id, start] as const))(
		'%s: every reason of every light is found under its rule',
		(_, { yard }) => {
			const plan = makePlan(yard);
			const uses = usesOf(plan);
			for (const fixture of plan.fixtures)
				for (const { rule, because, notHere } of fixture.reasons) {
					const use = uses.get(rule)!;
					if (notHere) expect(use.moved.some((one) => one.fixture === fixture && one.because === because)).toBe(true);
					else expect(use.put).toContain(fixture);
				}
			const said = [...uses.values()].flatMap(({ said }) => said);
			expect(said).toHaveLength(plan.findings.filter(({ rule }) => rule !== null).length);
			for (const { because } of [...uses.values()].flatMap(({ moved }) => moved)) expect(because).toMatch(/^Not /);
		}
	);
	it('says of each "not here because" which rule it was', () => {
		const moved = [...examples, ...awkward].flatMap(({ yard }) =>
			makePlan(yard).fixtures.flatMap(({ reasons }) => reasons.filter(({ because }) => because.startsWith('Not ')))
		);
		expect(moved.length).toBeGreaterThan(20);
		expect(moved.filter(({ notHere }) => !notHere)).toEqual([]);
	});
});
