/** Makes a drawing on the page into one that needs nothing of the page. */
import type { Box } from '../../domain/shared/geometry';

/** What style sheets say of a mark and another program has to be told. */
const told = ['fill', 'fill-opacity', 'stroke', 'stroke-opacity', 'paint-order'] as const;
const usual: Record<(typeof told)[number], string> = {
	fill: '',
	'fill-opacity': '1',
	stroke: 'none',
	'stroke-opacity': '1',
	'paint-order': 'normal'
};
/** `rgb(0, 0, 0)` as `#000000`, which every program reads; anything else as it is. */
export function plainColour(text: string): string {
	const parts = /^rgb\((\d+), (\d+), (\d+)\)$/.exec(text)?.slice(1);
	return parts ? `#${parts.map((part) => Number(part).toString(16).padStart(2, '0')).join('')}` : text;
}
function tell(element: Element): void {
	const style = getComputedStyle(element);
	if (element.tagName === 'stop') element.setAttribute('stop-color', plainColour(style.stopColor));
	else if (!/^(g|defs|pattern|radialGradient|title|desc)$/.test(element.tagName))
		for (const name of told) {
			const value = plainColour(style.getPropertyValue(name));
			// A pattern's address is told already, without the quotes that some programs do not take.
			if (value !== usual[name] && !value.startsWith('url(')) element.setAttribute(name, value);
		}
	element.removeAttribute('class');
}

/**
 * Changes `svg`, whose frame is the yard in metres, into one of `width` by `height` millimetres whose unit is the millimetre: all of it lies in a group that
 * scales. Colours come from the page as it shows them; the face goes by its name.
 */
export function standAlone(
	svg: SVGSVGElement,
	{ box, width, height }: { box: Box; width: number; height: number }
): void {
	const elements = [...svg.querySelectorAll('*')];
	for (const element of elements) tell(element);
	const scale = width / (box.maxX - box.minX);
	const group = document.createElementNS('http://www.w3.org/2000/svg', 'g');
	group.setAttribute('transform', `matrix(${scale} 0 0 ${scale} ${-box.minX * scale} ${-box.minY * scale})`);
	group.append(...[...svg.children].filter(({ tagName }) => tagName !== 'title' && tagName !== 'desc'));
	svg.append(group);
	const millimetres = (value: number) => value.toFixed(3);
	svg.setAttribute('width', `${millimetres(width)}mm`);
	svg.setAttribute('height', `${millimetres(height)}mm`);
	svg.setAttribute('viewBox', `0 0 ${millimetres(width)} ${millimetres(height)}`);
	svg.setAttribute('font-family', "'Atkinson Hyperlegible Next', system-ui, sans-serif");
	svg.removeAttribute('class');
	svg.removeAttribute('style');
	// Svelte's anchors for what may be added later.
	const walker = document.createTreeWalker(svg, NodeFilter.SHOW_COMMENT);
	const comments: Node[] = [];
	while (walker.nextNode()) comments.push(walker.currentNode);
	for (const comment of comments) comment.parentNode?.removeChild(comment);
}
