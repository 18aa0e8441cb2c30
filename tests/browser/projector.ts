/** How a page reads from the back of a room: the size of its letters as they are seen, their contrast, and whether it fits the screen. */
import type { Page } from 'playwright-core';

/** Texts under `least` CSS px as they are seen, those of pictures at the scale at which they are drawn. */
export const smallTexts = (page: Page, least: number): Promise<string[]> =>
	page.evaluate((least) => {
		const isSeen = (one: Element) => {
			const { width, height } = one.getBoundingClientRect();
			return width > 1.5 && height > 1.5 && one.checkVisibility({ visibilityProperty: true, opacityProperty: true });
		};
		const scaleOf = (one: Element): number => {
			const matrix = one instanceof SVGGraphicsElement ? one.getScreenCTM() : null;
			return matrix ? Math.hypot(matrix.a, matrix.b) : 1;
		};
		const hasWords = (one: Element) =>
			one.matches('input:not([type="range"]), textarea, select') ||
			[...one.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.nodeValue?.trim());
		return [...document.querySelectorAll('body *')]
			.filter((one) => hasWords(one) && !one.matches('script, style, title, desc, option') && isSeen(one))
			.map((one) => ({ one, size: parseFloat(getComputedStyle(one).fontSize) * scaleOf(one) }))
			.filter(({ size }) => size < least - 0.05)
			.map(({ one, size }) => `${size.toFixed(1)} px: ${(one.textContent ?? '').trim().slice(0, 40)}`);
	}, least);

/** Texts with less than `least` to 1 before what lies behind them. Contrast ratio and relative luminance: WCAG 2.2, definitions. */
export const faintTexts = (page: Page, least: number): Promise<string[]> =>
	page.evaluate((least) => {
		const canvas = document.createElement('canvas');
		canvas.width = canvas.height = 1;
		const paint = canvas.getContext('2d', { willReadFrequently: true })!;
		const rgba = (color: string): number[] => {
			paint.clearRect(0, 0, 1, 1);
			paint.fillStyle = color;
			paint.fillRect(0, 0, 1, 1);
			return [...paint.getImageData(0, 0, 1, 1).data];
		};
		const luminance = (color: number[]): number => {
			const [r = 0, g = 0, b = 0] = color.slice(0, 3).map((part) => {
				const c = part / 255;
				return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
			});
			return 0.2126 * r + 0.7152 * g + 0.0722 * b;
		};
		const behind = (one: Element): number[] => {
			for (let at: Element | null = one; at; at = at.parentElement) {
				const color = rgba(getComputedStyle(at).backgroundColor);
				if (color[3] === 255) return color;
			}
			return [255, 255, 255, 255];
		};
		const texts = [...document.querySelectorAll('body *')].filter(
			(one) =>
				one.checkVisibility({ visibilityProperty: true }) &&
				one.getBoundingClientRect().width > 1.5 &&
				!one.matches('script, style, title, desc') &&
				[...one.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.nodeValue?.trim())
		);
		return texts.flatMap((one) => {
			const style = getComputedStyle(one);
			const ink = luminance(rgba(one instanceof SVGElement ? style.fill : style.color));
			const paper = luminance(behind(one));
			const ratio = (Math.max(ink, paper) + 0.05) / (Math.min(ink, paper) + 0.05);
			return ratio < least ? [`${ratio.toFixed(2)} to 1: ${(one.textContent ?? '').trim().slice(0, 40)}`] : [];
		});
	}, least);

/** CSS px by which the page is longer and wider than the window. */
export const overflowOf = (page: Page): Promise<{ down: number; across: number }> =>
	page.evaluate(() => ({
		down: Math.max(0, document.documentElement.scrollHeight - innerHeight),
		across: Math.max(0, document.documentElement.scrollWidth - innerWidth)
	}));

/** All that the browser keeps for the site, as one text. */
export const keptBy = (page: Page): Promise<string> =>
	page.evaluate(async () => {
		const rows: unknown[] = [{ ...localStorage }, { ...sessionStorage }, document.cookie, history.state, location.href];
		const done = <T>(request: IDBRequest<T>) =>
			new Promise<T>((give, refuse) => {
				request.addEventListener('success', () => give(request.result));
				request.addEventListener('error', () => refuse(request.error ?? new Error('IndexedDB')));
			});
		for (const { name } of await indexedDB.databases()) {
			if (!name) continue;
			const base = await done(indexedDB.open(name));
			for (const store of base.objectStoreNames)
				rows.push(await done(base.transaction(store).objectStore(store).getAll()));
			base.close();
		}
		return JSON.stringify(rows);
	});
