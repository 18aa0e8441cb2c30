/**
 * Where a point comes to that is set near a pointer. A corner goes before an edge, an edge before a line through something else, that
 * before a right angle, that before a round length; of two tracks that cross within reach it is the crossing. The reach is px, the same
 * whatever the zoom. Pure and deterministic: ties go to the nearer, then to the one that comes first on the drawing.
 */
import type { Point } from '../../domain/shared/geometry';
import type { SnapSources } from './snap-sources';
import { alongTrack, crossing, nearestOnTrack, onTrack, tracksNear, type Track } from './snap-tracks';
import { kept, keptPoint, stepFor, stepped, type Step } from './step';
import type { SnapTo, SnapWish, Snapped } from './types';

const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
const stepTo = (step: Step): SnapTo => ({ kind: 'step', words: `every ${step.words}` });

function cornerNear(sources: SnapSources, p: Point, reach: number, except: string | null): Snapped | null {
	let best: { at: Point; words: string } | null = null;
	let least = reach;
	for (const corner of sources.corners) {
		if (Math.abs(corner.at.x - p.x) > least || Math.abs(corner.at.y - p.y) > least) continue;
		if (corner.key !== null && corner.key === except) continue;
		const off = apart(corner.at, p);
		if (off > least || (best && off >= least)) continue;
		best = corner;
		least = off;
	}
	return best && { at: keptPoint(best.at), to: [{ kind: 'corner', words: best.words }] };
}

/** An edge is seen as it is; any other track is shown from what it starts at to the point. */
const toOf = (track: Track, at: Point): SnapTo => ({
	kind: track.kind,
	words: track.words,
	guide: track.kind === 'edge' ? [onTrack(track, track.least), onTrack(track, track.most)] : [track.root, at]
});

/** The best crossing of the first track with another, within reach: by the other's rank, then by distance. */
function crossed(tracks: readonly Track[], p: Point, reach: number): Snapped | null {
	const [first, ...others] = tracks;
	if (!first) return null;
	let best: { at: Point; other: Track; off: number } | null = null;
	for (const other of others) {
		const at = crossing(first, other);
		const off = at ? apart(at, p) : Infinity;
		if (!at || off > reach) continue;
		if (!best || other.rank < best.other.rank || (other.rank === best.other.rank && off < best.off))
			best = { at, other, off };
	}
	if (!best) return null;
	const at = keptPoint(best.at);
	const isOne = first.source === best.other.source && first.kind === 'line';
	return { at, to: isOne ? [toOf(first, at)] : [toOf(first, at), toOf(best.other, at)] };
}

/** The length left free on a track, to a round one: along or out where the track runs so, else from the last point set. */
function steppedOn(track: Track, p: Point, step: Step, reach: number): Snapped {
	const free = alongTrack(track, p);
	const nearest = nearestOnTrack(track, p);
	const settle = (): Point => {
		if (track.kind === 'square') return onTrack(track, stepped(free, step));
		if (Math.abs(track.way.y) < 1e-9) return { x: stepped(nearest.x, step), y: nearest.y };
		if (Math.abs(track.way.x) < 1e-9) return { x: nearest.x, y: stepped(nearest.y, step) };
		return nearest;
	};
	const at = settle();
	// The round length may lie past the end of an edge, or out of reach.
	const isRound = at !== nearest && apart(at, nearestOnTrack(track, at)) < 1e-6 && apart(at, p) <= reach;
	const chosen = keptPoint(isRound ? at : nearest);
	return { at: chosen, to: isRound ? [toOf(track, chosen), stepTo(step)] : [toOf(track, chosen)] };
}

/**
 * The point that a pointer means. `pointer` in metres, `pxPerMetre` the scale of the drawing. Always gives a point: with nothing near it is the
 * pointer's place to a round length along and out that suits the zoom.
 */
export function snapped(pointer: Point, sources: SnapSources, wish: SnapWish, pxPerMetre: number): Snapped {
	const reach = wish.reach / pxPerMetre;
	const step = stepFor(sources.units, pxPerMetre, wish.reach);
	if (wish.on) {
		const corner = cornerNear(sources, pointer, reach, wish.except);
		if (corner) return corner;
		const tracks = tracksNear(sources, pointer, reach, wish);
		const meeting = crossed(tracks, pointer, reach);
		if (meeting) return meeting;
		if (tracks[0]) return steppedOn(tracks[0], pointer, step, reach);
	}
	return { at: { x: stepped(pointer.x, step), y: stepped(pointer.y, step) }, to: [stepTo(step)] };
}

/** The pointer's own place, to a tenth of a millimetre, drawn to nothing. */
export const unsnapped = (pointer: Point): Snapped => ({ at: { x: kept(pointer.x), y: kept(pointer.y) }, to: [] });

/** What it was drawn to, as words: `the edge of Front walk, in line with T2`. */
export const snapWords = ({ to }: Snapped): string => to.map(({ words }) => words).join(', ');
