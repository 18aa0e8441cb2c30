/** The cable layer of the drawing while one run is in hand: that run stands out, the others step back. */
import type { Run } from '$lib/domain/cable';
import { nearestOnLine, type Line } from '$lib/domain/shared/geometry';
import type { RunLink, YardPoint } from '$lib/domain/yard';
import { dashOf, pathsOf } from '$lib/drawing/cables';
import type { PathMark } from '$lib/drawing/marks';
import { openPath } from '$lib/drawing/path';
import { asPoint } from './bends';
import { segmentOf } from './links';

interface InHand {
	run: Run;
	links: readonly RunLink[];
	/** The cable in hand and its bends, the dragged one where the hand has it. */
	cable: string | null;
	bends: readonly YardPoint[];
	isDragged: boolean;
}
/** A bend is on the way where the cable passes as near as this, metres: half of what is rounded to in the plan. */
const onWay = 0.02;

/** Whether a cable lies as it was bent; where something stands in its way the plan has laid another. */
export const liesAsTold = ({ via = [] }: RunLink, path: Line): boolean =>
	via.every((bend) => (nearestOnLine(asPoint(bend), path)?.distance ?? Infinity) <= onWay);

function ownMarks(index: number, { run, links, cable, bends, isDragged }: InHand): PathMark[] {
	return links.flatMap((link): PathMark[] => {
		const path = segmentOf(run, link.to)?.path;
		if (!path || path.length < 2) return [];
		const isHeld = link.to === cable;
		const told = [path[0]!, ...(isHeld ? bends : (link.via ?? [])).map(asPoint), path.at(-1)!];
		const isMoving = isHeld && isDragged;
		const laid: PathMark = {
			kind: 'path',
			key: `cable-${link.to}`,
			d: openPath(isMoving ? told : path),
			ink: 'cable',
			weight: isHeld ? 3.6 : 2.2,
			fill: 'none',
			dash: dashOf(index)
		};
		if (isMoving || liesAsTold(link, path)) return [laid];
		const wished: PathMark = {
			...laid,
			key: `told-${link.to}`,
			d: openPath(told),
			ink: 'look',
			weight: 1.4,
			dash: [2, 4]
		};
		return [laid, wished];
	});
}
/** `px`: metres to a pixel. */
export const cableMarks = (runs: readonly Run[], px: number, hand: InHand): PathMark[] => [
	...runs.flatMap((run, index): PathMark[] =>
		run.id === hand.run.id
			? []
			: [
					{
						kind: 'path',
						key: `run-${run.id}`,
						d: pathsOf(run, index, runs.length, px).map(openPath).join(''),
						ink: 'soft',
						weight: 0.9,
						fill: 'none',
						dash: dashOf(index)
					}
				]
	),
	...ownMarks(
		runs.findIndex(({ id }) => id === hand.run.id),
		hand
	)
];
