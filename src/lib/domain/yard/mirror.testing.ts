/** For tests: the same yard seen in a mirror, left for right. Whatever is worked out from it must be mirrored too. */
import type { Yard, YardPoint } from './schema';

type Handed = 'left' | 'right';
const other = <T extends string>(side: T): T | Handed => (side === 'left' ? 'right' : side === 'right' ? 'left' : side);

/** Mirrored about the middle of the front; twice gives the yard back, but for rounding. */
export function mirrored(yard: Yard): Yard {
	const width = (yard.house.sections ?? []).reduce((sum, section) => sum + section.width, 0);
	const point = ({ along, out }: YardPoint): YardPoint => ({ along: width - along, out });
	const placed = <T extends { at?: YardPoint }>(item: T): T => (item.at ? { ...item, at: point(item.at) } : item);
	const lined = <T extends { line?: YardPoint[] }>(item: T): T =>
		item.line ? { ...item, line: item.line.map(point) } : item;
	const { house, lot, spots, power } = yard;
	const spot = <T extends Yard['power']['transformer']>(told: T): T =>
		typeof told === 'object' ? { ...told, at: point(told.at) } : told;
	return {
		...yard,
		house: {
			...house,
			sections: house.sections?.toReversed(),
			openings: house.openings?.map((item) =>
				item.wall === 'front'
					? { ...item, along: width - item.along - item.width }
					: { ...item, wall: other(item.wall) as Handed }
			),
			porches: house.porches?.map((item) => ({ ...item, along: width - item.along - item.width })),
			left: house.right,
			right: house.left
		},
		lot: { ...lot, left: lot.right, right: lot.left },
		trees: yard.trees?.map(placed),
		walks: yard.walks?.map((walk) => ({
			...lined(walk),
			lights: walk.lights && (other(walk.lights) as typeof walk.lights),
			rail: walk.rail && (other(walk.rail) as typeof walk.rail)
		})),
		drives: yard.drives?.map((drive) => ({
			...lined(drive),
			lights: drive.lights && (other(drive.lights) as typeof drive.lights),
			runOffs: drive.runOffs?.map((runOff) => ({ ...runOff, side: other(runOff.side) as Handed }))
		})),
		spots: {
			beds: spots.beds?.map((bed) => ({ ...bed, outline: bed.outline?.map(point) })),
			paved: spots.paved?.map((area) => ({ ...area, outline: area.outline?.map(point) })),
			seating: spots.seating?.map(placed),
			numbers: spots.numbers?.map(placed),
			water: spots.water?.map(placed),
			lights: spots.lights?.map(placed),
			walls: spots.walls?.map((wall) => ({
				...wall,
				from: wall.from && point(wall.from),
				to: wall.to && point(wall.to)
			}))
		},
		power: {
			...power,
			receptacle: typeof power.receptacle === 'object' ? point(power.receptacle) : power.receptacle,
			transformer: spot(power.transformer),
			sensor: spot(power.sensor)
		}
	};
}
