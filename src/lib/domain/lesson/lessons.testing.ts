/** What every lesson keeps: it is read from the back of a room, and every figure of it is the engine's. */
import { expect } from 'vitest';
import { evaluate } from '../shared/evaluate';
import { fixed, showWorking } from '../shared/show-working';
import { sources } from '../shared/sources';
import type { Working } from '../shared/working';
import type { Lesson, Scene } from './types';

const known = new Set<string>(Object.values(sources).map(({ id }) => id));
const within = (working: Working): Working[] => [
	working,
	...working.inputs.flatMap(({ from }) => (from ? within(from) : []))
];
function faultsOfScene(scene: Scene, where: string): string[] {
	return [
		scene.words.length <= 3 ? '' : `${where}: ${scene.words.length} sentences`,
		...scene.words.map((words) => (words.length <= 130 ? '' : `${where}: ${words.length} characters: ${words}`)),
		scene.figures.length <= 4 ? '' : `${where}: ${scene.figures.length} figures`,
		scene.picture.alt.length > 20 ? '' : `${where}: the picture is not told`,
		/NaN|undefined|not known|Infinity/.test(
			JSON.stringify([scene.words, scene.figures, { ...scene.picture, plan: null }])
		)
			? `${where}: holds what is no figure`
			: ''
	];
}
function faultsOfWorking(working: Working): string[] {
	return within(working).flatMap((one) => {
		const shown = showWorking(one);
		const again = fixed(evaluate(shown.line), one.decimals);
		return [
			shown.holds && shown.result.startsWith(again) ? '' : `${one.label}: ${shown.line} is not ${shown.result}`,
			known.has(one.source) ? '' : `${one.label}: no source ${one.source}`
		];
	});
}
/** Sound at every place of its lever, in both systems of units. */
export function expectLesson(lesson: Lesson): void {
	for (const units of ['metres', 'feet'] as const) {
		const lever = lesson.lever(units);
		const reveal = lesson.reveal(units);
		const choices = lesson.choices(units);
		const moments = lever.values.map((value) => ({ value, moment: lesson.at(value, units) }));
		const faults = [
			...faultsOfScene(lesson.scene(units), 'scene'),
			...faultsOfScene(reveal, 'reveal'),
			...moments.flatMap(({ value, moment }) => faultsOfScene(moment, `lever at ${value}`)),
			...[reveal, ...moments.map(({ moment }) => moment)].flatMap(({ workings }) => workings.flatMap(faultsOfWorking)),
			choices.some(({ id }) => id === reveal.right) ? '' : `no choice ${reveal.right}`,
			choices.length >= 3 && choices.length <= 4 ? '' : `${choices.length} choices`,
			...choices.map(({ words }) => (words.length <= 60 ? '' : `too long: ${words}`)),
			new Set(choices.map(({ words }) => words)).size === choices.length ? '' : 'two choices are one',
			lever.values.includes(lever.start) && lever.values.length >= 3
				? ''
				: 'the lever does not stand at one of its places',
			reveal.figures.some(({ changed }) => changed) ? '' : 'nothing is marked as changed',
			reveal.workings.length > 0 ? '' : 'no working',
			lesson.question(units).length <= 130 ? '' : 'the question is too long'
		].filter(Boolean);
		expect(faults, `${lesson.id}, ${units}`).toEqual([]);
		// The lever moves something.
		expect(new Set(moments.map(({ moment }) => JSON.stringify(moment.figures))).size, lesson.id).toBeGreaterThan(1);
	}
	expect(
		lesson.notes.course.reduce((sum, { minutes }) => sum + minutes, 0),
		lesson.id
	).toBe(lesson.minutes);
	expect(lesson.notes.misconceptions.length, lesson.id).toBeGreaterThan(0);
	expect(lesson.notes.curriculum.length, lesson.id).toBeGreaterThan(0);
}
