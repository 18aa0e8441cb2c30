/** Numbers of the walks and the drives. */
import type { Plan } from '../../plan';
import type { Strip } from '../../site';
import { formatLength } from '../../shared/units';
import { calledThe, driveSchema, limits, walkSchema, type Yard, type YardDrive, type YardWalk } from '../../yard';
import { inputOf, lengthInput, numberInput, type Spot } from './input';
import { rangeOf } from './schema-range';
import { lengthStops, roundSize } from './stops';
import { lineLength, stretched } from './stretch';
import type { YardInput } from './types';

/** Treads to which a slider goes: a longer flight is seldom in a garden. */
const mostTreads = 12;
type Told = YardWalk | YardDrive;
/** Metres; shorter than this a line is a spot, longer than the yard's reach its ends leave the yard. */
const lineRange = { least: 0.5, most: limits.reach } as const;

function lengthOfLine(spot: Spot, kind: 'walks' | 'drives', strip: Told): YardInput[] {
	const start = lineLength(strip.line ?? []);
	if (start < lineRange.least || start > lineRange.most) return [];
	const path = [kind, strip.id];
	return [
		inputOf(spot, {
			id: [...path, 'line'].join('.'),
			path,
			label: 'Length, its line stretched',
			kind: 'length',
			unit: '',
			times: 1,
			start,
			...lineRange,
			stops: lengthStops(start, roundSize(start, lineRange), spot.units),
			text: (value) => formatLength(value, spot.units),
			tell: (value) => stretched(strip, value / start, kind === 'walks' ? 'last' : 'first')
		})
	];
}
function stepInputs(spot: Spot, walk: YardWalk): YardInput[] {
	const flights = walk.steps ?? [];
	return flights.flatMap(({ id, going }, n) => {
		const which = flights.length > 1 ? `Flight ${n + 1} from the street: ` : 'Steps: ';
		const path = ['walks', walk.id, 'steps', id];
		const flight = { ...spot, about: id };
		const item = walkSchema.shape.steps.def.innerType.def.element.shape;
		const range = rangeOf(item.treads);
		const treads = { range, unit: '', taken: range.least, window: { ...range, most: mostTreads }, whole: true };
		return [
			...lengthInput(flight, [...path, 'at'], `${which}along the walk`, item.at, 0, 'place'),
			numberInput(flight, [...path, 'treads'], `${which}number of treads`, treads),
			...lengthInput(
				flight,
				[...path, 'going'],
				`${which}depth of a tread`,
				item.going,
				typeof going === 'number' ? going : null
			)
		];
	});
}
export function stripInputs(yard: Yard, { site }: Plan): YardInput[] {
	const spotOf = (strip: Strip): Spot => ({
		yard,
		units: site.units,
		of: calledThe(strip.name, strip.kind),
		about: strip.id
	});
	return site.strips.flatMap((strip) => {
		const spot = spotOf(strip);
		const walk = yard.walks?.find(({ id }) => id === strip.id);
		const drive = yard.drives?.find(({ id }) => id === strip.id);
		if (walk && strip.kind === 'walk')
			return [
				...lengthOfLine(spot, 'walks', walk),
				...lengthInput(spot, ['walks', walk.id, 'width'], 'Width', walkSchema.shape.width, strip.width),
				...stepInputs(spot, walk)
			];
		if (!drive) return [];
		return [
			...lengthOfLine(spot, 'drives', drive),
			...lengthInput(spot, ['drives', drive.id, 'width'], 'Width', driveSchema.shape.width, strip.width),
			...(drive.posts
				? lengthInput(
						spot,
						['drives', drive.id, 'postsAt'],
						'Gate posts, along the drive',
						driveSchema.shape.postsAt,
						strip.posts,
						'place'
					)
				: [])
		];
	});
}
