import type { Page } from 'playwright-core';

/** What to do with the control of this name: type into it, pick in a drop-down by its first letters, choose it, press it. */
export type Wish =
	| { control: RegExp; type: string }
	| { control: RegExp; pick: string }
	| { control: RegExp; choose: true }
	| { control: RegExp; press: true };

interface Focused {
	name: string;
	tag: string;
	kind: string;
	checked: boolean;
}
/** The focused element as a screen reader would name it, roughly: label, aria-label, or own text. */
const focused = (page: Page): Promise<Focused> =>
	page.evaluate(() => {
		const element = document.activeElement as HTMLInputElement | null;
		const label = element?.labels?.[0]?.innerText ?? element?.getAttribute('aria-label') ?? element?.innerText ?? '';
		const group = element?.closest('fieldset')?.querySelector('legend')?.textContent ?? '';
		return {
			name: `${group} / ${element?.getAttribute('aria-label') ?? label}`.replaceAll(/\s+/g, ' ').trim(),
			tag: element?.tagName.toLowerCase() ?? '',
			kind: element?.getAttribute('type') ?? '',
			checked: element?.checked ?? false
		};
	});

const takesText = (at: Focused) => at.tag === 'input' && (at.kind === 'text' || at.kind === 'number');
const fits = (wish: Wish, at: Focused): boolean => {
	if ('type' in wish) return takesText(at);
	if ('pick' in wish) return at.tag === 'select';
	return 'press' in wish && !takesText(at) && at.tag !== 'select';
};

/** Index of the wish met in the radio group that has the focus, or -1. */
async function chooseInGroup(page: Page, open: Wish[]): Promise<number> {
	const wished = (name: string) => open.findIndex((wish) => 'choose' in wish && wish.control.test(name));
	const first = await focused(page);
	let at = first;
	do {
		const index = wished(at.name);
		if (index >= 0) {
			if (!at.checked) await page.keyboard.press('Space');
			return index;
		}
		await page.keyboard.press('ArrowDown');
		at = await focused(page);
	} while (at.name !== first.name);
	return -1;
}

/**
 * Fills one question's page with the keyboard alone and goes on: Tab to each control, keys only. Throws when a wish
 * was not met or Continue was not reached.
 */
export async function answerByKeyboard(page: Page, wishes: Wish[]): Promise<void> {
	const open = [...wishes];
	const seen: string[] = [];
	/** Pressing "add" may carry the focus into the new field: that one is looked at before the next Tab. */
	let carried = false;
	for (let tabs = 0; tabs < 120; tabs += 1) {
		if (!carried) await page.keyboard.press('Tab');
		carried = false;
		const at = await focused(page);
		seen.push(at.name);
		if (at.tag === 'button' && /Continue/.test(at.name) && open.length === 0) {
			await page.keyboard.press('Enter');
			return;
		}
		if (at.tag === 'body') continue;
		if (at.kind === 'radio') {
			// Within a group the arrow keys move the choice; walk it once round looking for one that is wished for.
			const index = await chooseInGroup(page, open);
			if (index >= 0) open.splice(index, 1);
			continue;
		}
		const index = open.findIndex((wish) => fits(wish, at) && wish.control.test(at.name));
		const wish = open[index];
		if (!wish) continue;
		if ('type' in wish) {
			await page.keyboard.press('Control+A');
			await page.keyboard.type(wish.type);
		} else if ('pick' in wish) await page.keyboard.type(wish.pick);
		else {
			await page.keyboard.press(at.kind === 'checkbox' ? 'Space' : 'Enter');
			// Focus is moved after the new field is drawn.
			await page.waitForTimeout(100);
			carried = takesText(await focused(page));
		}
		open.splice(index, 1);
	}
	throw new Error(
		`Not reached by keyboard on ${page.url()}: ${open.map((wish) => wish.control.source).join(', ') || 'Continue'}. Seen: ${[...new Set(seen.filter((name) => name.length < 200))].join(' | ')}`
	);
}
