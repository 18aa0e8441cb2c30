/** Washing and grazing light on walls: rules wall.setback, wall.spacing, wall.openings, wall.level. */
import { between, moved, towards, type Point } from '../shared/geometry';
import type { FixtureModel } from '../shared/catalogue';
import type { Wall } from '../site';
import type { Cause } from './conflicts';
import type { Drafting } from './drafting';
import { lampOnWall, rowExtremes } from './evenness';
import { layOut, piersOf, type Span } from './layout';
import { lampForWall, wallAim, wallBand } from './wall-level';
import { closedSpans, mostOnWall, planWall, porchSpans, type WallPlan } from './wall-plan';
import { wallFindings, wallReasons, type WallLevel } from './wall-words';
import { moved as movedReason, reason } from './reasons';
import type { Fixture, Reason } from './types';
import { called, capital } from './wording';

/** Metres between the places that are looked at along a wall. */
const grain = 0.25;

/** Walls alike in height and texture share one computation: it is the dearest of the stage. */
export function placeWalls(d: Drafting, walls: readonly Wall[]): void {
	const plans = new Map<string, WallPlan>();
	const planFor = (wall: Wall, model: FixtureModel): WallPlan => {
		const key = `${model.id} ${wall.height} ${wall.texture}`;
		const plan = plans.get(key) ?? planWall(wall, model, d.figures);
		plans.set(key, plan);
		return plan;
	};
	for (const wall of walls) placeWall(d, wall, planFor);
}

function placeWall(d: Drafting, wall: Wall, planFor: (wall: Wall, model: FixtureModel) => WallPlan): void {
	if (wall.light === 'none' || wall.length <= 0) return;
	if (wall.height < d.figures['wall.setback'].lowest) {
		const the = capital(called(wall.name, 'wall'));
		const message = `${the} is ${d.len(wall.height)} high, too low to wash with light. Path lights in front of it do more.`;
		d.say('placement.wall-low', 'look', { kind: 'wall', id: wall.id }, 'wall.setback', message);
		return;
	}
	new WallLights(d, wall, wall.light, planFor).place();
}

/** A place for a lamp of the row, settled before any of them stands. */
interface Spot {
	p: Point;
	foot: Point;
	setback: number;
	/** Why it is not where an even row would have it. */
	notThere: Reason[];
}

class WallLights {
	readonly #d: Drafting;
	readonly #wall: Wall;
	readonly #light: 'soft' | 'bright';
	readonly #along: Point;
	readonly #washes: FixtureModel[];
	/** Where lamps stand does not depend on their lumens, so any wash lamp serves to lay the row out. */
	readonly #sample: FixtureModel;
	readonly #plan: WallPlan;
	readonly #spacing: number;
	readonly #porches: Span[];
	readonly #closed: Span[];
	readonly #inTheWay = new Set<Cause>();

	constructor(
		d: Drafting,
		wall: Wall,
		light: 'soft' | 'bright',
		planFor: (wall: Wall, model: FixtureModel) => WallPlan
	) {
		this.#d = d;
		this.#wall = wall;
		this.#light = light;
		this.#along = towards(wall.from, wall.to);
		this.#washes = d.pick.all('wash');
		this.#sample = this.#washes[0] ?? d.pick({ body: 'wash', strength: light });
		this.#plan = planFor(wall, this.#sample);
		this.#spacing = Math.max(this.#plan.spacing, wall.length / mostOnWall);
		this.#porches = porchSpans(wall, d.site.areas);
		this.#closed = closedSpans(wall, this.#porches);
	}

