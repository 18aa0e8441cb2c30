import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { expectFocusKept, kept, onScreen, openStart, said, savedCopy, thing, tool, type Feet } from './board';
import { openPage, useBrowser } from './browser';

const { browser } = useBrowser();

/** One way of working: each builds the same yard with nothing but its own means. */
interface Way {
	width: number;
	touch: boolean;
	start?: (page: Page) => Promise<void>;
	/** Kind by its word on the button, points, and the key that the new thing gets. */
	add: (page: Page, word: string, points: readonly Feet[], key: string) => Promise<void>;
	/** A field of the thing in hand, by the end of its id. */
	type: (page: Page, field: string, text: string) => Promise<void>;
	pick: (page: Page, field: string, label: string) => Promise<void>;
	/** The thing in hand, from one place to another. */
	move: (page: Page, key: string, from: Feet, to: Feet) => Promise<void>;
	remove: (page: Page, key: string, at: Feet) => Promise<void>;
}
const field = (page: Page, end: string) => page.locator(`.beside [id$="${end}"]`).locator('visible=true').first();

async function build(page: Page, way: Way): Promise<string> {
	await openStart(page);
	await way.start?.(page);
	const add = async (word: string, key: string, ...points: Feet[]) => {
		await way.add(page, word, points, key);
		await thing(page, key).waitFor({ state: 'attached' });
		await expectFocusKept(page);
	};
	await add('Tree', 'tree/tree-1', [6, 24]);
	await way.type(page, '-spread', '20 ft');
	await way.move(page, 'tree/tree-1', [6, 24], [8, 22]);
	await expectFocusKept(page);
	await add('Tree', 'tree/tree-2', [44, 28]);
	await way.type(page, '-spread', '16 ft');
	await way.type(page, '-name', 'Old maple');
	await add('Walk', 'walk/walk-1', [18, 40], [18, 16], [14, 2]);
	await add('Drive', 'drive/drive-1', [40, 40], [40, 4]);
	await add('Bed', 'bed/bed-1', [1, 1], [12, 1], [12, 4], [1, 4]);
	await add('Water', 'water/water-1', [26, 26]);
	await way.pick(page, '-sort', 'Pond');
	await add('Seating', 'seating/seat-1', [30, 14]);
	await add('Existing light', 'light/light-1', [50, 38]);
	await add('Garden wall', 'wall/wall-1', [-4, 10], [-4, 30]);
	await add('Receptacle', 'receptacle/receptacle', [28, 0]);
	await add('Path light', 'fixture/added/light-1', [21, 22]);
	await add('House number', 'number/number-1', [10, 0]);
	await way.remove(page, 'number/number-1', [10, 0]);
	await thing(page, 'number/number-1').waitFor({ state: 'detached' });
	await expectFocusKept(page);
	return savedCopy(page);
}

const picker = (page: Page, word: string) =>
	page.getByRole('list', { name: 'Kinds of thing to add' }).getByRole('button', { name: word, exact: true });
const chooseTool = async (page: Page, name: string) => tool(page, name).click();
const typeInto = async (page: Page, end: string, text: string) => {
	await field(page, end).click();
	await page.keyboard.press('Control+A');
	await page.keyboard.type(text);
	await page.keyboard.press('Enter');
};
const select = async (page: Page, end: string, label: string) => {
	await field(page, end).selectOption(label);
};
const one = (points: readonly Feet[]) => points.length === 1;
/** The kinds that end by themselves with so many points. */
const endsItself = (word: string, points: readonly Feet[]) => one(points) || word === 'Garden wall';

const mouse: Way = {
	width: 1280,
	touch: false,
	start: (page) => chooseTool(page, 'Snap'),
	add: async (page, word, points) => {
		await chooseTool(page, 'Add');
		await picker(page, word).click();
		for (const point of points) {
			const { x, y } = await onScreen(page, point);
			await page.mouse.move(x, y);
			const isLast = point === points.at(-1) && !endsItself(word, points);
			if (isLast && word === 'Walk') await page.mouse.dblclick(x, y);
			else await page.mouse.click(x, y);
			if (isLast && word === 'Drive') await page.keyboard.press('Enter');
			if (isLast && word === 'Bed') await page.getByRole('button', { name: 'Done', exact: true }).click();
		}
	},
	type: typeInto,
	pick: select,
	move: async (page, _key, from, to) => {
		const start = await onScreen(page, from);
		const end = await onScreen(page, to);
		await page.mouse.move(start.x, start.y);
		await page.mouse.down();
		await page.mouse.move((start.x + end.x) / 2, (start.y + end.y) / 2, { steps: 4 });
		await page.mouse.move(end.x, end.y, { steps: 4 });
		await page.mouse.up();
		await said(page).getByText('moved 2 ft right').waitFor();
	},
	remove: async (page, _key, at) => {
		const { x, y } = await onScreen(page, at);
		await page.mouse.click(x, y);
		await page
			.locator('.beside')
			.getByRole('button', { name: /^Remove House number/i })
			.first()
			.click();
	}
};

