/** The drawing as a place to work: the tool, what is in hand, the line being drawn, and what was said last. */
import type { Point } from '$lib/domain/shared/geometry';
import { thingsOf } from '$lib/drawing/things';
import type { DrawnThing } from '$lib/drawing/things/types';
import { draggedGhost } from '$lib/drawing/view/marks';
import { snapped, snapWords } from '$lib/drawing/view/snap';
import { snapSources } from '$lib/drawing/view/snap-sources';
import type { Ghost, Snapped } from '$lib/drawing/view/types';
import { session } from '$lib/state';
import { whereWords } from '../by-hand/where';
import { anchorOf } from './anchor';
import { applied } from './edits';
import type { Addable, Edit, Edited } from './edits-types';
import { kindOf, nextWords, type KindWords } from './kinds';
import { whatNext, type Tool } from './next';
import { doneWords, pointWords, wayWords } from './said';
import { onStep, stepsOf, tidy } from './step';
import { drawnGhost, isMoved, moveEdit, nextThing, taken, usualGrip, type Grip, type Moving } from './work';

const samePoint = (a: Point | undefined, b: Point): boolean =>
	a !== undefined && tidy(a.x) === tidy(b.x) && tidy(a.y) === tidy(b.y);

export class BoardWork {
	tool = $state<Tool>('choose');
	snapping = $state(true);
	/** Where the thing in hand was chosen: its fields are there. */
	chosenFrom = $state<'drawing' | 'list'>('drawing');
	/** What is being added; null while the picker waits. */
	#adding = $state<Addable | null>(null);
	#points = $state.raw<readonly Point[]>([]);
	#inHand = $state<string | null>(null);
	#moving = $state.raw<Moving | null>(null);
	/** The place for the thing in hand is set by the next tap, not by a drag or by keys. */
	awaitsPlace = $state(false);
	/** Of the keys, while a point is wanted. */
	cursor = $state.raw<Snapped | null>(null);
	/** Under the pointer. */
	hover = $state.raw<Snapped | null>(null);
	said = $state('');
	/** The thing that the keys have come to, among those on the drawing. */
	here = $state<string | null>(null);
	/** Why the last change was not made. */
	refused = $state<string | null>(null);
	#last: { things: DrawnThing[] } = { things: [] };

