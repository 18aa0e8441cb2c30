/** What is pointed at, dragged and measured on a board at the moment. */
import { formatLength } from '../../domain/shared/units';
import type { Units } from '../../domain/yard';
import type { DimensionMark } from '../marks';
import type { DrawnThing } from '../things/types';
import { draggedTo, grabbed, pointAt, tapReach, type Grabbed, type Snapping } from './hand';
import { thingAt } from './hit';
import { draggedGhost, measureDimensions, placeDimensions, stretchDimension } from './marks';
import { endAt, endOn, measureOf, type End, type Measure } from './measure';
import { snapWords } from './snap';
import type { BoardProps, Ghost, Point, Snapped } from './types';

/** ms for which a thing let go is shown where it was put, until the plan follows. */
const follows = 800;
/** px from the last point within which the second of two quick taps ends the line. */
const tapEnd = 8;

type Told = Pick<BoardProps, 'onchoose' | 'onpoint' | 'ondone' | 'onhover' | 'ondrag' | 'onmeasure' | 'tool' | 'ghost'>;
/** What the board knows; read anew each time. */
export interface Around extends Told {
	units: Units;
	things: readonly DrawnThing[];
	inHand: DrawnThing | null;
	snapping: Snapping;
	cursor: Snapped | null;
}

export class Pointing {
	#around: () => Around;
	/** Where a tap would set a point now. */
	hover = $state.raw<Snapped | null>(null);
	dragged = $state.raw<{ held: Grabbed; at: Snapped; over: boolean } | null>(null);
	/** First end of a measure, or both. */
	ends = $state.raw<readonly End[]>([]);

	constructor(around: () => Around) {
		this.#around = around;
	}
	measure: Measure | null = $derived.by(() => {
		const { units, snapping } = this.#around();
		const [from, to] = this.ends;
		const last = to ?? (from && this.hover ? this.#endAt(this.hover, snapping.pxPerMetre) : null);
		return from && last ? measureOf(from, last, units) : null;
	});
	/** Both ends are set. */
	isMeasured = $derived(this.ends.length === 2);
	/** The point that is shown: dragged, pointed at, or where the keys have put it. */
	point: Snapped | null = $derived.by(() => {
		if (this.dragged) return this.dragged.over ? null : this.dragged.at;
		return this.hover ?? this.#around().cursor;
	});
	words = $derived.by(() => {
		const { units } = this.#around();
		if (!this.point) return '';
		const { x, y } = this.point.at;
		const place = `${formatLength(x, units)} along, ${formatLength(y, units)} out`;
		return [place, snapWords(this.point)].filter(Boolean).join('; ');
	});
	ghost: Ghost | null = $derived.by(() => {
		const { ghost, tool } = this.#around();
		if (this.dragged) return draggedGhost(this.dragged.held.thing, this.dragged.held.handle, this.dragged.at.at);
		if (tool !== 'point' || !ghost) return null;
		return this.point ? { ...ghost, line: [...ghost.line, this.point.at] } : ghost;
	});
	dimensions(px: number): DimensionMark[] {
		const { units, tool, ghost } = this.#around();
		if (tool === 'measure') return this.measure ? measureDimensions(this.measure, units, px) : [];
		if (!this.point) return [];
		const last = tool === 'point' ? ghost?.line.at(-1) : undefined;
		return last ? stretchDimension(last, this.point.at, units, px) : placeDimensions(this.point.at, units, px);
	}

	/** A pointer points at `p`, metres; null: at nothing. */
	aim(p: Point | null): void {
		const { tool, ghost, snapping, onhover } = this.#around();
		if (tool !== 'point' && tool !== 'measure') p = null;
		if (p === null && this.hover === null) return;
		this.hover = p === null ? null : pointAt(p, tool === 'point' ? (ghost?.line ?? []) : [], snapping);
		onhover?.(this.hover);
	}
	/** A tap at `p`, metres, the first or the second of two. */
	tap(p: Point, count: 1 | 2): void {
		const { tool, ghost, things, snapping, onchoose, onpoint, ondone } = this.#around();
		if (tool === 'choose') onchoose?.(thingAt(things, p, tapReach / snapping.pxPerMetre)?.key ?? null);
		else if (tool === 'measure') this.#addEnd(this.#endAt(pointAt(p, [], snapping), snapping.pxPerMetre, p));
		else if (tool === 'point') {
			const [at, last] = [pointAt(p, ghost?.line ?? [], snapping), ghost?.line.at(-1)];
			// Two quick taps near each other may be two corners of something small: on one point they say that the line ends there.
			const isEnd =
				count === 2 && last && Math.hypot(at.at.x - last.x, at.at.y - last.y) * snapping.pxPerMetre < tapEnd;
			if (isEnd && ondone) ondone();
			else onpoint?.(at);
		}
	}
	/** The keys have put a point exactly there, metres: it is drawn to nothing more. */
	set(at: Point): void {
		const { tool, snapping, onpoint } = this.#around();
		if (tool === 'measure') this.#addEnd(this.#endAt({ at, to: [] }, snapping.pxPerMetre));
		else if (tool === 'point') onpoint?.({ at, to: [] });
		else this.tap(at, 1);
	}
	#endAt(to: Snapped, pxPerMetre: number, p: Point = to.at): End {
		const thing = thingAt(this.#around().things, p, tapReach / 2 / pxPerMetre);
		// A corner or an edge that the point was drawn to is meant, rather than the area it belongs to.
		const isPlace = to.to.some(({ kind }) => kind === 'corner' || kind === 'edge');
		if (thing && (thing.at || !isPlace)) return endOn(thing, to.at);
		const words = to.to.find(({ kind }) => kind === 'corner' || kind === 'edge')?.words;
		return endAt(to.at, words ?? (this.ends.length === 1 ? 'the second point' : 'the first point'));
	}
	#addEnd(end: End): void {
		this.ends = this.ends.length === 1 ? [...this.ends, end] : [end];
		this.#around().onmeasure?.(this.isMeasured ? (this.measure?.words ?? null) : null);
	}
	/** Nothing is measured any more. */
	clear(): void {
		if (this.ends.length === 0) return;
		this.ends = [];
		this.#around().onmeasure?.(null);
	}

	grab(p: Point): Grabbed | null {
		const { tool, inHand, ondrag, snapping } = this.#around();
		return tool === 'choose' && ondrag && inHand ? grabbed(inHand, p, snapping.pxPerMetre) : null;
	}
	drag(held: Grabbed, p: Point, phase: 'move' | 'end' | 'cancel' = 'move'): void {
		const { snapping, ondrag } = this.#around();
		const at = draggedTo(held, p, snapping);
		this.dragged = phase === 'cancel' ? null : { held, at, over: phase === 'end' };
		ondrag?.(held.thing.key, held.handle, at, phase);
	}
	/** Put back to where it was. */
	giveUp(held: Grabbed): void {
		const { x, y } = held.thing.handles[0]?.at ?? { x: 0, y: 0 };
		this.dragged = null;
		this.#around().ondrag?.(held.thing.key, held.handle, { at: { x, y }, to: [] }, 'cancel');
	}
	/** What was let go is shown where it was put until the plan has it; then no more. */
	settled(): void {
		if (this.dragged?.over) this.dragged = null;
	}
	settleLater(later: (run: () => void, ms: number) => () => void): void {
		later(() => this.settled(), follows);
	}
}
