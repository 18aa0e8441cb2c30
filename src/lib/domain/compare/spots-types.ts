import type { SpotToTry, SupplyReason, TransformerAnswer } from '../cable';
import type { Point } from '../shared/geometry';

/** What comes of hanging the transformer at one place: the whole circuit laid out from there. */
export interface SpotFigures {
	/** `yours`, `plan`, or the number of the place in the list: `spot-1`. */
	id: string;
	kind: SpotToTry['kind'];
	/** In a few words, in the person's units: `the front of the house, 3.10 m from its left end`. */
	where: string;
	at: Point;
	on: 'wall' | 'post';
	/** Metres to the receptacle; null where there is none. */
	far: number | null;
	/** What to answer to have it there. */
	answer: TransformerAnswer;
	/** Metres of cable, slack included; of trench, shared trench once. */
	cable: number;
	trench: number;
	/** Of paving. */
	crossings: number;
	/** `Supply.cost`: cable, digging, connectors and transformer, in the yard's currency. */
	cost: number;
	/** Volt-amperes of the transformer that it takes. */
	voltAmps: number;
	/** Stop findings of the circuit, and lights that no cable gets to. */
	stops: number;
	unfed: number;
	/** Volts at the lamp that gets least, nominal; null where there is no solution. */
	lowestVolts: number | null;
	/** Cost beyond that of the person's own place, or of the plan's where they told none. Below zero: cheaper. */
	difference: number;
	/** A licensed electrician has to fit a receptacle there first; that is not in the cost. */
	electrician: boolean;
	/** Why the plan hangs it there; empty but for the plan's own. */
	because: SupplyReason[];
	/** What speaks for it or against it, beside the place that it is compared with. */
	why: string;
}
