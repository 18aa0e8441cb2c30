/**
 * What the drawing is made of. Places and lengths are metres in the yard's frame (x along the front, y out to the
 * street), which is also the frame of the viewBox; sizes named `px` stay constant on the screen or sheet.
 */
import type { Box, Point } from '../domain/shared/geometry';

export type Ink =
	'house' | 'paving' | 'planting' | 'water' | 'cable' | 'soft' | 'faint' | 'action' | 'device' | 'lamp' | 'look';
/** A step of the false colour of light: `light-map/bands.ts` says of how many lux. */
export type LightFill = `lux-${1 | 2 | 3 | 4 | 5 | 6 | 7 | 8}`;
export type Fill =
	'none' | 'sheet' | 'hatch' | 'dots' | 'bed' | 'grid' | 'ink' | 'planting' | 'light' | 'wash' | 'action' | LightFill;
/** How a fixture throws its light, or what a device is. */
export type Shape =
	| 'triangle'
	| 'half-disc'
	| 'circle'
	| 'square'
	| 'bar'
	| 'diamond'
	| 'pentagon'
	| 'transformer'
	| 'sensor'
	| 'receptacle'
	| 'lamp-post';

interface Named {
	key: string;
}
export interface PathMark extends Named {
	kind: 'path';
	/** SVG path data in metres. */
	d: string;
	ink: Ink;
	/** Line weight, px. */
	weight: number;
	fill: Fill;
	/** Dash and gap lengths, px. */
	dash?: readonly number[];
	/** What it is, for whoever points at it or hears the drawing. */
	title?: string;
}
export interface GlowMark extends Named {
	kind: 'glow';
	at: Point;
	/** Metres. */
	radius: number;
}
export interface SymbolMark extends Named {
	kind: 'symbol';
	at: Point;
	shape: Shape;
	/** Degrees clockwise on the sheet; 0 = as drawn, its point up. */
	turn: number;
	/** Half its width, px. */
	size: number;
	/** A tick towards which the light is aimed: degrees clockwise on the sheet from straight up. */
	aim?: number;
}
export interface TextMark extends Named {
	kind: 'text';
	/** Where the middle of the line of text sits, at its anchor. */
	at: Point;
	text: string;
	anchor: 'start' | 'middle' | 'end';
	/** Text size, px. */
	size: number;
	ink: Ink;
	bold: boolean;
	/** Letters set apart, as on a map. */
	spaced?: boolean;
	/** A thin line back to what the text names. */
	leader?: readonly [Point, Point];
}
export interface DimensionMark extends Named {
	kind: 'dimension';
	from: Point;
	to: Point;
	text: string;
	/** Where on the way its figure stands, 0 to 1; the middle when absent. */
	figureAt?: number;
	/** Lines from the thing measured to the dimension line. */
	witness: readonly (readonly [Point, Point])[];
}
export interface NorthMark extends Named {
	kind: 'north';
	at: Point;
	/** Degrees clockwise on the sheet from straight up. */
	turn: number;
	size: number;
}
export interface ScaleBarMark extends Named {
	kind: 'scale-bar';
	/** Left end of the bar. */
	at: Point;
	/** Metres. */
	length: number;
	parts: number;
	text: string;
}
export type Mark = PathMark | GlowMark | SymbolMark | TextMark | DimensionMark | NorthMark | ScaleBarMark;

export type LayerId =
	'ground' | 'paving' | 'planting' | 'house' | 'light' | 'cable' | 'devices' | 'names' | 'sheet' | 'emphasis';
export interface Layer {
	id: LayerId;
	marks: Mark[];
}

/** Sizes that stay constant on the screen, px. */
export interface Sizes {
	/** Half the width of a fixture. */
	symbol: number;
	/** Fixture labels, dimensions. */
	label: number;
	/** Names of areas, trees, runs. */
	name: number;
}
export interface Drawing {
	/** Metres. */
	box: Box;
	/** Metres to a pixel. */
	px: number;
	sizes: Sizes;
	layers: Layer[];
	/** Between the dots on the ground, metres and in words. */
	grid: { step: number; text: string };
}
