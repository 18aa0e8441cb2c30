import { describe, expect, test } from 'vitest';
import { blankYard, examples, type Yard } from '../yard';
import { randomYard } from '../yard/random.testing';
import { makeSite } from '.';

const at = (along: number, out: number) => ({ along, out });
/** A sound little yard to spoil: 10 m of front, a walk to the door at 5 m, a drive on the left, street at 12 m. */
const sound: Yard = {
	...blankYard(),
	place: { units: 'metres', faces: 180, surroundings: 'suburb', location: 'unsure' },
	house: {
		sections: [{ id: 'front', width: 10, out: 0, light: 'soft' }],
		depth: 8,
		eaves: 3,
		finish: 'light',
		texture: 'smooth',
		openings: [
			{ id: 'door', kind: 'door', wall: 'front', along: 4.5, width: 1 },
			{ id: 'window', kind: 'window', wall: 'front', along: 7, width: 1.5 }
		]
	},
	lot: { street: 12, left: 6, right: 5 },
	trees: [
		{
			id: 'oak',
			name: 'oak',
			at: at(8, 7),
			spread: 4,
			height: 6,
			crownBase: 2,
			trunk: 0.2,
			form: 'round',
			ground: 'lawn',
			light: 'soft',
			seenFrom: 'street'
		}
	],
	walks: [{ id: 'walk', name: 'front walk', line: [at(5, 12), at(5, 0)], width: 1.2, lights: 'left' }],
	drives: [{ id: 'drive', name: 'drive', line: [at(-3, 12), at(-3, -4)], width: 3, lights: 'mouth' }],
	spots: { water: [{ id: 'pond', name: 'pond', kind: 'pond', at: at(12, 8), length: 2, width: 2 }] },
	power: { receptacle: at(1, 0), gfci: true, inUseCover: true }
};
const codes = (yard: Yard): string[] =>
	makeSite(yard).findings.map((finding) => `${finding.rank} ${finding.code.replace('site.', '')} ${finding.about?.id}`);
const walk = sound.walks![0]!;
const drive = sound.drives![0]!;
const oak = sound.trees![0]!;
const pond = sound.spots.water![0]!;

