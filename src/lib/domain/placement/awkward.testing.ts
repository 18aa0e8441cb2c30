/** For tests: random yards made harder to light in ways that chance seldom brings about. */
import type { Yard, YardDrive, YardPoint, YardWalk } from '../yard';
import { randomYard } from '../yard/random.testing';

const metres = (value: unknown, otherwise: number): number => (typeof value === 'number' ? value : otherwise);
const held = (value: number): number => Math.round(Math.min(499, Math.max(-499, value)) * 100) / 100;
const at = (along: number, out: number): YardPoint => ({ along: held(along), out: held(out) });

/** A point `share` of the way along the first stretch of a drive, `aside` metres to its right. */
function besideDrive({ line }: YardDrive, share: number, aside: number): YardPoint | null {
	const [a, b] = line ?? [];
	if (!a || !b) return null;
	const [x, y] = [b.along - a.along, b.out - a.out];
	const size = Math.hypot(x, y);
	if (size < 1) return null;
	return at(a.along + x * share - (y / size) * aside, a.out + y * share + (x / size) * aside);
}

/** A sliver of ground between a drive and a lit wall, 0.2 to 1 m wide. */
function withSliver(yard: Yard, drive: YardDrive, seed: number): Yard {
	const aside = metres(drive.width, 3) / 2 + 0.2 + ((seed * 7) % 9) / 10;
	const [from, to] = [besideDrive(drive, 0.1, aside), besideDrive(drive, 0.9, aside)];
	if (!from || !to) return yard;
	const wall = { id: 'sliver', name: 'boundary wall', from, to, height: 1.5, light: 'soft' as const };
	return { ...yard, spots: { ...yard.spots, walls: [wall] } };
}
/** The first two trees hard by the drive, one behind the other as close as a hedge. */
function withHedge(yard: Yard, drive: YardDrive, seed: number): Yard {
	const trees = (yard.trees ?? []).map((tree, i) => {
		const aside = metres(drive.width, 3) / 2 + 0.3 + metres(tree.trunk, 0.2);
		const place = i < 2 ? besideDrive(drive, 0.3 + i * 0.05 * ((seed % 5) + 1), -aside) : null;
		return place ? { ...tree, at: place } : tree;
	});
	return { ...yard, trees };
}
/** A walk that doubles back near its start: a hairpin of 100 to 170°. */
function withHairpin(walk: YardWalk, seed: number): YardWalk {
	const [first, ...rest] = walk.line ?? [];
	if (!first) return walk;
	const hand = seed % 2 === 0 ? 1 : -1;
	const back = 1 + (seed % 5);
	const bend = [at(first.along + hand * 6, first.out - 2), at(first.along, first.out - 2 - back)];
	return { ...walk, line: [first, ...bend, ...rest] };
}

/** Parts with eaves of their own and gables, some of them impossible; windows upstairs; roofs of porches at any height. */
function withUpstairs(yard: Yard, seed: number): Yard {
	const eaves = metres(yard.house.eaves, 2.7);
	// Of the seed and a number, as one dice for each answer.
	const roll = (i: number, faces: number): number => ((seed * 31 + i * 17) ^ (seed >> 3)) % faces;
	const sections = yard.house.sections?.map((section, i) => ({
		...section,
		...(roll(i, 3) === 0 ? { eaves: held(Math.min(15, 2.4 + roll(i + 1, 9) * 0.7)) } : {}),
		...(roll(i, 2) === 0 ? { gable: held(Math.min(20, Math.max(2, eaves + roll(i + 2, 11) * 0.5 - 0.6))) } : {})
	}));
	const openings = yard.house.openings?.map((opening, i) => ({
		...opening,
		...(roll(i, 3) === 1 ? { floor: roll(i, 2) === 0 ? ('upper' as const) : ('ground' as const) } : {})
	}));
	const porches = yard.house.porches?.map((porch, i) => ({
		...porch,
		...(roll(i, 2) === 0 ? { under: held(1.8 + roll(i, 13) * 0.25) } : {})
	}));
	return { ...yard, house: { ...yard.house, sections, openings, porches } };
}

/** The random yard of a seed, two in three of them with an upstairs; every fourth one with a sliver, a hedge by the drive and a hairpin. */
export function awkwardYard(seed: number): Yard {
	const told = randomYard(seed);
	const yard = seed % 3 === 0 ? told : (JSON.parse(JSON.stringify(withUpstairs(told, seed))) as Yard);
	if (seed % 4 !== 0) return yard;
	const [drive] = yard.drives ?? [];
	const bent = { ...yard, walks: yard.walks?.map((walk, i) => (i === 0 ? withHairpin(walk, seed) : walk)) };
	// As read from a file: an absent answer has no key.
	const made = drive ? withHedge(withSliver(bent, drive, seed), drive, seed) : bent;
	return JSON.parse(JSON.stringify(made)) as Yard;
}
