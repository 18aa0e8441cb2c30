/** The walk and the year as they are drawn: all of it in the picture, every figure beside it, what changed marked. */
import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import type { LessonPicture, StripPicture as Strip, YearPicture as Year } from '$lib/domain/lesson';
import { sensorLesson } from '$lib/domain/lesson/sensor/lesson';
import { spacingLesson } from '$lib/domain/lesson/spacing/lesson';
import StripPicture from './StripPicture.svelte';
import YearPicture from './YearPicture.svelte';

const drawn = (picture: LessonPicture): string =>
	picture.kind === 'strip'
		? render(StripPicture, { props: { picture } }).body
		: picture.kind === 'year'
			? render(YearPicture, { props: { picture } }).body
			: '';
const textsOf = (svg: string): string[] =>
	[...svg.matchAll(/<text[^>]*>(.*?)<\/text>/gs)].map(([, text = '']) => text.replace(/<!--.*?-->/g, '').trim());
const pointsOf = (svg: string): [number, number][] =>
	[...svg.matchAll(/points="([^"]*)"/g)]
		.flatMap(([, points = '']) => points.trim().split(/\s+/))
		.map((pair) => pair.split(',').map(Number) as [number, number]);
const pictures = (['metres', 'feet'] as const).flatMap((units) =>
	[spacingLesson, sensorLesson].flatMap((lesson) => [
		lesson.scene(units).picture,
		lesson.reveal(units).picture,
		...lesson.lever(units).values.map((value) => lesson.at(value, units).picture)
	])
);
test.each(pictures)('$alt', (picture) => {
	const svg = drawn(picture);
	expect(svg).toContain('role="img"');
	expect(svg).not.toMatch(/NaN|undefined|Infinity/);
	const points = pointsOf(svg);
	expect(points.length).toBeGreaterThanOrEqual(12);
	expect(points.filter(([x, y]) => x < 0 || x > 600 || y < 0 || y > 420)).toEqual([]);
	const wanted =
		picture.kind === 'strip'
			? picture.marked.map(({ text }) => text)
			: picture.kind === 'year'
				? picture.lines.map(({ label }) => label)
				: [''];
	expect(textsOf(svg)).toEqual(expect.arrayContaining(wanted));
});
describe('by hand', () => {
	const strip: Strip = {
		kind: 'strip',
		alt: 'A walk of two lamps, for this test alone.',
		length: 10,
		width: 1,
		lamps: [
			{ at: { x: 0, y: -1 }, label: '1' },
			{ at: { x: 10, y: 1 }, label: '2' }
		],
		lux: [
			{ x: 0, lux: 20 },
			{ x: 5, lux: 0 },
			{ x: 10, lux: 10 }
		],
		marked: [
			{ x: null, lux: 10, text: 'average 10.0 lx' },
			{ x: 5, lux: 0, text: 'darkest 0.0 lx', changed: true }
		]
	};
	test('twice the light stands twice as high', () => {
		const [from, middle, to] = pointsOf(drawn(strip)).slice(-3);
		expect(middle![1] - from![1]).toBeCloseTo(2 * (middle![1] - to![1]), 1);
		expect(middle![0] - from![0]).toBeCloseTo(to![0] - middle![0], 1);
	});
	test('only what changed is underlined', () => {
		const changed = [...drawn(strip).matchAll(/<text[^>]*class="[^"]*changed[^"]*"[^>]*>(.*?)<\/text>/gs)];
		expect(changed).toHaveLength(1);
		expect(changed[0]![1]).toContain('darkest 0.0 lx');
	});
	test('hours of a year in their unit, from nought; clocks by the clock', () => {
		const year: Year = {
			kind: 'year',
			alt: 'Hours of each month, for this test alone.',
			unit: 'h',
			lines: [{ label: 'hours', values: [300, 250, 240, 200, 180, 160, 170, 200, 230, 270, 290, 310] }]
		};
		expect(textsOf(drawn(year))).toEqual(expect.arrayContaining(['0', '100', '400', 'h', 'J', 'D']));
		const clock = { ...year, unit: 'clock' };
		// 160 to 310 minutes after noon: from before three to after five.
		expect(textsOf(drawn(clock))).toEqual(expect.arrayContaining(['14:00', '18:00']));
	});
});
