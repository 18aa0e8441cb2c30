/** Trees that share a light, trees clothed to the ground, and beams kept out of windows and neighbours' eyes. */
import { describe, expect, it } from 'vitest';
import { distance } from '../shared/geometry';
import { tradeFigures } from '../shared/settings';
import { rules } from '../shared/rules';
import { makeSite, type Site, type Tree } from '../site';
import { blankYard } from '../yard';
import { rootFlare } from './conflicts';
import { sightOf, sightOn } from './sight';
import { treeAim } from './tree-aim';
import { placeFixtures } from './index';

const tree = (more: Partial<Tree> = {}): Tree => ({
	id: 'oak',
	name: 'oak',
	at: { x: 0, y: 10 },
	spread: 3,
	height: 6,
	crownBase: 2,
	trunkDiameter: 0.2,
	form: 'round',
	ground: 'lawn',
	light: 'soft',
	seenFrom: { x: 0, y: 30 },
	rootRadius: 2.4,
	...more
});
const planned = (trees: Tree[], more: Partial<Site> = {}) => {
	const site: Site = {
		...makeSite(blankYard()),
		street: 100,
		leftBoundary: -100,
		rightBoundary: 100,
		trees,
		...more
	};
	return { site, ...placeFixtures(site, blankYard()) };
};

describe('groups of trees', () => {
	const twin = tree({ id: 'ash', name: 'ash', at: { x: 0.8, y: 10 } });
	it('two trees that want a light at nearly the same place share it', () => {
		const { fixtures, findings } = planned([tree(), twin]);
		expect(fixtures).toHaveLength(1);
		expect(fixtures[0]!.id).toBe('oak/uplight-1');
		expect(fixtures[0]!.also).toEqual([{ kind: 'tree', id: 'ash' }]);
		expect(fixtures[0]!.aim!.point).toEqual({ x: 0.4, y: 10, z: 4 });
		expect(fixtures[0]!.reasons.map((r) => r.rule)).toContain('tree.group');
		expect(findings.find((f) => f.code === 'placement.group')?.about).toEqual({ kind: 'tree', id: 'ash' });
	});
	it('its beam covers both crowns: the angle by vectors', () => {
		const [light] = planned([tree(), twin]).fixtures;
		const { at, height, aim, lamp } = light!;
		const to = (p: { x: number; y: number; z: number }) => {
			const v = [p.x - at.x, p.y - at.y, p.z - height] as const;
			const size = Math.hypot(...v);
			return v.map((c) => c / size);
		};
		const axis = to(aim!.point);
		for (const crown of [tree(), twin]) {
			const line = to({ ...crown.at, z: 4 });
			const off = (Math.acos(axis.reduce((sum, c, i) => sum + c * line[i]!, 0)) * 180) / Math.PI;
			const half = (Math.atan2(crown.spread / 2, 4 - height) * 180) / Math.PI;
			expect(lamp.beamAngle / 2).toBeGreaterThanOrEqual(Math.min(30, off + half) - 1e-9);
		}
	});
	it('further apart, each has its own', () => {
		const { fixtures } = planned([tree(), { ...twin, at: { x: 1.3, y: 10 } }]);
		expect(fixtures).toHaveLength(2);
		expect(fixtures.every((f) => f.also === undefined)).toBe(true);
	});
	it('a brighter wish is heard', () => {
		const { fixtures } = planned([tree(), { ...twin, light: 'bright' }]);
		expect(fixtures[0]!.lamp.lumens).toBeGreaterThan(planned([tree()]).fixtures[0]!.lamp.lumens);
	});
});

