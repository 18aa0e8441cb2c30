/** For tests: small shelves and needs, made up of a few words. */
import type { Contents, FixtureKind, FixtureNeed, LineKind, Needs, Shelf, ShelfFixture, ShelfLine } from './types';

export const feet = (count: number): number => count * 0.3048;
export const awg = (size: number) => ({ system: 'awg' as const, size });

export const led = (kind: FixtureKind, voltAmps: number, lumens: number, beam: number | null = null): ShelfFixture => ({
	kind,
	lamp: {
		source: 'led',
		watts: voltAmps * 0.8,
		voltAmps,
		lumens,
		beam,
		minVolts: 9,
		maxVolts: 15,
		colour: 2700
	}
});
export const halogen = (kind: FixtureKind, watts: number, lumens: number): ShelfFixture => ({
	kind,
	lamp: {
		source: 'halogen',
		watts,
		voltAmps: watts,
		lumens,
		beam: null,
		minVolts: 10.8,
		maxVolts: 12,
		colour: null
	}
});

const nothing: Contents = { fixtures: [], transformer: null, cable: [], connectors: 0 };
export const line = (code: string, kind: LineKind, cents: number, contents: Partial<Contents>): ShelfLine => ({
	code,
	kind,
	name: `${kind} ${code}`,
	cents,
	stock: null,
	place: null,
	contents: { ...nothing, ...contents }
});
export const transformer = (voltAmps: number, taps: number[] = [12], regulation = 0.05, secondaries = 1) => ({
	voltAmps,
	taps,
	secondaries,
	regulation
});
/** A kit of `count` of one product, a transformer and a length of cable, connectors for all of them. */
export const kit = (
	code: string,
	cents: number,
	{
		product = 'P',
		fixture = led('path', 3, 150),
		count = 4,
		supply = transformer(60),
		size = 16,
		metres = feet(100)
	}: Partial<{
		product: string;
		fixture: ShelfFixture;
		count: number;
		supply: Contents['transformer'];
		size: number;
		metres: number;
	}> = {}
): ShelfLine =>
	line(code, 'kit', cents, {
		fixtures: [{ product, fixture, count }],
		transformer: supply,
		cable: [{ size: awg(size), metres, count: 1 }],
		connectors: 2 * count
	});
export const shelfOf = (...lines: ShelfLine[]): Shelf => ({ name: 'Made up', currency: '$', lines });

/** A chain of `lights` alike on one run, the first `lead` metres from the transformer, the others `gap` apart. */
export function chain(
	lights: number,
	lead: number,
	gap: number,
	{ kind = 'path', lumens = 150, beam = null, source = 'led' }: Partial<FixtureNeed> = {}
): Needs {
	const ids = Array.from({ length: lights }, (_, n) => `walk/${n + 1}`);
	const segments = ids.map((_, n) => ({ from: n, to: n + 1, metres: n === 0 ? lead : gap }));
	const load = { kind: 'led' as const, voltAmps: 3, minVolts: 9, maxVolts: 15 };
	return {
		fixtures: [{ id: kind, kind, fixtures: ids, labels: ids.map((_, n) => `P${n + 1}`), lumens, beam, source }],
		runs: [
			{
				id: 'run-1',
				name: 'run 1',
				shape: {
					id: 'run-1',
					nodes: lights + 1,
					segments,
					loads: ids.map((id, n) => ({ id, node: n + 1, load, alike: 'walk/walk' }))
				},
				metres: segments.reduce((sum, one) => sum + one.metres, 0) * 1.05
			}
		],
		connectors: 2 * lights,
		system: 'awg',
		units: 'feet',
		hours: null
	};
}
