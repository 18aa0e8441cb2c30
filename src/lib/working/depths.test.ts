import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import { evaluate } from '../domain/shared/evaluate';
import { fixed } from '../domain/shared/show-working';
import type { Working } from '../domain/shared/working';
import { makePlan } from '../domain/plan';
import { examples } from '../domain/yard';
import { energyLesson } from '../domain/lesson/energy/lesson';
import DepthBlocks from './DepthBlocks.svelte';
import Depths from './Depths.svelte';
import { blocksOf, depths, heightOf, pagesOf, roomLines, type Block } from './depths';

const textOf = (html: string): string =>
	html
		.replace(/<!--.*?-->/g, '')
		.replace(/<[^>]*>/g, ' ')
		.replaceAll('&amp;', '&')
		.replaceAll('&lt;', '<')
		.replace(/\s+/g, ' ')
		.trim();
/** Every sum of a page as a reader sees it. */
const sumsOn = (html: string): { line: string; sign: string; result: string }[] =>
	[
		...html.matchAll(
			/class="line[^"]*">(.*?)<\/span>.*?class="sign[^"]*">(.*?)<\/span>.*?class="result[^"]*">(.*?)<\/strong>/gs
		)
	].map(([, line = '', sign = '', result = '']) => ({
		line: textOf(line),
		sign: textOf(sign),
		result: textOf(result)
	}));
const isWorking = (value: object): value is Working => 'expression' in value && 'inputs' in value;
const workingsIn = (value: unknown): Working[] =>
	typeof value !== 'object' || value === null
		? []
		: isWorking(value)
			? [value]
			: Object.values(value).flatMap(workingsIn);

const lists = [
	...examples.map(({ id, yard }) => [id, workingsIn(makePlan(yard))] as const),
	['energy', energyLesson.reveal('metres').workings] as const
];
const whyNot = Array.from({ length: 14 }, (_, i) => ({
	rule: i % 2 ? 'water.clear' : 'tree.roots',
	words: `The pond is ${i} m away and more, and it comes in nearer than 3.05 m; so nothing of it moves this light here.`
}));

describe.each(lists)('%s', (_, workings) => {
	test.each(['line', 'steps', 'all'] as const)(
		'%s: what is on the page, redone, gives what is on the page',
		(depth) => {
			const pages = pagesOf(blocksOf(workings, depth, 'feet', []));
			const sums = pages.flatMap((blocks) => sumsOn(render(DepthBlocks, { props: { blocks } }).body));
			expect(sums.length).toBeGreaterThanOrEqual(depth === 'line' ? workings.length : 1);
			const wrong = sums.filter(({ line, sign, result }) => {
				const decimals = /^−?\d+\.(\d+)/.exec(result)?.[1]?.length ?? 0;
				return sign !== '=' || !result.startsWith(fixed(evaluate(line), decimals));
			});
			expect(wrong).toEqual([]);
		}
	);
	test('no page is taller than a room can take, but for a single rule that is', () => {
		for (const depth of depths)
			for (const blocks of pagesOf(blocksOf(workings, depth, 'metres', whyNot)))
				if (blocks.length > 1)
					expect(blocks.reduce((sum, block) => sum + heightOf(block), 0)).toBeLessThanOrEqual(roomLines);
	});
	test('pages leave nothing out', () => {
		const words = (blocks: readonly Block[]) =>
			blocks.flatMap(({ rule, sum, inputs, source }) => [rule, sum?.line, ...inputs, source]).filter(Boolean);
		const blocks = blocksOf(workings, 'all', 'metres', []);
		expect(words(pagesOf(blocks).flat())).toEqual(words(blocks));
	});
});
describe('the depths', () => {
	const workings = energyLesson.reveal('metres').workings;
	const body = (large: boolean) => textOf(render(Depths, { props: { workings, whyNot, units: 'metres', large } }).body);

	test('begin with the line, and offer the others', () => {
		expect(body(false)).toMatch(/The line The steps Everything/);
		expect(body(false)).toContain(blocksOf(workings, 'line', 'metres', [])[0]!.sum!.line);
	});
	test('on a page the other rules follow, on a projector they are a depth', () => {
		expect(body(false)).toContain('The pond is 13 m away');
		expect(body(true)).toContain('Why not');
		expect(body(true)).not.toContain('The pond is 13 m away');
	});
	test('a step that two figures share is told once', () => {
		const labels = blocksOf([workings[0]!, workings[0]!], 'steps', 'metres', []);
		expect(labels).toEqual(blocksOf([workings[0]!], 'steps', 'metres', []));
		// Inputs before what is made of them.
		expect(labels.at(-1)!.label).toBe(workings[0]!.label);
	});
});
