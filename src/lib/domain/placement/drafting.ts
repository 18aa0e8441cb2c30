/** What every kind of fixture is placed with: the site, its ground, the catalogue, and a place to put what comes out. */
import { bearingOf, distance, type Point } from '../shared/geometry';
import type { FixtureModel } from '../shared/catalogue';
import type { Finding, Rank } from '../shared/findings';
import type { RuleId } from '../shared/rules';
import type { Figures } from '../shared/settings';
import { formatLength } from '../shared/units';
import type { ExistingLight, Site, Tree, Wall } from '../site';
import { causeWords, survey, type Cause, type Ground } from './conflicts';
import { PointGrid } from './grid';
import type { Pick } from './models';
import type { OwnFigures } from './own-figures';
import { reason } from './reasons';
import type { Fixture, Reason } from './types';

export interface Draft {
	target: Fixture['target'];
	/** Last part of the id: `uplight`, `mouth`. */
	role: string;
	technique: Fixture['technique'];
	at: Point;
	model: FixtureModel;
	/** Of the lamp above the ground; the model's own unless given. */
	height?: number;
	/** Point aimed at; absent for a fixed head. */
	aim?: { x: number; y: number; z: number };
	reasons: Reason[];
	/** Order of walking: strips by number, then metres along. Others are ordered by where they stand. */
	order?: { strip: number; at: number };
	/** One of a row that fills a straight: where along it the row has it, metres. Absent: it stands where it does for itself. */
	fills?: number;
}
export interface Placed {
	fixture: Fixture;
	order: Draft['order'];
	fills?: number;
}
export interface Uplight {
	placed: Placed;
	trees: Tree[];
	crowns: { x: number; y: number; z: number }[];
}
export interface Drafting {
	site: Site;
	ground: Ground;
	pick: Pick;
	/** The figures of the rules that are in force here, and what is said of the person's own. */
	figures: Figures;
	own: OwnFigures;
	placed: Placed[];
	findings: Finding[];
	/** A length in the person's units. */
	len: (metres: number) => string;
	place: (draft: Draft) => Placed;
	/** Lights on trees by where they stand, for trees that want one at the same place. */
	uplights: PointGrid<Uplight>;
	/** Bearing and tilt of a beam towards a point. */
	aimed: (at: Point, height: number, point: { x: number; y: number; z: number }) => Fixture['aim'];
	say: (code: string, rank: Rank, target: Fixture['target'], rule: RuleId | null, message: string) => void;
	/**
	 * Whether a light beside another walk or drive than this one stands within `reach` of `p`. `first`: it stands in for one
	 * that comes first there, and is no longer one that merely fills a straight.
	 */
	shared: (p: Point, reach: number, target: Fixture['target'], first?: boolean) => boolean;
	/** Walls whose light marks the edge of a drive, which has no light of its own there. */
	marking: Set<Wall>;
	/** Existing light by which one can see one's step at `p`. */
	servedBy: (p: Point) => ExistingLight | null;
	because: (cause: Cause) => string;
	/** 1 or −1: which way round to look first, the same in a yard and its mirror image. */
	handed: (p: Point) => 1 | -1;
	/** Colour of the lamps here, a reason every fixture has. */
	colour: Reason;
}

export function drafting(site: Site, own: OwnFigures, pick: Pick, kelvin: number, kind: 'led' | 'halogen'): Drafting {
	const { figures } = own;
	const ground = survey(site, figures);
	const placed: Placed[] = [];
	const findings: Finding[] = [];
	const counts = new Map<string, number>();
	const owners = new Map<string, string>();
	const len = (metres: number): string => formatLength(metres, site.units);
	const lowLights = new PointGrid<Placed>(2);
	const middle = middleOf(site);
	const most = figures['warm.colour'].most;
	const colour =
		kind === 'led'
			? reason('warm.colour', kelvin, 'K', `Warm white, ${kelvin} K: not above ${most} K outdoors.`)
			: reason('warm.colour', null, '', `A filament lamp is warm white by itself, below ${most} K.`);

	/** Ids of different kinds may be alike in a yard: the second kind to use one is told apart by its kind. */
	const stemOf = ({ kind, id }: Fixture['target']): string => {
		const owner = owners.get(id) ?? kind;
		owners.set(id, owner);
		return owner === kind ? id : `${kind}-${id}`;
	};
	return {
		site,
		ground,
		pick,
		figures,
		own,
		placed,
		findings,
		len,
		place(draft) {
			const { target, role, technique, at, model, aim, order, fills } = draft;
			const stem = `${stemOf(target)}/${role}`;
			const n = (counts.get(stem) ?? 0) + 1;
			counts.set(stem, n);
			const height = draft.height ?? model.lampHeight;
			const fixture: Fixture = {
				id: `${stem}-${n}`,
				label: '',
				target,
				technique,
				at,
				height,
				aim: aim ? aimed(at, height, aim, site.faces) : null,
				model: model.id,
				mount: model.mount,
				lamp: model.lamp,
				reasons: [...draft.reasons.map(own.reason), colour]
			};
			ground.occupy(at);
			const stood: Placed = { fixture, order, fills };
			placed.push(stood);
			if (technique === 'path' || technique === 'drive') lowLights.add(at, stood);
			return stood;
		},
		uplights: new PointGrid(2),
		aimed: (at, height, point) => aimed(at, height, point, site.faces),
		say(code, rank, target, rule, message) {
			findings.push({
				code,
				rank,
				message: own.words(rule, message),
				about: { kind: target.kind, id: target.id },
				rule
			});
		},
		shared(p, reach, target, first = false) {
			let found = false;
			lowLights.some(p, reach, (light) => {
				if (light.fixture.target.id === target.id) return false;
				found = true;
				if (first) light.fills = undefined;
				return !first;
			});
			return found;
		},
		marking: new Set(),
		servedBy: (p) => site.existing.find((light) => distance(light.at, p) <= light.reach) ?? null,
		because: (cause) => causeWords(cause, len(figures['water.clear'].clear)),
		handed: (p) => (middle >= p.x ? 1 : -1),
		colour
	};
}

/** Bearing and tilt (degrees from straight up) of a beam from a lamp towards a point. */
function aimed(at: Point, height: number, point: { x: number; y: number; z: number }, faces: number): Fixture['aim'] {
	const aside = distance(at, point);
	return {
		// Straight up or down has no bearing of its own: the front's is as good as any and never NaN.
		bearing: aside > 1e-9 ? bearingOf({ x: point.x - at.x, y: point.y - at.y }, faces) : faces,
		tilt: (Math.atan2(aside, point.z - height) * 180) / Math.PI,
		point
	};
}

/** x of the middle of the house front; of the drawing while there is no house. */
export function middleOf(site: Site): number {
	const xs = site.house.length > 0 ? site.house.map((p) => p.x) : [site.bounds.minX, site.bounds.maxX];
	return (Math.min(...xs) + Math.max(...xs)) / 2;
}
