/** Numbers of the house, the lot, the trees and what else stands about. */
import type { Plan } from '../../plan';
import {
	calledThe,
	existingLightSchema,
	freeWallSchema,
	houseNumberSchema,
	houseSchema,
	lotSchema,
	pointSchema,
	seatingSchema,
	sectionSchema,
	treeSchema,
	type Yard
} from '../../yard';
import { lengthInput, pointInputs, type Spot } from './input';
import type { YardInput } from './types';

const point = pointSchema.shape;
const spotOf = (yard: Yard, { site }: Plan, of: string, about: string): Spot => ({
	yard,
	units: site.units,
	of,
	about
});
const isLit = ({ light }: { light: string }) => light !== 'none';

export function treeInputs(yard: Yard, plan: Plan): YardInput[] {
	const { shape } = treeSchema;
	return plan.site.trees.filter(isLit).flatMap((tree) => {
		const path = ['trees', tree.id];
		const spot = spotOf(yard, plan, calledThe(tree.name, 'tree'), tree.id);
		return [
			...lengthInput(spot, [...path, 'spread'], 'Across the canopy', shape.spread, tree.spread),
			...lengthInput(spot, [...path, 'height'], 'Height', shape.height, tree.height),
			...lengthInput(spot, [...path, 'crownBase'], 'Height to the lowest branches', shape.crownBase, tree.crownBase),
			...lengthInput(spot, [...path, 'trunk'], 'Thickness of the trunk', shape.trunk, tree.trunkDiameter),
			...pointInputs(spot, [...path, 'at'], point)
		];
	});
}
export function houseInputs(yard: Yard, plan: Plan): YardInput[] {
	const { site } = plan;
	if (site.house.length === 0) return [];
	const house = spotOf(yard, plan, 'the house', 'house');
	const sections = (yard.house.sections ?? []).flatMap(({ id }) => {
		const wall = site.walls.find((one) => one.id === id && one.of === 'house' && isLit(one));
		if (!wall) return [];
		const spot = spotOf(yard, plan, calledThe(wall.name, 'wall'), wall.id);
		const path = ['house', 'sections', id];
		return [
			...lengthInput(spot, [...path, 'width'], 'Length', sectionSchema.shape.width, wall.length),
			...lengthInput(spot, [...path, 'out'], 'Stands out', sectionSchema.shape.out, 0, 'place')
		];
	});
	return [
		...lengthInput(house, ['house', 'eaves'], 'Height of the eaves', houseSchema.shape.eaves, site.eaves),
		...sections
	];
}
export function lotInputs(yard: Yard, plan: Plan): YardInput[] {
	const spot = spotOf(yard, plan, 'the lot', 'lot');
	const { street, left, right } = lotSchema.shape;
	const told = ({ lot }: Yard, key: 'street' | 'left' | 'right') => (typeof lot[key] === 'number' ? lot[key] : null);
	return [
		...lengthInput(spot, ['lot', 'street'], 'House to the street', street, told(yard, 'street')),
		...lengthInput(spot, ['lot', 'left'], 'House to the left boundary', left, told(yard, 'left')),
		...lengthInput(spot, ['lot', 'right'], 'House to the right boundary', right, told(yard, 'right'))
	];
}
/** Seats, the house number, lights that are there already, walls that stand free. */
export function spotInputs(yard: Yard, plan: Plan): YardInput[] {
	const { seating = [], numbers = [], lights = [], walls = [] } = yard.spots;
	const number = (value: number | 'unsure' | undefined) => (typeof value === 'number' ? value : null);
	const path = (kind: string, id: string, ...rest: string[]) => ['spots', kind, id, ...rest];
	return [
		...seating
			.filter(({ light }) => light && light !== 'none')
			.flatMap(({ id, name, across }) => {
				const spot = spotOf(yard, plan, calledThe(name, 'seat'), id);
				return [
					...lengthInput(spot, path('seating', id, 'across'), 'Across', seatingSchema.shape.across, number(across)),
					...pointInputs(spot, path('seating', id, 'at'), point)
				];
			}),
		...numbers
			.filter(({ light }) => light)
			.flatMap(({ id, name = '', kind = 'number', width }) => {
				const spot = spotOf(yard, plan, calledThe(name, kind === 'sign' ? 'sign' : 'house number'), id);
				return [
					...lengthInput(spot, path('numbers', id, 'width'), 'Width', houseNumberSchema.shape.width, number(width)),
					...pointInputs(spot, path('numbers', id, 'at'), point)
				];
			}),
		...lights.flatMap(({ id, name, height, reach }) => {
			const spot = spotOf(yard, plan, calledThe(name, 'light'), id);
			const { shape } = existingLightSchema;
			return [
				...lengthInput(spot, path('lights', id, 'height'), 'Height', shape.height, number(height)),
				...lengthInput(spot, path('lights', id, 'reach'), 'How far one sees by it', shape.reach, number(reach))
			];
		}),
		...walls
			.filter(({ light }) => light && light !== 'none')
			.flatMap(({ id, name, height }) => {
				const spot = spotOf(yard, plan, calledThe(name, 'wall'), id);
				return lengthInput(spot, path('walls', id, 'height'), 'Height', freeWallSchema.shape.height, number(height));
			})
	];
}
