/** Bare lamps seen from eyes: walking, driving, seated, or indoors behind a pane. Rules glare.shield, glare.level, drive.sight. */
import { between, directionAt, moved, pointAt, type Point } from '../shared/geometry';
import { rules } from '../shared/rules';
import type { Vector } from '../photometry';
import type { Fixture } from '../placement';
import type { Site, Strip, Wall } from '../site';
import { candelaAlong, type Emitter } from './emitter';
import { isBlocked, type Shadows } from './shadows';
import type { Glare } from './types';

/** Heights of eyes, metres: standing, seated; at a window so far above its sill (from memory). At the wheel: rule drive.sight. */
const standing = 1.5;
const seated = 1.2;
const overSill = 0.6;
/** Metres between the places of eyes along a walk or drive; on a long one more. */
const stride = 2;
const mostPlaces = 60;
/** Metres that eyes at a window stand behind the pane's plane, outside of which nothing of the house hides a lamp. */
const atPane = 0.02;
/** Drivers look ahead: a lamp more than so many degrees off their way is not in their sight (from memory). */
const aheadWithin = 60;

interface Eye {
	kind: Glare['eye']['kind'];
	id: string;
	at: Vector;
	/** Way of travel, for eyes that look ahead, either way along it; absent: they look about. */
	way?: Point;
	/** Out of a window: what lies behind its wall is not seen. */
	out?: Point;
}
const eyeAt = ({ x, y }: Point, z: number): Vector => ({ x, y, z });

function alongStrip(strip: Strip): Eye[] {
	const steps = Math.min(mostPlaces, Math.max(1, Math.round(strip.length / stride)));
	return Array.from({ length: steps + 1 }, (_, i): Eye => {
		const at = (strip.length * i) / steps;
		const place = pointAt(strip.centre, at);
		return strip.kind === 'walk'
			? { kind: 'walk', id: strip.id, at: eyeAt(place, standing) }
			: {
					kind: 'drive',
					id: strip.id,
					at: eyeAt(place, rules['drive.sight'].figures.eye),
					way: directionAt(strip.centre, at)
				};
	});
}
const atWindows = (wall: Wall): Eye[] =>
	wall.openings
		.filter(({ kind }) => kind === 'window')
		.map(({ id, start, end, sill }) => {
			const pane = between(wall.from, wall.to, (start + end) / 2 / wall.length);
			return { kind: 'window', id, at: eyeAt(moved(pane, wall.outward, atPane), sill + overSill), out: wall.outward };
		});

/** Where eyes are. */
export function eyesOf(site: Site): Eye[] {
	return [
		...site.strips.filter(({ length }) => length > 0).flatMap(alongStrip),
		...site.areas
			.filter(({ kind }) => kind === 'seating')
			.map(({ id, centre }): Eye => ({ kind: 'seat', id, at: eyeAt(centre, seated) })),
		...site.walls.filter(({ length }) => length > 0).flatMap(atWindows)
	];
}

const cosineOf = (degrees: number): number => Math.cos((degrees * Math.PI) / 180);

/** Whether the eye is turned that way at all; `x`, `y` from the lamp to the eye, unit. */
function looks({ way, out }: Eye, x: number, y: number): boolean {
	if (out) return x * out.x + y * out.y < 0;
	return !way || Math.abs(x * way.x + y * way.y) >= cosineOf(aheadWithin) * Math.hypot(x, y);
}

/**
 * What each fixture sends into the eyes that see its bare source: of each kind of eye the one that gets most. Bare: nothing
 * between, the eye inside the light of the lamp and less than the cowl's angle off its axis (rule glare.level). A shaded
 * head is bare wherever its light gets out under the rim, which is below the horizontal.
 */
export function glareOf(
	site: Site,
	fixtures: readonly Fixture[],
	emitters: readonly Emitter[],
	shadows: Shadows
): Glare[] {
	const eyes = eyesOf(site);
	return fixtures.flatMap((fixture, i) => {
		const worst = new Map<Eye['kind'], { eye: Eye; candela: number }>();
		for (const eye of eyes) {
			const candela = bareCandela(fixture, emitters[i]!, eye, shadows);
			if (candela > (worst.get(eye.kind)?.candela ?? 0)) worst.set(eye.kind, { eye, candela });
		}
		return [...worst.values()].map(({ eye: { kind, id, at }, candela }): Glare => ({
			fixture: fixture.id,
			eye: { kind, id, at },
			bare: true,
			candela,
			remedy: candela > rules['glare.level'].figures.candela ? remedyFor(fixture, kind) : null
		}));
	});
}
/** Candela towards an eye that sees the bare source; 0 where it does not. */
function bareCandela({ aim }: Fixture, emitter: Emitter, eye: Eye, shadows: Shadows): number {
	const { cowl, within } = rules['glare.level'].figures;
	const x = eye.at.x - emitter.x;
	const y = eye.at.y - emitter.y;
	const z = eye.at.z - emitter.z;
	const square = x * x + y * y + z * z;
	if (square > within * within || square < 1e-6) return 0;
	const distance = Math.sqrt(square);
	const cosine = (x * emitter.ax + y * emitter.ay + z * emitter.az) / distance;
	if (cosine < emitter.least || (aim && cosine < cosineOf(cowl))) return 0;
	if (!looks(eye, x / distance, y / distance)) return 0;
	const candela = candelaAlong(emitter, x / distance, y / distance, z / distance);
	if (candela === 0) return 0;
	return isBlocked(shadows, eye.at.x, eye.at.y, eye.at.z, emitter.x, emitter.y, emitter.z) ? 0 : candela;
}

function remedyFor({ technique, label }: Fixture, eye: Eye['kind']): string {
	const name = label === '' ? 'it' : label;
	const from = { walk: 'the walk', drive: 'the drive', seat: 'the seats', window: 'the window' }[eye];
	switch (technique) {
		case 'uplight':
			return `Aim ${name} nearer to upright or away from ${from}, or give it a longer cowl or a louvre.`;
		case 'wash':
		case 'graze':
			return `Turn ${name} closer to the wall, or set its cowl towards ${from}.`;
		case 'step':
		case 'number':
			return `Turn ${name} down, or take one with a hood or a louvre.`;
		default:
			return `Take a wider or deeper shade for ${name}, or lower its head.`;
	}
}
