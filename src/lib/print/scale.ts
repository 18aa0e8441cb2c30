/** The plan on paper: the largest usual scale at which it fits the sheet, true when printed at 100 %. */
import type { Box, Point } from '../domain/shared/geometry';
import type { UnitSystem } from '../domain/shared/units';

export type Paper = 'letter' | 'a4';
export type Orientation = 'portrait' | 'landscape';
/** Millimetres; Letter is 8.5 × 11 in (ANSI/ASME Y14.1), A4 210 × 297 mm (ISO 216). */
export const papers: Readonly<Record<Paper, { name: string; width: number; height: number }>> = {
	letter: { name: 'Letter', width: 215.9, height: 279.4 },
	a4: { name: 'A4', width: 210, height: 297 }
};
/** Millimetres kept clear at each side, as in `print.css`; and what heading, title block and key need on the plan's sheet. */
const margin = { side: 12, top: 12, bottom: 14 };
const block = 42;
/** Millimetres by which neighbouring sheets of a plan in parts overlap. */
const overlap = 10;

export interface Scale {
	/** One to `ratio`. */
	ratio: number;
	/** As written in the title block. */
	text: string;
}
/** Scales found on common scale rules, metric ones (ISO 5455 and its common in-betweens) and inches to the foot. */
export const scales: Readonly<Record<UnitSystem, readonly Scale[]>> = {
	metres: [50, 75, 100, 200, 250, 500].map((ratio) => ({ ratio, text: `1:${ratio}` })),
	feet: [
		{ ratio: 48, text: '1/4 in = 1 ft' },
		{ ratio: 64, text: '3/16 in = 1 ft' },
		{ ratio: 96, text: '1/8 in = 1 ft' },
		{ ratio: 128, text: '3/32 in = 1 ft' },
		{ ratio: 192, text: '1/16 in = 1 ft' },
		{ ratio: 384, text: '1/32 in = 1 ft' }
	]
};

export interface Part {
	/** Part of the yard on this sheet, metres. */
	box: Box;
	/** Size of the drawing on paper, millimetres. */
	width: number;
	height: number;
	/** Row and column among the sheets, from 1. */
	row: number;
	column: number;
}
export interface Fit {
	scale: Scale;
	orientation: Orientation;
	/** One when the plan fits on one sheet at a usual scale; else parts that overlap, never a shrunk plan. */
	parts: Part[];
	rows: number;
	columns: number;
}

/** Room for the drawing, millimetres. */
export function roomOn(paper: Paper, orientation: Orientation): { width: number; height: number } {
	const { width, height } = papers[paper];
	const [w, h] = orientation === 'portrait' ? [width, height] : [height, width];
	return { width: w - 2 * margin.side, height: h - margin.top - margin.bottom - block };
}

const orientations = ['portrait', 'landscape'] as const;
interface Sheets {
	orientation: Orientation;
	columns: number;
	rows: number;
}
/** The way round that takes fewer sheets at a scale. `box` in metres. */
function fewestSheets(box: Box, paper: Paper, ratio: number): Sheets {
	const along = (metres: number, room: number) => {
		const length = (metres * 1000) / ratio;
		return length <= room ? 1 : Math.ceil((length - overlap) / (room - overlap));
	};
	const choices = orientations.map((orientation) => {
		const room = roomOn(paper, orientation);
		return {
			orientation,
			columns: along(box.maxX - box.minX, room.width),
			rows: along(box.maxY - box.minY, room.height)
		};
	});
	return choices.reduce((best, next) => (next.columns * next.rows < best.columns * best.rows ? next : best));
}

/** How the plan goes on paper. `box` in metres. */
export function fitPlan(box: Box, paper: Paper, units: UnitSystem): Fit {
	const choices = scales[units].map((scale) => ({ scale, ...fewestSheets(box, paper, scale.ratio) }));
	const { scale, orientation, columns, rows } =
		choices.find((choice) => choice.columns * choice.rows === 1) ?? choices.at(-1)!;
	return { scale, orientation, columns, rows, parts: partsOf(box, paper, orientation, scale.ratio, columns, rows) };
}

/** Beyond this the fixtures crowd each other on paper: the plan comes again, larger, in parts. */
const crowded: Readonly<Record<UnitSystem, number>> = { metres: 250, feet: 192 };

/**
 * Sheets at a larger scale to work from when the one-sheet plan is crowded; null when it is not. `busy` are the points
 * of fixtures and cable: a part of the yard without any is left out.
 */
export function detailPlan(box: Box, busy: readonly Point[], fit: Fit, paper: Paper, units: UnitSystem): Fit | null {
	const scale = scales[units].find(({ ratio }) => ratio === crowded[units]);
	if (!scale || fit.scale.ratio <= scale.ratio) return null;
	const { orientation, columns, rows } = fewestSheets(box, paper, scale.ratio);
	const parts = partsOf(box, paper, orientation, scale.ratio, columns, rows).filter((part) =>
		busy.some(({ x, y }) => x >= part.box.minX && x <= part.box.maxX && y >= part.box.minY && y <= part.box.maxY)
	);
	return parts.length === 0 ? null : { scale, orientation, parts, rows, columns };
}

function partsOf(
	box: Box,
	paper: Paper,
	orientation: Orientation,
	ratio: number,
	columns: number,
	rows: number
): Part[] {
	const room = roomOn(paper, orientation);
	const step = { x: ((room.width - overlap) * ratio) / 1000, y: ((room.height - overlap) * ratio) / 1000 };
	return Array.from({ length: rows * columns }, (_, index) => {
		const row = Math.floor(index / columns);
		const column = index % columns;
		const minX = box.minX + column * step.x;
		const minY = box.minY + row * step.y;
		const maxX = Math.min(box.maxX, minX + (room.width * ratio) / 1000);
		const maxY = Math.min(box.maxY, minY + (room.height * ratio) / 1000);
		return {
			box: { minX, minY, maxX, maxY },
			width: ((maxX - minX) * 1000) / ratio,
			height: ((maxY - minY) * 1000) / ratio,
			row: row + 1,
			column: column + 1
		};
	});
}
