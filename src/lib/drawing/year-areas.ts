/** The on-hours of a year as areas on a chart: a column for each night, neighbours joined where their times overlap. */
import type { DuskDay, LitSpan } from '../domain/dusk';

/** Nights in a row that are lit at about the same time: its first night, and the time of each. */
export interface Track {
	first: number;
	spans: LitSpan[];
}
const overlap = (a: LitSpan, b: LitSpan): number => Math.min(a.off, b.off) - Math.max(a.on, b.on);

/** Joins the spans of night after night into tracks; one that meets two goes on with the one it shares most time with. */
export function tracksOf(days: readonly DuskDay[]): Track[] {
	const tracks: Track[] = [];
	let open: Track[] = [];
	days.forEach(({ spans }, index) => {
		const free = new Set(open);
		open = spans.map((span) => {
			const shared = (track: Track): number => overlap(track.spans.at(-1)!, span);
			const best = [...free].reduce<Track | null>((a, b) => (a && shared(a) >= shared(b) ? a : b), null);
			if (best && shared(best) > 0) {
				free.delete(best);
				best.spans.push(span);
				return best;
			}
			const track: Track = { first: index, spans: [span] };
			tracks.push(track);
			return track;
		});
	});
	return tracks;
}
/** The closed outline of a track, in steps of one night. `x` of a night's left edge and `y` of minutes, both in px. */
export function outlineOf(track: Track, x: (day: number) => number, y: (minutes: number) => number): string {
	const edge = (pick: (span: LitSpan) => number): string[] =>
		track.spans.flatMap((span, k) => [
			`${x(track.first + k)} ${y(pick(span))}`,
			`${x(track.first + k + 1)} ${y(pick(span))}`
		]);
	return `M${[...edge(({ on }) => on), ...edge(({ off }) => off).toReversed()].join('L')}Z`;
}
/**
 * Where the words "lights on" have the most room: the middle of the tallest stretch of the longest-lit track, clear of the
 * night at which other words stand; null where there is none.
 */
export function roomFor(
	tracks: readonly Track[],
	least: { nights: number; minutes: number },
	taken: number
): { day: number; minutes: number } | null {
	const wide = tracks.filter(({ spans }) => spans.length >= least.nights);
	const hours = ({ spans }: Track): number => spans.reduce((sum, { on, off }) => sum + off - on, 0);
	const track = wide.toSorted((a, b) => hours(b) - hours(a))[0];
	if (!track) return null;
	const half = Math.ceil(least.nights / 2);
	let best: { day: number; minutes: number; tall: number } | null = null;
	for (let k = half; k <= track.spans.length - half; k++) {
		if (Math.abs(track.first + k - taken) < least.nights) continue;
		// What all nights under the words have in common.
		const under = track.spans.slice(k - half, k + half);
		const [on, off] = [Math.max(...under.map((s) => s.on)), Math.min(...under.map((s) => s.off))];
		if (off - on > (best?.tall ?? least.minutes))
			best = { day: track.first + k, minutes: (on + off) / 2, tall: off - on };
	}
	return best && { day: best.day, minutes: best.minutes };
}
