import { daysInYear, msPerDay, planningYear } from './ephemeris';

/** Milliseconds by which local clocks are ahead of UTC, as a list of changes over the planning year and its edges. */
export interface ClockZone {
	name: string;
	offsetAt(ms: number): number;
}
interface Change {
	/** First instant of the offset, milliseconds since 1970. */
	from: number;
	offset: number;
}
const begin = Date.UTC(planningYear, 0, 1) - 3 * msPerDay;
const end = Date.UTC(planningYear, 0, 1) + (daysInYear + 4) * msPerDay;
/** Zones change at least this long apart (Morocco's month of fasting is the shortest, about four weeks). */
const stride = 8 * msPerDay;

function offsetReader(timeZone: string): (ms: number) => number {
	const format = new Intl.DateTimeFormat('en-US', {
		timeZone,
		calendar: 'gregory',
		numberingSystem: 'latn',
		hourCycle: 'h23',
		year: 'numeric',
		month: 'numeric',
		day: 'numeric',
		hour: 'numeric',
		minute: 'numeric',
		second: 'numeric'
	});
	return (ms) => {
		const part: Record<string, number> = {};
		for (const { type, value } of format.formatToParts(ms)) part[type] = Number(value);
		const { year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0 } = part;
		return Date.UTC(year, month - 1, day, hour, minute, second) - Math.floor(ms / 1000) * 1000;
	};
}
/** First whole second in (low, high] at which the offset differs from the one at `low`. */
function changeBetween(read: (ms: number) => number, low: number, high: number): number {
	const before = read(low);
	let [from, to] = [low, high];
	while (to - from > 1000) {
		const middle = from + Math.floor((to - from) / 2000) * 1000;
		if (read(middle) === before) from = middle;
		else to = middle;
	}
	return to;
}
function changesOf(timeZone: string): Change[] {
	const read = offsetReader(timeZone);
	const changes: Change[] = [{ from: -Infinity, offset: read(begin) }];
	for (let at = begin; at < end; at += stride) {
		const last = changes.at(-1)!.offset;
		const next = read(at + stride);
		if (next !== last) changes.push({ from: changeBetween(read, at, at + stride), offset: next });
	}
	return changes;
}
const known = new Map<string, ClockZone | null>();

/** Clock of an IANA time zone through the planning year; null when the name is not one that this machine knows. */
export function clockZone(timeZone: string): ClockZone | null {
	const kept = known.get(timeZone);
	if (kept !== undefined) return kept;
	let zone: ClockZone | null = null;
	try {
		const changes = changesOf(timeZone);
		const offsetAt = (ms: number): number => {
			let k = changes.length - 1;
			while (changes[k]!.from > ms) k--;
			return changes[k]!.offset;
		};
		zone = { name: timeZone, offsetAt };
	} catch (error) {
		// The only way to ask whether a zone exists; the caller turns null into a finding.
		if (!(error instanceof RangeError)) throw error;
	}
	known.set(timeZone, zone);
	return zone;
}
/** Whole hours from UTC by longitude, for want of a known zone: no summer time. */
export function zoneByLongitude(longitude: number): ClockZone {
	const hours = Math.round(longitude / 15);
	const name = hours === 0 ? 'UTC' : `UTC${hours > 0 ? '+' : '−'}${Math.abs(hours)}`;
	return { name, offsetAt: () => hours * 3_600_000 };
}
