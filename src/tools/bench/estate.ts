import { makeSite, type Site } from '../../lib/domain/site';
import { blankYard, limits, type Yard, type YardDrive, type YardTree, type YardWalk } from '../../lib/domain/yard';

/** A lit tree of one of eight forms; sizes differ from one to the next, so that no two are worked out alike. */
function tree(i: number, at: { along: number; out: number }): YardTree {
	return {
		id: `tree-${i + 1}`,
		name: `Tree ${i + 1}`,
		at,
		spread: 2 + (i % 7) * 1.3,
		height: 5 + (i % 5) * 2,
		crownBase: 1 + (i % 3) * 0.5,
		trunk: 0.15 + (i % 4) * 0.1,
		form: (['round', 'spreading', 'conical', 'vase', 'weeping', 'multi-stem', 'palm', 'columnar'] as const)[i % 8]!,
		ground: i % 2 === 0 ? 'lawn' : 'bed',
		light: 'soft',
		seenFrom: i % 3 === 0 ? 'walk' : 'street'
	};
}
/** A drive that winds along the front, `out` in front of it. */
const drive = (i: number, out: number, length: number): YardDrive => ({
	id: `drive-${i + 1}`,
	name: `Drive ${i + 1}`,
	line: Array.from({ length: 21 }, (_, k) => ({
		along: -length / 2 + (k / 20) * length,
		out: out + (k % 2 === 0 ? 4 : -4)
	})),
	curved: true,
	width: 4,
	lights: 'both',
	pattern: 'staggered'
});

/** Metres between trees and between rows of them, and from drive to drive: an estate of twice the trees is twice as deep. */
const grove = { columns: 50, apart: 20, rows: 22, drives: 110 } as const;

/** Trees and drives of 500 m as a site: a yard holds 400 of a kind, so several yards are read and their trees put together. */
export function estateSite(trees: number, metresOfDrive: number): { site: Site; yard: Yard } {
	const drives = Math.max(1, Math.ceil(metresOfDrive / 500));
	const half = (grove.columns * grove.apart) / 2;
	const depth = Math.ceil(trees / grove.columns) * grove.rows;
	const all = Array.from({ length: trees }, (_, i) =>
		tree(i, {
			along: (i % grove.columns) * grove.apart - half + (i % 5),
			out: 20 + Math.floor(i / grove.columns) * grove.rows
		})
	);
	const yard = (part: YardTree[], withDrives: boolean): Yard => ({
		...blankYard(),
		house: { sections: [{ id: 'front', width: 30, light: 'soft' }], depth: 12, eaves: 5 },
		lot: { street: 300, left: 200, right: 200 },
		trees: part,
		walks: [],
		drives: withDrives
			? Array.from({ length: drives }, (_, i) => drive(i, 30 + i * grove.drives, (metresOfDrive / drives) * 0.98))
			: []
	});
	const first = yard(all.slice(0, limits.items), true);
	const site = makeSite(first);
	for (let from = limits.items; from < trees; from += limits.items)
		site.trees.push(...makeSite(yard(all.slice(from, from + limits.items), false)).trees);
	// The lot of a home ends sooner than an estate does.
	Object.assign(site, { street: depth + 100, leftBoundary: -half - 50, rightBoundary: half + 50 });
	return { site, yard: first };
}

/** A home with as many things to light: trees by the walk, a bend here and there, a drive, walls, steps, seats, a number. */
export function targetsYard(targets: number): Yard {
	const trees = Math.round(targets * 0.6);
	const walks = Math.max(1, Math.round(targets * 0.1));
	const seats = Math.max(1, Math.round(targets * 0.1));
	const walls = Math.max(1, Math.round(targets * 0.1));
	// What is left of the number: the front of the house, the drive, a flight on the first walk, the house number.
	const walk = (i: number): YardWalk => ({
		id: `walk-${i + 1}`,
		name: `Walk ${i + 1}`,
		line: [
			{ along: 4 + i * 8, out: 30 },
			{ along: 4 + i * 8, out: 18 },
			{ along: 7 + i * 8, out: 12 },
			{ along: 7 + i * 8, out: 1 }
		],
		width: 1.2,
		lights: 'either',
		...(i === 0 ? { steps: [{ id: 'flight', at: 6, treads: 3, going: 0.4 }] } : {})
	});
	return {
		...blankYard(),
		house: {
			sections: [{ id: 'front', width: 16, light: 'soft' }],
			depth: 10,
			eaves: 3,
			openings: [{ id: 'door', kind: 'door', wall: 'front', along: 6.5, width: 1 }]
		},
		lot: { street: 30, left: 200, right: 200 },
		trees: Array.from({ length: trees }, (_, i) => tree(i, { along: -100 + (i * 200) / trees, out: 6 + (i % 4) * 5 })),
		walks: Array.from({ length: walks }, (_, i) => walk(i)),
		drives: [{ ...drive(0, 0, 0), line: [{ along: -20, out: 30 }, { along: -24, out: 14 }, { along: -20, out: 1 }] }], // prettier-ignore
		spots: {
			seating: Array.from({ length: seats }, (_, i) => ({
				id: `seat-${i + 1}`,
				name: `Seat ${i + 1}`,
				at: { along: -60 + i * 9, out: 9 },
				across: 2.5,
				light: 'soft' as const
			})),
			walls: Array.from({ length: walls }, (_, i) => ({
				id: `garden-${i + 1}`,
				name: `Wall ${i + 1}`,
				from: { along: -90 + i * 12, out: 26 },
				to: { along: -84 + i * 12, out: 26 },
				height: 1.5 + (i % 3) * 0.3,
				light: 'soft' as const
			})),
			numbers: [{ id: 'number', at: { along: 6, out: 0 }, light: true }]
		}
	};
}
/** How many things a yard asks light for. */
export const targetsOf = (site: Site): number =>
	site.trees.filter((t) => t.light !== 'none').length +
	site.walls.filter((w) => w.light !== 'none').length +
	site.strips.filter((s) => s.lights !== 'none').length +
	site.strips.flatMap((s) => s.steps).length +
	site.areas.filter((a) => a.kind === 'seating' && a.light !== 'none').length +
	site.houseNumber.length;
