/** Rules drive.setback, drive.mouth. Left and right as seen going in from the street. */
import { inSweep, mouthAt } from '../../../placement';
import { nearestOnLine } from '../../../shared/geometry';
import { rules } from '../../../shared/rules';
import { distanceToStrip, type Strip } from '../../../site';
import type { RuleRow } from '../types';
import { lengthWorking, measured, rowOf, type Ground, type Measure } from './ground';

const { clear } = rules['drive.setback'].figures;
const { flare } = rules['drive.mouth'].figures;
/** Further than this from a drive a light has nothing to do with its edge, metres. */
const beside = 1.5;
/** Two that stand no more than this apart along the drive read as a pair, metres: our assumption. */
const matched = 0.25;
const reach = rules['drive.spacing'].figures.spacing / 2;

const drivesOf = ({ plan }: Ground): Strip[] => plan.site.strips.filter(({ kind }) => kind === 'drive');

function setbacks(ground: Ground): Measure[] {
	return drivesOf(ground).flatMap((drive) =>
		ground.lights.flatMap(({ kind, fixture, radius }): Measure[] => {
			const edge = distanceToStrip(fixture.at, drive);
			const off = edge - radius;
			if (off > beside && kind !== 'drive') return [];
			return [
				{
					lights: [fixture.label],
					subject: `${fixture.label}’s head is`,
					value: off,
					low: clear,
					high: null,
					from: `from the edge of the ${drive.name}`,
					...(off < 0 ? { fault: `${fixture.label} stands in the paving of the ${drive.name}.` } : {}),
					working: lengthWorking('drive.setback', `${fixture.label}, edge to head`, off, 'e − r', [
						['e', 'from the edge to its middle', edge],
						['r', 'half its head', radius]
					])
				}
			];
		})
	);
}

interface AtMouth {
	label: string;
	side: 'left' | 'right';
	/** Of its head: metres from the edge, and back from the street. */
	off: number;
	back: number;
	along: number;
}
/** Drive lights by the mouth: within half a spacing of where its pair stands, and no further from the edge than the sweep is wide. */
function atMouth(ground: Ground, drive: Strip): AtMouth[] {
	return ground.lights.flatMap(({ kind, fixture, radius }): AtMouth[] => {
		const near = nearestOnLine(fixture.at, drive.centre);
		const off = distanceToStrip(fixture.at, drive) - radius;
		if (kind !== 'drive' || !near || near.side === 'on' || off > flare + 1e-6) return [];
		if (near.at > mouthAt(drive.length, { flare }) + reach + 1e-6) return [];
		const back = ground.plan.site.street - fixture.at.y - radius;
		return [{ label: fixture.label, side: near.side, off, back, along: near.at }];
	});
}
/** Metres outside the arc by which a turning car cuts the corner; below zero inside it. */
function sweepMeasure({ label, off, back }: AtMouth): Measure[] {
	if (off >= flare || back >= flare) return [];
	const value = flare - Math.hypot(flare - off, flare - back);
	return [
		{
			lights: [label],
			subject: `${label} stands`,
			value,
			low: 0,
			high: null,
			from: 'outside the corner that a turning car cuts',
			...(inSweep(off, back, flare) ? { fault: `${label} stands in the corner that a turning car cuts.` } : {}),
			working: lengthWorking('drive.mouth', `${label}, outside the arc`, value, 'f − √((f − e)^2 + (f − s)^2)', [
				['f', 'radius of the arc', flare],
				['e', 'from the edge of the drive to its head', off],
				['s', 'from the street to its head', back]
			])
		}
	];
}
function mouthRow(ground: Ground): RuleRow {
	const drives = drivesOf(ground);
	if (drives.length === 0) return rowOf('drive.mouth', 'none', ['There is no drive.']);
	const hint =
		'Stand one light on each side, as far in from the street as each other, clear of the corners that cars cut.';
	const measures: Measure[] = [];
	const missing: string[] = [];
	for (const drive of drives) {
		const lights = atMouth(ground, drive);
		measures.push(...lights.flatMap(sweepMeasure));
		const [left, right] = (['left', 'right'] as const).map((side) => {
			const first = lights.filter((one) => one.side === side).toSorted((a, b) => a.along - b.along)[0];
			if (!first) missing.push(`No drive light marks the ${side} side of the mouth, going in from the street.`);
			return first;
		});
		if (left && right)
			measures.push({
				lights: [left.label, right.label],
				subject: `${left.label} and ${right.label} stand`,
				value: Math.abs(left.along - right.along),
				low: null,
				high: matched,
				from: 'apart along the drive'
			});
	}
	if (missing.length === 0) return measured('drive.mouth', measures, ground, { hint, none: 'There is no drive.' });
	return rowOf('drive.mouth', missing.length < 2 * drives.length ? 'nearly' : 'not', missing, { hint });
}
export const driveRows = (ground: Ground): RuleRow[] => [
	measured('drive.setback', setbacks(ground), ground, {
		hint: 'Move it back from the edge: tyres and snow shovels stray that far.',
		none: drivesOf(ground).length > 0 ? 'No light stands by the drive.' : 'There is no drive.'
	}),
	mouthRow(ground)
];