const tapButton = async (page: Page, name: string | RegExp) =>
	page.getByRole('button', { name, exact: true }).locator('visible=true').first().tap();
const tapAt = async (page: Page, at: Feet) => {
	const { x, y } = await onScreen(page, at);
	await page.touchscreen.tap(x, y);
};
const taps: Way = {
	width: 360,
	touch: true,
	start: (page) => tapButton(page, 'Snap'),
	add: async (page, word, points) => {
		await tapButton(page, 'Add');
		await picker(page, word).tap();
		for (const [index, point] of points.entries()) {
			await tapAt(page, point);
			const isLast = index + 1 === points.length && endsItself(word, points);
			if (!isLast)
				await expect.poll(() => said(page).innerText()).toMatch(new RegExp(`${index + 1} (point|corner)s? set`));
		}
		if (!endsItself(word, points)) await tapButton(page, 'Done');
	},
	type: async (page, end, text) => {
		await field(page, end).tap();
		await page.keyboard.press('Control+A');
		await page.keyboard.type(text);
		await page.keyboard.press('Enter');
	},
	pick: select,
	move: async (page, _key, _from, to) => {
		await tapButton(page, 'Move it');
		await said(page).getByText('point to where it goes').waitFor();
		await tapAt(page, to);
		await said(page).getByText('moved 2 ft right').waitFor();
	},
	remove: async (page, _key, at) => {
		await tapAt(page, at);
		await tapButton(page, /^Remove House number/i);
	}
};

/** Tab, or Shift+Tab, until the focus is on what is wanted. */
async function tabTo(page: Page, wanted: string, back = false): Promise<void> {
	for (let presses = 0; presses < 300; presses += 1) {
		if (await page.evaluate((selector) => document.activeElement?.matches(selector) ?? false, wanted)) return;
		await page.keyboard.press(back ? 'Shift+Tab' : 'Tab');
	}
	throw new Error(`Not reached by Tab: ${wanted}`);
}
/** Of words such as `25 ft 6 in along, 6 in out`: inches. */
function inches(words: string): [number, number] {
	const read = (text: string) => {
		const feet = Number(/(\d+) ft/.exec(text)?.[1] ?? 0);
		const rest = Number(/(\d+) in/.exec(text)?.[1] ?? 0);
		return (text.startsWith('−') ? -1 : 1) * (feet * 12 + rest);
	};
	const [along = '', out = ''] = words.split(/ along, ?/);
	const size = /on the front line/.test(out) ? 0 : read(out);
	return [read(along), /behind the front/.test(out) ? -size : size];
}
/** By the largest strides, then by single steps of half a foot. */
async function go(page: Page, by: number, less: [string, string], more: [string, string]): Promise<void> {
	const [stride, step] = by < 0 ? less : more;
	const size = Math.abs(by);
	for (let n = 0; n < Math.floor(size / 120); n += 1) await page.keyboard.press(stride);
	for (let n = 0; n < Math.floor((size % 120) / 6); n += 1) await page.keyboard.press(step);
}
async function crossTo(page: Page, [along, out]: Feet): Promise<void> {
	await page.keyboard.press('ArrowRight');
	await said(page)
		.getByText(/ along, /)
		.waitFor();
	const [x, y] = inches(await said(page).innerText());
	await go(page, along * 12 - x, ['Home', 'ArrowLeft'], ['End', 'ArrowRight']);
	await go(page, out * 12 - y, ['PageUp', 'ArrowUp'], ['PageDown', 'ArrowDown']);
}
const keys: Way = {
	width: 1280,
	touch: false,
	start: async (page) => {
		await tabTo(page, '.tools button:last-child');
		await page.keyboard.press('Space');
	},
	add: async (page, word, points) => {
		await tabTo(page, '.tools button:nth-child(2)', true);
		await page.keyboard.press('Enter');
		const names = await page.locator('[aria-label="Kinds of thing to add"] button').allInnerTexts();
		const index = names.findIndex((name) => name.trim() === word);
		await tabTo(page, `[aria-label="Kinds of thing to add"] li:nth-child(${index + 1}) button`);
		await page.keyboard.press('Enter');
		await page.waitForFunction(() => document.activeElement?.id === 'board-things');
		for (const point of points) {
			await crossTo(page, point);
			await page.keyboard.press('Enter');
		}
		// A second Enter on the last point says that it is the last.
		if (!endsItself(word, points)) await page.keyboard.press('Enter');
	},
	type: async (page, end, text) => {
		await tabTo(page, `.beside [id$="${end}"]`);
		await page.keyboard.press('Control+A');
		await page.keyboard.type(text);
		await page.keyboard.press('Enter');
	},
	pick: async (page, end, label) => {
		await tabTo(page, `.beside [id$="${end}"]`);
		await page.keyboard.type(label);
	},
	move: async (page, key, from, to) => {
		await tabTo(page, `[data-thing="${key}"]`, true);
		await page.keyboard.press('Enter');
		await go(page, (to[0] - from[0]) * 12, ['Home', 'ArrowLeft'], ['End', 'ArrowRight']);
		await go(page, (to[1] - from[1]) * 12, ['PageUp', 'ArrowUp'], ['PageDown', 'ArrowDown']);
		await page.keyboard.press('Enter');
		await said(page).getByText('moved 2 ft right').waitFor();
	},
	remove: async (page, key) => {
		await tabTo(page, `[data-thing="${key}"]`, true);
		await page.keyboard.press('Delete');
	}
};

