/** Outlines of the symbols in a box from −1 to 1, point up. One table: shape -> path data. */
import type { Shape } from './marks';

export interface SymbolOutline {
	/** Filled body. */
	body: string;
	/** Lines on top of it. */
	lines: string;
	/** Amber: it is a light. Otherwise it is drawn as a device, in ink. */
	lamp: boolean;
}
const ring = (r: number) => `M${-r} 0a${r} ${r} 0 1 1 ${2 * r} 0a${r} ${r} 0 1 1 ${-2 * r} 0Z`;

export const symbols: Readonly<Record<Shape, SymbolOutline>> = {
	triangle: { body: 'M0-1.15L1.05 .8H-1.05Z', lines: '', lamp: true },
	'half-disc': { body: 'M-1.15 .5A1.15 1.15 0 0 1 1.15 .5Z', lines: '', lamp: true },
	circle: { body: ring(0.88), lines: '', lamp: true },
	square: { body: 'M-.84-.84H.84V.84H-.84Z', lines: '', lamp: true },
	bar: { body: 'M-1.25-.48H1.25V.48H-1.25Z', lines: '', lamp: true },
	diamond: { body: 'M0-1.15L1.15 0L0 1.15L-1.15 0Z', lines: '', lamp: true },
	pentagon: { body: 'M0-1.1L.95-.25V.9H-.95V-.25Z', lines: '', lamp: true },
	transformer: { body: 'M-1-.78H1V.78H-1Z', lines: 'M-.68 .3L-.28-.35L.1 .35L.36-.08H.68', lamp: false },
	sensor: { body: ring(0.85), lines: 'M-.85 0H.85M0-.85A.85 .85 0 0 1 0 .85', lamp: false },
	receptacle: { body: 'M-.8-.9H.8V.9H-.8Z', lines: 'M-.28-.45V-.02M.28-.45V-.02M0 .3V.55', lamp: false },
	'lamp-post': {
		body: ring(0.5),
		lines: 'M-1 0H-.5M.5 0H1M0-1V-.5M0 .5V1M-.71-.71L-.36-.36M.36 .36L.71 .71M-.71 .71L-.36 .36M.36-.36L.71-.71',
		lamp: false
	}
};
