/**
 * Where house, door, walk, drive and street lie for a shape. x along the front to the right, y out to the street, metres;
 * sizes are common practice, no source, where none is named.
 */
import type { Point } from '../shared/geometry';
import type { QuickAnswers } from './types';

export const sizes = {
	/** Front door: 36 in, from memory the usual leaf behind the 32 in clear that IRC R311.2 asks for. */
	door: 0.9,
	/** Two people abreast; IRC R311.3's landing is 36 in deep, from memory. */
	walk: 1.2,
	/** One car, 10 ft. */
	drive: 3,
	eaves: 2.7,
	window: 1.5,
	/** House front and depth where nothing asks for more. */
	front: 12,
	depth: 9,
	/** Street to front where no walk tells it. */
	setback: 9,
	/** The same where the house is set far back. */
	farBack: 24,
	/** Between house and drive, and between drive and garage. */
	gap: 0.9
} as const;

/** A drive or a part of it, from the street inwards. */
export interface DriveStrip {
	id: 'drive' | 'drive-inner' | 'drive-branch';
	line: Point[];
	lit: boolean;
}
export interface Frame {
	width: number;
	/** Of the stretch of front that is lit, from the left corner. */
	wall: number;
	/** Middle of the door. */
	door: number;
	street: number;
	/** From street or drive to the door; empty: none. */
	walk: Point[];
	/** The one side of it that takes lights, as one walks to the door: the receptacle's, so that no cable has to pass under it. */
	lightsOn: 'left' | 'right';
	drives: DriveStrip[];
	/** The drive that cable has to pass under, and how far along it; null: none has to be. */
	crossing: { drive: DriveStrip['id']; at: number } | null;
	/** Wall of the garage on which the receptacle is, its front end and its back end; null: the receptacle is on the house. */
	garage: { from: Point; to: Point } | null;
}
type Asked = Pick<QuickAnswers, 'walk' | 'drive' | 'wall' | 'shape' | 'clear'>;

/** Where a drive past the house ends if nothing asks for more, and where cable passes under it: metres out from the front. */
export const pastHouse = -6;
const crossingOut = 2;

interface Walk {
	line: Point[];
	/** How far out the street is at the least. */
	street: number;
}
/** The walk of a shape; `length` metres along its middle. */
function walkOf({ walk: length, shape }: Asked, door: number): Walk {
	const end = { x: door, y: 0 };
	if (length === 0) return { line: [], street: shape === 'deep' ? sizes.farBack : sizes.setback };
	if (shape === 'bent') {
		// Straight from the door, then half a right angle to the left, away from the drive.
		const straight = 0.45 * length;
		const aside = (length - straight) / Math.SQRT2;
		const street = straight + aside;
		return { line: [{ x: door - aside, y: street }, { x: door, y: straight }, end], street };
	}
	if (shape === 'corner') {
		const out = Math.min(2.4, length / 3);
		const turn = { x: door, y: out };
		return { line: [{ x: door + length - out, y: out }, turn, end], street: Math.max(sizes.setback, out + 4) };
	}
	return { line: [{ x: door, y: length }, end], street: length };
}
/** Front width, with a window's room right of the door, and no further than the drive that a walk from the side starts at. */
function widthOf({ shape }: Asked, door: number, walk: readonly Point[]): number {
	const usual = Math.max(sizes.front, door + 4.5);
	const start = walk[0];
	if (shape !== 'corner' || !start) return usual;
	return Math.max(door + sizes.door, Math.min(usual, start.x - sizes.gap));
}

/** The drive beside the house, from the street to as far as marked, and on to `reach` where something needs it to. */
function sideDrives(x: number, street: number, marked: number, reach: number | null): DriveStrip[] {
	const end = street - marked;
	const strips: DriveStrip[] = [];
	const at = (y: number): Point => ({ x, y });
	if (marked > 0) strips.push({ id: 'drive', line: [at(street), at(end)], lit: true });
	if (reach !== null && end - reach > 0.5)
		strips.push({ id: marked > 0 ? 'drive-inner' : 'drive', line: [at(end), at(reach)], lit: false });
	return strips;
}
function crossingIn(drives: readonly DriveStrip[], out: number): Frame['crossing'] {
	for (const { id, line } of drives) {
		const [from, to] = [line.at(-2)!, line.at(-1)!];
		const before = line.length === 3 ? Math.abs(line[1]!.x - line[0]!.x) : 0;
		const at = from.y - out;
		if (at >= 0.6 && from.y - to.y - at >= 0.6 && from.x === to.x) return { drive: id, at: before + at };
	}
	return null;
}

/** A walk shorter than this cannot come round a corner from the drive, metres. */
const cornerLeast = 3;
/** The shape as far as the walk has room for it. */
const shapeFor = ({ shape, walk }: Asked): Asked['shape'] =>
	shape === 'corner' && walk < cornerLeast ? 'straight' : shape;

/** The frame of a yard: total for answers that are held. `behind`: where a drive ends that cable has to cross. */
export function frameOf(answers: Asked, behind: number = pastHouse): Frame {
	const asked = { ...answers, shape: shapeFor(answers) };
	const { wall, drive: marked, shape, clear } = asked;
	const door = wall > 0 ? wall + 1.5 : sizes.front / 2;
	const { line: walk, street: least } = walkOf(asked, door);
	const width = widthOf(asked, door, walk);
	const isCrossed = clear.includes('drive-crossing');
	const inLine = shape === 'deep' && walk.length > 0;
	const fromDrive = shape === 'corner' && walk.length > 0;
	const half = sizes.drive / 2;
	const beside = (fromDrive ? walk[0]!.x : width + sizes.gap) + half;
	const street = inLine ? least + (marked > 0 ? marked : sizes.farBack - sizes.setback) : least;
	const drives: DriveStrip[] = [];
	if (inLine) {
		const line = [{ x: door, y: street }, walk[0]!];
		drives.push({ id: 'drive', line, lit: marked > 0 });
		const turn = Math.min(street - half, least + half);
		const branch = [door, beside, beside].map((x, i) => ({ x, y: i < 2 ? turn : behind }));
		if (isCrossed) drives.push({ id: 'drive-branch', line: branch, lit: false });
	} else {
		const reach = isCrossed ? behind : fromDrive ? walk[0]!.y - half : null;
		drives.push(...sideDrives(beside, street, marked, reach));
	}
	const edge = beside + half + sizes.gap;
	const garage = isCrossed ? { from: { x: edge, y: 1 }, to: { x: edge, y: pastHouse } } : null;
	return {
		width,
		wall,
		door,
		street,
		walk,
		lightsOn: garage && !fromDrive ? 'right' : 'left',
		drives,
		crossing: isCrossed ? crossingIn(drives, crossingOut + (fromDrive ? walk[0]!.y : 0)) : null,
		garage
	};
}