	place(): void {
		const wall = this.#wall;
		const plan = this.#plan;
		const target: Fixture['target'] = { kind: 'wall', id: wall.id };
		const piers = piersOf(wall.length, [...wall.openings, ...this.#porches]);
		const shifts = new Map<number, number>();
		const stations = this.#stations(piers, shifts);
		// All places before the first lamp stands: one lamp of the row is not in the way of the next.
		const spots = stations.flatMap((at) => this.#spot(at, shifts.get(at)) ?? []);
		const level = this.#level(stations);
		const reasons = new Map(
			plan.setbacks.map((setback) => [setback, wallReasons(this.#d, wall, plan, level, stations, setback)])
		);
		for (const { p, foot, setback, notThere } of spots)
			this.#d.place({
				target,
				role: plan.technique,
				technique: plan.technique,
				at: p,
				model: level.model,
				aim: { x: foot.x, y: foot.y, z: plan.row.aimHeight },
				reasons: [...reasons.get(setback)!, ...notThere]
			});
		const inTheWay = [...this.#inTheWay];
		const porches = this.#porches;
		wallFindings(this.#d, wall, target, { plan, level, spacing: this.#spacing, stations, piers, porches, inTheWay });
	}

	#stations(piers: readonly Span[], shifts: Map<number, number>): readonly number[] {
		const wall = this.#wall;
		const free = (at: number): boolean => this.#free(at);
		const count = Math.max(1, Math.ceil(wall.length / grain - 1e-9));
		return layOut({
			piers,
			length: wall.length,
			spacing: this.#spacing,
			end: Math.min(this.#plan.end, this.#spacing / 2),
			prefer: this.#prefer(),
			free,
			places: Array.from({ length: count }, (_, i) => ((i + 0.5) * wall.length) / count).filter(free),
			shifts,
			doors: wall.front ? wall.openings.filter((o) => o.kind === 'door').map((o) => (o.start + o.end) / 2) : []
		});
	}

	/** The way to turn when two places are as good: towards the street, or towards the middle of the front. */
	#prefer(): 1 | -1 {
		const { x, y } = this.#along;
		if (Math.abs(y) > 1e-9) return y > 0 ? 1 : -1;
		return x * this.#d.handed(between(this.#wall.from, this.#wall.to, 0.5)) > 0 ? 1 : -1;
	}

	#point(at: number, setback: number): Point {
		return moved(moved(this.#wall.from, this.#along, at), this.#wall.outward, setback);
	}
	#blocked(at: number, setback: number): Cause | null {
		return this.#d.ground.blocked(this.#point(at, setback), this.#sample.headDiameter / 2, 'ground');
	}
	#isClosed(at: number): boolean {
		return this.#closed.some((span) => at > span.start + 1e-9 && at < span.end - 1e-9);
	}
	/** The first setback of the rule at which a lamp may stand, with what kept it from the one wanted. */
	#setback(at: number): { setback: number; first: Cause | null } | null {
		let first: Cause | null = null;
		for (const setback of this.#plan.setbacks) {
			const cause = this.#blocked(at, setback);
			if (!cause) return { setback, first };
			first ??= cause;
			this.#inTheWay.add(cause);
		}
		return null;
	}
	#free(at: number): boolean {
		return at >= 0 && at <= this.#wall.length && !this.#isClosed(at) && this.#setback(at) !== null;
	}

	#spot(at: number, from: number | undefined): Spot | null {
		const found = this.#setback(at);
		if (!found) return null;
		return {
			p: this.#point(at, found.setback),
			foot: moved(this.#wall.from, this.#along, at),
			setback: found.setback,
			notThere: [...this.#notSetback(found), ...(from === undefined ? [] : this.#notAlong(at, from))]
		};
	}
	#notSetback({ setback, first }: { setback: number; first: Cause | null }): Reason[] {
		const wanted = this.#plan.setbacks[0]!;
		if (!first) return [];
		return [movedReason(this.#d, first, Math.abs(setback - wanted), `${this.#d.len(wanted)} off the wall`)];
	}
	#notAlong(at: number, from: number): Reason[] {
		const aside = Math.abs(at - from);
		const where = 'where an even row has it';
		const cause = this.#blocked(from, this.#plan.setbacks[0]!);
		if (!this.#isClosed(from)) return cause ? [movedReason(this.#d, cause, aside, where)] : [];
		const because = `Not ${where}, ${this.#d.len(aside)} from here: that is before a door, a window or the porch.`;
		return [reason('wall.openings', aside, 'm', because, { notHere: true })];
	}

	/** The lamp for the row, and its lux on the wall at mid-height. */
	#level(stations: readonly number[]): WallLevel {
		const apart = stations.length > 1 ? (stations.at(-1)! - stations[0]!) / (stations.length - 1) : this.#plan.spacing;
		const perLumen = rowExtremes(lampOnWall(this.#plan.row), apart).mean / this.#sample.lamp.lumens;
		const band = wallBand(this.#d.site.surroundings, this.#wall.finish);
		const models = this.#washes.length > 0 ? this.#washes : [this.#sample];
		const model = lampForWall(models, perLumen, wallAim(band, this.#light));
		return { model, lux: perLumen * model.lamp.lumens, ...band };
	}
}
