/** Lights on signs and house numbers, worked by hand: rules number.sign and number.light (figures from memory). */
import { describe, expect, it } from 'vitest';
import { distance } from '../shared/geometry';
import { fixtureModels } from '../shared/catalogue';
import { makeSite } from '../site';
import { blankYard, yardSchema, type Yard, type YardPoint } from '../yard';
import { awkwardYard } from './awkward.testing';
import { faults } from './faults.testing';
import { dice } from './hand/hand.testing';
import { mirrored } from './mirror.testing';
import { signOff, signPlan } from './sign';
import { placeFixtures } from './index';

const at = (along: number, out: number): YardPoint => ({ along, out });
const bare: Yard = {
	...blankYard(),
	place: { units: 'metres', faces: 180, surroundings: 'suburb' },
	house: {
		sections: [{ id: 'front', width: 12, out: 0, light: 'none' }],
		depth: 8,
		eaves: 3,
		openings: [],
		porches: []
	},
	lot: { street: 20, left: 20, right: 20 },
	trees: [],
	walks: [],
	drives: [],
	spots: { water: [] }
};
type Numbered = NonNullable<Yard['spots']['numbers']>[number];
const withNumber = (number: Partial<Numbered>, yard: Yard = bare): Yard => ({
	...yard,
	spots: { ...yard.spots, numbers: [{ id: 'board', name: 'dairy board', kind: 'sign', light: true, ...number }] }
});
const planned = (yard: Yard) => {
	expect(yardSchema.safeParse(yard).error).toBeUndefined();
	return made(yard);
};
const made = (yard: Yard) => {
	const site = makeSite(yard);
	const { fixtures, findings } = placeFixtures(site, yard);
	return { site, fixtures, findings, own: fixtures.filter(({ target }) => target.kind === 'number') };
};
const washes = fixtureModels.filter(
	({ body, lamp }) => body === 'wash' && lamp.kind === 'led' && lamp.colourTemperature === 2700
);

describe('how far in front', () => {
	it.each([
		// On posts its middle is 0.9 m up, a lamp 0.15 m: three quarters of the 0.75 m between are 0.5625 m.
		[0.9, 0.6, 0.5625],
		// A 60° beam is 2·d·tan 30° wide: 1.4 m of it are thrown from √(1.2124² − 0.75²) = 0.9526 m off.
		[0.9, 1.4, 0.9526],
		[1.5, 0.6, 1.0125]
	])('a middle %s m up, %s m wide: %s m', (middle, width, off) => {
		expect(signOff(middle, 0.15, width, 60)).toBeCloseTo(off, 4);
	});
	it('the least lamp that gives 20 lx at the middle, 40 in a town', () => {
		// 70 lm in a 60° beam: n = ln 0.5 ÷ ln cos 30° = 4.819, I = 70·(n + 1) ÷ 2π = 64.8 cd; 0.9375 m away at a cosine of 0.6.
		const plan = signPlan(0.6, 0.9, washes, false);
		expect(plan.model.lamp.lumens).toBe(70);
		expect(plan.lux).toBeCloseTo((64.83 / 0.9375 ** 2) * 0.6, 1);
		expect(signPlan(0.6, 1.5, washes, false).model.lamp.lumens).toBe(130);
		expect(signPlan(0.6, 1.5, washes, true).model.lamp.lumens).toBe(220);
	});
});

