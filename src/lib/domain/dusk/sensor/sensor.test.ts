import { describe, expect, it } from 'vitest';
import { fixtureModels } from '../../shared/catalogue';
import { distance } from '../../shared/geometry';
import { planLight } from '../../light';
import type { Fixture } from '../../placement';
import { makeSite } from '../../site';
import { blankYard, type Yard } from '../../yard';
import type { PowerPoint } from '../types';
import { sensorOf } from '.';

const model = fixtureModels.find((one) => one.body === 'path')!;
const lampAt = (label: string, x: number, y: number): Fixture => ({
	id: `test/${label.toLowerCase()}`,
	label,
	target: { kind: 'walk', id: 'front-walk' },
	technique: 'path',
	at: { x, y },
	height: 0.5,
	aim: null,
	model: model.id,
	mount: 'stake',
	lamp: model.lamp,
	reasons: []
});
const washes = fixtureModels.filter(({ body, lamp: { kind } }) => body === 'wash' && kind === 'led');
/** A wall wash of so many lumens, aimed at a point. */
const washAt = (
	label: string,
	x: number,
	y: number,
	lumens: number,
	point: { x: number; y: number; z: number }
): Fixture => {
	const wash = washes.find(({ lamp }) => lamp.lumens === lumens)!;
	return {
		...lampAt(label, x, y),
		technique: 'wash',
		height: wash.lampHeight,
		aim: { bearing: 0, tilt: 0, point },
		model: wash.id,
		lamp: wash.lamp
	};
};
const supply = (x: number, y: number, on: 'wall' | 'post' = 'wall'): PowerPoint => ({
	at: { x, y },
	on,
	mountHeight: 0.4,
	model: 'transformer-150',
	loadVoltAmps: 60,
	loadWatts: 50
});
/** A house 10 m wide and 8 m deep, eaves 3 m, with a roofed porch at 4 to 6 m and a tree of 6 m spread at its left front. */
const yard = (sensor?: Yard['power']['sensor']): Yard => ({
	...blankYard(),
	place: { units: 'metres', location: { latitude: 41.9, longitude: -87.6, timeZone: 'America/Chicago' } },
	house: {
		sections: [{ id: 'front', width: 10 }],
		depth: 8,
		eaves: 3,
		openings: [],
		porches: [{ id: 'porch', along: 4, width: 2, depth: 1.5, roof: true }]
	},
	lot: { street: 12, left: 5, right: 5 },
	trees: [
		{
			id: 'ash',
			name: 'ash',
			at: { along: 1, out: 3 },
			spread: 5,
			height: 8,
			crownBase: 2,
			trunk: 0.2,
			form: 'round',
			ground: 'lawn',
			light: 'none'
		}
	],
	spots: {
		lights: [{ id: 'lamp', name: 'Street lamp', kind: 'street-lamp', at: { along: 9, out: 11 }, height: 6, reach: 4 }]
	},
	power: sensor ? { sensor } : {}
});
const spot = (along: number, out: number, on: 'wall' | 'post' = 'wall', height?: number): Yard['power']['sensor'] => ({
	at: { along, out },
	on,
	...(height === undefined ? {} : { height })
});
const site = makeSite(yard());
const codes = (sensor: Yard['power']['sensor'], fixtures: Fixture[] = [], power: PowerPoint | null = null): string[] =>
	sensorOf(site, fixtures, power, yard(sensor)).findings.map((finding) => finding.code);

