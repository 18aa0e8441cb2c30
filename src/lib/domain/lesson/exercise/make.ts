/** An exercise made from its id, a class code and the units: the same everywhere and for ever. */
import { makePlan, type Plan } from '../../plan';
import type { Technique } from '../../placement';
import { formatLength, type UnitSystem } from '../../shared/units';
import type { Site } from '../../site';
import type { Yard } from '../../yard';
import { randomOf } from '../random';
import { exerciseVersion, lightKinds, type Exercise, type ExerciseId, type LightKind } from './types';
import { yardOf } from './yards';

/** Longest code that counts; a sheet has room for no more. */
export const longestCode = 24;
/** A code as it counts: case and blanks round it are no part of it. */
export const tidyCode = (code: string): string => code.trim().replace(/\s+/g, ' ').toLowerCase().slice(0, longestCode);

export const techniqueOf: Readonly<Record<LightKind, Technique>> = {
	path: 'path',
	tree: 'uplight',
	drive: 'drive',
	wall: 'wash'
};

/** The yard without any wish for light: what stands there is the group's alone. */
function bareOf(yard: Yard): Yard {
	return {
		...yard,
		house: { ...yard.house, sections: yard.house.sections?.map((one) => ({ ...one, light: 'none' as const })) ?? [] },
		trees: yard.trees?.map((one) => ({ ...one, light: 'none' as const })) ?? [],
		walks: yard.walks?.map((one) => ({ ...one, lights: 'none' as const })) ?? [],
		drives: yard.drives?.map((one) => ({ ...one, lights: 'none' as const })) ?? []
	};
}

const wanted: Readonly<Record<LightKind, string>> = {
	path: 'Light the front walk from the street to the door.',
	tree: 'Light the maple from below. It is looked at from the street.',
	drive: 'Mark the mouth of the drive, where it meets the street.',
	wall: 'Wash the front wall between the left corner and the garage.'
};
function needsOf(kinds: readonly LightKind[], { areas }: Site): string[] {
	const water = areas.find(({ kind }) => kind === 'water');
	return [
		...kinds.map((kind) => wanted[kind]),
		...(water ? [`Stay clear of the ${water.name}: wet people and electricity do not mix.`] : []),
		'Hang the transformer by the receptacle, and say how high its bottom edge is.',
		'Stay off the house and the paving, and on your own lot.'
	];
}
/** Sizes that the drawing alone does not give, one sentence each. */
export function sizesOf({ site }: Plan): string[] {
	const len = (metres: number) => formatLength(metres, site.units);
	const wall = site.walls.find(({ front }) => front);
	const capital = (name: string) => name.charAt(0).toUpperCase() + name.slice(1);
	return [
		...site.trees.map(
			({ name, spread, height, trunkDiameter }) =>
				`${capital(name)}: canopy ${len(spread)} across, ${len(height)} tall, trunk ${len(trunkDiameter)} thick.`
		),
		...site.strips.map(({ name, width }) => `${capital(name)}: ${len(width)} wide.`),
		...(wall ? [`Front wall: ${len(wall.height)} to the eaves.`] : [])
	];
}

function voltAmpsOf(own: Plan, kinds: readonly LightKind[]): Exercise['voltAmps'] {
	return Object.fromEntries(
		kinds.flatMap((kind) => {
			const fixture = own.fixtures.find(({ technique }) => technique === techniqueOf[kind]);
			return fixture ? [[kind, fixture.lamp.voltAmps]] : [];
		})
	);
}
/** Total for any code. */
export function exerciseOf(id: ExerciseId, code: string, units: UnitSystem): Exercise {
	const known = tidyCode(code);
	const yard = yardOf(id, randomOf(`exercise|${exerciseVersion}|${id}|${units}|${known}`), units);
	const bare = bareOf(yard);
	const [own, empty] = [makePlan(yard), makePlan(bare)];
	const kinds = lightKinds.filter((kind) => own.fixtures.some(({ technique }) => technique === techniqueOf[kind]));
	return {
		id,
		title: yard.name ?? id,
		code: known,
		version: exerciseVersion,
		units,
		needs: needsOf(kinds, empty.site),
		bare,
		empty,
		own,
		kinds,
		voltAmps: voltAmpsOf(own, kinds)
	};
}
