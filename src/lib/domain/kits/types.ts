/**
 * A shop's shelf, what a plan needs of it, and which of it to buy. Pure: prices in the shelf's own currency, lengths in
 * metres, volts, volt-amperes.
 */
import type { CableSize, RunShape } from '../circuit';
import type { UnitSystem } from '../shared/units';

// ---- the shelf ---------------------------------------------------------------------------------------------------

/** What a fixture is for. A spot stands on a stake, a well light is set flush; a marker is a low path light for a drive. */
export type FixtureKind = 'spot' | 'well' | 'wash' | 'path' | 'marker' | 'step';
export interface ShelfLamp {
	source: 'led' | 'halogen';
	watts: number;
	/** Drawn on the low-voltage side; where the shelf does not say, an LED's watts over 0.8 (rule supply.load), a halogen's watts. */
	voltAmps: number;
	lumens: number;
	/** Full angle at half the centre intensity, degrees; null: not told. */
	beam: number | null;
	/** The window in which it serves, volts; where the shelf does not say, 9 to 15 for LED, 10.8 to 12 for halogen (rule cable.volts). */
	minVolts: number;
	maxVolts: number;
	/** Kelvin; null: not told. */
	colour: number | null;
}
export interface ShelfFixture {
	kind: FixtureKind;
	lamp: ShelfLamp;
}
export interface ShelfTransformer {
	voltAmps: number;
	/** Open-circuit volts, ascending. */
	taps: number[];
	secondaries: number;
	/** Fraction by which terminal volts sag at rated load. */
	regulation: number;
}
export interface ShelfCable {
	size: CableSize;
	/** Metres of one piece. */
	metres: number;
}
/** What one piece of a line holds. */
export interface Contents {
	/** One kind of fixture, or in a kit several; `product` names what is the same fixture wherever it is sold. */
	fixtures: { product: string; fixture: ShelfFixture; count: number }[];
	transformer: ShelfTransformer | null;
	/** Pieces of cable. */
	cable: (ShelfCable & { count: number })[];
	/** Connectors rated for direct burial. */
	connectors: number;
}
export type LineKind = 'kit' | 'fixture' | 'transformer' | 'cable' | 'connectors';
/** One line of the shelf: a kit or a loose item. */
export interface ShelfLine {
	/** The shop's stock code, as text: `0017`. Unique on a shelf. */
	code: string;
	kind: LineKind;
	name: string;
	/** Of one, in hundredths of the currency: whole. */
	cents: number;
	/** How many there are; null: not told, as many as wanted. */
	stock: number | null;
	/** Where it stands in the shop: `Aisle 4, bay 2`. */
	place: string | null;
	contents: Contents;
	/** No line of the shop: the customer has it. */
	isOwned?: true;
}
export interface Shelf {
	/** Of the shop or the list. */
	name: string;
	/** As it stands before or after a price: `USD`, `$`, `€`. */
	currency: string;
	lines: ShelfLine[];
}

// ---- what a plan needs of it --------------------------------------------------------------------------------------

/** Lights that are alike: one product serves all of them, so that what is seen together looks alike (rule cable.volts). */
export interface FixtureNeed {
	id: string;
	kind: FixtureKind;
	/** Ids of the plan's fixtures, and how they are lettered on the drawing. */
	fixtures: string[];
	labels: string[];
	/** Of the plan's lamp. */
	lumens: number;
	/** Degrees; null: no beam is asked for. */
	beam: number | null;
	source: 'led' | 'halogen';
}
/**
 * One run of cable. The shape's loads carry the plan's fixture ids and its lamps; a product's lamp takes their place when a combination
 * is tried. `alike` names what a light stands at, for lamps of any kind: only filament lamps of one product are asked to look alike.
 */
export interface RunNeed {
	id: string;
	name: string;
	shape: RunShape;
	/** Metres of cable laid, slack included, and what is cut off for waste. */
	metres: number;
}
export interface Needs {
	fixtures: FixtureNeed[];
	runs: RunNeed[];
	connectors: number;
	/** The sizes that cable may have here. */
	system: CableSize['system'];
	/** In which words about lengths are written. */
	units: UnitSystem;
	/** Hours of digging and laying, from the plan. */
	hours: number | null;
}
/** Whether a product serves a need, and in the person's words why not; `note`: what is to be said where it does. */
export type Fit = { ok: true; note?: string } | { ok: false; why: string };

