/**
 * A page walked by Tab, as somebody without a mouse goes through it. At each stop: can the focus be seen (WCAG 2.2, 2.4.7, with the 2 px and 3:1 of 2.4.13
 * Focus Appearance), is it not wholly covered (2.4.11), does it follow the page (2.4.3), and does the walk come out again (2.1.2)?
 */
import type { Page } from 'playwright-core';

export interface Stop {
	/** As a person would tell it from the others. */
	name: string;
	/** What is wrong with this stop, in words. */
	faults: string[];
}
export interface Walk {
	stops: Stop[];
	/** The walk came round to where it began. */
	isRound: boolean;
	/** Names of what Tab ought to reach and has not. */
	missed: string[];
}

declare global {
	interface Window {
		/** What the walk keeps in the page from stop to stop. */
		dwWalk?: { look: () => { name: string; faults: string[] } | null; missed: () => string[] };
	}
}

/** Puts into the page what looks at each stop. */
const begin = (page: Page): Promise<void> =>
	page.evaluate(() => {
		type Look = Map<Element, Record<string, string>>;
		const seen = new Set<Element>();
		let last: { one: Element; look: Look; name: string } | null = null;
		const nameOf = (one: Element) => {
			const words =
				one.getAttribute('aria-label') ?? (one as HTMLInputElement).labels?.[0]?.textContent ?? one.textContent ?? '';
			return `${one.tagName.toLowerCase()} “${words.replaceAll(/\s+/g, ' ').trim().slice(0, 60)}”`;
		};
		const numbers = (colour: string) => (/color\(/.test(colour) ? null : (colour.match(/[\d.]+/g) ?? []).map(Number));
		/** WCAG 2.2, relative luminance. */
		const luminance = (rgb: readonly number[]) => {
			const [r = 0, g = 0, b = 0] = rgb.map((part) => {
				const c = part / 255;
				return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
			});
			return 0.2126 * r + 0.7152 * g + 0.0722 * b;
		};
		const groundOf = (one: Element | null): number[] => {
			for (let at = one; at; at = at.parentElement) {
				const colour = numbers(getComputedStyle(at).backgroundColor);
				if (colour && (colour[3] ?? 1) > 0.5) return colour.slice(0, 3);
			}
			return [255, 255, 255];
		};
		/** Contrast ratio of a colour on what lies behind; null: the colour is not one that can be reckoned with. */
		const contrast = (colour: string, behind: readonly number[]): number | null => {
			const parts = numbers(colour);
			if (!parts) return null;
			if ((parts[3] ?? 1) < 0.5) return 1;
			const [a, b] = [luminance(parts.slice(0, 3)), luminance(behind)];
			return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
		};
		const lookOf = (one: Element): Look => {
			const near = [one, ...one.querySelectorAll('*')].slice(0, 40);
			const label = one.closest('label');
			if (label) near.push(label);
			return new Map(
				near.map((at) => {
					const style = getComputedStyle(at);
					const { visibility, stroke, strokeWidth, boxShadow } = style;
					const outline = `${style.outlineStyle} ${style.outlineWidth} ${style.outlineColor}`;
					const border = `${style.borderTopWidth} ${style.borderTopStyle} ${style.borderTopColor}`;
					return [at, { visibility, stroke, strokeWidth, boxShadow, outline, border }];
				})
			);
		};
		/** Strokes of the drawing are in the drawing's own measure. */
		const scaleOf = (one: Element) => (one instanceof SVGGraphicsElement ? Math.abs(one.getScreenCTM()?.a ?? 1) : 1);
		/** Whether any mark has come with the focus that is 2 px wide and stands out 3:1. */
		const isMarked = (one: Element, with_: Look): boolean => {
			const without = lookOf(one);
			const isEnough = (width: number, colour: string, behind: Element | null) =>
				width >= 1.95 && (contrast(colour, groundOf(behind)) ?? 3) >= 3;
			for (const [at, now] of with_) {
				const then = without.get(at);
				if (!then) continue;
				const [style, width = '0', ...colour] = now['outline']!.split(' ');
				if (now['outline'] !== then['outline'] && style !== 'none')
					if (isEnough(parseFloat(width), colour.join(' '), at.parentElement)) return true;
				const [thick = '0', , ...edge] = now['border']!.split(' ');
				if (now['border'] !== then['border'] && isEnough(parseFloat(thick), edge.join(' '), at.parentElement))
					return true;
				const shadow = now['boxShadow']!;
				if (shadow !== then['boxShadow'] && shadow !== 'none') {
					const spread = Math.max(...(shadow.match(/[\d.]+px/g) ?? ['0']).map(parseFloat));
					if (isEnough(spread, /^[a-z]+\([^)]*\)/.exec(shadow)?.[0] ?? '', at.parentElement)) return true;
				}
				const hasCome = now['visibility'] === 'visible' && then['visibility'] !== 'visible';
				const hasChanged = now['stroke'] !== then['stroke'] || now['strokeWidth'] !== then['strokeWidth'];
				if ((hasCome || hasChanged) && now['stroke'] !== 'none')
					if (isEnough(parseFloat(now['strokeWidth']!) * scaleOf(at), now['stroke']!, at.closest('svg'))) return true;
			}
			return false;
		};
		/** Nothing of it can be seen: it is out of the window, or something that stays in place lies over it. */
		const isCovered = (one: Element): boolean => {
			const boxes = [one, ...((one as HTMLInputElement).labels ?? [])].map((at) => at.getBoundingClientRect());
			const takesPointer = getComputedStyle(one).pointerEvents !== 'none';
			return boxes.every(({ left, top, width, height }) =>
				[0.1, 0.3, 0.5, 0.7, 0.9].every((across) =>
					[0.1, 0.5, 0.9].every((down) => {
						const hit = document.elementFromPoint(left + across * width, top + down * height);
						if (!hit) return true;
						if (hit === one || one.contains(hit) || hit.contains(one)) return false;
						for (let at: Element | null = hit; at && !at.contains(one); at = at.parentElement)
							if (/fixed|sticky/.test(getComputedStyle(at).position)) return true;
						return takesPointer && !hit.closest('label')?.contains(one);
					})
				)
			);
		};
		const look = () => {
			// A change of style that takes its time counts as it ends.
			for (const change of document.getAnimations()) if (change instanceof CSSTransition) change.finish();
			const one = document.activeElement;
			const faults: string[] = [];
			if (seen.size === 0)
				for (const at of document.querySelectorAll<HTMLElement>('[tabindex]'))
					if (at.tabIndex > 0) faults.push(`${nameOf(at)} has a place of its own in the order`);
			if (last && last.one !== one && last.one.isConnected && !isMarked(last.one, last.look))
				faults.push(`the focus cannot be seen on ${last.name}`);
			if (!one || one === document.body || one === document.documentElement) {
				last = null;
				return { name: 'the page', faults };
			}
			const name = nameOf(one);
			// A date is one field of several parts, each a stop of its own.
			if (one === last?.one) return { name, faults };
			if (seen.has(one)) return null;
			if (last && !(last.one.compareDocumentPosition(one) & Node.DOCUMENT_POSITION_FOLLOWING))
				faults.push(`${name} comes before ${last.name} on the page, and after it by Tab`);
			if (isCovered(one)) faults.push(`${name} has the focus and is wholly covered`);
			seen.add(one);
			last = { one, look: lookOf(one), name };
			return { name, faults };
		};
		const missed = () => {
			const groups = new Set(
				[...seen].map((one) => (one instanceof HTMLInputElement && one.type === 'radio' ? one.name : ''))
			);
			return [...document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex]')]
				.filter((one) => {
					if (seen.has(one) || (one as HTMLElement).tabIndex < 0 || (one as HTMLInputElement).disabled) return false;
					if (one instanceof HTMLInputElement && one.type === 'radio' && groups.has(one.name)) return false;
					return one.getClientRects().length > 0 && one.checkVisibility({ visibilityProperty: true });
				})
				.map(nameOf);
		};
		window.dwWalk = { look, missed };
		// Tab goes on from where the focus was last: from the top of the page.
		scrollTo(0, 0);
		document.body.tabIndex = -1;
		document.body.focus({ preventScroll: true });
		document.body.removeAttribute('tabindex');
	});

/** Walks the page by Tab from its top, at most so many stops. */
export async function walk(page: Page, most = 150): Promise<Walk> {
	await begin(page);
	const stops: Stop[] = [];
	let isRound = false;
	while (stops.length < most && !isRound) {
		await page.keyboard.press('Tab');
		const stop = await page.evaluate(() => window.dwWalk!.look());
		if (stop) stops.push(stop);
		isRound = stop === null || (stop.name === 'the page' && stops.length > 1);
	}
	const missed = isRound ? await page.evaluate(() => window.dwWalk!.missed()) : [];
	return { stops, isRound, missed };
}
export const faultsOf = ({ stops, missed }: Walk): string[] => [
	...stops.flatMap(({ faults }) => faults),
	...missed.map((name) => `${name} is not reached by Tab`)
];
