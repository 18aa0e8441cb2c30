/** A lesson in class as a person at the computer goes through it. */
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { goto } from './browser';

export const projector = { width: 1280, height: 720 };
/** Where a person who looks on stands. */
export const where = (page: Page) => page.locator('#where').innerText();
export const on = (page: Page) => page.locator('nav .main');
export const heading = (page: Page) => page.locator('.room h1');

export async function enter(page: Page, id: string, fragment = ''): Promise<void> {
	await goto(page, `/class/lesson/${id}/${fragment}`);
	await page.locator('.room[data-ready]').waitFor();
}
/** Goes to the next screen as a person at the computer does. */
export async function stepOn(page: Page, screen: number): Promise<void> {
	if (screen > 1) await on(page).click();
	await expect.poll(() => where(page)).toBe(`Screen ${screen} of 6`);
}
/** What a class leaves on the second screen. */
export async function predict(page: Page, reason: string): Promise<void> {
	await page.locator('.choice').nth(1).click();
	await page.getByRole('button', { name: 'One hand more' }).first().click({ clickCount: 3 });
	await page.getByLabel('Why do you think so?').fill(reason);
}
