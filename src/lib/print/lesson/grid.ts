/** Squared paper true to scale, to draw a yard on. Millimetres of paper. */
import { metresPerFoot, type UnitSystem } from '../../domain/shared/units';
import { scales, type Paper, type Scale } from '../scale';
import { head, foot, leafOf } from './leaves';

/** Bars and their words under the grid, and the words above it. */
const below = 38;
const labels = 7;

export interface Grid {
	scale: Scale;
	/** Side of a small square, and how many of them from one heavy line to the next. */
	step: number;
	every: number;
	columns: number;
	rows: number;
	/** What a small square is, and what one from heavy line to heavy line: `1 ft`. */
	small: string;
	large: string;
	/** Where a heavy line is named, in steps, and its name. */
	names: (count: number) => { at: number; text: string }[];
}
/** Scales that squared paper is offered in, and metres of a square and of a heavy one. */
const offered: Readonly<Record<UnitSystem, readonly { ratio: number; small: number; every: number; name: number }[]>> =
	{
		metres: [
			{ ratio: 50, small: 0.25, every: 4, name: 1 },
			{ ratio: 100, small: 0.5, every: 2, name: 1 }
		],
		feet: [
			{ ratio: 48, small: metresPerFoot, every: 5, name: 5 },
			{ ratio: 96, small: metresPerFoot, every: 10, name: 10 }
		]
	};
export const gridScales = (units: UnitSystem): Scale[] =>
	offered[units].map(({ ratio }) => scales[units].find((scale) => scale.ratio === ratio)!);

/** As many whole heavy squares as the page has room for; null where the scale is none of those offered. */
export function gridOf(units: UnitSystem, ratio: number, paper: Paper): Grid | null {
	const one = offered[units].find((each) => each.ratio === ratio);
	const scale = gridScales(units).find((each) => each.ratio === ratio);
	if (!one || !scale) return null;
	const step = (one.small * 1000) / ratio;
	const { width, height } = leafOf(paper);
	const fitting = (room: number) => one.every * Math.floor(room / (step * one.every));
	const unit = units === 'feet' ? 'ft' : 'm';
	return {
		scale,
		step,
		every: one.every,
		columns: fitting(width - labels),
		rows: fitting(height - head.later - foot - below - labels),
		small: units === 'feet' ? '1 ft' : `${one.small} m`,
		large: `${one.name} ${unit}`,
		names: (count) =>
			Array.from({ length: count / one.every + 1 }, (_, n) => ({ at: n * one.every, text: String(n * one.name) }))
	};
}
/** Where the squares begin from the left and from above: room for the names of the lines. */
export const origin = labels;
