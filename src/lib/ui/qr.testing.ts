/** Codes as they come from paper, for tests: rasterised from the drawn path, then read by a reader that is not ours. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import { quiet, type QrShape } from './qr';

const wasm = readFileSync(createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm'));
prepareZXingModule({ overrides: { wasmBinary: wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.length) } });

/** Grey of each dot, 0 black to 1 white. */
export interface Raster {
	side: number;
	grey: Float32Array;
}

/** The shape in dots, each the mean of 16 places in it, with its white border: as a printer of so many dots a module lays it down. */
export function rasterOf({ modules, path }: QrShape, dotsPerModule: number): Raster {
	const edges = upright(path);
	const side = Math.round((modules + 2 * quiet) * dotsPerModule);
	const grey = new Float32Array(side * side).fill(1);
	const parts = 4;
	for (let row = 0; row < side * parts; row += 1) {
		const y = (row + 0.5) / parts / dotsPerModule - quiet;
		const across = edges.filter(({ top, bottom }) => y > top && y < bottom).map(({ x }) => x);
		across.sort((a, b) => a - b);
		let inside = 0;
		for (let column = 0; column < side * parts; column += 1) {
			const x = (column + 0.5) / parts / dotsPerModule - quiet;
			while (inside < across.length && (across[inside] ?? 0) < x) inside += 1;
			if (inside % 2 === 1) {
				const at = Math.floor(row / parts) * side + Math.floor(column / parts);
				grey[at] = (grey[at] ?? 0) - 1 / (parts * parts);
			}
		}
	}
	return { side, grey };
}
/** The upright edges of the outlines. */
function upright(path: string): { x: number; top: number; bottom: number }[] {
	return path
		.split('Z')
		.filter(Boolean)
		.flatMap((outline) => {
			let [x = 0, y = 0] = (/^M(\d+) (\d+)/.exec(outline) ?? []).slice(1).map(Number);
			const [startX, startY] = [x, y];
			const edges: { x: number; top: number; bottom: number }[] = [];
			for (const [, way, to] of outline.matchAll(/([HV])(\d+)/g)) {
				if (way === 'H') x = Number(to);
				else {
					edges.push({ x, top: Math.min(y, Number(to)), bottom: Math.max(y, Number(to)) });
					y = Number(to);
				}
			}
			if (x === startX) edges.push({ x, top: Math.min(y, startY), bottom: Math.max(y, startY) });
			return edges;
		});
}

/** Each dot mixed with its eight neighbours, as ink spreads and a lens blurs. */
export function blurred({ side, grey }: Raster): Raster {
	const soft = new Float32Array(grey.length);
	for (let y = 0; y < side; y += 1)
		for (let x = 0; x < side; x += 1) {
			let [sum, weight] = [0, 0];
			for (const dy of [-1, 0, 1])
				for (const dx of [-1, 0, 1]) {
					const [nx, ny] = [x + dx, y + dy];
					if (nx < 0 || ny < 0 || nx >= side || ny >= side) continue;
					const part = (2 - Math.abs(dx)) * (2 - Math.abs(dy));
					sum += part * (grey[ny * side + nx] ?? 1);
					weight += part;
				}
			soft[y * side + x] = sum / weight;
		}
	return { side, grey: soft };
}

/** What zxing-cpp reads in a raster; null when it finds no code. */
export async function decoded({ side, grey }: Raster): Promise<string | null> {
	const data = new Uint8ClampedArray(side * side * 4);
	grey.forEach((value, i) => data.set([value * 255, value * 255, value * 255, 255], i * 4));
	return read({ data, width: side, height: side, colorSpace: 'srgb' } as ImageData);
}
/** What it reads in a PNG; null when it finds no code. */
export const decodedPng = (png: Uint8Array): Promise<string | null> => read(png);

async function read(picture: Uint8Array | ImageData): Promise<string | null> {
	const found = await readBarcodes(picture, { formats: ['QRCode'] });
	return found[0]?.text ?? null;
}
