import { describe, expect, it } from 'vitest';
import { rules } from '../shared/rules';
import { examples, type Yard } from '../yard';
import { makeSite } from '../site';
import { placeFixtures } from '../placement';
import { layCable } from '.';

const suburban = examples.find(({ id }) => id === 'suburban')!.yard;
const laid = (power: Yard['power'], yard = suburban) => {
	const changed = { ...yard, power: { ...yard.power, ...power } };
	const site = makeSite(changed);
	const { fixtures } = placeFixtures(site, changed);
	return { fixtures, ...layCable(site, fixtures, changed) };
};
const named = ({ findings }: Pick<ReturnType<typeof laid>, 'findings'>, code: string) =>
	findings.filter((one) => one.code === code);

describe('notes on a circuit', () => {
	it('warn of lamps that would get too much with the others out, where their own band is inside', () => {
		// 15 V taps with the mains 5 % high are 15.75 V; LED lamps take 15, and with all of them lit none gets that.
		const high = laid({ circuit: { runs: [{ id: 'run-1', tap: 15, size: 16 }] } });
		const [note] = named(high, 'cable.unloaded-high');
		expect(note).toMatchObject({ rank: 'note', about: { kind: 'run', id: 'run-1' } });
		expect(note!.message).toMatch(/up to 15\.8 V; more than 15\.0 .* Test on the 14 V tap/);
		// 14 × 1.05 = 14.7: nothing to say.
		expect(named(laid({ circuit: { runs: [{ id: 'run-1', tap: 14 }] } }), 'cable.unloaded-high')).toEqual([]);
	});
	it('speak of the surge with halogen lamps, and else only above half of what the transformer may carry', () => {
		expect(named(laid({ lamp: 'halogen' }), 'supply.inrush')[0]!.message).toContain('filaments take 10 times');
		expect(named(laid({ circuit: { transformerVoltAmps: 1200 } }), 'supply.inrush')).toEqual([]);
		expect(rules['supply.inrush'].source).toBe('memory');
	});
	it('say how much can be added before 80 % of the rating', () => {
		const cabling = laid({ circuit: { transformerVoltAmps: 600 } });
		const room = Math.floor(0.8 * 600 - cabling.supply!.loadVoltAmps);
		expect(named(cabling, 'supply.room')[0]!.message).toContain(`room for about ${room} VA more`);
	});
});

describe('what was weighed and not taken', () => {
	it('is at most four, the sound ones first and none of them cheaper', () => {
		for (const { yard } of examples) {
			const { supply } = laid({}, yard);
			const { runnersUp } = supply!;
			expect(runnersUp.length).toBeLessThanOrEqual(4);
			expect(runnersUp.map(({ sound }) => sound)).toEqual(
				runnersUp
					.map(({ sound }) => sound)
					.toSorted()
					.toReversed()
			);
			for (const { sound, costDifference, why } of runnersUp) {
				if (sound) expect(costDifference).toBeGreaterThanOrEqual(-0.011);
				expect(why).toMatch(/^[A-Z].*\.$/);
			}
		}
	});
	it('costs what it is said to when it is set by hand', () => {
		const { supply, runs } = laid({});
		const counted = supply!.runnersUp.filter(({ run, sound }) => run !== null && sound);
		for (const { run, label, costDifference } of counted) {
			const size = /^(\d+) AWG on run \d+$/.exec(label);
			if (!size) continue;
			const set = runs.map(({ id, nodes, cable, tapVolts, feed }) => ({
				id,
				lamps: nodes.flatMap(({ fixture }) => fixture ?? []),
				size: id === run ? Number(size[1]) : cable.size,
				tap: tapVolts,
				feed
			}));
			const circuit = { transformerVoltAmps: supply!.ratedVoltAmps, runs: set };
			expect(laid({ circuit }).supply!.cost - supply!.cost).toBeCloseTo(costDifference, 6);
		}
	});
});
