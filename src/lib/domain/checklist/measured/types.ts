/** One line of the first night's sheet. */
export interface MeasuredRow {
	/** Of the reading in `power.measured`: a fixture id, or `terminals/` and the id of the run. */
	key: string;
	/** `W2`, or where it is not a lamp: `The terminals`. */
	label: string;
	/** Volts in the nominal case, and the worst-case band; null where the plan has none. */
	expected: number | null;
	low: number | null;
	high: number | null;
	measured: number | null;
	/** Against the band; null where nothing is measured or nothing expected. */
	off: 'low' | 'high' | 'right' | null;
}
/** What may be wrong, in words. */
export interface Suspicion {
	/** What it is and where, one sentence. */
	says: string;
	/** What to look at, in order. */
	look: string;
}
/** A run as measured. */
export interface RunCheck {
	run: string;
	name: string;
	/** The terminals first, then lamps in the order of the walk, as on the route card. */
	rows: MeasuredRow[];
	verdict: 'as-planned' | 'fault' | 'unexplained' | 'none';
	/** The verdict in a sentence. */
	says: string;
	/** The likeliest first; several where the readings cannot tell them apart. */
	suspicions: Suspicion[];
}
