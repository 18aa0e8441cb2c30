/**
 * Seeded yards for tests: plausible most of the time, awkward now and then (things on top of one another, lines through
 * the house, answers absent or "unsure", sizes at the limits). Always valid by `yardSchema`. The same seed gives the same yard.
 */
import type { CircuitChoice, Yard, YardDrive, YardPoint, YardTree, YardWalk } from './schema';
import { blankYard } from './schema';

/** mulberry32: 32 bits of state, good enough to scatter things in a yard. */
function generator(seed: number): () => number {
	let state = seed >>> 0;
	return () => {
		state = (state + 0x6d2b79f5) >>> 0;
		let mixed = Math.imul(state ^ (state >>> 15), state | 1);
		mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
	};
}
class Dice {
	private readonly next: () => number;
	constructor(seed: number) {
		this.next = generator(seed);
	}
	chance(p: number): boolean {
		return this.next() < p;
	}
	/** To the centimetre, as measured. */
	metres(low: number, high: number): number {
		return Math.round((low + this.next() * (high - low)) * 100) / 100;
	}
	whole(low: number, high: number): number {
		return low + Math.floor(this.next() * (high - low + 1));
	}
	of<T>(...options: T[]): T {
		return options[Math.floor(this.next() * options.length)]!;
	}
	/** The answer most of the time, "unsure" or nothing now and then. */
	answer<T>(value: T): T | 'unsure' | undefined {
		const roll = this.next();
		return roll < 0.06 ? undefined : roll < 0.14 ? 'unsure' : value;
	}
	/** The answer most of the time, nothing now and then. */
	given<T>(value: T): T | undefined {
		return this.next() < 0.07 ? undefined : value;
	}
	list<T>(low: number, high: number, item: (i: number) => T): T[] {
		return Array.from({ length: this.whole(low, high) }, (_, i) => item(i));
	}
}
interface Frame {
	width: number;
	/** How far the front stands out at a place along it. */
	front: (along: number) => number;
	street: number;
	awkward: boolean;
}