const list: Way = {
	width: 1280,
	touch: false,
	add: async (page, word, points) => {
		await page.getByText('Add a thing', { exact: true }).click();
		await page.getByLabel('What to add').selectOption(word === 'Path light' ? 'Light of the plan' : word);
		for (const [index, [along, out]] of points.entries()) {
			const row = (part: string) => page.locator(`#add-thing-point-${index}-${part}`);
			if (!(await row('along').isVisible()))
				await page.getByRole('button', { name: /^Another (point|corner)$/ }).click();
			await row('along').fill(`${along} ft`);
			await row('out').fill(`${out} ft`);
		}
		await page.locator('.add').getByRole('button', { name: /^Add / }).click();
	},
	type: async (page, end, text) => {
		await field(page, end).fill(text);
		await field(page, end).press('Enter');
	},
	pick: select,
	move: async (page, _key, _from, [along, out]) => {
		await field(page, '-0-along').fill(`${along} ft`);
		await field(page, '-0-out').fill(`${out} ft`);
		await field(page, '-0-out').press('Enter');
		await said(page).getByText('moved').waitFor();
	},
	remove: async (page) => {
		await page
			.locator('.list')
			.getByRole('button', { name: /^Remove House number/i })
			.click();
	}
};

const ways = { mouse, taps, keys, list };
const built = new Map<string, string>();

test.each(Object.entries(ways))('a whole yard by %s alone', async (name, way) => {
	const context = await browser().newContext({
		viewport: { width: way.width, height: way.touch ? 740 : 900 },
		hasTouch: way.touch,
		reducedMotion: 'reduce',
		acceptDownloads: true
	});
	const { page, complaints } = await openPage(browser(), { context });
	page.setDefaultTimeout(20_000);
	built.set(name, await build(page, way));
	expect(complaints).toEqual([]);
	await context.close();
});

interface Saved {
	trees: { at: unknown; spread: number; name: string }[];
	walks: { line: unknown[] }[];
	spots: { beds: { outline: unknown[] }[]; walls: { from: unknown; to: unknown }[]; numbers?: unknown[] };
	power: { receptacle: unknown };
	fixtures: { added: { at: unknown }[] };
}
test('the four files are the same, byte for byte, and hold what was told', () => {
	expect([...built.keys()]).toEqual(Object.keys(ways));
	const text = built.get('list')!;
	// Against feet put into metres here rather than by the site.
	const yard = JSON.parse(text) as Saved;
	expect(yard.trees.map(({ at, spread }) => ({ at, spread }))).toEqual([
		{ at: kept([8, 22]), spread: 6.096 },
		{ at: kept([44, 28]), spread: 4.8768 }
	]);
	expect(yard.trees[1]?.name).toBe('Old maple');
	expect(yard.walks[0]?.line).toEqual([kept([18, 40]), kept([18, 16]), kept([14, 2])]);
	expect(yard.spots.beds[0]?.outline).toHaveLength(4);
	expect(yard.spots.walls[0]).toMatchObject({ from: kept([-4, 10]), to: kept([-4, 30]) });
	expect(yard.power.receptacle).toEqual(kept([28, 0]));
	expect(yard.fixtures.added[0]?.at).toEqual(kept([21, 22]));
	expect(yard.spots.numbers ?? []).toEqual([]);
	for (const [name, file] of built) expect(file, name).toBe(text);
});
