/** A change to the yard made on the drawing. However it was made (mouse, taps, keys, list), the same change makes the same yard. */
import type { Point } from '$lib/domain/shared/geometry';
import type { ThingKind } from '$lib/drawing/things/types';
import type { Yard } from '$lib/domain/yard';

/** Kinds that can be added on the drawing. `fixture` adds a path light unless `technique` says otherwise. */
export type Addable = Exclude<ThingKind, 'section' | 'opening' | 'porch' | 'steps' | 'run'>;
export type Size = 'spread' | 'width' | 'across' | 'length' | 'height';
export type Edit =
	/** One point for a thing with a place, two or more for a line, three or more for an outline. */
	| { do: 'add'; kind: Addable; points: readonly Point[]; name?: string; technique?: string; sort?: string }
	/** Points for a thing that has none yet, or others in place of all it has. */
	| { do: 'draw'; key: string; points: readonly Point[] }
	/** One handle to a point. */
	| { do: 'move'; key: string; handle: number; to: Point }
	/** The whole of it by so much. */
	| { do: 'shift'; key: string; by: Point }
	/** A point more in a line or outline, after handle `after`. */
	| { do: 'bend'; key: string; after: number; at: Point }
	| { do: 'straighten'; key: string; handle: number }
	/** Metres. */
	| { do: 'size'; key: string; what: Size; to: number }
	| { do: 'name'; key: string; to: string }
	/** Which kind of water, of light that is there, or of number: values of `kind` in the yard. */
	| { do: 'sort'; key: string; to: string }
	| { do: 'remove'; key: string };

export type Edited =
	| {
			ok: true;
			yard: Yard;
			/** What undo would take back: `Oak moved`. */ label: string;
			/** The thing changed or made; null: gone. */ key: string | null;
	  }
	/** Why not, in the person's words; nothing changed. */
	| { ok: false; problem: string };
