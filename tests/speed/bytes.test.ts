/** JavaScript of the pages that a person waits for, as a browser fetches it. */
import { expect, test } from 'vitest';
import { goto, openDemo, site, useBrowser } from '../browser/browser';
import { listenForScripts, totals } from './scripts';

const { browser } = useBrowser();
/** Bytes, gzipped, on the page's own thread: the layout page, and the page to work on the drawing, which carries its tools. */
const budgets = [
	['/plan/', 150_000],
	['/plan/drawing/', 162_000]
] as const;
/** The engine, in its worker: what works out the plan. */
const engineBudget = 190_000;

test.each(budgets)('JavaScript of %s', async (path, budget) => {
	// The service worker fetches the whole site; what the page itself asks for is meant.
	const context = await browser().newContext({ serviceWorkers: 'block' });
	const first = await context.newPage();
	await first.goto(site());
	await openDemo(first, 'Alder Bend');
	await first.close();
	const page = await context.newPage();
	const sizes = listenForScripts(page);
	await goto(page, path);
	await page.locator('.dw-drawing svg').first().waitFor();
	await page.waitForLoadState('networkidle');
	const { page: own, workers } = totals(await sizes());
	console.log(`${path}: ${own} B, and ${workers} B in the worker`);
	expect(own).toBeGreaterThan(50_000);
	expect(own).toBeLessThanOrEqual(budget);
	expect(workers).toBeLessThanOrEqual(engineBudget);
	await context.close();
});
