/** The questions of hours, price and place: bad input is said where it stands, and upkeep goes into the calendar. */
import { readFileSync } from 'node:fs';
import ICAL from 'ical.js';
import { expect, test } from 'vitest';
import { expectAccessible, goto, openDemo, openPage, useBrowser } from './browser';

const { browser } = useBrowser();

test('a split night and a season are taken, shown among the answers, and refuse 30 hours', async () => {
	const { page, context, complaints } = await openPage(browser(), { width: 360 });
	await openDemo(page, 'Alder Bend');
	await goto(page, '/ask/power/hours/');
	await page.getByText('Evening and early morning').click();
	await page.getByLabel('On in the morning at').fill('06:00');
	await page.getByText('Other hours from one date to another').click();
	await expectAccessible(page, '/ask/power/hours/');
	expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
	await page.getByLabel('How many hours').fill('30');
	await page.getByRole('button', { name: 'Continue' }).click();
	await page.getByText('Here it goes from 0.5 to 14 hours.').waitFor();
	expect(page.url()).toContain('/ask/power/hours/');
	await page.getByLabel('How many hours').fill('2,5');
	await page.getByRole('button', { name: 'Continue' }).click();
	await page.getByLabel('Price of one kilowatt-hour').fill('0,31');
	await page.getByRole('button', { name: 'Continue' }).click();
	await page.waitForURL(/\/ask\/power\/lamps\//);
	await goto(page, '/answers/');
	await page.getByText('From dusk until 23:00, and from 06:00 until dawn').waitFor();
	await page.getByText('From 1 April to 30 September: 2.5 hours from dusk').waitFor();
	await page.getByText('0.31 USD for a kilowatt-hour').waitFor();
	expect(complaints).toEqual([]);
	await context.close();
});
test('latitude 91 is refused in words, and what stands in the field is the answer or none', async () => {
	const { page, context, complaints } = await openPage(browser(), { width: 768, dark: true });
	await goto(page, '/ask/place/where/');
	const field = page.getByLabel('Nearest large town, or latitude and longitude');
	await field.fill('91, 10');
	await page.getByRole('button', { name: 'Continue' }).click();
	await page.getByText('Latitude goes from −90 to 90 degrees').waitFor();
	expect(page.url()).toContain('/ask/place/where/');
	await field.fill('35,68; 139,69');
	await page.getByLabel('Time zone').waitFor();
	await field.fill('Osl');
	await page.getByRole('button', { name: 'Oslo, Norway' }).click();
	expect(await page.getByLabel('Time zone').inputValue()).toBe('Europe/Oslo');
	expect(complaints).toEqual([]);
	await context.close();
});
test('the upkeep is saved as a calendar that another program reads', async () => {
	const { page, context, complaints } = await openPage(browser(), { width: 1280 });
	await openDemo(page, 'Alder Bend');
	await goto(page, '/checklist/');
	await page.getByLabel('The lights are done on').fill('2027-03-20');
	const saved = page.waitForEvent('download');
	await page.getByRole('button', { name: 'Add upkeep to your calendar' }).click();
	const download = await saved;
	expect(download.suggestedFilename()).toBe('garden-lights-upkeep.ics');
	const events = new ICAL.Component(ICAL.parse(readFileSync(await download.path(), 'utf8'))).getAllSubcomponents(
		'vevent'
	);
	const dates = Object.fromEntries(
		events.map((one) => [one.getFirstPropertyValue('summary'), String(one.getFirstPropertyValue('dtstart'))])
	);
	expect(dates['Garden lights: test the GFCI']).toBe('2027-04-20');
	expect(dates['Garden lights: wipe the lenses']).toBe('2027-04-01');
	await page.getByText('garden-lights-upkeep.ics is saved.').waitFor();
	expect(complaints).toEqual([]);
	await context.close();
});
