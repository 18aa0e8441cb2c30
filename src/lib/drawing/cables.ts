/** Cable runs: each its own dash, so that they are told apart without colour. */
import type { Line, Point } from '../domain/shared/geometry';
import type { Run } from '../domain/cable';
import type { PathMark } from './marks';
import { openPath, shifted } from './path';

/** Dash and gap lengths, px. Told apart in grey: long, dash-dot, dotted, short, dash-dot-dot, long-short. */
const dashes: readonly (readonly number[])[] = [
	[9, 4],
	[10, 3, 2, 3],
	[2.2, 3],
	[5, 2.5],
	[10, 3, 2, 3, 2, 3],
	[14, 3, 5, 3],
	[16, 5],
	[6, 3, 2, 3, 2, 3, 2, 3]
];
export const dashOf = (index: number): readonly number[] => dashes[index % dashes.length]!;

/** Runs that share a trench are drawn side by side, this far apart, px. */
const apart = 2.6;
const aside = (index: number, count: number, px: number): number => (index - (count - 1) / 2) * apart * px;

export function pathsOf(run: Run, index: number, count: number, px: number): Line[] {
	const shift = aside(index, count, px);
	return run.segments
		.filter((segment) => segment.path.length >= 2)
		.map((segment) => segment.path.map((p: Point) => shifted(p, shift, shift)));
}

export const drawCables = (runs: readonly Run[], px: number): PathMark[] =>
	runs.map((run, index) => ({
		kind: 'path',
		key: `run-${run.id}`,
		d: pathsOf(run, index, runs.length, px).map(openPath).join(''),
		ink: 'cable',
		weight: 1.7,
		fill: 'none',
		dash: dashOf(index)
	}));
