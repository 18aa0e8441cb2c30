/**
 * A picture from a file or a camera, made ready to lie under the drawing: turned upright as its camera says, scaled down, encoded anew. What a
 * camera writes beside the picture (where, when, by what) is dropped with the old encoding. Nothing leaves the device.
 */
import type { Picture, PictureType } from './pictures';
import { afterwards, formatOf, mostBytes, notEven, notOpened, scaledTo, tries } from './pictures-formats';

export type Imported = { ok: true; picture: Picture; width: number; height: number } | { ok: false; problem: string };

const encoded = (canvas: HTMLCanvasElement, type: PictureType, quality?: number): Promise<Blob | null> =>
	new Promise((done) => canvas.toBlob(done, type, quality));

/** The picture on white paper (a scan may be see-through), its longer side at most `side` pixels. Null where the browser has no room for it. */
function drawn(bitmap: ImageBitmap, side: number): HTMLCanvasElement | null {
	const { width, height } = scaledTo(bitmap, side);
	const canvas = Object.assign(document.createElement('canvas'), { width, height });
	const context = canvas.getContext('2d');
	if (!context) return null;
	context.fillStyle = '#fff';
	context.fillRect(0, 0, width, height);
	context.imageSmoothingQuality = 'high';
	context.drawImage(bitmap, 0, 0, width, height);
	return canvas;
}
/** A drawn plan has few colours, and is then often smaller and always sharper as PNG. Looks at one pixel in 16. */
function hasFewColours(canvas: HTMLCanvasElement): boolean {
	const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
	const seen = new Set<number>();
	for (let i = 0; i < data.length && seen.size <= 64; i += 64)
		seen.add(((data[i]! >> 4) << 8) | ((data[i + 1]! >> 4) << 4) | (data[i + 2]! >> 4));
	return seen.size <= 64;
}
/** Null where no try comes out small enough, or the browser cannot encode it. */
async function fitting(bitmap: ImageBitmap): Promise<{ blob: Blob; width: number; height: number } | null> {
	for (const { side, quality } of tries) {
		const canvas = drawn(bitmap, side);
		if (!canvas) return null;
		const jpeg = await encoded(canvas, 'image/jpeg', quality);
		const png = hasFewColours(canvas) ? await encoded(canvas, 'image/png') : null;
		const blob = png && jpeg && png.size < jpeg.size ? png : jpeg;
		const { width, height } = canvas;
		// A canvas holds its pixels until it is collected; emptied, it lets go at once.
		canvas.width = 0;
		if (blob && blob.size <= afterwards) return { blob, width, height };
	}
	return null;
}

/** Reads a file that a person chose. On failure: a sentence saying what happened and what to do. Never throws. */
export async function importPicture(file: File): Promise<Imported> {
	const refuse = (problem: string): Imported => ({ ok: false, problem });
	if (file.size > mostBytes) return refuse(notEven.huge(file.name));
	let head: Uint8Array;
	try {
		head = new Uint8Array(await file.slice(0, 64).arrayBuffer());
	} catch {
		return refuse(notEven.gone(file.name));
	}
	const format = formatOf(head);
	if (file.size === 0) return refuse(notEven.empty(file.name));
	if (format === 'pdf') return refuse(notOpened(file.name, format));
	let bitmap: ImageBitmap;
	try {
		bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
	} catch {
		return refuse(notOpened(file.name, format));
	}
	try {
		const fit = await fitting(bitmap);
		if (!fit) return refuse(notEven.room(file.name));
		const bytes = new Uint8Array(await fit.blob.arrayBuffer());
		const type = fit.blob.type === 'image/png' ? 'image/png' : 'image/jpeg';
		return { ok: true, picture: { type, bytes }, width: fit.width, height: fit.height };
	} finally {
		bitmap.close();
	}
}