/** A yard for a seed. About one in three is awkward on purpose. */
export function randomYard(seed: number): Yard {
	const dice = new Dice(seed);
	const awkward = dice.chance(0.33);
	const sections = dice.list(1, dice.chance(0.1) ? 6 : 3, (i) => ({
		id: `section-${i + 1}`,
		width: dice.metres(awkward ? 0.5 : 3, 9),
		out: dice.given(i === 0 ? 0 : dice.of(0, 1.5, 2.4, -1.2, awkward ? -25 : 0)),
		light: dice.given(dice.of('none' as const, 'soft' as const, 'bright' as const))
	}));
	const width = sections.reduce((sum, section) => sum + section.width, 0);
	const front = (along: number): number => {
		let from = 0;
		const part = sections.find((section) => (from += section.width) >= along);
		return part?.out ?? 0;
	};
	const frame: Frame = { width, front, street: dice.metres(awkward ? 0.5 : 6, 20), awkward };
	const yard: Yard = {
		...blankYard(),
		name: `yard ${seed}`,
		place: {
			units: dice.given(dice.of('feet' as const, 'metres' as const)),
			location: dice.answer({
				name: 'somewhere',
				latitude: dice.metres(-65, 68),
				longitude: dice.metres(-170, 170),
				timeZone: dice.of('UTC', 'America/Chicago', 'Europe/Paris', awkward ? 'Nowhere/None' : 'UTC')
			}),
			faces: dice.answer(dice.whole(0, 359)),
			surroundings: dice.answer(dice.of('rural' as const, 'suburb' as const, 'town' as const))
		},
		house: {
			sections: dice.chance(0.95) ? sections : undefined,
			depth: dice.answer(dice.metres(2, 14)),
			eaves: dice.answer(dice.of(dice.metres(2.2, 6), awkward ? 15 : 2.7)),
			finish: dice.answer(dice.of('light' as const, 'medium' as const, 'dark' as const)),
			texture: dice.answer(dice.of('smooth' as const, 'rough' as const)),
			openings: dice.list(0, 5, (i) => ({
				id: `opening-${i + 1}`,
				kind: dice.of('door' as const, 'window' as const, 'garage' as const),
				wall: dice.of('front' as const, 'front' as const, 'left' as const, 'right' as const),
				along: dice.metres(awkward ? -3 : 0.2, width),
				width: dice.metres(0.6, 3)
			})),
			porches: dice.list(0, 1, (i) => ({
				id: `porch-${i + 1}`,
				along: dice.metres(awkward ? -6 : 0, width),
				width: dice.metres(1, 5),
				depth: dice.metres(0.6, 3),
				roof: dice.given(dice.chance(0.6))
			})),
			left: dice.given({ light: dice.given(dice.of('none' as const, 'soft' as const)) }),
			right: dice.given({ light: dice.given(dice.of('none' as const, 'bright' as const)) })
		},
		lot: {
			street: dice.answer(frame.street),
			left: dice.answer(dice.metres(0, 12)),
			right: dice.answer(dice.metres(0, 12))
		},
		trees: dice.given(dice.list(0, 6, (i) => randomTree(dice, frame, i))),
		walks: dice.given(dice.list(0, 2, (i) => randomWalk(dice, frame, i))),
		drives: dice.given(dice.list(0, 1, (i) => randomDrive(dice, frame, i))),
		spots: randomSpots(dice, frame),
		power: randomPower(dice, frame)
	};
	addDetails(new Dice(seed + 7_777_777), frame, yard);
	// As read from a file: an absent answer has no key.
	return JSON.parse(JSON.stringify(yard)) as Yard;
}
/** Answers that most yards do without, from dice of their own: eaves and gables, windows upstairs, gates, posts, paving, lit beds, signs. */
function addDetails(dice: Dice, frame: Frame, { house, walks, drives, spots }: Yard): void {
	const some = <T>(value: T): T | undefined => (dice.chance(0.4) ? value : undefined);
	for (const section of house.sections ?? []) {
		section.eaves = some(dice.metres(2.2, 6));
		section.gable = some(dice.metres(frame.awkward ? 2 : 5, frame.awkward ? 20 : 9));
	}
	for (const opening of house.openings ?? []) opening.floor = some(dice.of('ground', 'upper'));
	for (const porch of house.porches ?? []) porch.under = some(dice.metres(1.8, frame.awkward ? 8 : 2.8));
	for (const walk of walks ?? [])
		walk.gates = some(
			dice.list(0, 2, (i) => ({ id: `gate-${i + 1}`, at: dice.metres(0, frame.street * (frame.awkward ? 2 : 0.8)) }))
		);
	for (const drive of drives ?? []) drive.postsAt = some(dice.answer(dice.metres(0, Math.min(100, frame.street))));
	for (const bed of spots.beds ?? []) bed.light = some(dice.of('none', 'soft', 'bright'));
	for (const number of spots.numbers ?? []) {
		number.kind = some(dice.of('number', 'sign'));
		number.width = some(dice.answer(dice.metres(0.2, 4)));
	}
	spots.paved = some(
		dice.list(0, 2, (i) => {
			const { along, out } = anywhere(dice, frame);
			const [wide, deep] = [dice.metres(frame.awkward ? 0 : 1, 6), dice.metres(frame.awkward ? 0 : 1, 5)];
			const [right, down] = [Math.min(499, along + wide), Math.min(499, out + deep)];
			const outline = [
				{ along, out },
				{ along: right, out },
				{ along: right, out: down },
				{ along, out: down }
			];
			if (frame.awkward && dice.chance(0.2)) outline.reverse();
			return {
				id: `paved-${i + 1}`,
				name: dice.of('patio', ''),
				outline: dice.given(outline),
				cars: some(dice.chance(0.5))
			};
		})
	);
}
function anywhere(dice: Dice, { width, street, awkward }: Frame): YardPoint {
	if (awkward && dice.chance(0.1)) return { along: dice.metres(-500, 500), out: dice.metres(-500, 500) };
	return { along: dice.metres(-6, width + 6), out: awkward ? dice.metres(-4, street + 2) : dice.metres(3, street) };
}
/** From the street to about the front, with wobbles; awkward ones wander, repeat points and run through the house. */
function lineHome(dice: Dice, frame: Frame, start: number, end: number): YardPoint[] {
	const inner = dice.whole(0, 3);
	const points: YardPoint[] = [{ along: start, out: frame.street }];
	for (let i = 1; i <= inner; i++) {
		const t = i / (inner + 1);
		points.push({
			along: Math.round((start + (end - start) * t + dice.metres(-2, 2)) * 100) / 100,
			out: Math.round(frame.street * (1 - t) * 100) / 100
		});
	}
	points.push({
		along: end,
		out: frame.awkward && dice.chance(0.3) ? -3 : end > 0 && end < frame.width ? frame.front(end) : -2
	});
	if (frame.awkward && dice.chance(0.2)) points.splice(1, 0, points[0]!);
	if (frame.awkward && dice.chance(0.2)) points.push(anywhere(dice, frame));
	if (frame.awkward && dice.chance(0.05)) return [points[0]!, points[0]!];
	return points;
}
function randomTree(dice: Dice, frame: Frame, i: number): YardTree {
	const height = dice.metres(1, frame.awkward ? 40 : 14);
	return {
		id: `tree-${i + 1}`,
		name: dice.of('oak', 'birch', 'hornbeam', 'maple', ''),
		at: dice.given(anywhere(dice, frame)),
		spread: dice.answer(dice.metres(0.3, frame.awkward ? 30 : 10)),
		height: dice.answer(height),
		crownBase: dice.answer(dice.metres(0, frame.awkward ? Math.min(30, height * 1.5) : height * 0.4)),
		trunk: dice.answer(dice.metres(0.03, frame.awkward ? 3 : 0.6)),
		form: dice.answer(dice.of('round', 'spreading', 'columnar', 'conical', 'vase', 'weeping', 'multi-stem', 'palm')),
		ground: dice.answer(dice.of('lawn', 'bed', 'gravel')),
		light: dice.given(dice.of('none', 'soft', 'bright')),
		seenFrom: dice.given(dice.of('street', 'house', 'walk'))
	};
}
const crossings = (dice: Dice, reach: number) =>
	dice.list(0, 2, (i) => ({
		id: `crossing-${i + 1}`,
		at: dice.metres(0, reach * 1.2),
		kind: dice.of('sleeve' as const, 'joint' as const, 'bore' as const)
	}));
