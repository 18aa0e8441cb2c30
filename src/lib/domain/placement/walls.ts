/** Washing and grazing light on walls: rules wall.setback, wall.spacing, wall.openings, wall.gable, wall.porch, wall.level. */
import { between, moved, towards, type Point } from '../shared/geometry';
import type { FixtureModel } from '../shared/catalogue';
import { rules } from '../shared/rules';
import type { Wall } from '../site';
import type { Cause } from './conflicts';
import { middleOf, type Drafting } from './drafting';
import { lampOnWall, rowExtremes } from './evenness';
import { layOut, piersOf, type Span } from './layout';
import { settle, type Settled } from './wall-gable-even';
import { gableLamps, gableLights, litGable, type GableLamp, type GableLight } from './wall-gable';
import { gableReasons } from './wall-gable-words';
import { rowLevels, wallAim, wallBand } from './wall-level';
import { aimUnder, beforeLamps, leanOf } from './wall-openings';
import {
	besidePorch,
	closedSpans,
	mostOnWall,
	planWall,
	porchSpans,
	wallSetbacks,
	type Porch,
	type WallPlan
} from './wall-plan';
import { porchWords, wallFindings, wallReasons, type WallLevel } from './wall-words';
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

/** What is said alike of every lamp of a row. */
interface RowSaid {
	plan: WallPlan;
	level: WallLevel;
	stations: readonly number[];
}
/** A lamp as it comes out: where along the wall and how high it is aimed. */
interface Lit {
	along: number;
	height: number;
	model: FixtureModel;
	reasons: Reason[];
}
/** A place for a lamp of the row, settled before any of them stands. */
interface Spot {
	/** Metres along the wall. */
	station: number;
	p: Point;
	setback: number;
	/** The light in it that shines up into the gable. */
	gable: GableLamp | null;
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
	readonly #porches: Porch[];
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
		this.#closed = closedSpans(wall, this.#porches, (porch) => this.#beside(porch));
	}

	place(): void {
		const wall = this.#wall;
		const plan = this.#plan;
		const target: Fixture['target'] = { kind: 'wall', id: wall.id };
		const piers = piersOf(wall.length, [...beforeLamps(wall), ...this.#porches]);
		const shifts = new Map<number, number>();
		const stations = this.#stations(piers, shifts);
		const gable = gableLamps(wall, plan, stations, this.#spacing, this.#d.figures);
		// All places before the first lamp stands: one lamp of the row is not in the way of the next.
		const spots = stations.flatMap(
			(at) => this.#spot(at, shifts.get(at), gable.find(({ station }) => station === at) ?? null) ?? []
		);
		const { up, level, uneven } = this.#settled(spots, stations);
		const row: RowSaid = { plan, level, stations };
		for (const spot of spots) {
			const light = up.get(spot);
			const lamp = spot.gable && light ? this.#upLamp(spot.gable, light, spot, row) : this.#rowLamp(spot, row);
			const { along, height, model, reasons } = lamp;
			this.#d.place({
				target,
				role: plan.technique,
				technique: plan.technique,
				at: spot.p,
				model,
				aim: { ...moved(wall.from, this.#along, along), z: height },
				reasons: [...reasons, ...spot.notThere]
			});
		}
		wallFindings(this.#d, wall, target, {
			plan,
			level,
			spacing: this.#spacing,
			stations,
			piers,
			porches: this.#porches,
			caught: this.#porches.some((porch) => this.#beside(porch) > rules['wall.openings'].figures.clear),
			gableDark: litGable(wall, this.#d.figures) !== null && gable.length === 0,
			gableBright: uneven,
			inTheWay: [...this.#inTheWay]
		});
	}

	#settled(spots: readonly Spot[], stations: readonly number[]): Settled<Spot> {
		const shut = [...beforeLamps(this.#wall), ...this.#porches];
		return settle(spots, {
			lightsOf: (gable, spot) => this.#gableLights(gable, spot),
			levelOf: this.#levels(stations),
			aimOf: (spot, model) => this.#aimOf(spot, model),
			ratio: this.#d.figures['wall.spacing'].ratio,
			middle: this.#plan.row.middle,
			spacing: this.#spacing,
			isWall: (x) => shut.every(({ start, end }) => x < start || x > end)
		});
	}

	/** As high as all of the row are aimed, but lower under a window of the upper floor. */
	#aimOf({ station, setback }: Spot, { lamp: { beamAngle } }: FixtureModel): number {
		const { technique, row } = this.#plan;
		if (technique === 'graze') return row.aimHeight;
		return aimUnder(this.#wall, station, { wanted: row.aimHeight, setback, lampHeight: row.lampHeight, beamAngle });
	}
	#rowLamp(spot: Spot, { plan, level, stations }: RowSaid): Lit {
		const { station, setback } = spot;
		const { aimHeight } = plan.row;
		const height = this.#aimOf(spot, level.model);
		const lowered = height < aimHeight - 1e-9 ? height : null;
		const reasons = wallReasons(this.#d, this.#wall, plan, level, stations, { setback, lowered });
		return { along: station, height, model: level.model, reasons };
	}
	#gableLights(gable: GableLamp, { setback }: Spot): GableLight[] {
		const band = wallBand(this.#d.site.surroundings, this.#wall.finish);
		const models = [...this.#d.pick.all('spot').filter(({ mount }) => mount === 'stake'), ...this.#washes];
		const { middle } = this.#plan.row;
		return gableLights(gable, setback, models, { band, aim: wallAim(band, this.#light), middle });
	}
	/** The lamp under the gable, and how it is turned up to it. */
	#upLamp(gable: GableLamp, light: GableLight, { setback }: Spot, { plan, level, stations }: RowSaid): Lit {
		// Where the row's own distance has to do, that is what is said of it.
		const further = wallSetbacks(plan.technique, gable.litHeight, this.#sample, this.#d.figures);
		const own = further.includes(setback) ? { ...plan, litHeight: gable.litHeight } : plan;
		const shared = wallReasons(this.#d, this.#wall, own, level, stations, { setback, lowered: null });
		return {
			along: gable.along,
			height: gable.height,
			model: light.model,
			reasons: [
				...shared.filter(({ rule }) => rule !== 'wall.level'),
				...gableReasons(this.#d, this.#wall, gable, light)
			]
		};
	}
	#beside(porch: Porch): number {
		return besidePorch(porch, this.#plan.row, this.#sample.lamp.beamAngle);
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

	/** The way to turn when two places are as good: towards the street, or the middle of the front; in that middle away from openings. */
	#prefer(): 1 | -1 {
		const { x, y } = this.#along;
		if (Math.abs(y) > 1e-9) return y > 0 ? 1 : -1;
		const middle = between(this.#wall.from, this.#wall.to, 0.5);
		const lean = Math.abs(middle.x - middleOf(this.#d.site)) < 1e-6 ? leanOf(this.#wall, this.#porches) : 0;
		if (Math.abs(lean) > 1e-6) return lean < 0 ? 1 : -1;
		return x * this.#d.handed(middle) > 0 ? 1 : -1;
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
	#setback(at: number, setbacks = this.#plan.setbacks): { setback: number; first: Cause | null } | null {
		let first: Cause | null = null;
		for (const setback of setbacks) {
			const cause = this.#blocked(at, setback);
			if (!cause) return { setback, first };
			first ??= cause;
			if (setbacks === this.#plan.setbacks) this.#inTheWay.add(cause);
		}
		return null;
	}
	#free(at: number): boolean {
		return at >= 0 && at <= this.#wall.length && !this.#isClosed(at) && this.#setback(at) !== null;
	}

	#spot(at: number, from: number | undefined, gable: GableLamp | null): Spot | null {
		// A higher wall wants the lamp further off; where there is no room for that it stands in the row.
		const further = gable ? wallSetbacks(this.#plan.technique, gable.litHeight, this.#sample, this.#d.figures) : [];
		const found = this.#setback(at, [...further, ...this.#plan.setbacks]);
		if (!found) return null;
		const wanted = further[0] ?? this.#plan.setbacks[0]!;
		return {
			station: at,
			p: this.#point(at, found.setback),
			setback: found.setback,
			gable,
			notThere: [...this.#notSetback(found, wanted), ...(from === undefined ? [] : this.#notAlong(at, from))]
		};
	}
	#notSetback({ setback, first }: { setback: number; first: Cause | null }, wanted: number): Reason[] {
		if (!first) return [];
		return [movedReason(this.#d, first, Math.abs(setback - wanted), `${this.#d.len(wanted)} off the wall`)];
	}
	#notAlong(at: number, from: number): Reason[] {
		const aside = Math.abs(at - from);
		const where = 'where an even row has it';
		const cause = this.#blocked(from, this.#plan.setbacks[0]!);
		if (!this.#isClosed(from)) return cause ? [movedReason(this.#d, cause, aside, where)] : [];
		const { clear } = rules['wall.openings'].figures;
		const porch = this.#porches.find(
			(one) => from > one.start - this.#beside(one) && from < one.end + this.#beside(one)
		);
		const door = beforeLamps(this.#wall).some(({ start, end }) => from > start - clear && from < end + clear);
		const not = `Not ${where}, ${this.#d.len(aside)} from here`;
		if (porch && !door)
			return [reason('wall.porch', aside, 'm', `${not}: ${porchWords(this.#d, porch)}.`, { notHere: true })];
		return [reason('wall.openings', aside, 'm', `${not}: that is before a door or a window.`, { notHere: true })];
	}

	#levels(stations: readonly number[]): (up: readonly GableLight[]) => WallLevel {
		const apart = stations.length > 1 ? (stations.at(-1)! - stations[0]!) / (stations.length - 1) : this.#plan.spacing;
		const perLumen = rowExtremes(lampOnWall(this.#plan.row), apart).mean / this.#sample.lamp.lumens;
		const models = this.#washes.length > 0 ? this.#washes : [this.#sample];
		const band = wallBand(this.#d.site.surroundings, this.#wall.finish);
		return rowLevels(models, perLumen, band, wallAim(band, this.#light));
	}
}
