/** Intensity by direction as a polar curve, 0° (the beam) at the foot as photometric sheets have it. Places in px, candela outwards. */
import { measuredPhotometry } from '../../domain/photometry';
import type { MeasuredLight } from '../../domain/shared/catalogue';
import { ticks } from '../chart';
import { mm } from '../path';

export interface PolarCurve {
	/** `C0–C180`; empty where one plane stands for all. */
	plane: string;
	d: string;
	dash: string | undefined;
}
export interface PolarDrawing {
	width: number;
	height: number;
	/** Where the lamp is. */
	centre: { x: number; y: number };
	/** Of the outermost ring. */
	radius: number;
	rings: { candela: number; r: number; text: string; y: number }[];
	rays: { degrees: number; x: number; y: number; text: { x: number; y: number; anchor: 'start' | 'middle' | 'end' } }[];
	curves: PolarCurve[];
	/** Some light goes further than square to the beam, so that the whole circle is drawn. */
	whole: boolean;
}

/** Degrees between two points of a curve where the table has none. */
const stride = 2;
/** px beside the circle and under it, for words. */
const margin = 36;
const foot = 26;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Angles at which a curve is drawn: those of the table, and enough between them that it looks round. */
function anglesOf(vertical: readonly number[]): number[] {
	return vertical.flatMap((angle, i) => {
		const next = vertical[i + 1];
		const parts = next === undefined ? 1 : Math.max(1, Math.ceil((next - angle) / stride));
		return Array.from({ length: parts }, (_, k) => angle + (k * ((next ?? angle) - angle)) / parts);
	});
}

/** `widthPx` as shown: the circle fills it up to a size that is enough. */
export function drawPolar(light: MeasuredLight, widthPx: number): PolarDrawing {
	const { candela } = measuredPhotometry(light);
	const at = (gamma: number, azimuth: number): number => candela(Math.cos(radians(gamma)), azimuth);
	const angles = anglesOf(light.vertical);
	const planes = light.symmetry === 'rotational' ? [0] : [0, 90];
	const all = planes.flatMap((c) => angles.flatMap((g) => [at(g, c), at(g, c + 180)]));
	const peak = Math.max(...all, Number.MIN_VALUE);
	const whole = angles.some((g) => g > 91 && planes.some((c) => Math.max(at(g, c), at(g, c + 180)) > peak / 200));
	const radius = Math.max(60, Math.min(170, widthPx / 2 - margin));
	const centre = { x: widthPx / 2, y: whole ? radius + foot : 14 };
	const steps = ticks(0, peak, 4).filter((step) => step > 0);
	const scale = radius / Math.max(peak, steps.at(-1) ?? 0);
	/** `turn`: degrees off the foot, positive to the right. */
	const place = (turn: number, r: number) => ({
		x: mm(centre.x + r * Math.sin(radians(turn))),
		y: mm(centre.y + r * Math.cos(radians(turn)))
	});
	const curve = (c: number): string => {
		const left = angles.toReversed().map((g) => place(-g, at(g, c + 180) * scale));
		const right = angles.map((g) => place(g, at(g, c) * scale));
		return `M${[...left, ...right].map(({ x, y }) => `${x} ${y}`).join('L')}Z`;
	};
	const turns = whole ? [0, 30, 60, 90, 120, 150, 180, -30, -60, -90, -120, -150] : [0, 30, 60, 90, -30, -60, -90];
	return {
		width: widthPx,
		height: mm(whole ? 2 * (radius + foot) : radius + 14 + foot),
		centre,
		radius,
		rings: steps.map((step) => ({
			candela: step,
			r: mm(step * scale),
			text: String(step),
			y: mm(centre.y + step * scale)
		})),
		rays: turns.map((turn) => {
			const { x, y } = place(turn, radius);
			const words = place(turn, radius + 8);
			const aside = Math.sin(radians(turn));
			const anchor = Math.abs(aside) < 0.1 ? 'middle' : aside > 0 ? 'start' : 'end';
			const down = Math.cos(radians(turn));
			return { degrees: Math.abs(turn), x, y, text: { x: words.x, y: mm(words.y + 4.5 + 5 * down), anchor } };
		}),
		curves: planes.map((c) => ({
			plane: planes.length === 1 ? '' : `C${c}–C${c + 180}`,
			d: curve(c),
			dash: c === 0 ? undefined : '6 4'
		})),
		whole
	};
}
