/** How large a picture of the plan is, and its note of that: so that it prints to scale. */

export type Dpi = 150 | 300;
export const dpis: readonly Dpi[] = [150, 300];

/** What browsers draw at most: 16,384 px a side and 268 million in all; below it, so that phones manage. */
const most = { side: 16_000, pixels: 120_000_000 };

/** Pixels of a drawing in millimetres at so many to the inch, or why that is too many, in words. */
export function pngSize(
	{ width, height }: { width: number; height: number },
	dpi: Dpi
): { ok: true; width: number; height: number } | { ok: false; problem: string } {
	const [w, h] = [Math.round((width / 25.4) * dpi), Math.round((height / 25.4) * dpi)];
	if (Math.max(w, h) <= most.side && w * h <= most.pixels) return { ok: true, width: w, height: h };
	const instead = dpi > 150 ? 'Take 150 dpi, or a smaller scale' : 'Take a smaller scale, or the SVG';
	return {
		ok: false,
		problem: `At this scale the picture would be ${w} by ${h} pixels, more than a browser draws. ${instead}.`
	};
}

/** CRC-32 as PNG has it (ISO/IEC 15948, annex D): polynomial 0xEDB88320, reflected. */
export function crc32(bytes: Uint8Array): number {
	let crc = 0xffffffff;
	for (const byte of bytes) {
		crc ^= byte;
		for (let bit = 0; bit < 8; bit += 1) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
	}
	return (crc ^ 0xffffffff) >>> 0;
}

/** Signature, and the header chunk with its length, name and check: what comes first in every PNG. */
const untilHeader = 8 + 4 + 4 + 13 + 4;
/** The file with a chunk pHYs (ISO/IEC 15948, 11.3.5.3) after its header: pixels per metre, both ways. */
export function withDpi(png: Uint8Array, dpi: Dpi): Uint8Array<ArrayBuffer> {
	const perMetre = Math.round(dpi / 0.0254);
	const chunk = new Uint8Array(4 + 4 + 9 + 4);
	const view = new DataView(chunk.buffer);
	view.setUint32(0, 9);
	chunk.set(
		[...'pHYs'].map((letter) => letter.charCodeAt(0)),
		4
	);
	view.setUint32(8, perMetre);
	view.setUint32(12, perMetre);
	view.setUint8(16, 1);
	view.setUint32(17, crc32(chunk.subarray(4, 17)));
	const out = new Uint8Array(png.length + chunk.length);
	out.set(png.subarray(0, untilHeader));
	out.set(chunk, untilHeader);
	out.set(png.subarray(untilHeader), untilHeader + chunk.length);
	return out;
}