describe('a sign', () => {
	it('on posts: one light on the ground towards the street, aimed at its middle, away from the street', () => {
		const { own, findings } = planned(withNumber({ at: at(3, 17), width: 0.8 }));
		expect(own).toHaveLength(1);
		expect(own[0]).toMatchObject({
			id: 'board/sign-1',
			label: 'N1',
			technique: 'wash',
			aim: { point: { x: 3, y: 17, z: 0.9 } }
		});
		expect(own[0]!.at.y).toBeCloseTo(17.5625, 6);
		// The front faces south, so the beam goes north.
		expect(own[0]!.aim!.bearing).toBeCloseTo(0, 6);
		expect(findings).toEqual([]);
	});
	it('2.4 m wide: two, each at the middle of its half', () => {
		const { own } = planned(withNumber({ at: at(3, 15), width: 2.4 }));
		expect(own.map((f) => f.at.x).sort()).toEqual([2.4, 3.6]);
		expect(own.map((f) => f.aim!.point.x).sort()).toEqual([2.4, 3.6]);
	});
	it('on the wall: from in front of the wall; on one that is washed there already, none of its own', () => {
		const { own } = planned(withNumber({ at: at(4, 0.1), width: 0.6 }));
		expect(own[0]!.at).toMatchObject({ x: 4 });
		expect(own[0]!.aim!.point).toEqual({ x: 4, y: 0, z: 1.5 });
		const lit: Yard = {
			...bare,
			house: { ...bare.house, sections: [{ id: 'front', width: 12, out: 0, light: 'soft' }] }
		};
		const plan = planned(lit);
		const wash = plan.fixtures[0]!;
		const counted = planned(withNumber({ at: at(wash.aim!.point.x, 0) }, lit));
		expect(counted.own).toEqual([]);
		expect(counted.findings.map(({ message }) => message)[0]).toMatch(
			/^The dairy board is lit by the light on the front/
		);
	});
	it('by the edge of the street: no lamp stands outside the lot', () => {
		const { own, findings } = planned(withNumber({ at: at(3, 19.7), width: 0.6 }));
		expect(own.every((f) => f.at.y < 20)).toBe(true);
		expect(own.length + findings.length).toBeGreaterThan(0);
	});
	it('by a pond: none, and said', () => {
		const yard: Yard = {
			...bare,
			spots: { water: [{ id: 'pond', name: 'pond', kind: 'pond', at: at(3, 15), length: 2, width: 2 }] }
		};
		const { own, findings } = planned(withNumber({ at: at(3, 14) }, yard));
		expect(own).toEqual([]);
		expect(findings[0]!.message).toMatch(
			/^The dairy board gets no light: in front of it it would be nearer than 3\.05 m to the water\./
		);
	});
	it('a width not known: 0.6 m is taken, and listed', () => {
		const site = makeSite(withNumber({ at: at(3, 17), width: 'unsure' }));
		expect(site.houseNumber[0]).toMatchObject({ kind: 'sign', width: 0.6 });
		expect(site.assumptions.map(({ path }) => path)).toContain('spots.numbers.board.width');
	});
});

it('a house number keeps its small light by it, and its own rule', () => {
	const { own } = planned(withNumber({ kind: 'number', at: at(4, 0) }));
	expect(own[0]).toMatchObject({ id: 'board/number-1', technique: 'number', height: 1.7 });
	expect(own[0]!.reasons[0]!.rule).toBe('number.light');
});

it('on any yard signs are lit or said, stand where they may, and the mirror mirrors them', () => {
	const wrong: string[] = [];
	let odd = 0;
	const seeds = Array.from({ length: process.env.LONG ? 3000 : 150 }, (_, i) => i + 1);
	for (const seed of seeds) {
		const { roll } = dice(seed + 3);
		const place = at(Math.round(roll() * 2000) / 100 - 4, Math.round(roll() * 1500) / 100);
		const yard = withNumber({ at: place, width: Math.round(20 + roll() * 380) / 100 }, awkwardYard(seed));
		const plan = planned(yard);
		wrong.push(...faults(plan.site, plan.fixtures, plan.findings).map((text) => `yard ${seed}: ${text}`));
		const width = (yard.house.sections ?? []).reduce((sum, part) => sum + part.width, 0);
		const image = made(mirrored(yard)).own.map((f) => ({ x: width - f.at.x, y: f.at.y }));
		if (image.length !== plan.own.length || !plan.own.every((f) => image.some((p) => distance(p, f.at) < 1e-6))) odd++;
	}
	expect(wrong.slice(0, 10)).toEqual([]);
	expect(odd).toBeLessThanOrEqual(seeds.length / 1000);
}, 600_000);
