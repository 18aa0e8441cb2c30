/** What the teacher has in hand: the exercise, and what each group drew, as text. In memory only. */
import {
	exerciseOf,
	layoutOf,
	markLayout,
	readLines,
	tidyCode,
	writeLight,
	writeSupply,
	type Exercise,
	type ExerciseId,
	type LightKind,
	type Marked,
	type ReadLine
} from '$lib/domain/lesson/exercise';
import type { UnitSystem } from '$lib/domain/shared/units';
import type { Paper } from '$lib/print';

/** As many as fit side by side on a projector. */
export const mostGroups = 8;
export const groupName = (index: number): string => String.fromCharCode(65 + index);
export type View = 'task' | 'enter' | 'results';
/** What a tap on the drawing puts there. */
export type Tapped = LightKind | 'transformer';

export class Desk {
	id = $state.raw<ExerciseId>('walk');
	code = $state.raw('');
	units = $state.raw<UnitSystem>('feet');
	paper = $state.raw<Paper>('letter');
	view = $state.raw<View>('enter');
	/** One text a group. */
	texts = $state.raw<readonly string[]>(['']);
	current = $state.raw(0);
	isOwnShown = $state.raw(false);

	readonly exercise: Exercise = $derived(exerciseOf(this.id, this.code, this.units));
	readonly text: string = $derived(this.texts[this.current] ?? '');
	readonly lines: ReadLine[] = $derived(readLines(this.text, this.units));
	/** Marks by exercise and text: going from group to group asks nothing twice. */
	readonly #marks = new WeakMap<Exercise, Map<string, Marked>>();

	mark(exercise: Exercise, text: string): Marked {
		const known = this.#marks.get(exercise) ?? new Map<string, Marked>();
		this.#marks.set(exercise, known);
		const found = known.get(text) ?? markLayout(exercise, layoutOf(readLines(text, exercise.units)));
		known.set(text, found);
		return found;
	}
	write(text: string): void {
		this.texts = this.texts.with(this.current, text);
	}
	/** Puts a text in the place of one line, or takes the line away. */
	writeLine(index: number, text: string | null): void {
		const lines = this.lines.map((line) => line.text);
		this.write((text === null ? lines.toSpliced(index, 1) : lines.with(index, text)).join('\n'));
	}
	add(text: string): void {
		const before = this.text.replace(/\s+$/, '');
		this.write(before === '' ? text : `${before}\n${text}`);
	}
	/** Metres. Returns what was written. */
	tap(what: Tapped, along: number, out: number): string {
		const told = this.lines.findLastIndex((line) => line.kind === 'supply');
		const before = this.lines[told];
		if (what !== 'transformer') {
			const text = writeLight({ kind: what, along, out }, this.units);
			this.add(text);
			return text;
		}
		const { height, voltAmps } = before?.kind === 'supply' ? before.supply : { height: null, voltAmps: null };
		const text = writeSupply({ along, out, height, voltAmps }, this.units);
		if (told < 0) this.add(text);
		else this.writeLine(told, text);
		return text;
	}
	addGroup(): void {
		if (this.texts.length >= mostGroups) return;
		this.texts = [...this.texts, ''];
		this.current = this.texts.length - 1;
	}
	call(code: string): void {
		this.code = tidyCode(code);
	}
	measureIn(units: UnitSystem): void {
		this.units = units;
		this.paper = units === 'metres' ? 'a4' : 'letter';
	}
}
