/** Runs of the plan as they are redone by hand, and what that comes to in a heading. */
import type { Run } from '$lib/domain/cable';
import { byHand, type ByHand, type HandRun } from '$lib/domain/circuit';
import type { Fixture } from '$lib/domain/placement';
import { metresPerFoot } from '$lib/domain/shared/units';
import type { Units } from '$lib/domain/yard';
import { nodeNames } from '$lib/print/words';

export interface Sheet {
	run: Run;
	hand: HandRun;
	/** Null where there is nothing to add up. */
	result: ByHand | null;
}

export function handRun(run: Run, fixtures: readonly Fixture[]): HandRun {
	const names = nodeNames(run, fixtures);
	const at = new Map(run.nodes.map(({ id }, k) => [id, k]));
	return {
		size: run.cable,
		tapVolts: run.tapVolts,
		celsius: run.conductorTemperature,
		ohmsPerKm: run.ohmsPerKm,
		nodes: run.nodes.map(({ id, fixture, volts }, k) => {
			const lamp = fixtures.find((one) => one.id === fixture)?.lamp;
			return {
				name: k === 0 ? 'the transformer' : (names.get(id) ?? id),
				lamp: lamp ? { kind: lamp.kind, voltAmps: lamp.voltAmps } : null,
				volts
			};
		}),
		segments: run.segments.map(({ from, to, length, amps }) => ({
			from: at.get(from)!,
			to: at.get(to)!,
			metres: length,
			amps
		}))
	};
}

export const sheetsOf = (
	{ runs, fixtures }: { runs: readonly Run[]; fixtures: readonly Fixture[] },
	units: Units
): Sheet[] =>
	runs.map((run) => {
		const hand = handRun(run, fixtures);
		return { run, hand, result: byHand(hand, { units }) };
	});

/** A length of cable as a pocket calculator takes it, to hundredths of the person's unit. */
export const lengthFigure = (metres: number, units: Units): string =>
	(units === 'feet' ? metres / metresPerFoot : metres).toFixed(2);

/** `0.31 V more`; by hand less plan. */
const aside = (difference: number): string => {
	const size = Math.abs(difference).toFixed(2);
	return Number(size) === 0 ? 'no volts more or less' : `${size} V ${difference < 0 ? 'less' : 'more'}`;
};
/** Rounded up, so that all of them are within it. */
const within = (differences: readonly number[]): string =>
	`${(Math.ceil(Math.max(...differences.map(Math.abs)) * 100 - 1e-9) / 100).toFixed(2)} V`;

/** What it comes to, in a sentence; `covered`: the plan's figures are not to be given away. */
export function headingOf(sheets: readonly Sheet[], covered: boolean): string {
	if (sheets.length === 0) return 'Nothing to work out by hand yet';
	if (covered) return sheets.length === 1 ? 'Work this run out by hand' : 'Work these runs out by hand';
	const pairs = sheets.flatMap(({ result }) => {
		const [book, thumb] = [result?.handbook.against, result?.thumb.against];
		return book && thumb ? [{ book: book.difference, thumb: thumb.difference }] : [];
	});
	const first = pairs[0];
	if (!first) return 'The plan has no volts to compare with yet';
	if (sheets.length === 1)
		return `By the handbook the lowest lamp gets ${aside(first.book)} than in the plan, by the rule of thumb ${aside(first.thumb)}`;
	const [book, thumb] = [within(pairs.map((pair) => pair.book)), within(pairs.map((pair) => pair.thumb))];
	return `The handbook comes within ${book} of the plan, the rule of thumb within ${thumb}`;
}

/** Lamp with the fewest volts in the plan; null where it has no solution. */
export function planLowest({ nodes }: HandRun): { name: string; volts: number } | null {
	const lamps = nodes.flatMap(({ name, lamp, volts }) => (lamp && volts !== null ? [{ name, volts }] : []));
	return lamps.reduce<{ name: string; volts: number } | null>(
		(least, one) => (least === null || one.volts < least.volts ? one : least),
		null
	);
}
