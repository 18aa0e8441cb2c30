import { describe, expect, it } from 'vitest';
import { fixtureModels } from '../../shared/catalogue';
import { distance } from '../../shared/geometry';
import { planLight } from '../../light';
import type { Fixture } from '../../placement';
import { makeSite } from '../../site';
import { blankYard, type Yard } from '../../yard';
import type { PowerPoint } from '../types';
import { sensorOf } from '.';
import { minutesEarly } from './early';
import { lamplightOf } from './lamplight';

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
	it('in lamplight brighter than it switches at names the lamp, lux by hand', () => {
		// 220 lm × 0.81 × 5.81884 ÷ 2π = 165.03 cd on the axis, √(1 + 1.35²) = 1.680 m away: 165.03 ÷ 1.680³ = 34.8 lx facing out.
		const lamp = washAt('W1', 8, 1, 220, { x: 8, y: 0, z: 1.5 });
		const { findings } = sensorOf(site, [lamp], null, yard(spot(8, 0, 'wall', 1.5)));
		expect(findings).toMatchObject([{ code: 'dusk.sensor-lamps', rank: 'look', rule: 'sensor.light' }]);
		expect(findings[0]!.message).toContain('35 lx on the sensor, most of it from W1, and it switches at 16 lx');
		// The house stands between.
		expect(codes(spot(10, -0.5, 'wall', 1.5), [washAt('W1', 8, 1, 220, { x: 8, y: 0, z: 1.5 })])).toEqual([]);
	});
	it('near lamps that throw nothing up there is no fault, and the reason says how near', () => {
		const { sensor, findings } = sensorOf(site, [lampAt('P1', 8, 2), lampAt('P2', 9, 1)], null, yard(spot(8, 0)));
		expect(findings).toEqual([]);
		expect(sensor!.reasons.at(-1)!.because).toContain('The nearest lamp, P2, is 1.41 m off.');
	});
	it('in the light of a lantern that is there: about that', () => {
		const lantern = {
			id: 'lantern',
			name: 'Door lantern',
			kind: 'porch-light' as const,
			at: { along: 8, out: 0.1 },
			height: 2.2,
			reach: 4
		};
		const told = { ...yard(spot(8.5, 0, 'wall', 1.5)), spots: { lights: [lantern] } };
		const { findings } = sensorOf(makeSite(told), [], null, told);
		expect(findings).toMatchObject([{ code: 'dusk.sensor-existing', rank: 'look' }]);
		expect(findings[0]!.message).toContain('Door lantern');
	});
	it('what it counts on the sensor is what the light stage counts', () => {
		const lamps = [washAt('W1', 7, 1, 130, { x: 7, y: 0, z: 1.5 }), washAt('W2', 9, 0.8, 70, { x: 9, y: 0, z: 1.2 })];
		const place = { at: { x: 8, y: 0.02 }, height: 1.5 };
		const { receivers } = planLight(site, lamps, { runs: [] }, place);
		const { lux } = lamplightOf(site, lamps, [], place.at)({ ...place, on: 'wall' });
		expect(lux).toBeGreaterThan(1);
		expect(lux).toBeCloseTo(receivers.find(({ kind }) => kind === 'sensor')!.most, 9);
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
	it('without a height gets one, said', () => {
		expect(sensorOf(site, [], null, yard(spot(8, 0))).assumptions[0]?.path).toBe('power.sensor.height');
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
		// Floodlit from all four corners: (40² + 6²)^1.5 ÷ 6 = 11,030 cd each, 1 lx at 40 m and 30 lx at 19 m.
		const lights = [-5, 15].flatMap((along) =>
			[-14, 12].map((out) => ({
				id: `flood${along}${out}`,
				name: 'Floodlight',
				kind: 'porch-light' as const,
				at: { along, out },
				height: 6,
				reach: 40
			}))
		);
		const flooded = { ...yard('suggest'), spots: { lights } };
		const { findings } = sensorOf(makeSite(flooded), [], supply(8, 0.05), flooded);
		expect(findings.find(({ code }) => code === 'dusk.sensor-existing')).toMatchObject({ rank: 'look' });
	});
	it('does not exist before there is a transformer', () => {
		expect(sensorOf(site, [], null, yard('suggest'))).toEqual({ sensor: null, findings: [], assumptions: [] });
	});
	it('is found for a blank yard with a transformer all the same', () => {
		const { sensor } = sensorOf(makeSite(blankYard()), [], supply(0, 0, 'post'), blankYard());
		expect(sensor).not.toBeNull();
	});
});

it('shade makes the sensor early by minutes that grow with the latitude', () => {
	// By hand at the equator: ln 4 ÷ ln(400/3.4) × 5.167° = 1.502°, at 15° an hour, six minutes and a little at the solstices.
	const at = (latitude: number) =>
		minutesEarly({ ...blankYard(), place: { location: { latitude, longitude: 0, timeZone: 'UTC' } } })!;
	expect(at(0).least).toBeCloseTo((1.502 / 15) * 60, 1);
	expect(at(0).most).toBeLessThan(((1.502 / 15) * 60) / Math.cos((23.5 * Math.PI) / 180) + 0.05);
	expect(at(60).least).toBeGreaterThan(at(40).least);
	const message = sensorOf(site, [], null, yard(spot(5, 0.02))).findings[0]!.message;
	expect(message).toMatch(/by \d+ to \d+ minutes through the year if 25 %/);
});