describe('forms', () => {
	it.each(['conical', 'columnar'] as const)('%s, clothed to the ground: from just outside its branches', (form) => {
		const spruce = tree({ form, spread: 3, height: 9, crownBase: 0.3 });
		const { fixtures } = planned([spruce]);
		expect(fixtures.length).toBeGreaterThan(0);
		for (const f of fixtures) {
			// Common practice, no source: 150 mm (6 in) clear of the branches. A well light's head is 120 mm across.
			expect(distance(f.at, spruce.at)).toBeCloseTo(1.5 + 0.15 + 0.06, 9);
			expect(f.reasons[0]!.rule).toBe('tree.skirt');
		}
	});
	it('with a clear stem it is lit from close in', () => {
		expect(
			treeAim(tree({ form: 'columnar', crownBase: 1.5, spread: 1.2 }), 0, 0.06, tradeFigures.figures).offset
		).toBeCloseTo(0.15, 9);
	});
	it('a palm from close in, up its stem, by a narrow beam', () => {
		const palm = tree({ form: 'palm', spread: 3, height: 12, crownBase: 9.5, trunkDiameter: 0.35 });
		const [light] = planned([palm]).fixtures;
		expect(light!.lamp.beamAngle).toBeLessThanOrEqual(24);
		expect(light!.aim!.tilt).toBeLessThan(5);
	});
	it('a weeping tree from inside its curtain of branches', () => {
		const willow = tree({ form: 'weeping', spread: 6, height: 6, crownBase: 0.3, trunkDiameter: 0.4 });
		for (const f of planned([willow]).fixtures) expect(distance(f.at, willow.at)).toBeLessThan(3);
	});
	it('off the foot of a thick trunk', () => {
		const old = tree({ trunkDiameter: 1.2, spread: 3 });
		const { fixtures } = planned([old]);
		expect(fixtures.length).toBeGreaterThan(0);
		for (const f of fixtures) expect(distance(f.at, old.at)).toBeGreaterThanOrEqual(0.6 + rootFlare(1.2) + 0.06 - 1e-9);
	});
});

describe('out of eyes', () => {
	const { clearOfSight, clearOfWindow } = rules['tree.aim'].figures;
	const house = makeSite({
		...blankYard(),
		house: {
			sections: [{ id: 'front', width: 12, light: 'none' }],
			depth: 8,
			openings: [{ id: 'window', kind: 'window', wall: 'front', along: 4, width: 4 }]
		}
	});
	it.each([1.4, 2, 2.6])('a beam on a tree %s m before a window keeps outside of it, or says so', (out) => {
		const near = tree({ at: { x: 6, y: out }, spread: 2.5, seenFrom: { x: 6, y: 30 } });
		const { site, fixtures, findings } = planned([near], {
			house: house.house,
			walls: house.walls,
			street: 40
		});
		const said = findings.some((f) => f.code === 'placement.sight' && f.message.includes('at a window'));
		for (const f of fixtures) {
			const { spare } = sightOn(sightOf(site, tradeFigures.figures['tree.aim'].maxLean), f.at, f.height, f.aim!.point);
			expect(spare > 0 || said).toBe(true);
		}
		expect(fixtures.length).toBeGreaterThan(0);
	});
	it('of someone next door: the light moves round the trunk and says why', () => {
		// Looked at from the right, the light would lean towards the boundary on the left, a pace away.
		const edge = tree({ at: { x: -99.2, y: 10 }, height: 4, crownBase: 1, seenFrom: { x: 0, y: 10 } });
		const { site, fixtures, findings } = planned([edge]);
		const [light] = fixtures;
		const { spare } = sightOn(
			sightOf(site, tradeFigures.figures['tree.aim'].maxLean),
			light!.at,
			light!.height,
			light!.aim!.point
		);
		const moved = light!.reasons.filter((r) => r.because.includes('next door'));
		expect(spare > 0 ? moved.length > 0 : findings.some((f) => f.message.includes('next door'))).toBe(true);
	});
	it('the angle is that between the beam and the line to the eye', () => {
		const sight = sightOf({ ...house, walls: [], trees: [], strips: [] }, tradeFigures.figures['tree.aim'].maxLean);
		sight.add({ x: 1, y: 0 }, { eye: 1.6, watcher: 'walk' });
		// Straight up against an eye 1 m off and 1.6 m up: atan(1 / 1.6) = 32.01°.
		expect(sightOn(sight, { x: 0, y: 0 }, 0, { x: 0, y: 0, z: 4 }).spare + clearOfSight).toBeCloseTo(32.01, 2);
		expect(clearOfWindow).toBe(30);
	});
});

it('every light on a tree says what to leave for its growth', () => {
	for (const f of planned([tree()]).fixtures) expect(f.reasons.map((r) => r.rule)).toContain('tree.growth');
});
