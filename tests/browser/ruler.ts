import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

/** Pixels for each millimetre of paper in the picture that is measured: 508 dpi. */
const perMm = 20;

interface Picture {
	width: number;
	height: number;
	grey: Buffer;
}
/** One page of a PDF as a greyscale picture, read from poppler's portable graymap. */
function pageOf(pdf: string, page: number): Picture {
	const stem = pdf.replace(/\.pdf$/, `-${page}`);
	const wanted = ['-r', String(perMm * 25.4), '-gray', '-f', String(page), '-l', String(page), '-singlefile'];
	execFileSync('pdftoppm', [...wanted, pdf, stem]);
	const file = readFileSync(`${stem}.pgm`);
	const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(file.subarray(0, 64).toString('latin1'));
	if (!head) throw new Error(`${stem}.pgm is no graymap`);
	return { width: Number(head[1]), height: Number(head[2]), grey: file.subarray(head[0].length) };
}

/**
 * Millimetres of paper from the start of the first solid part of the bar to the start of its last solid part, or null
 * when no row of the page shows such a bar. `part`: what one part should measure, mm; `solid`: how many are solid.
 */
export function barOnPaper(pdf: string, page: number, part: number, solid: number): number | null {
	const { width, height, grey } = pageOf(pdf, page);
	const fits = (pixels: number) => Math.abs(pixels / perMm - part) < 0.6;
	for (let y = 0; y < height; y += 4) {
		const starts: number[] = [];
		for (let x = 0; x < width; x += 1) {
			if (grey[y * width + x]! > 90) continue;
			const from = x;
			while (x < width && grey[y * width + x]! <= 90) x += 1;
			if (fits(x - from)) starts.push(from);
		}
		const apart = starts.slice(1).map((x, index) => (x - starts[index]!) / perMm);
		if (starts.length === solid && apart.every((gap) => Math.abs(gap - 2 * part) < 1))
			return (starts.at(-1)! - starts[0]!) / perMm;
	}
	return null;
}
