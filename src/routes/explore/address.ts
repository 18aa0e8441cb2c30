/** The figure in question, in the page's address: by its key, or as another page shows it. */
import type { PlanFigure } from '$lib/domain/lesson/explore';
import { findFigure } from '$lib/domain/lesson/explore';

/** `#f=light%2Foak%2Fuplight-1%2Fvolts` */
export const hashOf = (key: string): string => `#${new URLSearchParams({ f: key })}`;

/** The figure that an address names; null where the plan has it not; undefined where the address names none. */
export function figureAt(hash: string, figures: readonly PlanFigure[]): PlanFigure | null | undefined {
	const told = new URLSearchParams(hash.replace(/^#/, ''));
	const [key, label, text, at] = ['f', 'label', 'text', 'at'].map((name) => told.get(name) ?? undefined);
	if (key !== undefined) return figures.find((figure) => figure.key === key) ?? null;
	if (label === undefined) return undefined;
	return findFigure(figures, { label, text: text ?? '', at });
}
/** Where nothing is named: the light at which the volts are lowest, else what a year costs. */
export function usualFigure(figures: readonly PlanFigure[]): PlanFigure | null {
	const volts = figures.filter(({ key }) => key.startsWith('light/') && key.endsWith('/volts'));
	const [lowest] = volts.toSorted((a, b) => a.value - b.value);
	return lowest ?? figures.find(({ key }) => key === 'year/cost') ?? figures[0] ?? null;
}