// ---- what to buy --------------------------------------------------------------------------------------------------

/** A way to meet the needs, before what it costs. One product for each need, one size of cable for each run, one transformer. */
export interface Setup {
	/** By need, in the order of `Needs.fixtures`: the product. */
	products: string[];
	/** By run: the size of its cable. */
	sizes: CableSize[];
	/** Code of the line that the transformer comes in. */
	transformer: string;
}
/** How a setup does on the needs' runs, solved exactly. */
export interface Judged {
	ok: boolean;
	/** By fixture id, volts nominal and in the worst cases (rule cable.corners); null: no solution. */
	lamps: {
		fixture: string;
		label: string;
		volts: number | null;
		low: number | null;
		high: number | null;
		least: number;
		most: number;
	}[];
	/** By run, the tap it hangs on. */
	taps: number[];
	loadVoltAmps: number;
	limitVoltAmps: number;
	/** Volts of the tightest lamp inside its window in the worst case; negative: outside. */
	margin: number | null;
	/** What is wrong, the worst first, in the person's words; empty when `ok`. */
	problems: { code: string; fixture: string | null; label: string | null; message: string }[];
	/** What is to be weighed and stops nothing: a filament lamp outside its window in the worst case only, or unlike its neighbours. */
	notes: string[];
}
export interface Bought {
	code: string;
	count: number;
}
export interface Solution {
	/** Kits and loose items, in the order of the shelf. */
	buys: Bought[];
	cents: number;
	setup: Setup;
	judged: Judged;
	/** Of what was bought and is not used: `2 path lights`, in words. */
	spare: string[];
	/** Volt-amperes that can still be added within the load limit. */
	growth: number;
	/** What is to be said of it, in words: a beam that the shelf does not tell, LED where halogen was asked for, what `judged` notes. */
	notes: string[];
}
export interface KitVerdict {
	code: string;
	/** It is part of the cheapest. */
	isIn: boolean;
	/** One sentence: why in or out. */
	why: string;
	/** What it lacks for this plan, in words: `4 path lights short`, `9 m of cable short`. */
	short: string[];
	spare: string[];
	/** As it comes, with its own cable and transformer and as many of it as the lights need: solved. Null where it has no transformer, no cable, or serves no need. */
	alone: Judged | null;
	/** The lamp that would be dim, worst first. */
	dim: { label: string; volts: number; least: number } | null;
	/**
	 * The cheapest that passes with this kit in it, and what it costs more than the best, hundredths; below 0 only where the match is not
	 * proven. Null: none passes.
	 */
	withIt: { buys: Bought[]; moreCents: number } | null;
	/** False where the search for `withIt` broke off before it was sure: there may be a cheaper one, or one at all. */
	isProven: boolean;
	/** What to add or change to make it pass, in words; null where nothing is wrong or nothing helps. */
	remedy: string | null;
	/** Volt-amperes left for more lights, of its transformer within the load limit. */
	growth: number | null;
}
export interface Match {
	/** False where the search broke off before it was sure: what is shown passes, but there may be cheaper, or something where nothing was found. */
	isProven: boolean;
	best: Solution | null;
	/** The next cheapest that pass, each with another choice of kits; at most two. */
	runnersUp: Solution[];
	/** Every kit of the shelf, in its order. */
	kits: KitVerdict[];
	/** Why nothing passes, or that it is not known whether anything does, and what would help; empty when something was found. */
	lacking: string[];
}

// ---- what the customer has ----------------------------------------------------------------------------------------

export interface Owned {
	transformer: { voltAmps: number; taps?: number[] } | null;
	halogens: { count: number; watts: number } | null;
	cable: { size: CableSize; metres: number } | null;
}
export interface OwnedVerdict {
	what: 'transformer' | 'halogens' | 'cable';
	/** Keep it; use it in a place that is told; replace it. */
	verdict: 'keep' | 'reuse' | 'replace';
	/** What it is: `150 VA transformer`. */
	name: string;
	why: string;
	/** Where it can serve, for `reuse`. */
	where: string | null;
}
