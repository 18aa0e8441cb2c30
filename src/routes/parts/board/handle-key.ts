/** A key pressed on the board, carried out. */
import type { Point } from '$lib/domain/shared/geometry';
import type { Units } from '$lib/domain/yard';
import type { DrawnThing } from '$lib/drawing/things/types';
import type { BoardWork } from './board.svelte';
import { wishOf, type KeyWish } from './keys';

/** The thing that the arrows, Home or End lead to. */
function nextOf(work: BoardWork, wish: KeyWish): DrawnThing | null | undefined {
	if (wish.do === 'go') return work.nextFrom(work.here, wish.way);
	return wish.do === 'first' ? work.met[0] : work.met.at(-1);
}
/** What a key may need of the page. */
interface Around {
	work: BoardWork;
	units: Units;
	/** Where the cross-hair first shows, metres. */
	start: () => Point;
	/** The tap of the board's tool at a place, metres. */
	tap: (at: Point) => void;
	/** Brings the focus to where the keys have come. */
	focus: () => void;
}
function carryOut({ work, start, tap }: Around, wish: KeyWish): boolean {
	switch (wish.do) {
		case 'step':
			work.stepCursor(wish.way, wish.metres, start());
			return true;
		case 'set':
			// Where the points were set by the pointer there is no cross-hair: Enter is then the sign that they are all.
			if (!work.cursor) return work.canFinish && (work.finish(), true);
			if (work.tool === 'measure') tap(work.cursor.at);
			else work.point(work.cursor.at);
			return true;
		case 'setDown':
			work.setDown();
			return true;
		case 'snap':
			work.drawCursor();
			return true;
		case 'back':
			return work.stepBack();
		case 'take':
			return work.here !== null && (work.take(work.here), true);
		case 'remove':
			return work.here !== null && (work.remove(work.here), true);
		default:
			work.here = nextOf(work, wish)?.key ?? work.here;
			return true;
	}
}
/** True when the key was the page's. */
export function handleKey(event: KeyboardEvent, around: Around): boolean {
	const { work, units, focus } = around;
	const wish = wishOf(event, { adding: work.wantsPoint, moving: work.moving !== null && !work.awaitsPlace }, units);
	if (!wish || !carryOut(around, wish)) return false;
	focus();
	return true;
}
