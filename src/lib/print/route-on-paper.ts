/** A run's own drawing on its card: the largest usual scale at which it fits over its table, or takes its page where that is small. */
import type { Box } from '../domain/shared/geometry';
import type { UnitSystem } from '../domain/shared/units';
import { roomOn, scales, type Paper, type Scale } from './scale';

export interface RouteFit {
	scale: Scale;
	/** Millimetres. */
	width: number;
	height: number;
}
/**
 * The plan's scales and those between them: of the metric rule (1:125, 1:300, 1:400), and of the engineer's rule, so many feet
 * to the inch.
 */
const usual: Readonly<Record<UnitSystem, readonly Scale[]>> = {
	metres: [...scales.metres, ...[125, 300, 400].map((ratio) => ({ ratio, text: `1:${ratio}` }))],
	feet: [...scales.feet, ...[10, 20, 30].map((feet) => ({ ratio: feet * 12, text: `1 in = ${feet} ft` }))]
};
/** Millimetres of height for the drawing where the table follows on the same page. */
const over = 118;
/** Beyond this letters crowd: the page is given to the drawing if that makes it larger. */
const small: Readonly<Record<UnitSystem, number>> = { metres: 100, feet: 96 };

/** `box` in metres. Beyond the usual scales, whole hundreds. */
export function fitRoute(box: Box, paper: Paper, units: UnitSystem): RouteFit {
	const room = roomOn(paper, 'portrait');
	const [width, height] = [(box.maxX - box.minX) * 1000, (box.maxY - box.minY) * 1000];
	const fit = (tall: number): Scale => {
		const least = Math.max(width / room.width, height / tall);
		const ratio = Math.ceil(least / 100) * 100;
		const fitting = usual[units].filter((scale) => scale.ratio >= least).toSorted((a, b) => a.ratio - b.ratio);
		return fitting[0] ?? { ratio, text: `1:${ratio}` };
	};
	const [beside, page] = [fit(over), fit(room.height)];
	const scale = beside.ratio > small[units] ? page : beside;
	return { scale, width: width / scale.ratio, height: height / scale.ratio };
}
