import { expect, it } from 'vitest';
import { examples, type Hours, type Season } from '../yard';
import { compareLamps } from '.';

const { yard } = examples[0]!;
const split: Hours = { kind: 'split', evening: '22:00', morning: '06:00' };
const winter: Season = { from: '11-01', to: '02-28', hours: { kind: 'after-dusk', hours: 2 } };

it('LED against halogen follows a split night and a season: bills and lives of both sides are those of its hours', () => {
	const comparison = compareLamps({ ...yard, power: { ...yard.power, hours: split, season: winter } });
	for (const { plan, lamps, byYear, replaced } of [comparison.led, comparison.halogen]) {
		const { dusk } = plan;
		expect(dusk).toMatchObject({ schedule: split, season: winter });
		// 120 evenings of two hours, and the rest of the year by the clock.
		expect(dusk.days.filter(({ hours }) => Math.abs(hours - 2) < 1e-3).length).toBeGreaterThanOrEqual(120);
		const burnt = lamps.flatMap(({ lives }) => lives?.low.inputs.find(({ symbol }) => symbol === 'H')?.value ?? []);
		expect(burnt.length).toBeGreaterThan(0);
		expect(new Set(burnt)).toEqual(new Set([dusk.hoursPerYear]));
		// Ten bills and the lamps replaced are all that ten years add to the purchase.
		const added = byYear[10]!.low - byYear[0]!.low;
		expect(added).toBeCloseTo(10 * dusk.cost + replaced.cost.low.value, 1);
	}
	expect(comparison.halogen.plan.dusk.energy).toBeGreaterThan(comparison.led.plan.dusk.energy);
});