function randomWalk(dice: Dice, frame: Frame, i: number): YardWalk {
	return {
		id: `walk-${i + 1}`,
		name: dice.of('front walk', 'side walk', ''),
		line: dice.given(lineHome(dice, frame, dice.metres(0, frame.width), dice.metres(0, frame.width))),
		curved: dice.given(dice.chance(0.4)),
		crossings: dice.given(crossings(dice, frame.street)),
		width: dice.answer(dice.metres(frame.awkward ? 0.3 : 0.9, frame.awkward ? 6 : 2)),
		lights: dice.given(dice.of('none', 'left', 'right', 'both', 'either')),
		rail: dice.given(dice.of('none', 'none', 'left', 'both')),
		steps: dice.given(
			dice.list(0, 2, (j) => ({
				id: `steps-${j + 1}`,
				at: dice.metres(0, frame.street * (frame.awkward ? 2 : 0.8)),
				treads: dice.whole(1, 6),
				going: dice.answer(dice.metres(0.25, 0.5))
			}))
		)
	};
}
function randomDrive(dice: Dice, frame: Frame, i: number): YardDrive {
	const at = dice.chance(0.5) ? -dice.metres(2, 5) : frame.width + dice.metres(2, 5);
	return {
		id: `drive-${i + 1}`,
		name: dice.of('drive', ''),
		line: dice.given(lineHome(dice, frame, at, frame.awkward ? dice.metres(0, frame.width) : at)),
		curved: dice.given(dice.chance(0.4)),
		crossings: dice.given(crossings(dice, frame.street)),
		width: dice.answer(dice.metres(frame.awkward ? 1.5 : 2.6, frame.awkward ? 15 : 5)),
		lights: dice.given(dice.of('none', 'mouth', 'left', 'right', 'both')),
		pattern: dice.given(dice.of('paired', 'staggered')),
		posts: dice.given(dice.chance(0.3)),
		runOffs: dice.given(
			dice.list(0, 2, (j) => ({
				id: `run-off-${j + 1}`,
				at: dice.metres(0, frame.street * 1.3),
				side: dice.of('left' as const, 'right' as const)
			}))
		)
	};
}
function randomSpots(dice: Dice, frame: Frame): Yard['spots'] {
	const finish = () => dice.answer(dice.of('light' as const, 'medium' as const, 'dark' as const));
	return {
		beds: dice.given(
			dice.list(0, 2, (i) => {
				const { along, out } = anywhere(dice, frame);
				const reach = Math.min(499, along + dice.metres(frame.awkward ? 0 : 0.5, 4));
				const outline = [
					{ along, out },
					{ along: reach, out },
					{ along: reach, out: Math.min(499, out + 1) }
				];
				return { id: `bed-${i + 1}`, name: dice.of('rose bed', ''), outline: dice.given(outline) };
			})
		),
		seating: dice.given(
			dice.list(0, 1, (i) => ({
				id: `seating-${i + 1}`,
				name: 'bench',
				at: dice.given(anywhere(dice, frame)),
				across: dice.answer(dice.metres(0.5, 5)),
				light: dice.given(dice.of('none' as const, 'soft' as const))
			}))
		),
		numbers: dice.given(
			dice.list(0, 1, (i) => ({
				id: `number-${i + 1}`,
				at: dice.given({ along: dice.metres(0, frame.width), out: 0 }),
				light: dice.given(dice.chance(0.7))
			}))
		),
		water: dice.given(
			dice.list(0, 1, (i) => ({
				id: `water-${i + 1}`,
				name: dice.of('pond', ''),
				kind: dice.of('pond' as const, 'pool' as const, 'spa' as const, 'fountain' as const),
				at: dice.given(anywhere(dice, frame)),
				length: dice.answer(dice.metres(0.3, frame.awkward ? 30 : 4)),
				width: dice.answer(dice.metres(0.3, 4))
			}))
		),
		lights: dice.given(
			dice.list(0, 2, (i) => ({
				id: `light-${i + 1}`,
				name: 'lamp',
				kind: dice.of('street-lamp' as const, 'porch-light' as const, 'other' as const),
				at: dice.given(anywhere(dice, frame)),
				height: dice.answer(dice.metres(1, 8)),
				reach: dice.answer(dice.metres(1, 10))
			}))
		),
		walls: dice.given(
			dice.list(0, 1, (i) => ({
				id: frame.awkward ? 'left' : `wall-${i + 1}`,
				name: dice.of('garden wall', ''),
				from: dice.given(anywhere(dice, frame)),
				to: dice.given(anywhere(dice, frame)),
				height: dice.answer(dice.metres(0.3, 3)),
				finish: finish(),
				texture: dice.answer(dice.of('smooth' as const, 'rough' as const)),
				light: dice.given(dice.of('none' as const, 'soft' as const, 'bright' as const))
			}))
		)
	};
}
function randomPower(dice: Dice, frame: Frame): Yard['power'] {
	const onFront = (): YardPoint => {
		const along = dice.metres(0.2, frame.width);
		return { along, out: frame.front(along) };
	};
	const spot = () =>
		dice.of<NonNullable<Yard['power']['transformer']>>('suggest', {
			at: frame.awkward ? anywhere(dice, frame) : onFront(),
			on: dice.of('wall', 'post'),
			height: dice.given(dice.metres(0, 2))
		});
	const system = dice.of('awg' as const, 'mm2' as const);
	return {
		receptacle: dice.given(
			dice.of<YardPoint | 'none' | 'unsure'>(
				onFront(),
				onFront(),
				'none',
				'unsure',
				frame.awkward ? anywhere(dice, frame) : onFront()
			)
		),
		gfci: dice.answer(dice.chance(0.8)),
		inUseCover: dice.answer(dice.chance(0.6)),
		transformer: dice.given(spot()),
		sensor: dice.given(spot()),
		hours: dice.answer(
			dice.of(
				{ kind: 'dusk-to-dawn' as const },
				{ kind: 'after-dusk' as const, hours: dice.whole(1, 14) },
				{ kind: 'until' as const, clock: dice.of('23:00', '01:30', '00:00') }
			)
		),
		price: dice.answer({ perKwh: dice.metres(0.05, 0.6), currency: dice.of('USD', 'EUR') }),
		lamp: dice.answer(dice.of('led' as const, 'led' as const, 'halogen' as const)),
		warmth: dice.answer(dice.of(2700 as const, 3000 as const)),
		cable: dice.given(system),
		owned: dice.chance(0.2)
			? {
					transformerVoltAmps: dice.given(dice.whole(40, 600)),
					cableSize: dice.given(system === 'awg' ? dice.of(10, 12, 14, 16) : dice.of(1.5, 2.5, 4)),
					cableLength: dice.given(dice.metres(0, 60))
				}
			: undefined,
		prices: dice.chance(0.1) ? { nothing: dice.metres(0, 10) } : undefined,
		circuit: dice.chance(0.3) ? randomCircuit(dice, system, frame.awkward) : undefined
	};
}
/** Runs set by hand: lamps that are there, named twice or long gone, sizes and taps that are to be had and some that are not. */
function randomCircuit(dice: Dice, system: 'awg' | 'mm2', awkward: boolean): CircuitChoice {
	const lamps = [
		'walk-1/path',
		'walk-2/path',
		'drive-1/mouth',
		'front-1/wash',
		'front-1/graze',
		'tree-1/uplight',
		'steps-1/step',
		'left/wash',
		'right/wash',
		'seating-1/area',
		'number-1/number',
		'gone-1/path'
	].flatMap((stem) => [1, 2, 3].map((k) => `${stem}-${k}`));
	const sizes = system === 'awg' ? [18, 16, 14, 12, 10, 8] : [1, 1.5, 2.5, 4, 6, 10];
	return {
		transformerVoltAmps: dice.chance(0.3) ? dice.of(60, 150, 300, 600, awkward ? 777 : 900) : undefined,
		runs: dice.given(
			dice.list(0, 3, (i) => ({
				id: dice.of(`run-${i + 1}`, `mine-${i + 1}`),
				lamps: dice.chance(0.7) ? lamps.filter(() => dice.chance(0.25)) : undefined,
				size: dice.chance(0.5) ? (awkward ? dice.of(...sizes, 3.3) : dice.of(...sizes)) : undefined,
				tap: dice.chance(0.5) ? dice.of(12, 13, 14, 15, awkward ? 11 : 12) : undefined,
				feed: dice.chance(0.4) ? dice.of('end' as const, 'middle' as const, 'hub' as const) : undefined
			}))
		)
	};
}
