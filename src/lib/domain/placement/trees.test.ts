import { describe, expect, it } from 'vitest';
import { blankYard } from '../yard';
import { makeSite, type Tree } from '../site';
import { rules } from '../shared/rules';
import { tradeFigures } from '../shared/settings';
import { barkOffset, bearingsRound, fromBark, treeAim, uplightCount } from './tree-aim';
import { placeFixtures } from './index';
import { stockBeamFor } from './models';
import published from './placement.published.json';

const tree = (more: Partial<Tree> = {}): Tree => ({
	id: 'oak',
	name: 'oak',
	at: { x: 0, y: 10 },
	spread: 5,
	height: 7,
	crownBase: 2,
	trunkDiameter: 0.3,
	form: 'round',
	ground: 'lawn',
	light: 'soft',
	seenFrom: { x: 0, y: 30 },
	rootRadius: 3.6,
	...more
});
const openGround = (trees: Tree[]) => {
	const site = { ...makeSite(blankYard()), street: 100, leftBoundary: -100, rightBoundary: 100, trees };
	return placeFixtures(site, blankYard());
};

describe('distance from the bark', () => {
	const { nearSpread, near, farSpread, farLow, farHigh } = published.treeOffset;
	it.each([0.5, 2, 3, nearSpread])('%s m across: 150 mm', (spread) => {
		// 10 ft is 3.048 m: the slope has just begun.
		expect(Math.abs(barkOffset(spread, tradeFigures.figures) - near)).toBeLessThan(0.011);
	});
	it.each([7.5, farSpread, 12, 40])('%s m across: 0.9 to 1.2 m', (spread) => {
		expect(barkOffset(spread, tradeFigures.figures)).toBeGreaterThanOrEqual(farLow);
		expect(barkOffset(spread, tradeFigures.figures)).toBeLessThanOrEqual(farHigh);
	});
	it('grows in proportion between', () => {
		expect(barkOffset(5.25, tradeFigures.figures)).toBeCloseTo((0.15 + 1.05) / 2, 12);
	});
	it('is kept on the plan, from the bark and not from the middle of the trunk', () => {
		const wide = tree({ spread: 9, height: 12, crownBase: 3, trunkDiameter: 0.8 });
		const { fixtures } = openGround([wide]);
		for (const { at } of fixtures) expect(fromBark(at, wide)).toBeCloseTo(1.05, 9);
		expect(fixtures).toHaveLength(3);
	});
});

describe('how many, and where round the trunk', () => {
	it.each([
		[3.4, 1],
		[3.6, 2],
		[7.4, 2],
		[7.6, 3],
		[11.1, 4]
	])('%s m across: %s', (spread, count) => {
		expect(uplightCount(tree({ spread }))).toBe(count);
	});
	it('a columnar tree takes one, a tall one two', () => {
		expect(uplightCount(tree({ form: 'columnar', spread: 1, height: 4 }))).toBe(1);
		expect(uplightCount(tree({ form: 'columnar', spread: 1, height: 9 }))).toBe(2);
	});
	it.each([1, 2, 3, 4, 5, 8])('%s lights are spread the same to the left and to the right of the view', (count) => {
		const list = bearingsRound(count);
		expect(list).toHaveLength(count);
		const sorted = (angles: number[]): number[] => angles.map((a) => a + 0).sort((a, b) => a - b);
		expect(sorted(list.map((a) => (a === 0 ? 0 : -a)))).toEqual(sorted(list));
	});
	it('one light stands on the side it is looked at from', () => {
		const { fixtures } = openGround([tree({ spread: 3 })]);
		expect(fixtures[0]!.at.x).toBeCloseTo(0, 9);
		expect(fixtures[0]!.at.y).toBeCloseTo(10 + 0.15 + 0.15, 9);
	});
	it('flush in lawn, on a stake in a bed', () => {
		expect(openGround([tree()]).fixtures.every((f) => f.mount === 'flush')).toBe(true);
		expect(openGround([tree({ ground: 'bed' })]).fixtures.every((f) => f.mount === 'stake')).toBe(true);
	});
});

describe('beam and aim', () => {
	it('the narrowest stock beam that covers the crown at its middle', () => {
		// 2·atan(1/4) = 28.07°: 24 is too narrow, 36 covers.
		const aim = treeAim(tree({ spread: 2, height: 5, crownBase: 3 }), 0, 0.06, tradeFigures.figures);
		expect(aim.needed).toBeCloseTo(28.07, 2);
		expect(aim.beam).toBe(36);
		expect(stockBeamFor(24)).toBe(24);
		expect(stockBeamFor(90)).toBe(60);
	});
	it('leans at most 35°, nearer to the bark first, and says so when that is not enough', () => {
		const low = tree({ spread: 8, height: 2, crownBase: 0.4, trunkDiameter: 0.2, form: 'spreading' });
		const aim = treeAim(low, 0, 0.06, tradeFigures.figures);
		expect(aim.lean).toBeLessThanOrEqual(35 + 1e-9);
		expect(aim.offset).toBeLessThan(1.05);
		const bush = openGround([tree({ spread: 6, height: 0.6, crownBase: 0, trunkDiameter: 0.6 })]);
		expect(bush.findings.map((f) => f.code)).toContain('placement.lean');
		for (const f of bush.fixtures) expect(f.aim!.tilt).toBeLessThanOrEqual(35 + 1e-9);
	});
	it('points through the middle of the crown', () => {
		for (const { aim } of openGround([tree()]).fixtures) expect(aim!.point).toEqual({ x: 0, y: 10, z: 4.5 });
	});
	it('bearing of a beam towards the house of a front that faces south is north', () => {
		const { fixtures } = openGround([tree({ spread: 3 })]);
		// Without an answer the front is taken to face south.
		expect(fixtures[0]!.aim!.bearing % 360).toBeCloseTo(0, 6);
	});
});

describe('roots', () => {
	it('twelve stem diameters, and the area of the standard', () => {
		const { stem, radius, area } = published.rootRadius;
		const r = rules['tree.roots'].figures.perDiameter * stem;
		expect(r).toBe(radius);
		expect(Math.round(Math.PI * r * r)).toBe(area);
	});
	it('each lit tree says to dig by hand', () => {
		const { findings } = openGround([tree(), tree({ id: 'ash', name: 'ash', at: { x: 20, y: 10 }, light: 'none' })]);
		expect(findings.filter((f) => f.code === 'placement.roots').map((f) => f.about?.id)).toEqual(['oak']);
	});
});
