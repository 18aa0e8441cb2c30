import type { Box, Point } from '../shared/geometry';
import { boxOf, padded } from '../shared/geometry';
import { take } from '../yard';
import type { House } from './house';
import { measure, type Survey } from './survey';
import type { Site, Strip } from './types';

export interface Lot {
	street: number;
	leftBoundary: number;
	rightBoundary: number;
}
/** Where the street and the side boundaries lie. */
export function makeLot(survey: Survey, house: House, strips: readonly Strip[]): Lot {
	const { lot } = survey.yard;
	const about = { kind: 'lot', id: 'lot' };
	// A walk or drive starts at the street, so its first point tells where the street is.
	const starts = strips.map((strip) => strip.centre[0]!.y);
	const guess = Math.max(
		house.parts.length > 0 ? Math.max(...house.parts.map((part) => part.out)) + 1 : 1,
		...(starts.length > 0 ? starts : [9])
	);
	const street = take(survey.ledger, lot.street, {
		path: 'lot.street',
		about,
		value: guess,
		says: `The street is taken to be ${measure(survey, guess)} from the house front.`,
		needed: 'How far the street is from the house front.'
	});
	const edges = strips.flatMap((strip) => strip.polygon.map((p) => p.x));
	const side = (which: 'left' | 'right'): number => {
		const beyond = which === 'left' ? -Math.min(0, ...edges) : Math.max(0, ...edges.map((x) => x - house.width));
		const value = Math.max(5, beyond + 1);
		return take(survey.ledger, lot[which], {
			path: `lot.${which}`,
			about,
			value,
			says: `The ${which} boundary is taken to be ${measure(survey, value)} from the house.`,
			needed: null
		});
	};
	return { street, leftBoundary: -side('left'), rightBoundary: house.width + side('right') };
}
/** Margin round what is drawn, metres; boundaries farther off than `far` beyond everything else are not drawn for their own sake. */
const margin = 1;
const far = 8;

/** The box round everything worth showing. */
export function boundsOf(site: Omit<Site, 'bounds'>, spots: readonly Point[]): Box {
	const round = (p: Point, r: number): Point[] => [
		{ x: p.x - r, y: p.y - r },
		{ x: p.x + r, y: p.y + r }
	];
	const box = boxOf([
		{ x: 0, y: 0 },
		...site.house,
		...site.strips.flatMap((strip) => strip.polygon),
		...site.areas.flatMap((area) => area.polygon),
		...site.walls.flatMap((wall) => [wall.from, wall.to]),
		...site.trees.flatMap((tree) => round(tree.at, tree.spread / 2)),
		...site.existing.map((light) => light.at),
		...site.houseNumber.map((number) => number.at),
		...(site.receptacle ? [site.receptacle.at] : []),
		...spots,
		{ x: 0, y: site.street }
	]);
	return padded(
		{
			...box,
			minX: Math.min(box.minX, Math.max(site.leftBoundary, box.minX - far)),
			maxX: Math.max(box.maxX, Math.min(site.rightBoundary, box.maxX + far))
		},
		margin
	);
}
