import type { Line, Point } from '../../shared/geometry';

/** A place that the trench goes through. */
export interface RoutePoint {
	/** As on the drawing: `transformer`, the light's label, or a letter of the card's own. */
	label: string;
	/** `crossing`: an end of a way under paving. `hub`: leads part there, without a light. */
	kind: 'transformer' | 'light' | 'hub' | 'bend' | 'crossing';
	at: Point;
	/** Cables part there. */
	branches: boolean;
	/** By two tapes: `2.40 m along, 1.20 m out`. */
	place: string;
	/** What of the yard it is near: `300 mm from the corner of the porch`; empty at a light, which has its flag. */
	near: string;
}
export interface LegCrossing {
	/** What is crossed: its id, and its name: `the front walk`. */
	strip: string;
	under: string;
	kind: 'sleeve' | 'joint' | 'bore';
	/** It is there or planned; false: none was told, it has to be bored. */
	declared: boolean;
	/** Another cable made or took it before this one. */
	shared: boolean;
}
/** One straight stretch, or a stretch that follows an edge, between two points of the card. */
export interface RouteLeg {
	from: RoutePoint;
	to: RoutePoint;
	/** Metres over the ground, along `path`. */
	length: number;
	path: Line;
	/** Which way, and along what: `Left along the front of the house`. */
	way: string;
	/** What its end is near, where the way does not say it already; else empty. */
	near: string;
	/** The whole step in one sentence. */
	words: string;
	/** Least cover over the cable by rule cable.depth, metres; null inside a sleeve or joint that is there. */
	cover: number | null;
	/** How deep, and what protects the cable. */
	protection: string;
	crossing: LegCrossing | null;
	/** Trees among whose roots one digs by hand. */
	roots: string[];
	/** Name of the run in whose trench it lies: nothing to dig. */
	sharedWith: string | null;
	/** Codes of findings that may say more: where practice and the table part ways. */
	findings: string[];
}
/** Cable laid in one go: the main line, or a branch from its joint. */
export interface RouteLine {
	/** `Main line`, `Branch from T8`. */
	title: string;
	/** Metres over the ground: the sum of its legs. */
	ground: number;
	/** Metres of cable, slack and rise included. */
	laid: number;
	legs: RouteLeg[];
}
/** A run as one walks and digs it. */
export interface RouteCard {
	run: string;
	/** As written on the drawing: `run 1`. */
	name: string;
	cable: string;
	/** Metres over the ground and of cable, of all lines. */
	ground: number;
	laid: number;
	/** Metres of that laid for slack at the ends of stretches, and for the rise to the transformer. */
	slack: number;
	rise: number;
	lines: RouteLine[];
	cautions: string[];
	/** Each point once, in the order of the walk. */
	points: RoutePoint[];
}
