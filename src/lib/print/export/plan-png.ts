/** The plan's SVG as a picture of pixels. In a browser only. */
import { pngSize, withDpi, type Dpi } from './png-size';
import type { PlanSvg } from './plan-svg';
import { withFaces } from './faces';

function imageOf(text: string): Promise<HTMLImageElement> {
	const url = URL.createObjectURL(new Blob([text], { type: 'image/svg+xml' }));
	const image = new Image();
	image.src = url;
	return image
		.decode()
		.then(() => image)
		.finally(() => URL.revokeObjectURL(url));
}

/** A PNG on white with its resolution noted in it, or why there is none, in words. */
export async function planPng(
	svg: PlanSvg,
	dpi: Dpi
): Promise<{ ok: true; png: Blob } | { ok: false; problem: string }> {
	const size = pngSize(svg, dpi);
	if (!size.ok) return size;
	const image = await imageOf(await withFaces(svg.text));
	const canvas = document.createElement('canvas');
	canvas.width = size.width;
	canvas.height = size.height;
	const pen = canvas.getContext('2d');
	const drawn = await new Promise<Blob | null>((done) => {
		if (!pen) return done(null);
		pen.fillStyle = '#fff';
		pen.fillRect(0, 0, size.width, size.height);
		pen.drawImage(image, 0, 0, size.width, size.height);
		canvas.toBlob(done, 'image/png');
	});
	if (!drawn)
		return { ok: false, problem: 'This browser could not draw a picture of that size. Take 150 dpi, or the SVG.' };
	const bytes = withDpi(new Uint8Array(await drawn.arrayBuffer()), dpi);
	return { ok: true, png: new Blob([bytes], { type: 'image/png' }) };
}
