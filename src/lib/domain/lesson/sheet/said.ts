/** What of a request could not be had, in whole sentences for the teacher. */
import type { Level } from '../types';

/** At most so many problems are made for one sheet. */
export const mostProblems = 60;

export const levelWords: Readonly<Record<Level, string>> = {
	solved: 'solved',
	one: 'one step left out',
	several: 'several steps left out',
	all: 'the question alone'
};
/** A number of problems that can be made, and what there is to say about it. */
export function countOf(asked: number): { count: number; said: string[] } {
	if (!(asked >= 1)) return { count: 1, said: ['A sheet has at least one problem, so it has one.'] };
	if (asked > mostProblems)
		return {
			count: mostProblems,
			said: [
				`${Number.isFinite(asked) ? Math.floor(asked) : 'Endlessly many'} problems were asked for; a sheet has at most ${mostProblems}.`
			]
		};
	return { count: Math.floor(asked), said: [] };
}
const listed = (names: readonly string[]): string =>
	names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** Lessons whose problems come at another level than was asked. */
export function otherLevels(list: readonly { title: string; level: Level }[], asked: Level): string[] {
	const levels = [...new Set(list.map(({ level }) => level))].filter((level) => level !== asked);
	return levels.map((level) => {
		const titles = list.filter((one) => one.level === level).map(({ title }) => `“${title}”`);
		return `${listed(titles)} ${titles.length === 1 ? 'has' : 'have'} no problems with the level “${levelWords[asked]}”: they come with “${levelWords[level]}”.`;
	});
}
export function tooFew(found: number, asked: number): string[] {
	if (found >= asked) return [];
	return [
		`These lessons have ${found} different ${found === 1 ? 'problem' : 'problems'} for each variant of this code, not ${asked}. Pick more lessons, or give out a second code.`
	];
}
export function leftOut(titles: readonly string[], count: number): string[] {
	if (titles.length === 0) return [];
	const of = listed(titles.map((title) => `“${title}”`));
	return [`No problem comes from ${of}: more lessons are picked than the sheet has problems, ${count}.`];
}
export const unknownLessons = (titles: readonly string[]): string[] =>
	titles.length === 0 ? [] : [`There are no problems yet of ${listed(titles.map((title) => `“${title}”`))}.`];
