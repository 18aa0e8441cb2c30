/** What holds for the sensor of any yard, and what the demos' sensors come to. */
import { describe, expect, it } from 'vitest';
import { bearingOf, distance, nearestOnSegment, type Point } from '../../shared/geometry';
import { layCable } from '../../cable/index';
import { placeFixtures } from '../../placement';
import { makeSite } from '../../site';
import { examples, type Yard } from '../../yard';
import { mirrored } from '../../yard/mirror.testing';
import { randomYard } from '../../yard/random.testing';
import type { PowerPoint } from '../types';
import { sensorOf } from '.';

const stray = /\b(NaN|undefined|null|Infinity)\b/;
/** A transformer by the middle of the front, or in the yard where there is no front; its place is not ours to choose here. */
const supplyFor = (site: ReturnType<typeof makeSite>): PowerPoint => {
	const wall = site.walls.find(({ front }) => front);
	const at = wall
		? { x: (wall.from.x + wall.to.x) / 2, y: wall.from.y + 0.05 }
		: { x: (site.leftBoundary + site.rightBoundary) / 2, y: site.street / 2 };
	return {
		at,
		on: wall ? 'wall' : 'post',
		mountHeight: 0.4,
		model: 'transformer-150',
		loadVoltAmps: 60,
		loadWatts: 50
	};
};
const gapTo = ({ from, to }: { from: Point; to: Point }, at: Point): number => nearestOnSegment(at, from, to).distance;
const withSensor = (yard: Yard, sensor: Yard['power']['sensor']): Yard => ({
	...yard,
	power: { ...yard.power, sensor }
});

describe('in yards at random', () => {
	const seeds = Array.from({ length: process.env['LONG'] ? 3000 : 300 }, (_, i) => i + 1);
	const sited = (seed: number) => {
		const yard = randomYard(seed);
		const site = makeSite(yard);
		const { fixtures } = placeFixtures(site, yard);
		const siting = sensorOf(site, fixtures, supplyFor(site), yard);
		return { seed, yard, site, siting };
	};
	const all = seeds.map(sited);
	it('there is a spot, whole in its figures; the chosen comes first; those beside it lie apart', () => {
		for (const { seed, yard, siting } of all) {
			const told = yard.power.sensor !== undefined && yard.power.sensor !== 'suggest';
			const { sensor, spots, findings, assumptions } = siting;
			const { sky, months, night, taken } = sensor!.view;
			expect(spots[0], `yard ${seed}`).toMatchObject({
				at: sensor!.at,
				faces: sensor!.view.faces,
				verdict: night.verdict
			});
			expect(spots.length).toBeLessThanOrEqual(told ? 5 : 4);
			for (const { sky: part, verdict, why, own, others } of spots) {
				expect(part.leafOn).toBeGreaterThanOrEqual(0);
				expect(part.leafOff).toBeLessThanOrEqual(1);
				expect(part.leafOff).toBeGreaterThanOrEqual(part.leafOn);
				expect(Math.min(own, others)).toBeGreaterThanOrEqual(0);
				expect(why).toMatch(/\.$/);
				expect(why).not.toMatch(stray);
				expect(['steady', 'shifted', 'held-off', 'hunting']).toContain(verdict);
			}
			const own = told ? spots.slice(1) : spots;
			for (const [i, one] of own.entries())
				for (const two of own.slice(i + 1)) expect(distance(one.at, two.at)).toBeGreaterThanOrEqual(2 - 1e-9);
			expect(months).toHaveLength(12);
			expect(taken.reduce((sum, { share }) => sum + share, sky.leafOn)).toBeLessThan(1.001);
			for (const { message } of [...findings, ...assumptions]) expect(message).not.toMatch(stray);
			for (const { because } of sensor!.reasons) expect(because).not.toMatch(stray);
		}
	});
	it('without lamps of its own none hunts, and without any light none is held off', () => {
		for (const { seed, yard, site } of all) {
			const { sensor, spots } = sensorOf(site, [], supplyFor(site), yard);
			expect(
				[sensor!.view.night, ...spots].filter(({ verdict }) => verdict === 'hunting'),
				`yard ${seed}`
			).toEqual([]);
			const dark = sensorOf({ ...site, existing: [] }, [], supplyFor(site), yard);
			expect(['steady', 'shifted'], `yard ${seed}`).toContain(dark.sensor!.view.night.verdict);
		}
	});
	it('what blinks or is held off is said, and what is steady is not blamed on lamps', () => {
		for (const { seed, siting } of all) {
			const { sensor, findings } = siting;
			const isLit = findings.some(({ rule }) => rule === 'sensor.light');
			expect(isLit, `yard ${seed}`).toBe(['hunting', 'held-off'].includes(sensor!.view.night.verdict));
		}
	});
	it('a spot in the mirror gets the same sky', () => {
		for (const seed of seeds.slice(0, 100)) {
			const yard = randomYard(seed);
			const width = (yard.house.sections ?? []).reduce((sum, one) => sum + one.width, 0);
			const told = { at: { along: width * 0.37, out: 1.3 }, on: 'post' as const, height: 1.2 };
			// Straight out from the front is the same way in the mirror.
			const faces = makeSite(yard).faces;
			const one = withSensor(yard, { ...told, faces });
			const views = [one, mirrored(one)].map((each) => sensorOf(makeSite(each), [], null, each).sensor!.view);
			expect(views[0]!.sky.leafOn, `yard ${seed}`).toBeCloseTo(views[1]!.sky.leafOn, 3);
			expect(views[0]!.night.others, `yard ${seed}`).toBeCloseTo(views[1]!.night.others, 6);
		}
	});
	it('the same yard gives the same spots', () => {
		for (const { seed, siting } of all.slice(0, 20)) expect(sited(seed).siting).toEqual(siting);
	});
});