	readonly inHand: string | null = $derived(this.#inHand);
	readonly moving: Moving | null = $derived(this.#moving);
	readonly points: readonly Point[] = $derived(this.#points);
	/** Every thing on the drawing. Of the yard that the plan is of: between a change and its plan they stay as they were. */
	readonly things: readonly DrawnThing[] = $derived.by(() => {
		const plan = session.plan;
		if (plan && session.isPlanCurrent) this.#last = { things: thingsOf(plan, session.yard) };
		return this.#last.things;
	});
	/** Those that are on the drawing rather than only in the list. */
	readonly met: readonly DrawnThing[] = $derived(this.things.filter((thing) => anchorOf(thing) !== null));
	readonly thing: DrawnThing | null = $derived(this.things.find(({ key }) => key === this.#inHand) ?? null);
	readonly kind: KindWords | null = $derived(this.#adding && kindOf(this.#adding));
	/** Nothing of the house is told: the sheet shows where its front would begin. */
	readonly isFrontUnknown: boolean = $derived((session.plan?.site.house.length ?? 0) === 0);
	/** Points set so far of what is being drawn. */
	readonly ghost: Ghost | null = $derived(this.kind && drawnGhost(this.kind, this.#points));
	/** What is held, as it would lie. */
	readonly heldGhost: Ghost | null = $derived.by(() => {
		if (!this.#moving || !this.thing) return null;
		const to = (this.awaitsPlace ? (this.cursor ?? this.hover)?.at : null) ?? this.#moving.to;
		const { grip } = this.#moving;
		return isMoved({ ...this.#moving, to }) ? draggedGhost(this.thing, grip === 'whole' ? null : grip, to) : null;
	});
	readonly #sources = $derived(session.plan && snapSources(session.plan));
	/** What to do now, in a sentence. */
	readonly next: string = $derived(whatNext(this));

	/** A click on the board sets a point rather than choosing a thing. */
	get wantsPoint(): boolean {
		return this.kind !== null || this.awaitsPlace || this.tool === 'measure';
	}
	/** Enough points are set. */
	get canFinish(): boolean {
		return this.kind !== null && this.#points.length >= this.kind.least;
	}

	useTool(tool: Tool): void {
		this.#drop();
		this.tool = tool;
		this.said = '';
		if (tool !== 'choose') this.#inHand = null;
	}
	/** Starts adding one of a kind. */
	add(kind: Addable): void {
		this.useTool('add');
		this.#adding = kind;
		this.said = nextWords(kindOf(kind), 0);
	}
	turnSnapping(): void {
		this.snapping = !this.snapping;
		this.said = this.snapping
			? 'Points are drawn to edges, corners and lines.'
			: 'Points are drawn to nothing but round lengths.';
	}
	choose(key: string | null, from: 'drawing' | 'list' = 'drawing'): void {
		this.#drop();
		this.chosenFrom = from;
		this.refused = null;
		this.#inHand = key;
		if (key !== null) this.here = key;
		this.said = this.thing?.said ?? '';
	}
	#drop(): void {
		this.#adding = null;
		this.#points = [];
		this.#moving = null;
		this.awaitsPlace = false;
		this.cursor = null;
		this.hover = null;
		this.refused = null;
	}

	/** Makes a change, says what was done, and keeps the thing in hand. */
	apply(edit: Edit, way: string | null = null): Edited {
		if (!session.plan) return { ok: false, problem: 'The plan is still being worked out. Try again in a moment.' };
		const edited = applied(session.yard, session.plan, edit);
		if (edited.ok && !session.change(edited.yard, edited.label)) return this.#refuse('The yard could not hold that.');
		if (!edited.ok) return this.#refuse(edited.problem);
		this.refused = null;
		this.#moving = null;
		this.awaitsPlace = false;
		this.cursor = null;
		this.#inHand = edited.key;
		if (edited.key !== null) this.here = edited.key;
		this.said = doneWords(edited.label, way);
		return edited;
	}
	#refuse(problem: string): Edited {
		this.refused = problem;
		return { ok: false, problem };
	}
	undo(): void {
		const label = session.undoLabel;
		if (!session.canUndo) return;
		this.#drop();
		session.undo();
		this.said = `Taken back: ${label}.`;
	}
	redo(): void {
		const label = session.redoLabel;
		if (!session.canRedo) return;
		this.#drop();
		session.redo();
		this.said = `Done again: ${label}.`;
	}
	remove(key: string): Edited {
		return this.apply({ do: 'remove', key });
	}

	/** Takes hold of the thing in hand, for the keys; `byTap`: for the next tap. */
	take(key: string, grip?: Grip, byTap = false): boolean {
		const thing = this.things.find((one) => one.key === key);
		if (!thing) return false;
		this.choose(key);
		const held = grip ?? usualGrip(thing);
		const moving = held === null ? null : taken(thing, held);
		if (!moving) {
			this.said = `${thing.name} is not moved on the drawing.`;
			return false;
		}
		this.#moving = moving;
		this.cursor = byTap ? null : { at: moving.to, to: [] };
		this.awaitsPlace = byTap;
		this.said = this.next;
		return true;
	}
	/** What is held goes to a point, and stays in the hand. */
	carry(to: Point): void {
		if (this.#moving) this.#moving = { ...this.#moving, to };
	}
	/** Sets down what is held. */
	setDown(): void {
		const moving = this.#moving;
		if (!moving) return;
		if (!isMoved(moving)) return this.putBack();
		const edited = this.apply(moveEdit(moving), wayWords(moving.from, moving.to, session.units));
		// What was refused goes back where it was, and the reason stays.
		if (!edited.ok) this.#release();
	}
	#release(): void {
		this.#moving = null;
		this.awaitsPlace = false;
		this.cursor = null;
	}
	putBack(): void {
		if (!this.#moving) return;
		this.#release();
		this.said = this.thing ? `${this.thing.name} is where it was.` : '';
	}
	/** All of a thing by so much, at once. */
	moveBy(thing: DrawnThing, by: Point): void {
		const grip = usualGrip(thing);
		const held = grip === null ? null : taken(thing, grip);
		if (!held) return;
		const to = { x: tidy(held.from.x + by.x), y: tidy(held.from.y + by.y) };
		this.apply(moveEdit({ ...held, to }), wayWords(held.from, to, session.units));
	}
	/** A handle, or all of the thing where `handle` is null, dragged by the pointer to where it is let go. */
	drag(key: string, handle: number | null, { at }: Snapped, phase: 'move' | 'end' | 'cancel'): void {
		const thing = this.things.find((one) => one.key === key);
		if (!thing || phase === 'move') return;
		const grip = handle ?? usualGrip(thing);
		const held = grip === null ? null : taken(thing, grip);
		if (phase === 'cancel' || !held || !isMoved({ ...held, to: at })) {
			this.said = `${thing.name} is where it was.`;
			return;
		}
		this.apply(moveEdit({ ...held, to: at }), wayWords(held.from, at, session.units));
	}

	/** A point pointed to, by whatever means. */
	point(at: Point): void {
		if (this.awaitsPlace && this.#moving) {
			this.carry(at);
			return this.setDown();
		}
		if (!this.kind) return;
		// A second press on the same place is the sign that the line ends there.
		if (samePoint(this.#points.at(-1), at)) return this.finish();
		this.#points = [...this.#points, { x: tidy(at.x), y: tidy(at.y) }];
		this.said = `${whereWords(at, session.units)}. ${nextWords(this.kind, this.#points.length)}`;
		if (this.#points.length >= this.kind.most) this.finish();
	}
	/** Makes a thing of the points that are set. */
	finish(): void {
		const kind = this.kind;
		if (!kind) return;
		if (!this.canFinish) {
			this.said = nextWords(kind, this.#points.length);
			return;
		}
		const edited = this.apply({ do: 'add', kind: kind.kind, points: this.#points });
		this.#points = edited.ok ? [] : this.#points.slice(0, -1);
		if (!edited.ok) return;
		this.#adding = null;
		this.tool = 'choose';
	}
	/** Takes the last point back. */
	takePointBack(): void {
		this.#points = this.#points.slice(0, -1);
		if (this.kind) this.said = `Point taken back. ${nextWords(this.kind, this.#points.length)}`;
	}
	/** One step back: the thing goes back, the last point goes, then the tool, then what is in hand. False: nothing was left. */
	stepBack(): boolean {
		if (this.#moving) this.putBack();
		else if (this.#points.length > 0) this.takePointBack();
		else if (this.tool !== 'choose') this.useTool('choose');
		else if (this.#inHand !== null) this.choose(null);
		else return false;
		return true;
	}

	/** The keys move the cross-hair, or what is held, by `by` times `step`; the first press brings the cross-hair to `start`. */
	stepCursor(by: Point, step: number, start: Point): void {
		const { usual } = stepsOf(session.units);
		const from = this.cursor?.at ?? this.#moving?.to;
		const to = from
			? { x: tidy(from.x + by.x * step), y: tidy(from.y + by.y * step) }
			: { x: onStep(start.x, usual), y: onStep(start.y, usual) };
		const near = this.#near(to, step);
		const isThere = near !== null && samePoint(near.at, to);
		this.#setCursor({ at: to, to: isThere ? near.to : [] });
		this.said = pointWords(this.cursor!, session.units);
		if (near && !isThere) this.said += `. Near: ${snapWords(near)}; S takes it there`;
	}
	#setCursor(cursor: Snapped): void {
		this.cursor = cursor;
		this.carry(cursor.at);
	}
	/** What a point would be drawn to within a step of the keys; null: nothing but round lengths. */
	#near(at: Point, step: number): Snapped | null {
		if (!this.snapping || !this.#sources) return null;
		const except = this.#moving?.key ?? null;
		const found = snapped(at, this.#sources, { reach: 1, before: this.#points, except, on: true }, 1 / step);
		return found.to.some(({ kind }) => kind !== 'step') ? found : null;
	}
	/** The cross-hair goes to what lies within a step of it. */
	drawCursor(): void {
		const near = this.cursor && this.#near(this.cursor.at, stepsOf(session.units).usual);
		if (!near) return;
		this.#setCursor(near);
		this.said = pointWords(near, session.units);
	}
	/** The thing in the direction of an arrow key, from the one named. */
	nextFrom(key: string | null, way: Point): DrawnThing | null {
		return nextThing(this.things, this.things.find((one) => one.key === key) ?? null, way);
	}
}
