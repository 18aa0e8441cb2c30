import { describe, expect, it } from 'vitest';
import { fixtureModels } from '../shared/catalogue';
import {
	everywhere,
	photometryOf,
	symmetricLaw,
	tablePhotometry,
	tabulated,
	type CandelaTable,
	type Photometry
} from './index';
import { seeded, sphereLumens, steps, tableOf } from './photometry.testing';

/** Greatest deviation at many directions, more of them near the axis and the rim; and the greatest candela. */
function deviation(exact: Photometry, cells?: number): { most: number; peak: number } {
	const fast = tabulated(exact, cells);
	let most = 0;
	let peak = 0;
	for (let i = 0; i <= 40_000; i++) {
		const x = Math.cos((Math.PI * i) / 40_000);
		most = Math.max(most, Math.abs(fast.candela(x, 0) - exact.candela(x, 0)));
		peak = Math.max(peak, exact.candela(x, 0));
	}
	return { most, peak };
}

describe('a sampled source keeps within its stated bound', () => {
	const kinds = new Map(
		fixtureModels.filter((m) => m.body !== 'step').map((m) => [`${m.body} ${m.mount} ${m.lamp.beamAngle}°`, m])
	);
	it.each([...kinds])('%s: 0.0001 of its greatest candela', (_, model) => {
		const { most, peak } = deviation(photometryOf(model, model.lamp));
		expect(most).toBeLessThan(1e-4 * peak);
	});
	it('the same everywhere', () => {
		expect(deviation(symmetricLaw(everywhere(100), 100)).most).toBeLessThan(1e-9);
	});
	const kink = ({ vertical, candela }: CandelaTable): number => {
		const slopes = vertical.slice(1).map((v, i) => (candela[i + 1]! - candela[i]!) / (v - vertical[i]!));
		// On the axis, and right behind, the light falls off to all sides.
		return Math.max(
			...slopes.map((slope, i) => Math.abs(slope - (i > 0 ? slopes[i - 1]! : -slope))),
			2 * Math.abs(slopes.at(-1)!)
		);
	};
	it.each([
		[90, 0.03],
		[180, 0.06]
	])('tables to %i°: %f of the greatest change of slope', (end, share) => {
		const next = seeded(end);
		for (let run = 0; run < 20; run++) {
			const table = tableOf(() => 1000 * next(), steps(0, end, 2.5));
			expect(deviation(tablePhotometry(table)).most).toBeLessThan(share * kink(table));
		}
	});
	it('dark up to the edge of a shade stays dark, and lumens stay', () => {
		const path = photometryOf({ body: 'path', mount: 'stake' }, { lumens: 150, beamAngle: 120 });
		const fast = tabulated(path);
		const rim = Math.cos((80 * Math.PI) / 180);
		expect(fast.candela(rim + 1e-7, 0)).toBeCloseTo(path.candela(rim, 0), 3);
		expect(fast.candela(rim - 1e-7, 0)).toBe(0);
		expect(fast.lumens).toBe(150);
		expect(Math.abs(sphereLumens(fast, { x: 0, y: 0, z: -1 }, 400, 400) / 150 - 1)).toBeLessThan(0.005);
	});
});
