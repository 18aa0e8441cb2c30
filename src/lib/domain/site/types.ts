/** The yard as geometry, in metres, x along the house front, y out towards the street. Every fact resolved. */
import type { Box, Line, Point, Polygon } from '../shared/geometry';
import type { Assumption, Finding, Missing } from '../shared/findings';
import type { Level, Units } from '../yard';

export interface Opening {
	id: string;
	kind: 'door' | 'window' | 'garage';
	/** Metres along the wall from its `from` end. */
	start: number;
	end: number;
	/** Metres above the ground: lower and upper edge. */
	sill: number;
	head: number;
}
export interface Wall {
	id: string;
	name: string;
	of: 'house' | 'garden';
	/** Seen by someone facing the lit side, `from` is at the left. */
	from: Point;
	to: Point;
	/** Unit vector out of the lit side. */
	outward: Point;
	length: number;
	/** Of its eaves, or of its top. */
	height: number;
	/** Height of the point of its gable, over the middle of the wall; null without one. */
	peak: number | null;
	finish: 'light' | 'medium' | 'dark';
	texture: 'smooth' | 'rough';
	light: Level;
	openings: Opening[];
	/** Faces the street (for symmetry about the door). */
	front: boolean;
}
export interface Tree {
	id: string;
	name: string;
	at: Point;
	/** Canopy diameter, tip to tip. */
	spread: number;
	height: number;
	crownBase: number;
	trunkDiameter: number;
	form: 'round' | 'spreading' | 'columnar' | 'conical' | 'vase' | 'weeping' | 'multi-stem' | 'palm';
	ground: 'lawn' | 'bed' | 'gravel';
	light: Level;
	/** A point it is looked at from. */
	seenFrom: Point;
	/** 12 x trunk diameter (rule tree.roots). */
	rootRadius: number;
}
export interface Steps {
	id: string;
	/** Metres along the centre line: foot and head of the flight. */
	start: number;
	end: number;
	treads: number;
}
export interface Crossing {
	id: string;
	kind: 'sleeve' | 'joint' | 'bore';
	/** Metres along the centre line. */
	at: number;
	/** Its ends just outside the left and right edges. */
	left: Point;
	right: Point;
}
/** A walk or a drive: a strip along a line. Left and right as seen going from the street towards the house. */
export interface Strip {
	id: string;
	name: string;
	kind: 'walk' | 'drive';
	/** Flattened: curves are already points. */
	centre: Line;
	width: number;
	length: number;
	/** Edges, one point per centre point (mitred), street end first. */
	left: Line;
	right: Line;
	polygon: Polygon;
	/** Metres along the centre line at which the line turns by more than 30 degrees; `turn` in degrees, positive to the right. */
	bends: { at: number; turn: number }[];
	/** Metres along the centre line where another strip meets it. */
	junctions: { at: number; with: string }[];
	steps: Steps[];
	crossings: Crossing[];
	lights: 'none' | 'left' | 'right' | 'both' | 'either' | 'mouth';
	pattern: 'paired' | 'staggered';
	rail: 'none' | 'left' | 'right' | 'both';
	/** Metres along the centre line at which gate posts stand either side; null: there are none. */
	posts: number | null;
	/** Gates across it, metres along the centre line; each leaf is as long as the strip is wide. */
	gates: { id: string; at: number }[];
	runOffs: { id: string; at: number; side: 'left' | 'right' }[];
	/** Its first point lies at the street, or at a side boundary (a side street). */
	meetsStreet: boolean;
}
export interface Area {
	id: string;
	name: string;
	kind: 'bed' | 'paved' | 'seating' | 'porch' | 'water';
	polygon: Polygon;
	centre: Point;
	light: Level;
	/** water: pond, pool, …; porch: roofed or open; paved: cars where they drive or stand on it. */
	sort?: string;
	/** Underside of a porch's roof above the ground, metres. */
	under?: number;
}
export interface ExistingLight {
	id: string;
	name: string;
	kind: 'street-lamp' | 'porch-light' | 'other';
	at: Point;
	height: number;
	/** Radius within which one can see one's step. */
	reach: number;
}
export interface Site {
	units: Units;
	/** Bearing the front faces, degrees clockwise from north. */
	faces: number;
	surroundings: 'rural' | 'suburb' | 'town';
	/** Ring round the house, porches not included; empty when the front is not known yet. */
	house: Polygon;
	eaves: number;
	walls: Wall[];
	trees: Tree[];
	strips: Strip[];
	areas: Area[];
	existing: ExistingLight[];
	houseNumber: { id: string; name: string; kind: 'number' | 'sign'; width: number; at: Point }[];
	/** y of the street's edge, x of the boundaries. */
	street: number;
	leftBoundary: number;
	rightBoundary: number;
	receptacle: { at: Point; known: boolean; gfci: boolean | 'unsure'; inUseCover: boolean | 'unsure' } | null;
	bounds: Box;
	/** Geometry that cannot be, said at its question (`about`). */
	findings: Finding[];
	assumptions: Assumption[];
	missing: Missing[];
}
