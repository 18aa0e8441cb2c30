import type { Yard, YardPoint } from '../yard';

const swap = <T extends string>(side: T): T => (side === 'left' ? 'right' : side === 'right' ? 'left' : side) as T;

/** The same yard seen in a mirror: what lay `along` from the left corner lies as far from the right one. */
export function mirrored(yard: Yard): Yard {
	const width = (yard.house.sections ?? []).reduce((sum, { width }) => sum + width, 0);
	const flip = (p: YardPoint): YardPoint => ({ along: width - p.along, out: p.out });
	const placed = <T extends { at?: YardPoint }>(list: T[] | undefined): T[] | undefined =>
		list?.map((item) => (item.at ? { ...item, at: flip(item.at) } : item));
	const span = <T extends { along: number; width: number }>(item: T): T => ({
		...item,
		along: width - item.along - item.width
	});
	const hung = <T extends Yard['power']['sensor'] | Yard['power']['transformer']>(spot: T): T =>
		typeof spot === 'object' ? { ...spot, at: flip(spot.at) } : spot;
	const { receptacle } = yard.power;
	return {
		...yard,
		power: {
			...yard.power,
			receptacle: typeof receptacle === 'object' ? flip(receptacle) : receptacle,
			transformer: hung(yard.power.transformer),
			sensor: hung(yard.power.sensor)
		},
		house: {
			...yard.house,
			sections: yard.house.sections?.toReversed(),
			openings: yard.house.openings?.map((o) => (o.wall === 'front' ? span(o) : { ...o, wall: swap(o.wall) })),
			porches: yard.house.porches?.map(span),
			left: yard.house.right,
			right: yard.house.left
		},
		lot: { ...yard.lot, left: yard.lot.right, right: yard.lot.left },
		trees: placed(yard.trees),
		walks: yard.walks?.map((walk) => ({
			...walk,
			line: walk.line?.map(flip),
			lights: walk.lights && swap(walk.lights),
			rail: walk.rail && swap(walk.rail)
		})),
		drives: yard.drives?.map((drive) => ({
			...drive,
			line: drive.line?.map(flip),
			lights: drive.lights && swap(drive.lights),
			runOffs: drive.runOffs?.map((r) => ({ ...r, side: swap(r.side) }))
		})),
		spots: {
			...yard.spots,
			beds: yard.spots.beds?.map((bed) => ({ ...bed, outline: bed.outline?.map(flip) })),
			paved: yard.spots.paved?.map((area) => ({ ...area, outline: area.outline?.map(flip) })),
			seating: placed(yard.spots.seating),
			numbers: placed(yard.spots.numbers),
			water: placed(yard.spots.water),
			lights: placed(yard.spots.lights),
			// A wall is lit on the side one faces with `from` at the left: in the mirror its ends change places.
			walls: yard.spots.walls?.map((wall) => ({
				...wall,
				from: wall.to && flip(wall.to),
				to: wall.from && flip(wall.from)
			}))
		}
	};
}