describe.each(examples.map(({ title, yard }) => [title, yard] as const))('%s', (_, yard) => {
	const site = makeSite(yard);
	const { fixtures } = placeFixtures(site, yard);
	const { supply, runs } = layCable(site, fixtures, yard);
	it('has its sensor where the night is steady, and every spot named beside it too', () => {
		const { sensor, spots, findings } = sensorOf(site, fixtures, supply, withSensor(yard, 'suggest'), runs);
		expect(sensor!.view.night.verdict).toBe('steady');
		expect(sensor!.view.night.switches.map(({ on }) => on)).toEqual([true, false]);
		expect(spots.map(({ verdict }) => verdict)).toEqual(spots.map(() => 'steady'));
		expect(spots.length).toBe(4);
		expect(findings.filter(({ rank }) => rank !== 'note')).toEqual([]);
	});
	// Beside the light at the door, on the wall it hangs on.
	const light = site.existing.find(({ kind }) => kind !== 'street-lamp')!;
	const wall = site.walls
		.filter(({ of }) => of === 'house')
		.reduce((near, one) => (gapTo(one, light.at) < gapTo(near, light.at) ? one : near));
	const along = { x: (wall.to.x - wall.from.x) / wall.length, y: (wall.to.y - wall.from.y) / wall.length };
	const at = { along: light.at.x + 0.6 * along.x, out: light.at.y + 0.6 * along.y };
	const told = (sensor: Partial<Exclude<Yard['power']['sensor'], 'suggest'>>) =>
		sensorOf(site, fixtures, supply, withSensor(yard, { at, on: 'wall', ...sensor }), runs);

	it('50 mm under the eaves there, or as high as one may tell: named, with the minutes, and where it is steady', () => {
		const height = Math.min(4, wall.height - 0.05);
		const { sensor, findings, spots } = told({ height });
		expect(spots.slice(1).map(({ verdict }) => verdict)).toEqual(['steady', 'steady', 'steady', 'steady']);
		// The town's eaves are over 5 m up: nothing on its front hangs close under them.
		expect(sensor!.view.night.verdict).toBe(wall.height > 5 ? 'steady' : 'shifted');
		if (wall.height > 5) return;
		const found = findings.find(({ code }) => code === 'dusk.sensor-eaves')!;
		expect(found.rank).toBe('look');
		expect(found.message).toMatch(/They take 9\d % of its sky; it would wake the lights 1\d to 2\d minutes early/);
	});
	it('turned to look along the wall at that light: held off by it, by name', () => {
		const faces = bearingOf({ x: -along.x, y: -along.y }, site.faces);
		const { sensor, findings } = told({ height: light.height - 0.2, faces });
		expect(sensor!.view.night).toMatchObject({ verdict: 'held-off' });
		// Where shade has it on before the lamp burns, the lamp takes it off again: in the dark of the night it is off.
		const { switches } = sensor!.view.night;
		expect(switches.findLast(({ at: when }) => when < 24 * 60)?.on ?? false).toBe(false);
		expect(findings.find(({ code }) => code === 'dusk.sensor-existing')!.message).toContain(`from ${light.name}`);
	});
});
