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
/** Millimetres kept clear at each side; and what heading, title block and key need on the plan's sheet. */
export const margin = { side: 12, top: 12, bottom: 14 };
const block = 42;
/** The same on a sheet of a plan in parts: how the parts join, and which they are, comes on top. */
const blockOfPart = 54;
/** Millimetres by which neighbouring sheets of a plan in parts overlap. */
export const overlap = 10;

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
	/** Letter of the row, number of the column: `B2`. */
	name: string;
}
export interface Fit {
	scale: Scale;
	orientation: Orientation;
	/** One when the plan fits on one sheet at a usual scale; else parts that overlap, never a shrunk plan. */
	parts: Part[];
	rows: number;
	columns: number;
}

/** Room for the drawing, millimetres; `part` of a plan on several sheets. */
export function roomOn(paper: Paper, orientation: Orientation, part = false): { width: number; height: number } {
	const { width, height } = papers[paper];
	const [w, h] = orientation === 'portrait' ? [width, height] : [height, width];
	return { width: w - 2 * margin.side, height: h - margin.top - margin.bottom - (part ? blockOfPart : block) };
}

const orientations = ['portrait', 'landscape'] as const;
interface Sheets {
	orientation: Orientation;
	columns: number;
	rows: number;
}
/** The way round that takes fewer sheets at a scale. `box` in metres. */
function fewestSheets(box: Box, paper: Paper, ratio: number): Sheets {
	const [width, height] = [box.maxX - box.minX, box.maxY - box.minY].map((metres) => (metres * 1000) / ratio) as [
		number,
		number
	];
	const along = (length: number, room: number) =>
		length <= room ? 1 : Math.ceil((length - overlap) / (room - overlap));
	const choices = orientations.map((orientation) => {
		const whole = roomOn(paper, orientation);
		if (width <= whole.width && height <= whole.height) return { orientation, columns: 1, rows: 1 };
		const room = roomOn(paper, orientation, true);
		return { orientation, columns: along(width, room.width), rows: along(height, room.height) };
	});
	return choices.reduce((best, next) => (next.columns * next.rows < best.columns * best.rows ? next : best));
}

/** The plan at a given scale, on as many sheets as that takes. `box` in metres. */
export function planAt(box: Box, paper: Paper, scale: Scale): Fit {
	const { orientation, columns, rows } = fewestSheets(box, paper, scale.ratio);
	return { scale, orientation, columns, rows, parts: partsOf(box, scale.ratio, columns, rows) };
}
/** Parts that show a point at which there is something to do; a sheet of lawn alone is left out. */
export const busyParts = (parts: readonly Part[], busy: readonly Point[]): Part[] =>
	parts.filter(({ box }) => busy.some(({ x, y }) => x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY));

/** How the plan goes on paper. `box` in metres. */
export function fitPlan(box: Box, paper: Paper, units: UnitSystem): Fit {
	const onOne = scales[units].find(({ ratio }) => {
		const { columns, rows } = fewestSheets(box, paper, ratio);
		return columns * rows === 1;
	});
	return planAt(box, paper, onOne ?? scales[units].at(-1)!);
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
	const whole = planAt(box, paper, scale);
	const parts = busyParts(whole.parts, busy);
	return parts.length === 0 ? null : { ...whole, parts };
}

/** Rows go by letters, as on a map's grid. Beyond Z two of them: 27 is AA. */
const letterOf = (row: number): string =>
	row > 26 ? letterOf(Math.floor((row - 1) / 26)) + letterOf(((row - 1) % 26) + 1) : String.fromCharCode(64 + row);

/** Sheets of one size each, so that none is a sliver; neighbours overlap. */
function partsOf(box: Box, ratio: number, columns: number, rows: number): Part[] {
	const shared = (overlap * ratio) / 1000;
	const width = (box.maxX - box.minX + (columns - 1) * shared) / columns;
	const height = (box.maxY - box.minY + (rows - 1) * shared) / rows;
	return Array.from({ length: rows * columns }, (_, index) => {
		const row = Math.floor(index / columns);
		const column = index % columns;
		const minX = box.minX + column * (width - shared);
		const minY = box.minY + row * (height - shared);
		return {
			box: { minX, minY, maxX: minX + width, maxY: minY + height },
			width: (width * 1000) / ratio,
			height: (height * 1000) / ratio,
			row: row + 1,
			column: column + 1,
			name: `${letterOf(row + 1)}${column + 1}`
		};
	});
}
