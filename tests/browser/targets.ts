/**
 * Every control of a page measured as what a finger has to hit. WCAG 2.2, 2.5.8 Target Size (Minimum): 24 by 24 CSS px, or one of its exceptions, each
 * named below by the clause. What a page is worked with all the time is held to 44 px in height, the figure of 2.5.5 Target Size (Enhanced).
 */
import type { Page } from 'playwright-core';

export interface Target {
	/** As a person would tell it from the others. */
	name: string;
	/** CSS px. */
	width: number;
	height: number;
	/** Held to 44 px in height: a main action, a tool, a field, a choice. */
	large: boolean;
	/** The clause of 2.5.8 that lets it be smaller than 24 px; null: none does. */
	exception: 'Spacing' | 'Inline' | null;
}
export const [least, comfortable] = [24, 44];

/** All controls of the page that can be seen, in the order of the page. */
export const targetsOn = (page: Page): Promise<Target[]> =>
	page.evaluate(
		([least]) => {
			type Box = { left: number; top: number; right: number; bottom: number };
			const controls =
				'a[href], button, input:not([type="hidden"]), select, textarea, summary, [role="button"], [role="link"], [role="checkbox"], [role="radio"], [role="slider"], [role="img"][tabindex]';
			const union = (a: Box, b: Box): Box => ({
				left: Math.min(a.left, b.left),
				top: Math.min(a.top, b.top),
				right: Math.max(a.right, b.right),
				bottom: Math.max(a.bottom, b.bottom)
			});
			const isShown = (one: Element) => {
				const { width, height, bottom, right } = one.getBoundingClientRect();
				const isOnPage = bottom + scrollY > 0 && right + scrollX > 0;
				return width > 1 && height > 1 && isOnPage && one.checkVisibility({ visibilityProperty: true });
			};
			const labelsOf = (one: Element) =>
				one instanceof HTMLInputElement && /^(radio|checkbox|file)$/.test(one.type) ? [...(one.labels ?? [])] : [];
			/** What takes the press: a choice with its label; a mark of the drawing by the part of it that is there to be hit. */
			const boxOf = (one: Element): Box => {
				const hit = one.querySelector(':scope > .target') ?? one;
				return labelsOf(one)
					.filter(isShown)
					.reduce<Box>((box, label) => union(box, label.getBoundingClientRect()), hit.getBoundingClientRect());
			};
			const nameOf = (one: Element) => {
				const label = labelsOf(one)[0] ?? (one as HTMLInputElement).labels?.[0];
				const words = one.getAttribute('aria-label') ?? label?.textContent ?? one.textContent ?? '';
				return `${one.tagName.toLowerCase()} “${words.replaceAll(/\s+/g, ' ').trim().slice(0, 60)}”`;
			};
			/** "The target is in a sentence or its size is otherwise constrained by the line-height of non-target text." */
			const isInline = (one: Element) => {
				if (getComputedStyle(one).display !== 'inline') return false;
				let block = one.parentElement;
				while (block && getComputedStyle(block).display === 'inline') block = block.parentElement;
				if (!block) return false;
				const copy = block.cloneNode(true) as Element;
				for (const target of copy.querySelectorAll(`${controls}, .unseen`)) target.remove();
				return /\p{L}/u.test(copy.textContent ?? '');
			};
			/** What stands on a drawing stands where the thing does; it need not be larger than 24 px. */
			const isLarge = (one: Element) =>
				one.matches('.main, [role="toolbar"] button, select, textarea, input:not([type="file"])') &&
				getComputedStyle(one).position !== 'absolute';
			const all = [...document.querySelectorAll(controls)]
				.filter((one) => isShown(one) || labelsOf(one).some(isShown))
				.map((one) => ({ one, box: boxOf(one) }));
			const isSmall = ({ left, top, right, bottom }: Box) => right - left < least - 0.05 || bottom - top < least - 0.05;
			const middleOf = ({ left, top, right, bottom }: Box) => ({ x: (left + right) / 2, y: (top + bottom) / 2 });
			/**
			 * "If a 24 CSS pixel diameter circle is centered on the bounding box of each, the circles do not intersect another target or the circle for
			 * another undersized target."
			 */
			const isSpaced = (at: (typeof all)[number]) => {
				const { x, y } = middleOf(at.box);
				return all.every(({ one, box }) => {
					if (one === at.one || one.contains(at.one) || at.one.contains(one)) return true;
					const dx = Math.max(box.left - x, 0, x - box.right);
					const dy = Math.max(box.top - y, 0, y - box.bottom);
					if (Math.hypot(dx, dy) < least / 2) return false;
					const other = middleOf(box);
					return !isSmall(box) || Math.hypot(other.x - x, other.y - y) >= least;
				});
			};
			return all.map((at) => {
				const { one, box } = at;
				const exception = !isSmall(box)
					? null
					: isInline(one)
						? ('Inline' as const)
						: isSpaced(at)
							? ('Spacing' as const)
							: null;
				const [width, height] = [box.right - box.left, box.bottom - box.top];
				return { name: nameOf(one), width, height, large: isLarge(one), exception };
			});
		},
		[least] as const
	);

const size = ({ width, height }: Target) => `${width.toFixed(1)} × ${height.toFixed(1)} px`;
/** What is too small, in words; empty: nothing. */
export function tooSmall(targets: readonly Target[]): string[] {
	return targets.flatMap((target) => {
		const isSmall = Math.min(target.width, target.height) < least - 0.05;
		if (isSmall && !target.exception) return [`${target.name} is ${size(target)}, close to another`];
		return target.large && target.height < comfortable - 0.05 ? [`${target.name} is only ${size(target)}`] : [];
	});
}
