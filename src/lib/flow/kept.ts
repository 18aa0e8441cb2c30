/** Answers that stopped applying are kept, out of use, and listed. */
import type { Yard } from '../domain/yard';
import { fullPath, readAnswer } from './answers';
import { describeAnswer } from './describe';
import { allPlaces, applies, itemName, stepForPath } from './steps';
import type { Step } from './types';

export interface KeptAnswer {
	/** Path in the yard. */
	path: string;
	/** What it answers: "Height of the oak". */
	label: string;
	value: string;
	/** The page that decides whether it applies. */
	decidedOn: Step | null;
}
/** What the person answered that no page asks now, in their words and units. */
export function keptAside(yard: Yard): KeptAnswer[] {
	const units = yard.place.units ?? 'feet';
	const asked = new Set<string>();
	const kept: KeptAnswer[] = [];
	for (const place of allPlaces(yard)) {
		const { question, item } = place;
		for (const field of question.fields) {
			const path = fullPath(field.path, item, question.each);
			const value = readAnswer(yard, path);
			if (applies(yard, place) && (field.when?.(yard, item) ?? true)) {
				asked.add(path);
			} else if (value !== undefined) {
				const of = item === null ? '' : ` of the ${itemName(yard, place)}`;
				kept.push({
					path,
					label: `${field.label}${of}`,
					value: describeAnswer(field, value, units),
					decidedOn: stepForPath(yard, path)
				});
			}
		}
	}
	return kept.filter(
		(answer, i) => !asked.has(answer.path) && kept.findIndex((other) => other.path === answer.path) === i
	);
}
