/** Every page of the site but the single questions, and when one is ready to be judged. */
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { expectAccessible, goto } from './browser';
import { sideways } from './accessible-fit';
import { targetsOn, tooSmall } from './targets';

/** Pages that show the plan of the yard in hand. */
export const planPages = [
	'/plan/',
	'/plan/drawing/',
	'/light/',
	'/circuit/',
	'/circuit/draw/',
	'/circuit/by-hand/',
	'/circuit/lamps/',
	'/hours/',
	'/shopping/',
	'/checklist/',
	'/checklist/first-night/',
	'/packet/'
] as const;
export const pages = [
	'/',
	...planPages,
	'/answers/',
	'/rules/',
	'/help/',
	'/open/',
	'/counter/',
	'/counter/shelf/',
	'/counter/slip/',
	'/ask/place/units/',
	'/class/',
	'/class/lesson/drop/',
	'/class/notes/',
	'/class/sheets/',
	'/class/exercise/',
	'/explore/'
] as const;

/** All that comes later has come: nothing says that it is at work, and the page stays as it is for three looks. */
export async function settle(page: Page): Promise<void> {
	let last = -1;
	let still = 0;
	await expect
		.poll(
			async () => {
				const count = await page.evaluate(() => {
					const isWaiting = /(Working|Drawing|Reading|Loading)[^.…\n]*…/.test(document.body.innerText);
					const isWhole = document.querySelector('footer') !== null;
					return isWaiting || !isWhole ? -1 : document.querySelectorAll('*').length;
				});
				still = count >= 0 && count === last ? still + 1 : 0;
				last = count;
				return still;
			},
			{ interval: 60, timeout: 20_000, message: page.url() }
		)
		.toBeGreaterThanOrEqual(2);
}
export async function visit(page: Page, path: string): Promise<void> {
	await goto(page, path);
	await settle(page);
}
/** Goes to another page within the site, as a link does: quicker than to load the site anew. */
export async function follow(page: Page, href: string): Promise<void> {
	await page.evaluate((to) => {
		const link = document.createElement('a');
		link.href = to;
		document.body.append(link);
		link.click();
		link.remove();
	}, href);
	await page.waitForURL(href);
	await settle(page);
}
/** What must hold of every page in every state: axe, the size of what is there to be hit, nothing out to the side. */
export async function expectFit(
	page: Page,
	where: string,
	axe?: Parameters<typeof expectAccessible>[2]
): Promise<void> {
	expect(await sideways(page), where).toEqual([]);
	expect(tooSmall(await targetsOn(page)), where).toEqual([]);
	await expectAccessible(page, where, axe);
}
