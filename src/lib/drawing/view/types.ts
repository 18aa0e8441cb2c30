/** How a drawing is looked at and pointed at. Metres in the yard's frame, px on the screen. */
import type { Snippet } from 'svelte';
import type { Plan } from '../../domain/plan';
import type { Box, Point } from '../../domain/shared/geometry';
import type { DrawnThing } from '../things/types';

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
/** What a tap or a press on the board means. `look`: only looks; `choose`: takes a thing in hand; `point`: sets a point; `measure`: between two. */
export type Tool = 'look' | 'choose' | 'point' | 'measure';
/** Handle of the thing in hand that is dragged; null: the whole of it, told by where its first handle comes to. */
export type Grab = number | null;
/**
 * What overlays are drawn with: handed to the board's snippets. While the drawing is moved all of it is moved as one, overlays too; this
 * changes when it is drawn anew.
 */
export interface BoardView {
	viewport: Viewport;
	/** Metres to a pixel. */
	px: number;
	/** px from the upper left corner of the board. */
	toScreen: (at: Point) => Point;
}
export interface SnapSettings {
	on: boolean;
	/** px; 12 when absent. */
	reach?: number;
}
/**
 * What `Board.svelte` takes. All but `plan` may be left away. With `bind:this` a board also offers `tapAt(point)`: the tap of its tool at a place in
 * metres (Enter at a cursor set by keys), `zoom(factor)` and `showWhole()`.
 */
export interface BoardProps {
	plan: Plan;
	title?: string;
	/** What can be taken in hand; without any, the plan's fixtures (`fixture/…`) can. */
	things?: readonly DrawnThing[];
	/** Key of the thing in hand: it gets a line round it, its measures, and its handles where `tool` is `choose`. */
	inHand?: string | null;
	/** Which measures of it: its size when absent, its place when it has none. */
	what?: 'size' | 'place';
	/** Drawn with a line round it where nothing is in hand: kind and id as in `drawPlan`. */
	highlight?: { kind: string; id: string; what?: 'size' | 'place' } | null;
	tool?: Tool;
	/** Points set so far of a line in hand; the board draws on from the last to the pointer, or to `cursor`. */
	ghost?: Ghost | null;
	/** Where the keys have put the point: shown as the pointer's is while no pointer points. */
	cursor?: Snapped | null;
	snap?: SnapSettings;
	/** Null: the whole yard, also when the yard grows. */
	viewport?: Viewport | null;
	/** Root zones of all trees. */
	roots?: boolean;
	/** The back of a deep house is left off the whole yard, as beside a question. */
	trimmed?: boolean;
	/** Distance between the dots on the ground, for a caption. */
	gridText?: string;
	/** Shows along, out and what it is drawn to in the corner, for the eye alone; say it to the ear by `onhover` or `onpoint`. */
	spoken?: boolean;
	/** A tap on a thing, or beside all of them (null); with `choose` only. */
	onchoose?: (key: string | null) => void;
	/** A tap with `point`. */
	onpoint?: (at: Snapped) => void;
	/** A double tap with `point`, in place of the second tap: the line is done. */
	ondone?: () => void;
	/** Where a tap would set a point now; null when the pointer has left. */
	onhover?: (at: Snapped | null) => void;
	/** Dragged: `at` is where the handle comes to; with null for a handle, where the first handle comes to, the rest along with it. `cancel`: nothing is to change. */
	ondrag?: (key: string, handle: Grab, at: Snapped, phase: 'move' | 'end' | 'cancel') => void;
	/** What was measured, in words; null when it was cleared. */
	onmeasure?: (words: string | null) => void;
	/** Takes a key before the board does; true when it used it. */
	onkey?: (event: KeyboardEvent) => boolean;
	/** Below all layers of the drawing, metres: a picture of the property. */
	under?: Snippet;
	/** In the frame of the yard (an SVG over the drawing, metres). It takes no pointers: the board says what was tapped. */
	children?: Snippet<[BoardView]>;
	/** Over the drawing in px (HTML). It takes no pointers but where a child sets `pointer-events: auto`. */
	over?: Snippet<[BoardView]>;
}
export type { Box, Point };
