/** A lamp of one's own on the page After dark: opened from a file by keyboard, used, undone, kept, taken away; a bad file loses nothing. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { writeEulumdat, writeLm63 } from '../../src/lib/domain/photometry';
import { disc, radians, steps, tableOf } from '../../src/lib/domain/placement/own-lamp/own-lamp.testing';
import { expectAccessible, goto, openDemo, openPage, useBrowser } from './browser';

const { browser, folder } = useBrowser();

/** The lamps of the yard as it is kept in the browser. */
const kept = (page: Page) =>
	page.evaluate(() => {
		const text = Object.values(localStorage).find((one) => one.includes('"duskwright/yard"'));
		const { power } = JSON.parse(text ?? '{}') as { power?: { lamps?: { name: string; watts?: number }[] } };
		return power?.lamps?.map(({ name, watts }) => ({ name, watts })) ?? null;
	});
const section = (page: Page) => page.getByRole('region', { name: 'A lamp of your own' });
async function openSection(page: Page): Promise<void> {
	await openDemo(page, 'Alder Bend');
	await goto(page, '/light/');
	await section(page).locator('summary').click();
}
const file = (name: string, text: string): string => {
	const path = join(folder(), name);
	writeFileSync(path, text);
	return path;
};
/** Opens a file by the button, as a person does with the keys. */
async function choose(page: Page, path: string): Promise<void> {
	const button = section(page).getByRole('button', { name: /^Open (its photometric|another) file$/ });
	const chooser = page.waitForEvent('filechooser');
	// The browser has to be told to hand its dialog over before the key is pressed.
	await page.waitForTimeout(200);
	await button.press('Enter');
	await (await chooser).setFiles(path);
}
const lobe = tableOf(
	(g, c) => 80 * Math.cos(radians(g)) * (1 + Math.cos(radians(c)) / 2),
	steps(0, 90, 5),
	steps(0, 180, 30),
	'bilateral'
);

