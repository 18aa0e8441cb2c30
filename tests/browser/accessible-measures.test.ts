/** The measures themselves, against a page whose faults are known. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { fitFaults, sideways } from './accessible-fit';
import { useBrowser } from './browser';
import { faultsOf, walk } from './focus';
import { targetsOn, tooSmall } from './targets';

const { browser } = useBrowser();

async function withPage(html: string, look: (page: Page) => Promise<void>, reducedMotion?: 'reduce'): Promise<void> {
	const context = await browser().newContext({
		viewport: { width: 600, height: 400 },
		...(reducedMotion && { reducedMotion })
	});
	const page = await context.newPage();
	await page.setContent(
		`<!doctype html><html lang="en"><body style="margin:20px;background:#fff">${html}</body></html>`
	);
	await look(page);
	await context.close();
}
const box = (width: number, height: number, more = '') =>
	`style="all:unset;display:inline-block;width:${width}px;height:${height}px;${more}"`;

describe('targets, by WCAG 2.2, 2.5.8', () => {
	test('24 px square is enough, 20 px is not where the circles of 24 px meet', async () => {
		await withPage(
			`<div style="font-size:0"><button ${box(24, 24)} aria-label="enough"></button></div>
			<div style="font-size:0;margin-top:60px"><button ${box(20, 20)} aria-label="left"></button><button ${box(20, 20)} aria-label="right"></button></div>`,
			async (page) => {
				expect(tooSmall(await targetsOn(page))).toEqual([
					'button “left” is 20.0 × 20.0 px, close to another',
					'button “right” is 20.0 × 20.0 px, close to another'
				]);
			}
		);
	});
	test('Spacing: two of 20 px may stand 4 px apart, whose middles are then 24 px apart, and not 3 px', async () => {
		for (const [gap, faults] of [
			[4, 0],
			[3, 2]
		] as const)
			await withPage(
				`<div style="font-size:0"><button ${box(20, 20)}></button><button ${box(20, 20, `margin-left:${gap}px`)}></button></div>`,
				async (page) => {
					const targets = await targetsOn(page);
					expect(tooSmall(targets), `${gap} px`).toHaveLength(faults);
					expect(targets.map(({ exception }) => exception)).toEqual(faults ? [null, null] : ['Spacing', 'Spacing']);
				}
			);
	});
	test('Spacing: the circle of a small one may not reach into a large one', async () => {
		for (const [gap, faults] of [
			[7, 0],
			[5, 1]
		] as const)
			await withPage(
				`<div style="font-size:0"><button ${box(10, 24)}></button><button ${box(60, 24, `margin-left:${gap}px`)}></button></div>`,
				async (page) => expect(tooSmall(await targetsOn(page)), `${gap} px`).toHaveLength(faults)
			);
	});
	test('Inline: a link in a sentence may be small, links that stand alone one under another may not', async () => {
		const line = 'style="display:block;font:12px/14px sans-serif"';
		await withPage(
			`<p ${line}>Go <a href="#a">this way</a> and <a href="#b">that</a>.</p>
			<div style="font:12px/14px sans-serif;margin-top:60px"><div><a href="#c">one</a></div><div><a href="#d">two</a></div></div>`,
			async (page) => {
				const targets = await targetsOn(page);
				expect(targets.map(({ exception }) => exception)).toEqual(['Inline', 'Inline', null, null]);
			}
		);
	});
	test('a choice counts with its label; a main action, a tool and a field are to be 44 px high', async () => {
		await withPage(
			`<label style="display:block;height:44px"><input type="checkbox">Wide enough</label>
			<button class="main" ${box(90, 43)}>Main</button>
			<div role="toolbar" aria-label="Tools"><button ${box(90, 44)}>Tool</button><button ${box(90, 40)}>Low</button></div>
			<input aria-label="Field" style="height:30px;padding:0;border:0"><label for="t">Text</label><input id="t" style="height:44px;box-sizing:border-box">`,
			async (page) => {
				const small = tooSmall(await targetsOn(page));
				expect(small.map((words) => /“(.*?)”/.exec(words)?.[1])).toEqual(['Main', 'Low', 'Field']);
			}
		);
	});
	test('a mark of a drawing is a target as a button is', async () => {
		await withPage(
			`<svg width="200" height="100" viewBox="0 0 100 50"><g role="button" tabindex="0" aria-label="close by"><rect x="0" y="0" width="8" height="8"/></g>
			<g role="img" tabindex="0" aria-label="next to it"><rect x="9" y="0" width="20" height="20"/></g></svg>`,
			async (page) =>
				expect(tooSmall(await targetsOn(page))).toEqual(['g “close by” is 16.0 × 16.0 px, close to another'])
		);
	});
});

describe('the focus, by Tab', () => {
	const plain = '<style>a{display:block;margin:4px}a:focus{outline:none}</style>';
	test.each([
		['a ring of 3 px is seen', '.two:focus{outline:3px solid #2a4a8f}', 0],
		['no ring is not', '', 1],
		['a ring of 1 px is not', '.two:focus{outline:1px solid #2a4a8f}', 1],
		['a ring paler than 3:1 is not', '.two:focus{outline:3px solid #aaa}', 1],
		['a border that was there before is not', '.two{border:3px solid #000}', 1],
		['a border that comes is', '.two{border:3px solid #fff}.two:focus{border-color:#000}', 0]
	])('%s', async (_, style, faults) => {
		await withPage(
			`${plain}<style>.one:focus,.three:focus{outline:3px solid #000}${style}</style><a class="one" href="#1">one</a><a class="two" href="#2">two</a><a class="three" href="#3">three</a>`,
			async (page) => {
				const found = faultsOf(await walk(page));
				expect(found).toEqual(faults ? ['the focus cannot be seen on a “two”'] : []);
			}
		);
	});
	test('what lies under a bar is covered, an order of its own is told, what Tab does not reach is missed, and a trap is no way round', async () => {
		const ring = '<style>:focus{outline:3px solid #000}</style>';
		await withPage(
			`${ring}<div style="position:fixed;inset:0 0 auto 0;height:90px;background:#eee"></div><a href="#1">under</a><p style="margin-top:120px"><a href="#2">clear</a></p>`,
			async (page) => expect(faultsOf(await walk(page))).toEqual(['a “under” has the focus and is wholly covered'])
		);
		await withPage(`${ring}<a href="#1">one</a><a href="#2" tabindex="1">first</a>`, async (page) => {
			expect(faultsOf(await walk(page))).toContain('a “first” has a place of its own in the order');
		});
		await withPage(
			`${ring}<a href="#1">one</a><a href="#2">two</a><a href="#3">three</a><script>document.links[1].onkeydown=(e)=>{if(e.key==='Tab'){e.preventDefault();document.links[0].focus()}}</script>`,
			async (page) => expect(faultsOf(await walk(page))).toContain('a “three” is not reached by Tab')
		);
		await withPage(
			`${ring}<a href="#1">one</a><a href="#2">two</a><script>document.links[1].onkeydown=(e)=>e.preventDefault()</script>`,
			async (page) => expect((await walk(page, 20)).isRound).toBe(false)
		);
	});
});

describe('narrow, large, in forced colours, without motion', () => {
	test('what sticks out is told, what scrolls by itself is not', async () => {
		await withPage('<div style="overflow-x:auto"><div style="width:900px">wide</div></div>', async (page) => {
			expect(await sideways(page)).toEqual([]);
		});
		await withPage('<div style="width:500px">half</div>', async (page) => {
			expect(await sideways(page)).toEqual([]);
			expect(await fitFaults(page)).toEqual(['text at 100 %: 520 px in 320 px: div “half”']);
		});
		await withPage('<div style="width:40rem">large</div>', async (page) => {
			expect((await fitFaults(page)).map((words) => words.slice(0, 13))).toEqual([
				'text at 100 %',
				'text at 200 %',
				'text at 200 %'
			]);
		});
	});
	test('a button told by its ground alone, and a state told by colour alone', async () => {
		await withPage(
			`<style>button{border:0;background:#ccc}.lined{border:1px solid}[aria-pressed=true]{background:#333;color:#fff}.bold[aria-pressed=true]{font-weight:700}</style>
			<button>bare</button><button class="lined">lined</button><button class="lined" aria-pressed="true">alike</button><button class="lined bold" aria-pressed="true">bold</button>`,
			async (page) => {
				expect(await fitFaults(page)).toEqual([
					'button “bare” has nothing but its words in forced colours',
					'button “alike” looks the same with aria-pressed and without in forced colours'
				]);
			}
		);
	});
	test('motion goes on only where it was not asked to stop', async () => {
		const turning = (rule: string) =>
			`<style>@keyframes turn{to{transform:rotate(1turn)}}p{animation:turn 2s infinite}${rule}</style><p>turns</p>`;
		await withPage(
			turning(''),
			async (page) => expect(await fitFaults(page)).toEqual(['p moves although motion is reduced']),
			'reduce'
		);
		await withPage(
			turning('@media (prefers-reduced-motion:reduce){p{animation:none}}'),
			async (page) => expect(await fitFaults(page)).toEqual([]),
			'reduce'
		);
	});
});