test('a sound yard has no findings, and nor have the demos', () => {
	expect(codes(sound)).toEqual([]);
	for (const { id, yard } of examples) expect(codes(yard), id).toEqual([]);
});
describe('what cannot be is said, once, at its item', () => {
	test.each<[string, Partial<Yard>, string[]]>([
		[
			'walk through the house',
			{ walks: [{ ...walk, line: [at(5, 12), at(5, -3)] }] },
			['stop walk-through-house walk']
		],
		[
			'walk whose edge runs in the wall',
			{ walks: [{ ...walk, line: [at(5, 12), at(5, 0.2), at(9, 0.2)] }] },
			['stop walk-through-house walk']
		],
		[
			'walk along the wall, a tape’s error inside',
			{ walks: [{ ...walk, line: [at(5, 12), at(5, 0.5), at(9, 0.5)] }] },
			[]
		],
		[
			'drive through the house',
			{ drives: [{ ...drive, line: [at(2, 12), at(2, -4)] }] },
			['stop drive-through-house drive']
		],
		['narrow drive', { drives: [{ ...drive, width: 2 }] }, ['look drive-narrow drive']],
		['walk of no length', { walks: [{ ...walk, line: [at(5, 12), at(5, 12)] }] }, ['stop walk-no-length walk']],
		[
			'walk across itself',
			{ walks: [{ ...walk, line: [at(5, 12), at(5, 4), at(7, 4), at(7, 6), at(4, 6), at(4, 0)] }] },
			['stop walk-crosses-itself walk']
		],
		[
			'walk back on itself',
			{ walks: [{ ...walk, line: [at(5, 12), at(5, 2), at(5, 8)] }] },
			['stop walk-turns-back walk']
		],
		[
			'walk told from house to street',
			{ walks: [{ ...walk, line: [at(5, 0), at(5, 13)] }] },
			['look walk-ends-in-street walk']
		],
		[
			'walk through the pond',
			{ walks: [{ ...walk, line: [at(5, 12), at(12, 8), at(5, 0)] }] },
			['stop walk-through-water walk']
		],
		[
			'steps beyond the end',
			{ walks: [{ ...walk, steps: [{ id: 'a', at: 11.8, treads: 4, going: 0.3 }] }] },
			['look steps-beyond-end walk']
		],
		[
			'crossing beyond the end',
			{ walks: [{ ...walk, crossings: [{ id: 'a', at: 20, kind: 'sleeve' }] }] },
			['look crossing-beyond-end walk']
		],
		['tree in the house', { trees: [{ ...oak, at: at(3, -2) }] }, ['stop tree-in-house oak']],
		['tree in the walk', { trees: [{ ...oak, at: at(5.3, 6) }] }, ['stop tree-in-paving oak']],
		['tree in the drive', { trees: [{ ...oak, at: at(-3, 6) }] }, ['stop tree-in-paving oak']],
		['tree in the pond', { trees: [{ ...oak, at: at(12, 8.2) }] }, ['stop tree-in-water oak']],
		['tree in the street', { trees: [{ ...oak, at: at(8, 13) }] }, ['look tree-outside-lot oak']],
		['tree next door', { trees: [{ ...oak, at: at(16, 3) }] }, ['look tree-outside-lot oak']],
		['two trees in one', { trees: [oak, { ...oak, id: 'elm', name: 'elm' }] }, ['look trees-in-one-place elm']],
		['crown above the top', { trees: [{ ...oak, crownBase: 6 }] }, ['look crown-above-top oak']],
		[
			'trunk thicker than the canopy',
			{ trees: [{ ...oak, spread: 0.5, trunk: 0.6 }] },
			['look trunk-wider-than-canopy oak']
		],
		['water in the house', { spots: { water: [{ ...pond, at: at(8, -0.5) }] } }, ['stop water-in-house pond']],
		[
			'seating in the pond',
			{ spots: { ...sound.spots, seating: [{ id: 'bench', name: 'bench', at: at(11, 8), across: 2, light: 'none' }] } },
			['look seating-in-water bench']
		],
		[
			'bed of no area',
			{ spots: { ...sound.spots, beds: [{ id: 'bed', name: '', outline: [at(0, 1), at(1, 1), at(2, 1)] }] } },
			['look bed-no-area bed']
		],
		[
			'wall of no length',
			{ spots: { ...sound.spots, walls: [{ id: 'w', name: 'wall', from: at(9, 3), to: at(9, 3), light: 'none' }] } },
			['stop wall-no-length w']
		],
		[
			'wall across the walk',
			{ spots: { ...sound.spots, walls: [{ id: 'w', name: 'wall', from: at(3, 9), to: at(7, 9), light: 'none' }] } },
			['look wall-across-paving w']
		],
		[
			'wall through the house',
			{ spots: { ...sound.spots, walls: [{ id: 'w', name: 'wall', from: at(8, 2), to: at(8, -3), light: 'none' }] } },
			['look wall-through-house w']
		],
		[
			'receptacle in the house',
			{ power: { ...sound.power, receptacle: at(3, -1) } },
			['look receptacle-in-house receptacle']
		]
	])('%s', (_, change, found) => {
		expect(codes({ ...sound, ...change })).toEqual(found);
	});
	test.each<[string, Partial<Yard['house']>, string[]]>([
		['eaves of 15 m', { eaves: 15 }, ['look eaves-high house']],
		[
			'a window off the wall',
			{ openings: [{ id: 'a', kind: 'window', wall: 'front', along: 9, width: 2 }] },
			['look opening-off-wall a']
		],
		[
			'a side door behind the house',
			{ openings: [{ id: 'a', kind: 'door', wall: 'left', along: 9, width: 1 }] },
			['look opening-off-wall a']
		],
		[
			'a door in a window',
			{ openings: [...sound.house.openings!, { id: 'a', kind: 'door', wall: 'front', along: 8, width: 1 }] },
			['look openings-overlap a']
		],
		['a porch beside the house', { porches: [{ id: 'a', along: 13, width: 2, depth: 1 }] }, ['look porch-off-front a']],
		[
			'a part of the front behind the back wall',
			{
				sections: [
					{ id: 'a', width: 5, out: 0, light: 'soft' },
					{ id: 'b', width: 5, out: -9, light: 'none' }
				]
			},
			['stop section-behind-house b']
		]
	])('%s', (_, change, found) => {
		const house = { ...sound.house, ...change };
		const yard = change.sections
			? { ...sound, house: { ...house, openings: [] }, trees: [], walks: [] }
			: { ...sound, house };
		expect(codes(yard)).toEqual(found);
	});
});
test('a receptacle told a hand’s breadth off is on the wall, without a word', () => {
	const site = makeSite({ ...sound, power: { ...sound.power, receptacle: at(1, 0.2) } });
	expect(site.receptacle!.at).toEqual({ x: 1, y: 0 });
	expect(site.findings).toEqual([]);
	expect(makeSite({ ...sound, power: { ...sound.power, receptacle: at(1, 3) } }).receptacle!.at).toEqual({
		x: 1,
		y: 3
	});
});
test('any yard gives a site: no throw, no strange number, sentences whole', () => {
	const many = process.env.LONG ? 20_000 : 400;
	const seen = new Set<string>();
	for (let seed = 1; seed <= many; seed++) {
		const site = makeSite(randomYard(seed));
		JSON.stringify(site, (key, value: unknown) => {
			if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`seed ${seed}: ${key} is ${value}`);
			return value;
		});
		for (const { message } of [...site.findings, ...site.assumptions, ...site.missing]) {
			expect(message, `seed ${seed}`).toMatch(/^[A-Z].*[.]$/);
			expect(message, `seed ${seed}`).not.toMatch(/NaN|undefined|null|Infinity|\[object| {2}/);
		}
		for (const { code, rank, about } of site.findings) {
			expect(about, code).not.toBe(null);
			seen.add(`${rank} ${code}`);
		}
		for (const wall of site.walls) {
			expect(Math.hypot(wall.outward.x, wall.outward.y)).toBeCloseTo(1, 9);
			for (const opening of wall.openings) expect(opening.start >= 0 && opening.end <= wall.length + 1e-9).toBe(true);
		}
		for (const strip of site.strips) {
			for (const { at } of [...strip.bends, ...strip.junctions, ...strip.crossings, ...strip.runOffs]) {
				expect(at >= 0 && at <= strip.length + 1e-6, `seed ${seed}`).toBe(true);
			}
		}
		expect(new Set(site.walls.map((wall) => wall.id)).size, `seed ${seed}`).toBe(site.walls.length);
	}
	// The generator reaches most of what can be said; a finding that nothing reaches is not tested by it.
	expect(seen.size).toBeGreaterThan(25);
});
