/** JavaScript of the pages that a person waits for, as a browser fetches it. */
import { expect, test } from 'vitest';
import { goto, openDemo, site, useBrowser } from '../browser/browser';
import { listenForScripts, totals } from './scripts';

const { browser } = useBrowser();
/** Bytes, gzipped, on the page's own thread. */
const pageBudget = 150_000;
/** The engine, in its worker: what works out the plan. */
const engineBudget = 190_000;

test.each(['/plan/', '/plan/drawing/'])('JavaScript of %s', async (path) => {
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
	expect(own).toBeLessThanOrEqual(pageBudget);
	expect(workers).toBeLessThanOrEqual(engineBudget);
	await context.close();
});
