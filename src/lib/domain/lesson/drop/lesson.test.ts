import { describe, expect, test } from 'vitest';
import { ngspiceVolts } from '../../circuit/ngspice.testing';
import { expectLesson } from '../lessons.testing';
import { dropLesson } from './lesson';
import { firstRun, networkOf, solvedRun, type Laid } from './run';

const units = ['metres', 'feet'] as const;
const all: Laid[] = units.flatMap((one) => {
	const run = firstRun(one);
	return (['filament', 'led'] as const).flatMap((kind) =>
		(['end', 'middle'] as const).map((feed) => ({ ...run, kind, feed }))
	);
});

test('the lesson is sound', () => expectLesson(dropLesson));

describe('the run', () => {
	// A general circuit simulator shares nothing with our solver.
	test('by ngspice: filament and LED lamps, fed from the end and in the middle', () => {
		const theirs = ngspiceVolts(all.map(networkOf));
		for (const [k, laid] of all.entries())
			for (const [n, volts] of solvedRun(laid).volts.entries()) expect(volts).toBeCloseTo(theirs[k]![n + 1]!, 8);
	});
	// Kapp, Electricity, 1912, p. 233 (seen): an evenly loaded line fed at its centre has a quarter of the drop. Few lamps do better
	// than a line: 10 stretches × lamps against 2, by counting.
	test('lamps of one current each: a fifth of the drop in the middle', () => {
		const run: Laid = { ...firstRun('metres'), kind: 'led', size: { system: 'mm2', size: 1000 } };
		const lost = (laid: Laid) => 12 - Math.min(...solvedRun(laid).volts);
		expect(lost({ ...run, feed: 'middle' }) / lost(run)).toBeCloseTo(2 / 10, 3);
		const long = { ...run, lamps: 400, metres: run.metres / 1000 };
		expect(lost({ ...long, feed: 'middle' }) / lost(long)).toBeCloseTo(1 / 4, 2);
	});
	test('mirrored where it is fed in its middle', () => {
		const { volts } = solvedRun({ ...firstRun('feet'), feed: 'middle' });
		for (const [k, one] of volts.entries()) expect(one).toBeCloseTo(volts.at(-1 - k)!, 12);
	});
	test('fewer volts, more amps of an LED lamp; fewer of a filament', () => {
		for (const one of units) {
			const led = solvedRun({ ...firstRun(one), kind: 'led' });
			const filament = solvedRun(firstRun(one));
			expect(led.amps.at(-1)).toBeGreaterThan(led.amps[0]!);
			expect(filament.amps.at(-1)).toBeLessThan(filament.amps[0]!);
			// The handbook's law is published for a tenth up and down: the lesson stays inside.
			expect(Math.min(...filament.volts)).toBeGreaterThan(10.8);
		}
	});
});
test('the tap that is not offered would lift the first lamp above its window', () => {
	for (const one of units) {
		const { volts } = solvedRun({ ...firstRun(one), supply: 13 });
		expect(volts[0]).toBeGreaterThan(12);
		expect(dropLesson.reveal(one).whyNot.find(({ rule }) => rule === 'cable.volts')?.words).toContain(
			`${volts[0]!.toFixed(2)} V`
		);
	}
});
test('which cure helps most is found by the engine', () => {
	for (const one of units) {
		const { right, figures } = dropLesson.reveal(one);
		const volts = figures.map(({ text }) => Number.parseFloat(text));
		expect(figures[volts.indexOf(Math.max(...volts))]!.changed).toBe(true);
		expect(dropLesson.choices(one).map(({ id }) => id)).toContain(right);
	}
});
