import { describe, expect, test } from 'vitest';
import { distance, lineLength, nearestOnLine, pointAt, polygonArea } from '../shared/geometry';
import { metresPerFoot } from '../shared/units';
import { blankYard, examples, type Yard } from '../yard';
import { randomYard } from '../yard/random.testing';
import { builtAt, distanceToStrip, makeSite, type Site } from '.';

const demo = (id: string): { yard: Yard; site: Site } => {
	const { yard } = examples.find((example) => example.id === id)!;
	return { yard, site: makeSite(yard) };
};
const feet = (n: number): number => n * metresPerFoot;

describe('suburban demo, by hand from its figures in feet', () => {
	const { site } = demo('suburban');
	test('the L of the house: 50 by 28, and a wing of 18 by 6 before it', () => {
		expect(polygonArea(site.house)).toBeCloseTo(feet(1) ** 2 * (50 * 28 + 18 * 6), 2);
		expect(site.house.length).toBe(6);
		expect(site.walls.map((wall) => [wall.id, Math.round(wall.length / feet(1))])).toEqual([
			['left', 34],
			['front-1', 18],
			['return-1', 6],
			['front-2', 32],
			['right', 28]
		]);
	});
	test('every wall looks outwards, and is seen with its left end first', () => {
		for (const wall of site.walls) {
			const middle = { x: (wall.from.x + wall.to.x) / 2, y: (wall.from.y + wall.to.y) / 2 };
			const before = { x: middle.x + 0.01 * wall.outward.x, y: middle.y + 0.01 * wall.outward.y };
			const behind = { x: middle.x - 0.01 * wall.outward.x, y: middle.y - 0.01 * wall.outward.y };
			expect(builtAt({ ...site, strips: [], areas: [] }, before), wall.id).toBe(null);
			expect(builtAt({ ...site, strips: [], areas: [] }, behind)?.kind, wall.id).toBe('house');
		}
		expect(site.walls.find((wall) => wall.id === 'return-1')!.outward).toEqual({ x: 1, y: 0 });
	});
	test('openings lie on their walls, in metres from the left end', () => {
		const on = (id: string) => site.walls.find((wall) => wall.id === id)!.openings;
		expect(on('front-1')).toEqual([
			{
				id: 'wing-window',
				kind: 'window',
				start: expect.closeTo(feet(5.5), 3),
				end: expect.closeTo(feet(12.5), 3),
				sill: 0.9,
				head: 2.1
			}
		]);
		expect(on('front-2').map((opening) => [opening.id, Math.round((opening.start / feet(1)) * 10) / 10])).toEqual([
			['front-door', 3.5],
			['kitchen-window', 13],
			['study-window', 22]
		]);
		expect(on('right')[0]!.start).toBeCloseTo(feet(14), 3);
	});
	test('the walk: 13, √244 and 12 ft, two bends of atan(10/12), two flights, joined to nothing', () => {
		const walk = site.strips.find((strip) => strip.kind === 'walk')!;
		expect(walk.length).toBeCloseTo(feet(13 + Math.sqrt(244) + 12), 2);
		const turn = (Math.atan2(10, 12) * 180) / Math.PI;
		expect(walk.bends.map((bend) => bend.turn)).toEqual([expect.closeTo(-turn, 2), expect.closeTo(turn, 2)]);
		expect(walk.steps.map((flight) => (flight.end - flight.start) / feet(1))).toEqual([
			expect.closeTo(3.5, 3),
			expect.closeTo(3.5, 3)
		]);
		expect(walk.meetsStreet).toBe(true);
		expect(walk.junctions).toEqual([]);
	});
	test('areas stand where they were told', () => {
		const area = (kind: string) => site.areas.find((candidate) => candidate.kind === kind)!;
		expect(polygonArea(area('porch').polygon)).toBeCloseTo(feet(1) ** 2 * 70, 2);
		expect(area('porch').sort).toBe('roofed');
		expect(area('water').sort).toBe('pond');
		// A ring of 24 on an ellipse holds 12/π · sin(π/12) of its area.
		expect(polygonArea(area('water').polygon)).toBeCloseTo(feet(1) ** 2 * 12 * 4 * 2.75 * Math.sin(Math.PI / 12), 2);
	});
});

describe('town and rural demos', () => {
	test('town: the whole front is one wall, the walk has its rail and stoop', () => {
		const { site } = demo('town');
		const [walk] = site.strips;
		expect(site.walls.filter((wall) => wall.front).map((wall) => wall.light)).toEqual(['soft']);
		expect(walk).toMatchObject({ rail: 'left', lights: 'right', meetsStreet: true });
		expect(walk!.steps[0]!.treads).toBe(3);
		expect(site.leftBoundary).toBeCloseTo(0, 12);
	});
	test('rural: sixty metres of drive; the walk leaves it and ends at the side door', () => {
		const { site } = demo('rural');
		const drive = site.strips.find((strip) => strip.kind === 'drive')!;
		const walk = site.strips.find((strip) => strip.kind === 'walk')!;
		expect(drive.length).toBeGreaterThan(59.5);
		expect(drive.length).toBeLessThan(60.5);
		expect(drive.posts).toBe(6);
		expect(walk.junctions).toEqual([{ at: 0, with: 'drive' }]);
		expect(drive.junctions.map((junction) => junction.with)).toEqual(['side-walk']);
		const left = site.walls.find((wall) => wall.id === 'left')!;
		const door = left.openings[0]!;
		const middle = pointAt([left.from, left.to], (door.start + door.end) / 2);
		expect(distance(walk.centre.at(-1)!, middle)).toBeLessThan(0.3);
		const avenue = site.trees.map((tree) => distanceToStrip(tree.at, drive));
		expect(avenue.length).toBe(6);
		for (const off of avenue) expect(off).toBeCloseTo(4.6 - 1.6, 1);
	});
	test('the garden wall shows its lit side to the drive', () => {
		const { site } = demo('rural');
		const wall = site.walls.find((candidate) => candidate.of === 'garden')!;
		expect(wall.outward.x).toBeLessThan(-0.99);
		expect(wall.length).toBeCloseTo(Math.hypot(0.6, 16), 6);
	});
});

