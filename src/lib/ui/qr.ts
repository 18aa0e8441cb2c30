/** A text as a QR code (ISO/IEC 18004) that can be read from paper. */
import { correction, generate, mode, type Bitmap2D } from 'lean-qr';
import { toSvgPath } from 'lean-qr/extras/svg';

/** Modules of white that the standard asks for on each side. */
export const quiet = 4;
/**
 * Largest code that is drawn: 117 modules a side, 125 with its white border, so that a module is half a millimetre in a code 65 mm
 * wide. That is three dots of a 150 dpi print or scan; smaller ones blur into each other.
 */
export const largestVersion = 25;

/** Those that every reader understands; the library's own choice mixes in Latin-1 and Shift-JIS, which some readers mistake. */
const modes = [mode.numeric, mode.alphaNumeric, mode.ascii, mode.utf8];
/** How lean-qr marks the error that says so. */
const tooMuchData = 4;

export interface QrShape {
	/** Modules a side, without the white border. */
	modules: number;
	/** Outline of the dark modules for the `d` of a path, one unit a module, from the upper left corner inside the border. */
	path: string;
}

/**
 * The code for a text, digits in the mode made for them; as much of it as fits may be damaged: 15 % where there is room, 7 % else (levels M and
 * L). Null when it does not fit into `largestVersion`.
 */
export function qrOf(text: string): QrShape | null {
	const code = drawn(text, correction.M) ?? drawn(text, correction.L);
	return code && { modules: code.size, path: cornersOnly(toSvgPath(code)) };
}
function drawn(text: string, minCorrectionLevel: typeof correction.M): Bitmap2D | null {
	try {
		return generate(text, { minCorrectionLevel, maxVersion: largestVersion, modes });
	} catch (error) {
		if (error instanceof Error && 'code' in error && error.code === tooMuchData) return null;
		throw error;
	}
}
/** The outlines with their corners alone: as given they stop at every module, which makes a large code three times as long. */
function cornersOnly(path: string): string {
	return path
		.split('Z')
		.filter((outline) => outline !== '')
		.map((outline) => {
			const points = outline
				.slice(1)
				.split('L')
				.map((point) => point.split(' '));
			const corners = points.filter(([x, y], i) => {
				const [before, after] = [points.at(i - 1), points[(i + 1) % points.length]];
				return !(before?.[0] === x && after?.[0] === x) && !(before?.[1] === y && after?.[1] === y);
			});
			const lines = corners.slice(1).map(([x, y], i) => (x === corners[i]?.[0] ? `V${y}` : `H${x}`));
			return `M${corners[0]?.join(' ')}${lines.join('')}Z`;
		})
		.join('');
}
