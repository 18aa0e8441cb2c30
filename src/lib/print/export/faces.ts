/** The page's own face put into an SVG: a picture on a canvas can ask for nothing, not even for a font that the page has. */
import regular from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff2?url';
import bold from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff2?url';

async function rule(url: string, weight: number): Promise<string> {
	const answer = await fetch(url);
	if (!answer.ok) throw new Error(`The face was not found: ${answer.status}.`);
	const bytes = new Uint8Array(await answer.arrayBuffer());
	const text = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
	return `@font-face{font-family:'Atkinson Hyperlegible Next';font-weight:${weight};src:url(data:font/woff2;base64,${btoa(text)}) format('woff2')}`;
}
/** The SVG's text with both weights in it. */
export async function withFaces(svg: string): Promise<string> {
	const rules = await Promise.all([rule(regular, 400), rule(bold, 700)]);
	return svg.replace(/(<svg[^>]*>)/, `$1<style>${rules.join('')}</style>`);
}
