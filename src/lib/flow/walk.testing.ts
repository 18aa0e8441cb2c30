/** A person who answers whatever is asked, for tests that walk the questions as data. */
import type { Units, Yard } from '../domain/yard';
import { newItemId, readAnswer, writeAnswer } from './answers';
import { fieldStatus, fieldsOf } from './status';
import type { Field, Step } from './types';

/** A number from 0 up to, not including, `below`. */
export type Pick = (below: number) => number;
/** Mulberry32: small, seeded, good enough to choose answers by. */
export function picker(seed: number): Pick {
	let state = seed >>> 0;
	return (below) => {
		state = (state + 0x6d2b79f5) >>> 0;
		let t = Math.imul(state ^ (state >>> 15), state | 1);
		t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
		return Math.floor((((t ^ (t >>> 14)) >>> 0) / 4294967296) * below);
	};
}
const point = (pick: Pick) => ({ along: pick(30) - 5, out: pick(20) - 5 });
const times = <T>(count: number, make: (i: number) => T): T[] => Array.from({ length: count }, (_, i) => make(i));

/** Some answer to a field, as a page would hand it over. */
export function answerTo(field: Field, pick: Pick, before: unknown): unknown {
	if (field.unsure && pick(5) === 0) return 'unsure';
	switch (field.kind) {
		case 'length':
		case 'number':
			return field.min + ((field.max - field.min) * pick(1001)) / 1000;
		case 'count':
			return field.min + pick(field.max - field.min + 1);
		case 'choice':
			return field.options[pick(field.options.length)]?.value;
		case 'text':
			return ['oak', 'The big one', 'x', ''][pick(4)];
		case 'bearing':
			return pick(361);
		case 'point':
			return field.none && pick(3) === 0 ? 'none' : point(pick);
		case 'spot':
			return pick(2) ? 'suggest' : { at: point(pick), on: pick(2) ? 'wall' : 'post', height: pick(3) };
		case 'line':
			return times(field.least + pick(3), () => point(pick));
		case 'items':
		case 'rows': {
			const list = Array.isArray(before) ? [...before] : [];
			for (let left = field.kind === 'rows' && !field.none ? 1 + pick(2) : pick(4); left > 0; left--) {
				const own =
					field.kind === 'items'
						? { name: field.suggestions[pick(field.suggestions.length)] }
						: rowOf(field.columns, pick);
				list.push({ id: newItemId(list, field.prefix), ...own });
			}
			return list;
		}
		case 'place':
			return { name: 'Somewhere', latitude: pick(181) - 90, longitude: pick(361) - 180, timeZone: 'UTC' };
		case 'hours':
			return [{ kind: 'dusk-to-dawn' }, { kind: 'after-dusk', hours: 5 }, { kind: 'until', clock: '23:00' }][pick(3)];
		case 'price':
			return { perKwh: pick(100) / 100, currency: 'EUR' };
	}
}
const rowOf = (columns: readonly Field[], pick: Pick) =>
	Object.fromEntries(
		columns.flatMap((column) =>
			column.optional && pick(2) ? [] : [[column.path, answerTo(column, pick, undefined)] as const]
		)
	);

/** The yard after every field that is asked on a page, in order, has been answered. */
export function answerPage(yard: Yard, step: Step, pick: Pick): Yard {
	let now = yard;
	for (const field of step.question.fields) {
		// a field may come or go with the one before it
		if (!fieldsOf(now, step).includes(field)) continue;
		const { each } = step.question;
		const before = readAnswer(now, field.path, step.item, each);
		if (field.optional && pick(2)) continue;
		if (fieldStatus(now, field, step.item, each) === 'open' || pick(4) === 0 || field.kind === 'rows') {
			now = writeAnswer(now, field.path, step.item, each, answerTo(field, pick, before));
		}
	}
	return now;
}
export const inUnits = (yard: Yard, units: Units): Yard => writeAnswer(yard, 'place.units', null, undefined, units);