describe('a spot of one’s own', () => {
	it('in the open on the wall is as told, with nothing against it', () => {
		const siting = sensorOf(site, [], null, yard(spot(8, 0, 'wall', 1.4)));
		expect(siting.findings).toEqual([]);
		expect(siting.sensor).toMatchObject({ at: { x: 8, y: 0 }, height: 1.4, on: 'wall', suggested: false });
		expect(siting.sensor?.reasons.map((reason) => reason.rule)).toEqual(['sensor.shade', 'sensor.light']);
	});
	it.each([
		['inside the house', spot(5, -4), ['dusk.sensor-inside']],
		['on a wall that is not there', spot(8, 5), ['dusk.sensor-off-wall']],
		['under the canopy', spot(1, 3.5, 'post'), ['dusk.sensor-canopy']],
		['under the porch roof', spot(5, 0.02), ['dusk.sensor-porch']],
		['close under the eaves', spot(8, 0, 'wall', 2.8), ['dusk.sensor-eaves']]
	])('%s is found out', (_, told, expected) => expect(codes(told)).toEqual(expected));
	it('in its own lamplight names the lamp, lux by hand', () => {
		// 220 lm × 0.81 × 5.81884 ÷ 2π = 165.03 cd on the axis, √(0.99² + 1.35²) = 1.674 m away, 0.99 m of it straight out: 34.8 lx.
		const lamp = washAt('W1', 8, 1, 220, { x: 8, y: 0, z: 1.5 });
		const { findings, sensor } = sensorOf(site, [lamp], null, yard(spot(8, 0, 'wall', 1.5)));
		expect(findings).toMatchObject([{ code: 'dusk.sensor-lamps', rank: 'look', rule: 'sensor.light' }]);
		expect(findings[0]!.message).toContain('fall 35 lx of lamplight, most of it from W1');
		expect(findings[0]!.message).toContain('may take its own lamps for day and blink all night');
		expect(sensor!.view.night).toMatchObject({ verdict: 'hunting', offAt: 24 });
		// The house stands between.
		expect(codes(spot(10, -0.5, 'wall', 1.5), [washAt('W1', 8, 1, 220, { x: 8, y: 0, z: 1.5 })])).toEqual([]);
	});
	it('turned away from the lamp it gets none of its light', () => {
		const lamp = washAt('W1', 8, 1, 220, { x: 8, y: 0, z: 1.5 });
		const told = { at: { along: 8, out: 0.2 }, on: 'post' as const, height: 1.5 };
		// The front faces the bearing `faces`: out to the lamp, and back at the house.
		const towards = sensorOf(site, [lamp], null, yard({ ...told, faces: site.faces }));
		const away = sensorOf(site, [lamp], null, yard({ ...told, faces: (site.faces + 180) % 360 }));
		expect(towards.sensor!.view.night.verdict).toBe('hunting');
		expect(away.sensor!.view.night).toMatchObject({ own: 0 });
	});
	it('near lamps that throw nothing up there is no fault, and the reason says how near', () => {
		const { sensor, findings } = sensorOf(site, [lampAt('P1', 8, 2), lampAt('P2', 9, 1)], null, yard(spot(8, 0)));
		expect(findings).toEqual([]);
		expect(sensor!.reasons.at(-1)!.because).toContain('The nearest lamp, P2, is 1.41 m off.');
	});
	it('in the light of a lantern that is there: about that', () => {
		// 1 lx on the ground 4 m off: (16 + 2.2²)^1.5 ÷ 2.2 = 43.25 cd. From 0.15 m off the wall to 0.6 m before it, 0.2 m lower:
		// 0.45 × 43.25 ÷ 0.4925³ = 162.9 lx on a window that looks back at it.
		const lantern = {
			id: 'lantern',
			name: 'Door lantern',
			kind: 'porch-light' as const,
			at: { along: 8, out: 0.1 },
			height: 2.2,
			reach: 4
		};
		const told: Yard = {
			...yard({ at: { along: 8, out: 0.6 }, on: 'post', height: 2, faces: (site.faces + 180) % 360 }),
			spots: { lights: [lantern] }
		};
		const { findings, sensor } = sensorOf(makeSite(told), [], null, told);
		expect(sensor!.view.night.others).toBeCloseTo(162.9, 0);
		const found = findings.find(({ code }) => code === 'dusk.sensor-existing');
		expect(found).toMatchObject({ rank: 'look' });
		expect(found!.message).toContain('163 lx of lamplight, most of it from Door lantern');
		expect(found!.message).toContain('holds your lights off');
	});
	it('what it counts on the sensor is what the light stage counts', () => {
		const lamps = [washAt('W1', 7, 1, 130, { x: 7, y: 0, z: 1.5 }), washAt('W2', 9, 0.8, 70, { x: 9, y: 0, z: 1.2 })];
		const { sensor } = sensorOf(site, lamps, null, yard(spot(8, 0.02, 'wall', 1.5)));
		const { receivers } = planLight(site, lamps, { runs: [] }, sensor);
		const { own, others } = sensor!.view.night;
		expect(own).toBeGreaterThan(1);
		expect(own + others).toBeCloseTo(receivers.find(({ kind }) => kind === 'sensor')!.most, 9);
	});
	it('hangs below the edge of the roof where it hangs: a lower wing has eaves of its own', () => {
		const wings: Yard = {
			...yard(spot(8, 0, 'wall', 1.9)),
			house: {
				...yard().house,
				sections: [
					{ id: 'a', width: 5 },
					{ id: 'b', width: 5, eaves: 2.2 }
				],
				porches: []
			}
		};
		const said = sensorOf(makeSite(wings), [], null, wings).findings;
		expect(said.map(({ code }) => code)).toEqual(['dusk.sensor-eaves']);
		expect(said[0]!.message).toContain('no higher than 1.60 m');
		const high = { ...wings, power: { sensor: spot(2.5, 0, 'wall', 1.9) }, trees: [] };
		expect(sensorOf(makeSite(high), [], null, high).findings).toEqual([]);
	});
	it('above the crown’s top or outside it is not under it', () => {
		expect(codes(spot(1, 5.6, 'post'))).toEqual([]);
	});
	it('far from the transformer asks for a longer lead', () => {
		expect(codes(spot(8, 0), [], supply(2, 0.05))).toEqual(['dusk.sensor-lead']);
	});
	it('without a height or a way to look gets them, said', () => {
		const paths = sensorOf(site, [], null, yard(spot(8, 0))).assumptions.map(({ path }) => path);
		expect(paths).toContain('power.sensor.height');
		expect(paths).toContain('power.sensor.faces');
		const told = { at: { along: 2, out: 0 }, on: 'wall' as const, height: 1.4, faces: 160 };
		const { assumptions, sensor } = sensorOf(site, [], null, yard(told));
		expect(assumptions.map(({ path }) => path)).toEqual(['power.sensor', 'trees.ash.leaf']);
		expect(sensor!.view.faces).toBe(160);
	});
	it('on a wall looks out from it, on a post away from the midday sun', () => {
		const facing = (told: Yard['power']['sensor'], base = yard(told)): number =>
			sensorOf(makeSite(base), [], null, base).sensor!.view.faces;
		const turned = (told: Yard['power']['sensor'], latitude: number): Yard => ({
			...yard(told),
			place: { ...yard().place, faces: 135, location: { latitude, longitude: 0, timeZone: 'UTC' } }
		});
		expect(facing(spot(8, 0), turned(spot(8, 0), 42))).toBeCloseTo(135, 9);
		// The right side of a house whose front faces south-east, as seen from the street, looks north-east.
		expect(facing(spot(10, -4), turned(spot(10, -4), 42))).toBeCloseTo(45, 9);
		expect(facing(spot(8, 3, 'post'), turned(spot(8, 3, 'post'), 42))).toBe(0);
		expect(facing(spot(8, 3, 'post'), turned(spot(8, 3, 'post'), -37))).toBe(180);
	});
	it('deep under the eaves wakes the lights early: by how many minutes, and what takes its sky', () => {
		// 50 mm under an edge 0.59 m out: about 0.05 ÷ 0.592 = 8 % of its sky is left.
		const { findings, sensor } = sensorOf(site, [], null, yard(spot(8, 0, 'wall', 2.95)));
		const eaves = findings.find(({ code }) => code === 'dusk.sensor-eaves')!;
		expect(eaves.rank).toBe('look');
		expect(eaves.message).toMatch(
			/They take 9\d % of its sky; it would wake the lights 1\d to \d\d minutes early and keep them on 1\d to 2\d minutes too long in the morning\./
		);
		expect(sensor!.view.night.verdict).toBe('shifted');
		expect(sensor!.view.sky.leafOn).toBeLessThan(0.1);
		// 0.4 m under them it sees more, and the minutes are let pass: said as a note.
		const lower = sensorOf(site, [], null, yard(spot(8, 0, 'wall', 2.6))).findings;
		expect(lower).toMatchObject([{ code: 'dusk.sensor-eaves', rank: 'note' }]);
		expect(lower[0]!.message).toMatch(/minutes early, which is let pass\./);
	});
	it('behind a garden wall is in shade without hanging under anything', () => {
		const base = yard({ at: { along: 8, out: 5.7 }, on: 'post', height: 0.2, faces: site.faces });
		const told: Yard = {
			...base,
			trees: [],
			spots: {
				walls: [
					{
						id: 'high',
						name: 'high wall',
						from: { along: 0, out: 6.1 },
						to: { along: 16, out: 6.1 },
						height: 2.4,
						light: 'none'
					}
				]
			}
		};
		const { findings } = sensorOf(makeSite(told), [], null, told);
		expect(findings).toMatchObject([{ code: 'dusk.sensor-shade', rank: 'look' }]);
		expect(findings[0]!.message).toMatch(/the high wall takes 9\d % of its sky/);
	});
});

