/**
 * Bare sketches of common fronts, to start from instead of a blank sheet: the shape of things, whose measures are then
 * asked. Positions are given, so that there is something to drag; sizes and wishes are left out, so that they are asked.
 */
import type { Start } from './examples';
import { blankYard, type Yard, type YardPoint } from './schema';

const at = (along: number, out: number): YardPoint => ({ along, out });
const tree = (id: string, name: string, along: number, out: number) => ({ id, name, at: at(along, out) });
const walk = (line: YardPoint[]) => [{ id: 'front-walk', name: 'front walk', line }];
const drive = (line: YardPoint[]) => [{ id: 'drive', name: 'drive', line }];
const door = (along: number) => ({
	id: 'front-door',
	kind: 'door' as const,
	wall: 'front' as const,
	along,
	width: 0.95
});
const window = (n: number, along: number) => ({
	id: `window-${n}`,
	kind: 'window' as const,
	wall: 'front' as const,
	along,
	width: 1.8
});
const front = (width: number): Yard['house']['sections'] => [{ id: 'front', width, out: 0 }];

const mirrored = (width: number) => ({
	point: ({ along, out }: YardPoint): YardPoint => at(round(width - along), out),
	opening: <T extends { along: number; width: number }>(opening: T): T => ({
		...opening,
		along: round(width - opening.along - opening.width)
	})
});
/** Mirroring must not turn 3.3 into 3.3000000000000003. */
const round = (metres: number): number => Math.round(metres * 1000) / 1000;

function walkLeft(): Yard {
	return {
		...blankYard(),
		house: { sections: front(12), openings: [door(3), window(1, 5.5), window(2, 9)] },
		lot: { street: 10 },
		trees: [tree('tree-1', 'front tree', 8.5, 6)],
		walks: walk([at(3.5, 10), at(3.5, 0)])
	};
}
function driveLeft(): Yard {
	return {
		...blankYard(),
		house: { sections: front(13), openings: [door(6), window(1, 2), window(2, 9.5)] },
		lot: { street: 11, left: 6 },
		trees: [tree('tree-1', 'front tree', 10.5, 6.5)],
		walks: walk([at(-1.5, 3.5), at(6.5, 3.5), at(6.5, 0)]),
		drives: drive([at(-3, 11), at(-3, -5)])
	};
}
/** The same front seen in a mirror: what was on the left is on the right. */
function flipped(yard: Yard): Yard {
	const width = (yard.house.sections ?? []).reduce((sum, section) => sum + section.width, 0);
	const mirror = mirrored(width);
	const line = <T extends { line?: YardPoint[] }>(strip: T): T => ({ ...strip, line: strip.line?.map(mirror.point) });
	const { left, right, ...lot } = yard.lot;
	return {
		...yard,
		house: { ...yard.house, openings: yard.house.openings?.map(mirror.opening) },
		lot: { ...lot, ...(right === undefined ? {} : { left: right }), ...(left === undefined ? {} : { right: left }) },
		trees: yard.trees?.map((item) => ({ ...item, at: item.at && mirror.point(item.at) })),
		...(yard.walks && { walks: yard.walks.map(line) }),
		...(yard.drives && { drives: yard.drives.map(line) })
	};
}
function cornerLot(): Yard {
	return {
		...blankYard(),
		house: {
			sections: front(14),
			openings: [
				door(6.5),
				window(1, 2.5),
				window(2, 10),
				{ id: 'garage-door', kind: 'garage', wall: 'right', along: 2.5, width: 3 }
			]
		},
		lot: { street: 9, right: 8 },
		trees: [tree('tree-1', 'corner tree', 18, 5), tree('tree-2', 'front tree', 2.5, 5.5)],
		walks: walk([at(11, 9), at(11, 5), at(7, 2.5), at(7, 0)]),
		drives: drive([at(22, -4), at(14, -4)])
	};
}
function townRow(): Yard {
	return {
		...blankYard(),
		house: { sections: front(6), openings: [door(1), window(1, 3)] },
		lot: { street: 5, left: 0, right: 0 },
		trees: [tree('tree-1', 'small tree', 4.3, 2.8)],
		walks: walk([at(1.5, 5), at(1.5, 0)]),
		drives: []
	};
}

const start = (id: string, title: string, about: string, make: () => Yard): Start => ({
	id,
	title,
	about,
	get yard() {
		return make();
	}
});

/** Six outlines. Each reading of `yard` is a fresh copy. */
export const outlines: readonly Start[] = [
	/* @__PURE__ */ start(
		'walk-left',
		'Walk on the left',
		'A straight walk to a door left of the middle, one tree on the lawn.',
		walkLeft
	),
	/* @__PURE__ */ start(
		'walk-right',
		'Walk on the right',
		'A straight walk to a door right of the middle, one tree on the lawn.',
		() => flipped(walkLeft())
	),
	/* @__PURE__ */ start(
		'drive-left',
		'Drive on the left',
		'A drive along the left side, and a walk from it to the door.',
		driveLeft
	),
	/* @__PURE__ */ start(
		'drive-right',
		'Drive on the right',
		'A drive along the right side, and a walk from it to the door.',
		() => flipped(driveLeft())
	),
	/* @__PURE__ */ start(
		'corner-lot',
		'Corner lot',
		'Streets on two sides: the walk comes from one, the drive from the other.',
		cornerLot
	),
	/* @__PURE__ */ start('town-row', 'Town row', 'Houses wall to wall, a short walk, a small tree.', townRow)
];
