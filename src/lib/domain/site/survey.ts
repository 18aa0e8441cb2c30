import type { About, Finding, Rank } from '../shared/findings';
import { formatLength } from '../shared/units';
import type { Ledger, Units, Yard } from '../yard';

/** What a garden tape is out by where two things are measured from different ends, metres; a millimetre more, so that places told to the centimetre never land on it. */
export const tape = 0.151;

/** The yard being worked on, with what was found and taken for granted so far. */
export interface Survey {
	yard: Yard;
	units: Units;
	ledger: Ledger;
	findings: Finding[];
}
/** Adds a finding about an item; `code` is without its stage. */
export function report(
	survey: Survey,
	rank: Rank,
	code: string,
	about: About,
	message: string,
	rule: string | null = null
): void {
	survey.findings.push({ code: `site.${code}`, rank, message, about, rule });
}
/** A length in the person's units. */
export const measure = (survey: Survey, metres: number): string => formatLength(metres, survey.units);