describe('a spot of ours', () => {
	it('stays near the transformer when nothing is against it', () => {
		const { sensor, findings } = sensorOf(site, [], supply(8, 0.05), yard('suggest'));
		expect(sensor?.suggested).toBe(true);
		expect(distance(sensor!.at, { x: 8, y: 0.05 })).toBeLessThan(0.6);
		expect(findings).toEqual([]);
	});
	it('leaves the canopy’s and the porch’s shade, the eaves and the lamplight', () => {
		const fixtures = [7, 9, 3].map((x, i) => washAt(`W${i + 1}`, x, 0.8, 220, { x, y: 0, z: 1.5 }));
		for (const at of [1, 5, 8]) {
			const { sensor, findings } = sensorOf(site, fixtures, supply(at, 0.05), yard('suggest'));
			expect(distance(sensor!.at, { x: 1, y: 3 })).toBeGreaterThanOrEqual(2.5);
			expect(sensor!.height).toBeLessThanOrEqual(3 - 0.6);
			expect(findings.filter((finding) => finding.rank !== 'note')).toEqual([]);
		}
	});
	it('takes the transformer’s own post where that stands clear', () => {
		const { sensor } = sensorOf(site, [], supply(7, 6, 'post'), yard('suggest'));
		expect(sensor).toMatchObject({ at: { x: 7, y: 6 }, on: 'post' });
	});
	it('says what is against it where no better place exists', () => {
		// Floodlit from all four corners and from the house: (40² + h²)^1.5 ÷ h is 11,000 cd and more each, over 30 lx at 19 m.
		const places = [-5, 15].flatMap((along) => [-14, 12].map((out) => ({ along, out, height: 6 })));
		const onHouse = [3, 7].map((along) => ({ along, out: 0.1, height: 2.8 }));
		const atSides = [-0.1, 10.1].map((along) => ({ along, out: -4, height: 2.8 }));
		const lights = [...places, ...onHouse, ...atSides].map(({ height, ...at }, i) => ({
			id: `flood-${i}`,
			name: 'Floodlight',
			kind: 'porch-light' as const,
			at,
			height,
			reach: 40
		}));
		const flooded = { ...yard('suggest'), spots: { lights } };
		const { findings } = sensorOf(makeSite(flooded), [], supply(8, 0.05), flooded);
		expect(findings.find(({ code }) => code === 'dusk.sensor-existing')).toMatchObject({ rank: 'look' });
	});
	it('does not exist before there is a transformer', () => {
		expect(sensorOf(site, [], null, yard('suggest'))).toEqual({
			sensor: null,
			spots: [],
			findings: [],
			assumptions: []
		});
	});
	it('is found for a blank yard with a transformer all the same', () => {
		const { sensor } = sensorOf(makeSite(blankYard()), [], supply(0, 0, 'post'), blankYard());
		expect(sensor).not.toBeNull();
	});
});
