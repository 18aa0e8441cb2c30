/** The house of a frame as the wizard's answers: one lit stretch of front without openings, and the rest with door and windows. */
import type { Yard, YardOpening } from '../yard';
import { sizes, type Frame } from './frame';

/** Between door and window, and from a window to the corner. */
const besideDoor = 1.2;
const fromCorner = 0.4;

/** Door, and a window on either side of it where the front has room. */
export function openingsOf({ door, wall, width }: Pick<Frame, 'door' | 'wall' | 'width'>): YardOpening[] {
	const left = door - sizes.door / 2;
	const right = door + sizes.door / 2;
	const window = (id: string, along: number): YardOpening[] =>
		along >= wall + fromCorner && along + sizes.window <= width - fromCorner
			? [{ id, kind: 'window', wall: 'front', along, width: sizes.window }]
			: [];
	return [
		...window('left-window', left - besideDoor - sizes.window),
		{ id: 'front-door', kind: 'door', wall: 'front', along: left, width: sizes.door },
		...window('right-window', right + besideDoor)
	];
}

/** `depth`: metres from front to back. */
export function houseOf(frame: Frame, depth: number): Yard['house'] {
	const { wall, width } = frame;
	const lit = { id: 'lit-front', width: wall, out: 0, light: 'soft' as const };
	const rest = { id: 'door-front', width: width - wall, out: 0, light: 'none' as const };
	return {
		sections: wall > 0 ? [lit, rest] : [rest],
		depth,
		eaves: sizes.eaves,
		finish: 'medium',
		texture: 'smooth',
		openings: openingsOf(frame),
		porches: [],
		left: { light: 'none' },
		right: { light: 'none' }
	};
}
