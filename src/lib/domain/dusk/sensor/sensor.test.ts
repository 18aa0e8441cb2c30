import { describe, expect, it } from 'vitest';
import { fixtureModels } from '../../shared/catalogue';
import { distance, lengthInside, type Point } from '../../shared/geometry';
import type { Fixture } from '../../placement';
import { makeSite } from '../../site';
import { blankYard, type Yard } from '../../yard';
import type { PowerPoint } from '../types';
import { sensorOf } from '.';
import { minutesEarly } from './early';

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
		['close under the eaves', spot(8, 0, 'wall', 2.8), ['dusk.sensor-eaves']],
		['in the light of the street lamp', spot(9, 9, 'post'), ['dusk.sensor-existing']]
	])('%s is found out', (_, told, expected) => expect(codes(told)).toEqual(expected));
	it('near lamps names them, nearest distance first, unless the house stands between', () => {
		const found = sensorOf(site, [lampAt('P1', 8, 2), lampAt('P2', 9, 1)], null, yard(spot(8, 0))).findings;
		expect(found[0]?.code).toBe('dusk.sensor-lamps');
		expect(found[0]?.message).toContain('P2, P1 stand near it, the nearest 1.41 m off');
		expect(codes(spot(10, -0.5), [lampAt('P1', 9, 1)])).toEqual([]);
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
	const clear = 3;
	const free = (at: Point, fixtures: Fixture[]): boolean =>
		fixtures.every((fixture) => distance(at, fixture.at) >= clear || lengthInside(at, fixture.at, site.house) > 0.1);

	it('stays near the transformer when nothing is against it', () => {
		const { sensor, findings } = sensorOf(site, [], supply(8, 0.05), yard('suggest'));
		expect(sensor?.suggested).toBe(true);
		expect(distance(sensor!.at, { x: 8, y: 0.05 })).toBeLessThan(0.6);
		expect(findings).toEqual([]);
	});
	it('leaves the canopy’s and the porch’s shade, the eaves and the lamps', () => {
		const fixtures = [lampAt('P1', 7, 2), lampAt('P2', 9, 2), lampAt('P3', 3.5, 2.5)];
		for (const at of [1, 5, 8]) {
			const { sensor, findings } = sensorOf(site, fixtures, supply(at, 0.05), yard('suggest'));
			expect(free(sensor!.at, fixtures)).toBe(true);
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
		const everywhere: Fixture[] = [];
		for (let x = -8; x <= 18; x += 2) for (let y = -12; y <= 12; y += 2) everywhere.push(lampAt(`L${x}-${y}`, x, y));
		expect(
			sensorOf(site, everywhere, supply(8, 0.05), yard('suggest')).findings.map((finding) => finding.code)
		).toContain('dusk.sensor-lamps');
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
