/** How high a slip comes out on paper, measured in the browser on a copy laid out as it prints, whatever the width of the screen. */
import { pxPerMm } from '../on-paper';
import type { SlipLayout } from './layout';
import { widthOn, type SlipPaper } from './papers';

/**
 * Puts a copy of `slip` on the page, unseen, and hands it to `use` with a function that lays the copy out and gives the height of its first page
 * in millimetres. The copy is gone afterwards.
 */
export function onCopy<T>(
	slip: HTMLElement,
	paper: SlipPaper,
	use: (heightOf: (layout: SlipLayout) => number) => T
): T {
	const copy = slip.cloneNode(true) as HTMLElement;
	copy.classList.add('measured');
	copy.setAttribute('aria-hidden', 'true');
	copy.inert = true;
	// Ids stay with the one that is seen.
	for (const node of copy.querySelectorAll('[id]')) node.removeAttribute('id');
	copy.style.width = `${widthOn(paper)}mm`;
	document.body.append(copy);
	const first = copy.querySelector<HTMLElement>('.first')!;
	try {
		return use((layout) => {
			layOut(copy, layout);
			return first.getBoundingClientRect().height / pxPerMm;
		});
	} finally {
		copy.remove();
	}
}

function layOut(copy: HTMLElement, { sketch, columns, lines }: SlipLayout): void {
	copy.classList.toggle('two-columns', columns === 2);
	copy.classList.toggle('left-over', sketch === 0);
	copy.style.setProperty('--sketch', `${sketch}mm`);
	copy.querySelectorAll<HTMLElement>('.first .buys > li').forEach((line, n) => {
		line.hidden = n >= lines;
	});
}
