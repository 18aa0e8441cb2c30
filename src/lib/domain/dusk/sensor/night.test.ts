/** The night by hand: when lamps blink, hold off or only shift a sensor. Levels by rule sensor.level; sun by the yard's place. */
import { describe, expect, it } from 'vitest';
import { crossing } from '../crossing';
import { planningSun } from '../ephemeris';
import { placeOf } from '../place';
import { altitudeAt, nearestOffLux, offLux, onLux } from '../twilight';
import { blankYard } from '../../yard';
import { monthsOf } from './months';
import { judgeNight, shownNight, type Falling } from './night';
import { skyOfPlace } from './place-sky';

const yardAt = (latitude: number) => ({
	...blankYard(),
	place: { location: { latitude, longitude: 0, timeZone: 'UTC' } }
});
const skyAt = (latitude: number) => skyOfPlace(placeOf(yardAt(latitude)));
const nightWith = (falling: Partial<Falling>, latitude = 42) => {
	const sky = skyAt(latitude);
	const all = { share: 1, own: 0, others: 0, ...falling };
	const judged = judgeNight(sky.night, all, monthsOf(sky, { leafOn: all.share, leafOff: all.share }));
	return shownNight(sky.night, all, judged);
};
/** Minutes after midnight at which the sun of the shown night passes the altitude of so much light. */
function clockAt(lux: number, side: 'evening' | 'morning', latitude = 42): number {
	const { night } = skyAt(latitude);
	const noon = side === 'evening' ? night.noon : night.nextNoon;
	const found = crossing(planningSun(), noon, latitude, altitudeAt(lux), side);
	return night.clock((('at' in found ? found.at : NaN) - night.noon) / 60_000);
}

it('in the open it switches once at dusk and once at dawn, a minute or two after the light has passed its levels', () => {
	const { verdict, switches, date } = nightWith({});
	expect(verdict).toBe('steady');
	expect(date).toBe('2027-12-21');
	expect(switches.map(({ on }) => on)).toEqual([true, false]);
	expect(switches[0]!.at - clockAt(onLux, 'evening')).toBeGreaterThan(0);
	expect(switches[0]!.at - clockAt(onLux, 'evening')).toBeLessThan(2.6);
	expect(switches[1]!.at - clockAt(offLux, 'morning')).toBeGreaterThan(0);
	expect(switches[1]!.at - clockAt(offLux, 'morning')).toBeLessThan(2.6);
});
it('the night shown is the longest: December in the north, June in the south', () => {
	expect(nightWith({}, -35).date).toBe('2027-06-21');
	expect(skyAt(-35).night.leaves).toBe(false);
});
describe('lamps of its own', () => {
	it('over the off level make it blink all night', () => {
		const { verdict, switches, offAt } = nightWith({ own: 60 });
		expect(verdict).toBe('hunting');
		expect(offAt).toBe(offLux);
		expect(switches.length).toBe(40);
		expect(switches.every(({ on }, i) => on === (i % 2 === 0))).toBe(true);
		// On, off and on again take two waits of a minute each, and the minute in which it is seen: four minutes a turn.
		expect(switches[20]!.at - switches[18]!.at).toBe(4);
	});
	it('between the nearest off level and the usual one may make it blink: shown at the nearest', () => {
		const { verdict, offAt } = nightWith({ own: 30 });
		expect([verdict, offAt]).toEqual(['hunting', nearestOffLux]);
		expect(nearestOffLux).toBe(24);
	});
	it('that lift the 16 lx at which it switches over the off level blink at dusk and dawn only', () => {
		const { verdict, switches } = nightWith({ own: 40 });
		expect(verdict).toBe('hunting');
		const midnight = 24 * 60;
		expect(switches.some(({ at }) => Math.abs(at - midnight) < 240)).toBe(false);
	});
	it('that lift it to no off level leave it steady: under 24 − 16 lx', () => {
		expect(nightWith({ own: 7.9 }).verdict).toBe('steady');
		expect(nightWith({ own: 0, others: 0 }).verdict).toBe('steady');
	});
});
describe('lights that are there', () => {
	it('over the on level hold it off', () => {
		const { verdict, switches } = nightWith({ others: 17 });
		expect(verdict).toBe('held-off');
		expect(switches.filter(({ on }) => on)).toEqual([]);
	});
	it('of 12 lx leave it 4 lx of sky to switch on at: later by as much', () => {
		const { switches } = nightWith({ others: 12 });
		const late = switches[0]!.at - nightWith({}).switches[0]!.at;
		expect(Math.abs(late - (clockAt(4, 'evening') - clockAt(16, 'evening')))).toBeLessThan(1.5);
	});
});
describe('shade', () => {
	it('of a quarter of the sky shifts it by minutes and lets it pass; of a fiftieth it does not', () => {
		expect(nightWith({ share: 0.25 }).verdict).toBe('steady');
		expect(nightWith({ share: 0.02 }).verdict).toBe('shifted');
	});
	it('that leaves nothing has it on from noon to noon', () => {
		const { verdict, switches } = nightWith({ share: 0 });
		expect(verdict).toBe('shifted');
		expect(switches).toEqual([]);
	});
});
it('the trace is short, in order, and never below the light of the sky that gets there', () => {
	for (const falling of [{}, { own: 60 }, { others: 20 }, { share: 0.1 }]) {
		const { trace } = nightWith(falling);
		expect(trace.length).toBeGreaterThan(80);
		expect(trace.length).toBeLessThanOrEqual(200);
		expect(trace.every(({ at }, i) => i === 0 || at > trace[i - 1]!.at)).toBe(true);
		expect(trace.every(({ lux }) => lux > 0 && Number.isFinite(lux))).toBe(true);
	}
});
it.each([-90, -67, 0, 66.6, 69.6, 78.2, 90])('is told at latitude %f', (latitude) => {
	const { trace, verdict } = nightWith({ own: 1 }, latitude);
	expect(trace.length).toBeGreaterThan(0);
	expect(['steady', 'shifted']).toContain(verdict);
});
