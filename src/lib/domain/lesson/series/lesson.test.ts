import { describe, expect, test } from 'vitest';
import { loadAmps } from '../../circuit';
import { ngspiceVolts } from '../../circuit/ngspice.testing';
import { expectLesson } from '../lessons.testing';
import { seriesLesson } from './lesson';
import { filamentLamp, hotOhms, loopNetwork, solved } from './network';
import { rowOf, supplyVolts, watts } from './row';

test('the lesson is sound', () => expectLesson(seriesLesson));

describe('the loop', () => {
	// A general circuit simulator shares nothing with our solver.
	test('by ngspice, equal lamps and others', () => {
		const rows = [[1], [20, 20], [20, 20, 20], [35, 10], [5, 20, 35], [20, 20, 20, 20, 20]];
		const networks = rows.map((row) =>
			loopNetwork(
				supplyVolts,
				row.map((one) => hotOhms(one, supplyVolts))
			)
		);
		const theirs = ngspiceVolts(networks);
		for (const [k, network] of networks.entries()) {
			const solution = solved(network)!;
			for (const [n, volts] of solution.volts.entries()) expect(volts).toBeCloseTo(theirs[k]![n]!, 9);
		}
	});
	test('volts add up to the supply’s, whatever the lamps (Kirchhoff’s voltage law)', () => {
		for (let lamps = 1; lamps <= 5; lamps += 1) {
			const { loop, beside } = rowOf(lamps);
			expect(loop.volts * lamps).toBeCloseTo(supplyVolts, 12);
			expect(beside.amps).toBeCloseTo((lamps * watts) / supplyVolts, 12);
		}
	});
	// By symmetry a share of 12/n volts each, also by the filament's own law of current.
	test('one current also by the law of the filament', () => {
		const lamp = filamentLamp(watts, supplyVolts);
		const { loop } = rowOf(3);
		expect(loadAmps(lamp, loop.volts)).toBeGreaterThan(loop.amps);
		expect(loadAmps(lamp, supplyVolts)).toBeCloseTo(supplyVolts / hotOhms(watts, supplyVolts), 12);
	});
	test('one taken out: nothing flows in the loop, the others stay side by side', () => {
		expect(rowOf(3).without).toEqual({ loop: 0, beside: expect.closeTo(40 / 12, 12) });
	});
});
test('what holds is found, not written down: more lamps hardly glow, one is as bright as before', () => {
	expect(seriesLesson.reveal('metres').right).toBe('hardly');
	expect(rowOf(1).loop.light).toBe(1);
	expect(rowOf(2).loop.light).toBeLessThan(0.2);
});
