import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import { chromium, type Browser, type BrowserContext, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject } from 'vitest';
import { findBrowser } from '../../src/tools/setup.mjs';

const flags = [
	'--no-sandbox',
	'--disable-gpu',
	'--disable-quic',
	'--no-first-run',
	'--disable-background-networking',
	'--disable-component-update',
	'--disable-sync'
];

export async function openBrowser(): Promise<Browser> {
	const executablePath = findBrowser();
	if (!executablePath) throw new Error('No Chromium, Chrome or Edge was found.');
	return chromium.launch({ executablePath, headless: true, args: flags });
}

/** A page that fails its test when the site logs an error, throws, or asks anything of another host. */
export async function openPage(
	browser: Browser,
	options: { width?: number; height?: number; dark?: boolean; context?: BrowserContext } = {}
): Promise<{ page: Page; context: BrowserContext; complaints: string[] }> {
	const context =
		options.context ??
		(await browser.newContext({
			viewport: { width: options.width ?? 1280, height: options.height ?? 800 },
			colorScheme: options.dark ? 'dark' : 'light',
			reducedMotion: 'reduce',
			acceptDownloads: true
		}));
	const page = await context.newPage();
	const complaints: string[] = [];
	page.on('pageerror', (error) => complaints.push(`threw: ${error.message}`));
	page.on('console', (message) => {
		if (message.type() === 'error' || message.type() === 'warning') complaints.push(`console: ${message.text()}`);
	});
	page.on('request', (request) => {
		const url = request.url();
		if (!url.startsWith(site()) && !/^(data|blob):/.test(url)) complaints.push(`asked ${url}`);
	});
	return { page, context, complaints };
}

export const site = (): string => inject('site');

/** axe with every WCAG A and AA tag up to 2.2, or one rule of it; `without`: but for what this selector finds. */
export async function expectAccessible(
	page: Page,
	where: string,
	{ rule, without }: { rule?: string; without?: string } = {}
): Promise<void> {
	const axe = new AxeBuilder({ page });
	if (rule) axe.withRules([rule]);
	else axe.withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']);
	if (without) axe.exclude(without);
	const results = await axe.analyze();
	const found = results.violations.flatMap((violation) =>
		violation.nodes.map((node) => `${where}: ${violation.id}: ${node.target.join(' ')}`)
	);
	expect(found).toEqual([]);
}

export const goto = async (page: Page, path: string): Promise<void> => {
	await page.goto(`${site()}${path}`);
	await page.locator('h1').first().waitFor();
};
export async function openDemo(page: Page, title: string): Promise<void> {
	await goto(page, '/');
	await page.getByRole('button', { name: `Open ${title}` }).click();
	await page.waitForURL(/\/plan\//);
}
/** A browser for the tests of a file, and a folder for what they save; both are cleared away after the last test. */
/** Takes a light of the layout page in hand. On a phone the lights are folded by kind. */
export async function chooseLight(page: Page, label: string): Promise<void> {
	const button = page.locator(`button[aria-label^="Change or show ${label} "]`);
	await button.waitFor({ state: 'attached' });
	if (!(await button.isVisible())) await page.locator('details', { has: button }).locator('> summary').click();
	await button.click();
}

export function useBrowser(): { browser: () => Browser; folder: () => string } {
	let browser: Browser;
	let folder: string;
	beforeAll(async () => {
		browser = await openBrowser();
		folder = mkdtempSync(join(tmpdir(), 'duskwright-'));
	});
	afterAll(async () => {
		await browser.close();
		rmSync(folder, { recursive: true, force: true });
	});
	return { browser: () => browser, folder: () => folder };
}
