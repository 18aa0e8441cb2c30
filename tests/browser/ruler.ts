import { readFileSync } from 'node:fs';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A PDF unit is 1/72 in (ISO 32000-1, 8.3.2.3). */
const mm = 25.4 / 72;

/** Millimetres from the upper left corner of the page. */
export interface OnPaper {
	left: number;
	top: number;
	width: number;
	height: number;
}
export interface PrintedPage {
	/** Millimetres. */
	width: number;
	height: number;
	text: string;
	words: (OnPaper & { text: string })[];
	/** What each path takes without its line's own width; only of the pages that were asked for. */
	paths: OnPaper[];
}
type Matrix = readonly [number, number, number, number, number, number];
const times = (m: Matrix, n: Matrix): Matrix => [
	m[0] * n[0] + m[2] * n[1],
	m[1] * n[0] + m[3] * n[1],
	m[0] * n[2] + m[2] * n[3],
	m[1] * n[2] + m[3] * n[3],
	m[0] * n[4] + m[2] * n[5] + m[4],
	m[1] * n[4] + m[3] * n[5] + m[5]
];
function boxOf([minX, minY, maxX, maxY]: readonly number[], m: Matrix, height: number): OnPaper {
	const corners = [minX!, maxX!].flatMap((x) =>
		[minY!, maxY!].map((y) => ({ x: m[0] * x + m[2] * y + m[4], y: m[1] * x + m[3] * y + m[5] }))
	);
	const xs = corners.map(({ x }) => x * mm);
	const ys = corners.map(({ y }) => height - y * mm);
	const [left, top] = [Math.min(...xs), Math.min(...ys)];
	return { left, top, width: Math.max(...xs) - left, height: Math.max(...ys) - top };
}
interface Operators {
	fnArray: readonly number[];
	argsArray: readonly unknown[];
}
/** Where every path of the page lies: the page's operators followed with their transformations. */
function pathsOf({ fnArray, argsArray }: Operators, height: number): OnPaper[] {
	let now: Matrix = [1, 0, 0, 1, 0, 0];
	const kept: Matrix[] = [];
	const paths: OnPaper[] = [];
	fnArray.forEach((operator, index) => {
		const args = argsArray[index] as never;
		if (operator === OPS.save) kept.push(now);
		else if (operator === OPS.restore) now = kept.pop() ?? now;
		else if (operator === OPS.transform) now = times(now, args);
		else if (operator === OPS.paintFormXObjectBegin) {
			kept.push(now);
			const [matrix] = args as [Matrix | null];
			if (matrix) now = times(now, matrix);
		} else if (operator === OPS.paintFormXObjectEnd) now = kept.pop() ?? now;
		else if (operator === OPS.constructPath) paths.push(boxOf((args as [unknown, unknown, number[]])[2], now, height));
	});
	return paths;
}

/** Every page of a PDF: its words, and where its lines lie on the paper on pages whose text fits `drawn`. */
export async function readPdf(file: string, drawn: RegExp): Promise<PrintedPage[]> {
	const task = getDocument({ data: new Uint8Array(readFileSync(file)), verbosity: 0, isEvalSupported: false });
	const document = await task.promise;
	const pages: PrintedPage[] = [];
	for (let number = 1; number <= document.numPages; number += 1) {
		const page = await document.getPage(number);
		const [, , right, upper] = page.view;
		const [width, height] = [right! * mm, upper! * mm];
		const words = (await page.getTextContent()).items.flatMap((item) =>
			'str' in item
				? [
						{
							text: item.str + (item.hasEOL ? '\n' : ''),
							left: item.transform[4] * mm,
							top: height - item.transform[5] * mm,
							width: item.width * mm,
							height: item.height * mm
						}
					]
				: []
		);
		const text = words.map(({ text }) => text).join('');
		const paths = drawn.test(text) ? pathsOf(await page.getOperatorList(), height) : [];
		pages.push({ width, height, words, paths, text });
	}
	await task.destroy();
	return pages;
}

/** Parts of a bar are so high, and so far from each other, mm. */
const [high, apart] = [2.4, 0.2];
/** Lengths of the bars on a page, mm, from the top down: four or five parts of one width in a row, each close to the next. */
export function barsOnPaper({ paths }: PrintedPage): number[] {
	const parts = paths
		.filter(({ width, height }) => Math.abs(height - high) < 0.03 && width > 5)
		.toSorted((a, b) => a.top - b.top || a.left - b.left);
	const rows: OnPaper[][] = [];
	for (const part of parts) {
		const row = rows.find(
			([first]) => Math.abs(part.top - first!.top) < 0.5 && Math.abs(part.width - first!.width) < 0.05
		);
		const last = row?.at(-1);
		if (!row || !last) rows.push([part]);
		else if (Math.abs(part.left - last.left - part.width - apart) < 0.05) row.push(part);
	}
	return rows
		.filter(({ length }) => length === 4 || length === 5)
		.map((row) => row.at(-1)!.left + row.at(-1)!.width - row[0]!.left + apart);
}
