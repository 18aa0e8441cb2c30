/** Which lines are shown: those that a search finds, by kind. */
import type { LineKind, ShelfLine } from '$lib/domain/kits/types';
import { lineKinds } from './contents-words';

/** Lines of a kind drawn at a time: a shelf may have ten thousand. */
export const atATime = 50;
export interface KindList {
	kind: LineKind;
	lines: ShelfLine[];
}

const plainly = (text: string) => text.normalize('NFKC').toLowerCase();
/** Lines that have every word of the search in their code, name or place, in any order. An empty search finds all. */
export function linesFound(lines: readonly ShelfLine[], search: string): ShelfLine[] {
	const words = plainly(search).split(/\s+/).filter(Boolean);
	if (words.length === 0) return [...lines];
	return lines.filter(({ code, name, place }) => {
		const text = plainly(`${code}\n${name}\n${place ?? ''}`);
		return words.every((word) => text.includes(word));
	});
}
/** By kind, in the order of the page; within a kind in the order of the shelf. Kinds without a line are there too. */
export const listsOf = (lines: readonly ShelfLine[]): KindList[] =>
	lineKinds.map((kind) => ({ kind, lines: lines.filter((line) => line.kind === kind) }));
/** `1 line`, `52 lines`. */
export const lineCount = (count: number): string => `${count.toLocaleString('en')} ${count === 1 ? 'line' : 'lines'}`;
/** A file's name from the shelf's: letters and digits of any script, dashes between. */
export function csvName(name: string, part = ''): string {
	const plain = plainly(name)
		.replace(/[^\p{L}\p{N}]+/gu, '-')
		.replace(/^-+|-+$/g, '')
		.slice(0, 40);
	return `${plain || 'shelf'}${part}.csv`;
}
