/** Two lengths make a point. */
import { metresPerInch } from '$lib/domain/shared/units';
import type { Units, YardPoint } from '$lib/domain/yard';

const reach = 500;

export const isPoint = (value: unknown): value is YardPoint =>
	typeof value === 'object' &&
	value !== null &&
	'along' in value &&
	'out' in value &&
	typeof value.along === 'number' &&
	typeof value.out === 'number';

/** Nobody points closer than a hand's breadth: to the nearest 5 cm or 3 in, which also reads well. */
const step: Record<Units, number> = { metres: 0.05, feet: 3 * metresPerInch };
const tidy = (metres: number, units: Units) =>
	Math.min(reach, Math.max(-reach, Math.round(metres / step[units]) * step[units]));
export const fromDrawing = ({ along, out }: YardPoint, units: Units): YardPoint => ({
	along: tidy(along, units),
	out: tidy(out, units)
});
/** A point that the drawing has drawn to an edge or to a round length: as it is, within what a yard reaches. */
export const fromBoard = ({ along, out }: YardPoint): YardPoint => {
	const within = (metres: number) => Math.min(reach, Math.max(-reach, metres));
	return { along: within(along), out: within(out) };
};