describe('strips', () => {
	test('crossings end 150 mm outside both edges, square to the line', () => {
		for (const { site } of ['town', 'suburban', 'rural'].map(demo)) {
			for (const strip of site.strips) {
				expect(strip.crossings.length).toBeGreaterThan(0);
				for (const crossing of strip.crossings) {
					expect(distance(crossing.left, crossing.right)).toBeCloseTo(strip.width + 0.3, 9);
					for (const end of [crossing.left, crossing.right]) expect(distanceToStrip(end, strip)).toBeCloseTo(0.15, 1);
					expect(nearestOnLine(crossing.left, strip.centre)!.side).toBe('left');
					expect(nearestOnLine(crossing.right, strip.centre)!.side).toBe('right');
				}
			}
		}
	});
	test('going home, the left edge is on the left', () => {
		for (const { site } of ['town', 'suburban', 'rural'].map(demo)) {
			for (const strip of site.strips) {
				for (const p of strip.left) expect(nearestOnLine(p, strip.centre)!.side).toBe('left');
				for (const p of strip.right) expect(nearestOnLine(p, strip.centre)!.side).toBe('right');
				expect(strip.left.length).toBe(strip.centre.length);
				expect(lineLength(strip.centre)).toBeCloseTo(strip.length, 9);
				expect(polygonArea(strip.polygon)).toBeCloseTo(strip.length * strip.width, 3);
			}
		}
	});
	test('a curve that sweeps through a quarter circle of 3 m is one bend, in its middle', () => {
		const arc = Array.from({ length: 7 }, (_, i) => ({
			along: 10 + 3 * Math.cos((i / 6) * (Math.PI / 2)),
			out: 10 - 3 * Math.sin((i / 6) * (Math.PI / 2))
		}));
		const line = [{ along: 13, out: 16 }, ...arc, { along: 4, out: 7 }];
		const yard: Yard = { ...blankYard(), walks: [{ id: 'walk', name: 'walk', line, curved: true, width: 1 }] };
		const { bends, length } = makeSite(yard).strips[0]!;
		expect(bends.length).toBe(1);
		expect(bends[0]!.at).toBeCloseTo(length / 2, 0);
		expect(bends[0]!.turn).toBeGreaterThan(-95);
		expect(bends[0]!.turn).toBeLessThan(-70);
	});
	test('a bend of 30° exactly is not over 30°, one of 31° is', () => {
		const bent = (degrees: number) => {
			const turned = (degrees * Math.PI) / 180;
			const line = [
				{ along: 0, out: 20 },
				{ along: 0, out: 10 },
				{ along: 8 * Math.sin(turned), out: 10 - 8 * Math.cos(turned) }
			];
			return makeSite({ ...blankYard(), walks: [{ id: 'walk', name: 'walk', line, width: 1 }] }).strips[0]!.bends
				.length;
		};
		expect(bent(30)).toBe(0);
		expect(bent(31)).toBe(1);
	});
});

describe('blank and half-told yards', () => {
	test('a blank yard is an empty site that says what is missing', () => {
		const site = makeSite(blankYard());
		expect(site.house).toEqual([]);
		expect([site.walls, site.trees, site.strips, site.areas, site.findings]).toEqual([[], [], [], [], []]);
		expect(site.receptacle).toBe(null);
		expect(site.missing.map((item) => item.path)).toEqual([
			'place.location',
			'place.faces',
			'house.sections',
			'walks',
			'drives',
			'lot.street',
			'trees',
			'spots.water',
			'power.receptacle'
		]);
		for (const side of Object.values(site.bounds)) expect(Number.isFinite(side)).toBe(true);
	});
	test('a receptacle not told is supposed on the front, and said so; "none" is none', () => {
		const house = { sections: [{ id: 'front', width: 9 }] };
		const site = makeSite({ ...blankYard(), house });
		expect(site.receptacle).toMatchObject({ known: false, gfci: 'unsure' });
		expect(site.assumptions.some((item) => item.path === 'power.receptacle')).toBe(true);
		expect(makeSite({ ...blankYard(), house, power: { receptacle: 'none' } }).receptacle).toBe(null);
	});
	test('units change words only', () => {
		for (let seed = 1; seed <= 60; seed++) {
			const yard = randomYard(seed);
			const [inFeet, inMetres] = (['feet', 'metres'] as const).map((units) =>
				makeSite({ ...yard, place: { ...yard.place, units } })
			);
			const shape = ({ units: _, findings, assumptions, ...rest }: Site) => ({
				...rest,
				codes: findings.map((finding) => finding.code),
				taken: assumptions.map((item) => item.path)
			});
			expect(shape(inFeet!), `seed ${seed}`).toEqual(shape(inMetres!));
		}
	});
});
