/** How a drawing is looked at and pointed at. Metres in the yard's frame, px on the screen. */
import type { Box, Point } from '../../domain/shared/geometry';

/** What part of a drawing is shown. */
export interface Viewport {
	/** Middle of what is shown, metres. */
	centre: Point;
	/** Pixels to a metre. */
	scale: number;
	/** Of the place it is shown in, px. */
	width: number;
	height: number;
}
/** What a point was drawn to. */
export interface SnapTo {
	kind: 'corner' | 'edge' | 'line' | 'square' | 'step';
	/** `the edge of Front walk`, `in line with T2`, `square to the last stretch`, `every 6 in`. */
	words: string;
	/** A line to show it by, metres. */
	guide?: readonly [Point, Point];
}
export interface Snapped {
	/** Metres, to a tenth of a millimetre. */
	at: Point;
	to: readonly SnapTo[];
}
/** What a point may be drawn to, besides the plan's own edges. */
export interface SnapWish {
	/** px within which a point is drawn. */
	reach: number;
	/** Points already set of the line in hand: right angles are square to its last stretch. */
	before: readonly Point[];
	/** The thing in hand is not drawn to itself. */
	except: string | null;
	/** Off: only the step. */
	on: boolean;
}
/** What is under the pointer, or set: shown over the drawing while it is being placed. */
export interface Ghost {
	/** Points set so far, metres; the last may follow the pointer. */
	line: readonly Point[];
	closed: boolean;
	/** Metres; 0: a bare line. */
	reach: number;
}
export type { Box, Point };
