import { describe, expect, it } from 'vitest';
import type { ShelfLine } from '../../domain/kits/types';
import { readShelf } from '../read-shelf';
import { checkedShelf } from '../schema';
import { shelfCsv } from '../write';
import { demoShelf } from '.';

const line = (code: string): ShelfLine => demoShelf.lines.find((one) => one.code === code)!;
const voltAmps = ({ contents }: ShelfLine) =>
	contents.fixtures.reduce((sum, { fixture, count }) => sum + fixture.lamp.voltAmps * count, 0);
const watts = ({ contents }: ShelfLine) =>
	contents.fixtures.reduce((sum, { fixture, count }) => sum + fixture.lamp.watts * count, 0);
const lights = ({ contents }: ShelfLine) => contents.fixtures.reduce((sum, { count }) => sum + count, 0);
const metres = ({ contents }: ShelfLine) => contents.cable.reduce((sum, one) => sum + one.metres * one.count, 0);
const feet = 0.3048;

describe('the demo shelf', () => {
	it('has 12 kits and 40 loose items, each with a code and a place of its own', () => {
		const kits = demoShelf.lines.filter(({ kind }) => kind === 'kit');
		expect([kits.length, demoShelf.lines.length - kits.length]).toEqual([12, 40]);
		expect(new Set(demoShelf.lines.map(({ code }) => code)).size).toBe(52);
		expect(new Set(demoShelf.lines.map(({ name }) => name)).size).toBe(52);
		expect(demoShelf.lines.every(({ place }) => place !== null)).toBe(true);
	});
	it('is written as the file that stands beside this test, and read from it', async () => {
		const csv = shelfCsv(demoShelf);
		await expect(csv).toMatchFileSnapshot('./demo-shelf.csv');
		const read = readShelf(new TextEncoder().encode(csv));
		expect(read.shelf).toEqual(demoShelf);
		expect(read.leftOut).toEqual([]);
		expect(read.troubles.map(({ message }) => message)).toEqual([
			'This kit has no transformer: it is taken as one that adds to another.'
		]);
		expect(checkedShelf(demoShelf)).toEqual({ shelf: demoShelf, lost: 0 });
	});
	it('sells every light of a kit loose too, and a kit for less than its pieces', () => {
		const loose = new Map(
			demoShelf.lines.filter(({ kind }) => kind === 'fixture').map((one) => [one.contents.fixtures[0]!.product, one])
		);
		for (const kit of demoShelf.lines.filter(({ kind }) => kind === 'kit'))
			for (const { product, fixture, count } of kit.contents.fixtures) {
				expect(loose.get(product)?.contents.fixtures[0]?.fixture).toEqual(fixture);
				expect(loose.get(product)!.cents * count).toBeLessThan(kit.cents * 1.05);
			}
	});
});

describe('what each odd kit shows', () => {
	// Six lights on the last 50 ft of 200 ft, 16 AWG, all drawing what they draw at 12 V, which is too little and so flatters the kit.
	// NEC Chapter 9, Table 8: 16 AWG stranded, 4.99 ohm per 1000 ft of one conductor at 75 °C.
	it('K-103 has lights, watts and metres enough for a long walk, and starves the last lamp', () => {
		const kit = line('K-103');
		expect(lights(kit)).toBe(6);
		expect(watts(kit)).toBeLessThan(kit.contents.transformer!.voltAmps * 0.8);
		expect(metres(kit)).toBeGreaterThan(200 * feet);
		expect(kit.contents.transformer!.taps).toEqual([12]);
		const amps = kit.contents.fixtures[0]!.fixture.lamp.voltAmps / 12;
		const ohmsPerFoot = (2 * 4.99) / 1000;
		const drop =
			150 * ohmsPerFoot * 6 * amps + [5, 4, 3, 2, 1].reduce((sum, n) => sum + 10 * ohmsPerFoot * n * amps, 0);
		expect(12 - drop).toBeLessThan(kit.contents.fixtures[0]!.fixture.lamp.minVolts);
	});
	it('K-101 has less cable than a walk of 30 ft with its way to the receptacle', () => {
		expect(metres(line('K-101'))).toBeLessThan(60 * feet);
		expect(lights(line('K-101'))).toBe(4);
	});
	// At most 80 % of the rating: NEC 210.19(A) for continuous loads.
	it('K-108 looks right in watts and is over 80 % in volt-amperes', () => {
		const rating = line('K-108').contents.transformer!.voltAmps;
		expect(watts(line('K-108'))).toBeLessThanOrEqual(0.8 * rating);
		expect(voltAmps(line('K-108'))).toBeGreaterThan(0.8 * rating);
	});
	it('every other kit with a transformer keeps to 80 %', () => {
		for (const one of demoShelf.lines) {
			const { transformer } = one.contents;
			if (one.kind === 'kit' && transformer && one.code !== 'K-108')
				expect(voltAmps(one), one.code).toBeLessThanOrEqual(0.8 * transformer.voltAmps);
		}
	});
	it('K-109 is halogen, K-110 has no transformer, K-111 has a light less than the three of a usual walk', () => {
		expect(line('K-109').contents.fixtures.map(({ fixture }) => fixture.lamp.source)).toEqual(['halogen']);
		expect(line('K-110').contents.transformer).toBeNull();
		expect(lights(line('K-111'))).toBe(2);
	});
});
