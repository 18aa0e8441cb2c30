/**
 * Whether a page holds where it is made narrow, its text large, its colours the system's own, or motion is unwanted: WCAG 2.2, 1.4.10 Reflow (320 CSS px),
 * 1.4.4 Resize Text (200 %); CSS Color Adjustment 1, section 3, Forced Color Palettes; Media Queries 5, prefers-reduced-motion.
 */
import type { Page } from 'playwright-core';

/** What sticks out of the window to the side, in words. What scrolls within the page by itself, as a table may (1.4.10), does not. */
export const sideways = (page: Page): Promise<string[]> =>
	page.evaluate(() => {
		const wide = document.documentElement.scrollWidth;
		if (wide <= innerWidth) return [];
		const isHeld = (one: Element) => {
			for (let at = one.parentElement; at && at !== document.body; at = at.parentElement)
				if (getComputedStyle(at).overflowX !== 'visible') return true;
			return false;
		};
		const out = [...document.querySelectorAll('body *')].filter(
			(one) => one.getBoundingClientRect().right > innerWidth + 0.5 && !isHeld(one)
		);
		const words = (one: Element) => `${one.tagName.toLowerCase()} “${(one.textContent ?? '').trim().slice(0, 40)}”`;
		const inner = out.filter((one) => !out.some((other) => other !== one && one.contains(other)));
		return [`${wide} px in ${innerWidth} px: ${inner.slice(0, 4).map(words).join(', ')}`];
	});

/** Where backgrounds and shadows are gone: controls with nothing to tell them from text, and states that look like their contrary. */
const bareControls = (page: Page): Promise<string[]> =>
	page.evaluate(() => {
		const nameOf = (one: Element) => {
			const words = one.getAttribute('aria-label') ?? one.textContent ?? '';
			return `${one.tagName.toLowerCase()} “${words.replaceAll(/\s+/g, ' ').trim().slice(0, 50)}”`;
		};
		const isSeen = (one: Element) =>
			one.getBoundingClientRect().width > 2 && one.checkVisibility({ visibilityProperty: true });
		const sides = ['Top', 'Right', 'Bottom', 'Left'] as const;
		const edgesOf = (style: CSSStyleDeclaration) =>
			sides.map((side) => (style[`border${side}Style`] === 'none' ? 0 : parseFloat(style[`border${side}Width`])));
		const hasEdge = (one: Element) => edgesOf(getComputedStyle(one)).some((width) => width >= 1);
		/** A border of its own or of its row, an underline, a mark before or after it, or what the browser draws itself. */
		const isTold = (one: Element) => {
			const style = getComputedStyle(one);
			const isNative = style.appearance !== 'none' && one.matches('input, select, textarea');
			const underlined = [one, ...one.querySelectorAll('*')].some((at) =>
				getComputedStyle(at).textDecorationLine.includes('underline')
			);
			const marks = ['::before', '::after'].map((part) => getComputedStyle(one, part).content);
			const isMarked = style.display === 'list-item' || marks.some((content) => !/^(none|normal)$/.test(content));
			const row = one.closest('li, tr');
			const isInRow = row !== null && (hasEdge(row) || [...row.children].some(hasEdge));
			return isNative || hasEdge(one) || underlined || isMarked || isInRow || one.querySelector('svg') !== null;
		};
		/** What is left of a state: weight, edges, lines, marks. */
		const lookOf = (one: Element) =>
			[one, ...one.querySelectorAll('*')]
				.flatMap((at) => [null, '::before', '::after'].map((part) => getComputedStyle(at, part)))
				.map((style) => {
					const { fontWeight, textDecorationLine, content, transform, visibility, display } = style;
					const outline = style.outlineStyle === 'none' ? '' : style.outlineWidth;
					return [
						fontWeight,
						textDecorationLine,
						content,
						transform,
						visibility,
						display,
						outline,
						edgesOf(style)
					].join();
				})
				.join(';');
		const faults: string[] = [];
		for (const one of document.querySelectorAll('button, input, select, textarea, summary')) {
			// What lies on a drawing stands for what is drawn under it.
			const isOnDrawing = getComputedStyle(one).position === 'absolute';
			if (isSeen(one) && !isOnDrawing && !one.matches(':disabled, [aria-disabled="true"]') && !isTold(one))
				faults.push(`${nameOf(one)} has nothing but its words in forced colours`);
		}
		for (const state of ['aria-pressed', 'aria-selected', 'aria-current'])
			for (const one of document.querySelectorAll(`[${state}]:not([${state}="false"])`)) {
				if (!isSeen(one) || one.closest('svg')) continue;
				const [value, on] = [one.getAttribute(state)!, lookOf(one)];
				if (state === 'aria-current') one.removeAttribute(state);
				else one.setAttribute(state, 'false');
				if (lookOf(one) === on)
					faults.push(`${nameOf(one)} looks the same with ${state} and without in forced colours`);
				one.setAttribute(state, value);
			}
		return faults;
	});

/** Motion that goes on although none is wanted. A change of no length that can be seen is none. */
const moving = (page: Page): Promise<string[]> =>
	page.evaluate(() =>
		document
			.getAnimations()
			.filter((one) => one.playState === 'running' && Number(one.effect?.getComputedTiming().duration ?? 0) > 1)
			.map((one) => {
				const target = one.effect instanceof KeyframeEffect ? one.effect.target : null;
				return `${target?.tagName.toLowerCase() ?? 'something'} moves although motion is reduced`;
			})
	);

/** Every fault of the page under each of these; the page is left as it was. */
export async function fitFaults(page: Page): Promise<string[]> {
	const usual = page.viewportSize()!;
	const faults = await moving(page);
	const hold = async (width: number, text: number) => {
		await page.setViewportSize({ ...usual, width });
		// Drawings take their width from the page a frame later.
		await page.evaluate(async (size) => {
			document.documentElement.style.fontSize = size;
			for (let frame = 0; frame < 3; frame += 1) await new Promise((go) => requestAnimationFrame(go));
		}, `${text}%`);
		faults.push(...(await sideways(page)).map((words) => `text at ${text} %: ${words}`));
	};
	await hold(320, 100);
	await hold(1280, 200);
	await hold(640, 200);
	await page.evaluate(() => document.documentElement.style.removeProperty('font-size'));
	await page.setViewportSize(usual);
	await page.emulateMedia({ forcedColors: 'active' });
	faults.push(...(await bareControls(page)));
	await page.emulateMedia({ forcedColors: 'none' });
	return faults;
}
