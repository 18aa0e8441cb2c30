/** What keys do to a board that has the focus. */
import { panned, zoomed } from './viewport';
import type { Box, Point, Viewport } from './types';

/** How much one press brings closer or wider. */
export const zoomStep = 1.5;
/** px by which one press of an arrow moves. */
const far = 64;
const ways: Readonly<Record<string, Point>> = {
	ArrowLeft: { x: far, y: 0 },
	ArrowRight: { x: -far, y: 0 },
	ArrowUp: { x: 0, y: far },
	ArrowDown: { x: 0, y: -far }
};
/** The middle of the board, px. */
export const middle = ({ width, height }: Viewport): Point => ({ x: width / 2, y: height / 2 });

/** The viewport after a key; null where the key means nothing here. `mayPan`: there is more than is shown, and nothing in hand takes the arrows. */
export function viewAfterKey(key: string, view: Viewport, whole: Box, mayPan: boolean): Viewport | 'whole' | null {
	if (key === '+' || key === '=') return zoomed(view, middle(view), zoomStep, whole);
	if (key === '-' || key === '_' || key === '−') return zoomed(view, middle(view), 1 / zoomStep, whole);
	if (key === '0') return 'whole';
	const way = mayPan ? ways[key] : undefined;
	return way ? panned(view, way.x, way.y) : null;
}
/** By how much a turn of the wheel or a pinch on a trackpad brings closer: the same for either way back. */
export function wheelFactor({
	deltaY,
	deltaMode,
	ctrlKey
}: Pick<WheelEvent, 'deltaY' | 'deltaMode' | 'ctrlKey'>): number {
	// Lines and pages, as some wheels count, in px.
	const px = deltaY * ([1, 16, 320][deltaMode] ?? 1);
	// A pinch on a trackpad comes as small turns with Ctrl.
	return Math.exp(-Math.max(-120, Math.min(120, px)) * (ctrlKey && Math.abs(px) < 50 ? 0.01 : 0.0025));
}
