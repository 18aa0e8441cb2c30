/** Whether an answer is there: "not asked", "does not apply", "not sure" and "answered" are different things. */
import type { Yard } from '../domain/yard';
import { readAnswer, type Each } from './answers';
import type { Field, Question, Step } from './types';

/** `empty`: optional and left empty, which is an answer too. */
export type FieldStatus = 'open' | 'answered' | 'unsure' | 'empty' | 'does-not-apply';

const isRow = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;

function statusOfRows(columns: readonly Field[], rows: readonly unknown[]): FieldStatus {
	const cells = rows.flatMap((row) =>
		columns.map((column) => statusOf(column, isRow(row) ? row[column.path] : undefined))
	);
	if (cells.includes('open')) return 'open';
	return cells.includes('unsure') ? 'unsure' : 'answered';
}
function statusOf(field: Field, value: unknown): FieldStatus {
	if (value === undefined) return field.optional ? 'empty' : 'open';
	if (value === 'unsure') return 'unsure';
	if (field.kind === 'rows' && Array.isArray(value)) return statusOfRows(field.columns, value);
	return 'answered';
}

/** Where one field of a page stands. */
export function fieldStatus(yard: Yard, field: Field, item: string | null = null, each?: Each): FieldStatus {
	if (field.when && !field.when(yard, item)) return 'does-not-apply';
	return statusOf(field, readAnswer(yard, field.path, item, each));
}

/** Where a page stands: open while any of its fields is. */
export function stepStatus(yard: Yard, question: Question, item: string | null): Step['status'] {
	const fields = question.fields.map((field) => fieldStatus(yard, field, item, question.each));
	if (fields.includes('open')) return 'open';
	return fields.includes('unsure') ? 'unsure' : 'answered';
}

/** The fields of a page that are asked now. */
export const fieldsOf = (yard: Yard, { question, item }: Pick<Step, 'question' | 'item'>): Field[] =>
	question.fields.filter((field) => field.when?.(yard, item) ?? true);
