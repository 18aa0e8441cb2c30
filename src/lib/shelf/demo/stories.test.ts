/** The demo shelf on whole plans: each kit does what it is there to show. */
import { describe, expect, it } from 'vitest';
import { matchShelf, needsOf, type Match } from '../../domain/kits';
import { makePlan } from '../../domain/plan';
import { quickYard, usualAnswers, type QuickAnswers } from '../../domain/quick';
import { demoShelf } from '.';

const feet = 0.3048;
function match(change: Partial<QuickAnswers>, units: QuickAnswers['units'] = 'feet'): Match {
	const { yard } = quickYard({ ...usualAnswers(units), ...change });
	return matchShelf(needsOf(makePlan(yard), yard), demoShelf);
}
const kit = ({ kits }: Match, code: string) => kits.find((one) => one.code === code)!;
const codes = ({ best }: Match) => best?.buys.map(({ code }) => code);

describe('the demo shelf on usual yards', () => {
	it('has one kit that is right for the usual walk, in feet and in metres', () => {
		expect(codes(match({}))).toEqual(['K-102']);
		expect(codes(match({}, 'metres'))).toEqual(['K-112']);
	});
	it('shows kits that lack cable, a light, a transformer', () => {
		const usual = match({});
		expect(kit(usual, 'K-101').short.join()).toMatch(/cable/);
		expect(kit(usual, 'K-111').short).toHaveLength(1);
		expect(kit(usual, 'K-111').short.join()).toMatch(/^1 path light/);
		expect(kit(usual, 'K-110').short.join()).toMatch(/transformer/);
	});
	it('shows a long walk whose last lamp starves, and what helps', () => {
		const long = match({ walk: 60 * feet, receptacle: 60 * feet });
		const starved = kit(long, 'K-103');
		expect(starved.isIn).toBe(false);
		expect(starved.dim!.volts).toBeLessThan(starved.dim!.least);
		expect(starved.short.filter((one) => !one.includes('connector'))).toEqual([]);
		expect(starved.remedy).not.toBeNull();
		expect(long.best).not.toBeNull();
	});
	it('shows a transformer that is overloaded in volt-amperes', () => {
		const grove = kit(match({ drive: 30 * feet, wall: 20 * feet, trees: { small: 2, medium: 1, large: 1 } }), 'K-108');
		expect(grove.alone!.loadVoltAmps).toBeGreaterThan(grove.alone!.limitVoltAmps);
		expect(grove.alone!.problems.map(({ code }) => code)).toContain('transformer-load');
	});
	it('shows the halogen kit to who has halogen', () => {
		expect(codes(match({ lamp: 'halogen' }))).toEqual(['K-109']);
	});
});
