import { describe, expect, it } from 'vitest';
import { makePlan } from '../domain/plan';
import { blankYard, type Yard } from '../domain/yard';
import { onPanel, panelOf } from './panels';
import { ridgeOf, roofPanels, roofParts } from './roof';

const house = (sections: NonNullable<Yard['house']['sections']>, lot: Yard['lot'] = { street: 9, left: 5, right: 5 }) =>
	makePlan({ ...blankYard(), house: { sections, depth: 8, eaves: 3 }, lot }).site;

describe('roofs', () => {
	it('hipped over 10 m by 8 m, eaves 0.6 m out: ridge 0.55 · 4.6 m above the eaves', () => {
		const [part, ...others] = roofParts(house([{ id: 'a', width: 10 }]));
		expect(others).toEqual([]);
		expect(ridgeOf(part!)).toBeCloseTo(3 + 0.55 * 4.6, 9);
	});
	it('a gable comes to the point it was told', () => {
		const site = house([
			{ id: 'a', width: 6 },
			{ id: 'b', width: 4, out: 1, gable: 5.5 }
		]);
		const parts = roofParts(site);
		expect(parts.map(({ peak }) => peak)).toEqual([null, 5.5]);
		const top = Math.max(...roofPanels(site, 1, 2).flatMap(({ corners }) => corners.map(({ z }) => z)));
		expect(top).toBeGreaterThan(5.5);
		expect(top).toBeLessThan(5.8);
	});
	it('against a shared wall the ridge runs through', () => {
		const site = house([{ id: 'a', width: 6 }], { street: 9, left: 0, right: 0 });
		expect(roofParts(site)).toMatchObject([{ openLeft: true, openRight: true }]);
	});
	it('no house, no roof', () => {
		expect(roofPanels(makePlan(blankYard()).site, 1, 2)).toEqual([]);
	});
});
describe('panels', () => {
	it('a triangle holds half of its box', () => {
		const panel = panelOf(
			[
				{ x: 0, y: 0, z: 0 },
				{ x: 4, y: 0, z: 0 },
				{ x: 2, y: 0, z: 3 }
			],
			1,
			'wall'
		)!;
		let held = 0;
		const count = 200;
		for (let i = 0; i < count; i++)
			for (let j = 0; j < count; j++) if (onPanel(panel, (4 * (i + 0.5)) / count, (3 * (j + 0.5)) / count)) held++;
		expect(held / count ** 2).toBeCloseTo(0.5, 2);
	});
	it('without area there is none', () => {
		expect(
			panelOf(
				[
					{ x: 0, y: 0, z: 0 },
					{ x: 4, y: 0, z: 0 },
					{ x: 2, y: 0, z: 0 }
				],
				1,
				'wall'
			)
		).toBeNull();
	});
});
