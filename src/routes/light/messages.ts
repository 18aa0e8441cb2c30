/** What the page and its painter say to each other. Every request carries a number; its answers carry it back. */
import type { LightMap } from '$lib/domain/light';
import type { Plan } from '$lib/domain/plan';
import type { Box } from '$lib/domain/shared/geometry';
import type { Grid } from '$lib/drawing/light-map/contours';
import type { LuminancePicture, View } from '$lib/night/types';

export type Request = { id: number } & (
	| { kind: 'ground'; plan: Plan; box: Box }
	| { kind: 'walls'; plan: Plan }
	| { kind: 'paint'; plan: Plan; view: View; box: Box; daylight: number }
	/** The picture in hand at another hour. */
	| { kind: 'develop'; daylight: number }
);
/** A picture as a canvas takes it. */
export interface Sheet {
	width: number;
	height: number;
	pixels: Uint8ClampedArray<ArrayBuffer>;
}
/** What each pixel of a picture sees and how much light lies there. */
export type Seen = Pick<LuminancePicture, 'surface' | 'surfaces' | 'lux' | 'view'>;
export type Answer = { id: number } & (
	| { kind: 'ground'; map: LightMap }
	| { kind: 'walls'; walls: Map<string, Grid> }
	/** How much of the fine picture is done, 0 to 1. */
	| { kind: 'progress'; share: number }
	/** A picture is there: first a coarse one, then, `fine`, the one that stays. */
	| { kind: 'painted'; seen: Seen; fine: boolean }
	| { kind: 'developed'; sheet: Sheet }
	| { kind: 'failed'; words: string }
);