describe.each([
	{ width: 360, dark: true },
	{ width: 1280, dark: false }
])('a lamp of your own at $width px', ({ width, dark }) => {
	test('is read, used, undone, kept and taken away', async () => {
		const { page, context, complaints } = await openPage(browser(), { width, dark });
		await openSection(page);
		await choose(page, file('disc.ies', writeLm63(disc(50), { name: 'Brass disc' })));
		const here = section(page);
		await here.getByRole('heading', { name: 'Brass disc' }).waitFor();
		// The focus is at what was read. π × 50 cd = 157 lm; half its strength 60° off the axis.
		expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Brass disc');
		await here.getByText('157 lm').waitFor();
		await here.getByText('120° between the edges of half its strength').waitFor();
		await here.getByRole('img', { name: 'Light of Brass disc by direction' }).waitFor();
		const watts = here.getByLabel('Power marked on it, W');
		await watts.fill('much');
		await here.getByRole('button', { name: 'Use it' }).focus();
		await here.getByText('Type a number, in digits.').waitFor();
		await watts.fill('4.5');
		await here.getByRole('button', { name: 'Use it' }).press('Enter');
		await here.getByText('Tick the lights it is for, above.').waitFor();
		expect(await kept(page)).toBeNull();
		const light = here.getByRole('checkbox', { name: /^Path light/ });
		await light.press('Space');
		await expectAccessible(page, '/light/ with a lamp read');
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
		await here.getByRole('button', { name: 'Use it' }).press('Enter');
		await here.getByText(/Done: “Brass disc” for P1/).waitFor();
		await here.getByText(/^In P1, /).waitFor();
		await expect.poll(() => kept(page)).toEqual([{ name: 'Brass disc', watts: 4.5 }]);
		// The rest of the plan follows.
		await expectAccessible(page, '/light/ with a lamp in use');
		await here.getByRole('button', { name: 'Undo' }).press('Enter');
		await here.getByText('Taken back.').waitFor();
		await expect.poll(() => kept(page)).toBeNull();
		await page.getByRole('button', { name: 'Redo' }).first().click();
		await expect.poll(() => kept(page)).toHaveLength(1);
		await goto(page, '/shopping/');
		await page.getByText('Path light with your own lamp: Brass disc').first().waitFor();
		await goto(page, '/light/');
		await here.getByRole('button', { name: 'Take away Brass disc' }).press('Enter');
		await here.getByText('Done: “Brass disc” taken away.').waitFor();
		await expect.poll(() => kept(page)).toBeNull();
		expect(complaints).toEqual([]);
		await context.close();
	}, 120_000);

	test('of two planes; then a bad file says line and field and changes nothing', async () => {
		const { page, context, complaints } = await openPage(browser(), { width, dark });
		await openSection(page);
		const here = section(page);
		await choose(page, file('lobe.ldt', writeEulumdat(lobe, { name: 'Lobe', watts: 3 })));
		await here.getByRole('heading', { name: 'Lobe' }).waitFor();
		await here.getByText('plane C90–C270').waitFor();
		await here.getByText('3 W', { exact: true }).waitFor();
		const broken = writeLm63(disc(50), { name: 'Broken' }).replace('49.24', 'lots');
		await choose(page, file('broken.ies', broken));
		await here
			.getByRole('alert')
			.getByText(
				/^broken\.ies was not opened\. Line \d+, candela at horizontal 0°, vertical 10°: “lots\d+” is not a number\. Nothing was changed\.$/
			)
			.waitFor();
		// What was read before is still there, to be used.
		await here.getByRole('heading', { name: 'Lobe' }).waitFor();
		await choose(page, file('yard.json', '{}'));
		await here
			.getByRole('alert')
			.getByText(/no photometric file that can be read here/)
			.waitFor();
		await choose(page, file('huge.ies', 'x'.repeat(2_100_000)));
		await here
			.getByRole('alert')
			.getByText(/larger than 2 MB/)
			.waitFor();
		await expectAccessible(page, '/light/ with a bad file');
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
		expect(await kept(page)).toBeNull();
		expect(complaints).toEqual([]);
		await context.close();
	}, 120_000);
});

test('a yard file with a broken lamp opens: the plan says so, with the way to the page', async () => {
	const { page, context, complaints } = await openPage(browser());
	await openDemo(page, 'Alder Bend');
	await page.waitForTimeout(1200);
	const yard = JSON.parse(
		await page.evaluate(() => Object.values(localStorage).find((one) => one.includes('"duskwright/yard"')) ?? '')
	) as { power: Record<string, unknown> };
	yard.power['lamps'] = [
		{
			id: 'lamp-1',
			name: 'Torn',
			for: ['path-led-2.5w-2700'],
			vertical: [0, 45, 90],
			horizontal: [0],
			symmetry: 'rotational',
			candela: [50, 40]
		}
	];
	await goto(page, '/answers/');
	const [chooser] = await Promise.all([
		page.waitForEvent('filechooser'),
		page.getByRole('button', { name: 'Open a yard from a file' }).first().click()
	]);
	await chooser.setFiles(file('torn.duskwright.json', JSON.stringify(yard)));
	await goto(page, '/plan/');
	await page
		.getByText(/Your own lamp “Torn” has 2 candela where its 3 angles in 1 plane want 3/)
		.first()
		.waitFor();
	await page.getByRole('link', { name: 'Set at: After dark' }).first().click();
	await page.waitForURL(/\/light\//);
	await section(page)
		.getByText(/It has 2 candela/)
		.waitFor();
	await expectAccessible(page, '/light/ with a broken lamp');
	await section(page).getByRole('button', { name: 'Take away Torn' }).click();
	await expect.poll(() => kept(page)).toBeNull();
	expect(complaints).toEqual([]);
	await context.close();
}, 120_000);
