import { calledThe, existingLightFacts, signWidth } from '../yard';
import type { Survey } from './survey';
import type { ExistingLight, Site } from './types';

/** Lights that are there already. */
export function existingLights(survey: Survey): ExistingLight[] {
	return (survey.yard.spots.lights ?? []).flatMap((light): ExistingLight[] => {
		const facts = existingLightFacts(light, survey.units, survey.ledger);
		if (!light.at) {
			survey.ledger.missing.push({
				path: `spots.lights.${light.id}.at`,
				message: `Where ${calledThe(light.name, 'light')} is.`
			});
			return [];
		}
		return [{ id: light.id, name: light.name, kind: light.kind, at: { x: light.at.along, y: light.at.out }, ...facts }];
	});
}
/** House numbers and signs that are to be lit. */
export function houseNumbers(survey: Survey): Site['houseNumber'] {
	return (survey.yard.spots.numbers ?? []).flatMap((number) => {
		if (!number.light) return [];
		if (!number.at) {
			survey.ledger.missing.push({
				path: `spots.numbers.${number.id}.at`,
				message: `Where ${calledThe(number.name ?? '', number.kind === 'sign' ? 'sign' : 'house number')} is.`
			});
			return [];
		}
		return [
			{
				id: number.id,
				name: number.name ?? '',
				kind: number.kind ?? 'number',
				width: number.kind === 'sign' ? signWidth(number, survey.units, survey.ledger) : 0,
				at: { x: number.at.along, y: number.at.out }
			}
		];
	});
}
