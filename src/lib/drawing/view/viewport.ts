/** What part of the yard a board shows. Pure: px on the screen, metres in the yard, y down in both. */
import type { Box, Point, Viewport } from './types';

/** As close as one may look, px to a metre: 10 mm are then 4 px. */
export const closest = 400;

export const widthOf = (box: Box): number => box.maxX - box.minX;
export const heightOf = (box: Box): number => box.maxY - box.minY;
const middleOf = (box: Box): Point => ({ x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 });

/** The scale at which a box just fits into a place of `width` by `height` px. */
const fitScale = (box: Box, width: number, height: number): number =>
	Math.min(closest, width / Math.max(1e-6, widthOf(box)), height / Math.max(1e-6, heightOf(box)));

/** The whole of a box, as large as it fits into `width` by `height` px, in the middle. */
export const fitted = (box: Box, width: number, height: number): Viewport => ({
	centre: middleOf(box),
	scale: fitScale(box, width, height),
	width,
	height
});

/** What a viewport shows, metres. */
export function shownBox({ centre, scale, width, height }: Viewport): Box {
	const [x, y] = [width / 2 / scale, height / 2 / scale];
	return { minX: centre.x - x, minY: centre.y - y, maxX: centre.x + x, maxY: centre.y + y };
}
/** From px in the place, from its upper left corner, to metres in the yard. */
export const toYard = ({ centre, scale, width, height }: Viewport, at: Point): Point => ({
	x: centre.x + (at.x - width / 2) / scale,
	y: centre.y + (at.y - height / 2) / scale
});
/** From metres in the yard to px in the place. The inverse of `toYard`. */
export const toScreen = ({ centre, scale, width, height }: Viewport, at: Point): Point => ({
	x: (at.x - centre.x) * scale + width / 2,
	y: (at.y - centre.y) * scale + height / 2
});

/** The content moved by so many px, as if pulled by a finger. */
export const panned = (view: Viewport, dx: number, dy: number): Viewport => ({
	...view,
	centre: { x: view.centre.x - dx / view.scale, y: view.centre.y - dy / view.scale }
});

/** Larger by a factor, while what lies under `at` (px) stays there. The scale is kept within `whole` in sight and the closest look. */
export function zoomed(view: Viewport, at: Point, factor: number, whole: Box): Viewport {
	const least = fitScale(whole, view.width, view.height);
	const scale = Math.min(closest, Math.max(least, view.scale * factor));
	const fixed = toYard(view, at);
	return {
		...view,
		scale,
		centre: { x: fixed.x - (at.x - view.width / 2) / scale, y: fixed.y - (at.y - view.height / 2) / scale }
	};
}

/** Closer than the whole of the box. */
export const isClose = (view: Viewport, whole: Box): boolean =>
	view.scale > fitScale(whole, view.width, view.height) * 1.001;

/** One axis of `held`. `half`: half of what is shown, `over`: how far it may look past the edge; metres. */
function heldAxis(centre: number, half: number, over: number, min: number, max: number): number {
	const least = min + half - over;
	const most = max - half + over;
	return least < most ? Math.min(most, Math.max(least, centre)) : (min + max) / 2;
}
/**
 * The viewport brought back to where the yard is in sight: never wider than the whole, and its middle in the yard. The closer it
 * looks, the further it may look past the edge (up to half of what is shown), so that things can be drawn outside of what there is.
 */
export function held(view: Viewport, whole: Box): Viewport {
	const least = fitScale(whole, view.width, view.height);
	const scale = Math.min(closest, Math.max(least, view.scale));
	const past = 1 - least / scale;
	const [x, y] = [view.width / 2 / scale, view.height / 2 / scale];
	return {
		...view,
		scale,
		centre: {
			x: heldAxis(view.centre.x, x, x * past, whole.minX, whole.maxX),
			y: heldAxis(view.centre.y, y, y * past, whole.minY, whole.maxY)
		}
	};
}

/** The place has another size: the same middle at the same scale. */
export const resized = (view: Viewport, width: number, height: number): Viewport => ({ ...view, width, height });

/** Moved, as little as need be, so that a point is in sight with `room` px round it. */
export function bringIn(view: Viewport, at: Point, room: number): Viewport {
	const on = toScreen(view, at);
	const axis = (value: number, size: number): number => {
		const edge = Math.min(room, size / 2);
		return value < edge ? edge - value : value > size - edge ? size - edge - value : 0;
	};
	const [dx, dy] = [axis(on.x, view.width), axis(on.y, view.height)];
	return dx === 0 && dy === 0 ? view : panned(view, dx, dy);
}

/** The CSS transform, about the upper left corner, that shows what was drawn for one viewport as another shows it; null where they are the same. */
export function transformFrom(drawn: Viewport, view: Viewport): string | null {
	const { x, y } = toScreen(view, toYard(drawn, { x: 0, y: 0 }));
	const times = view.scale / drawn.scale;
	const isSame = Math.abs(x) < 1e-3 && Math.abs(y) < 1e-3 && Math.abs(times - 1) < 1e-6;
	return isSame ? null : `translate(${x}px, ${y}px) scale(${times})`;
}
