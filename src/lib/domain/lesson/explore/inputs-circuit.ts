/** What of the circuit may be moved: the kind of lamp, the transformer, and cable and tap of each run. */
import type { Run } from '../../cable';
import { sizeName, usualSizes } from '../../circuit';
import type { Plan } from '../../plan';
import { transformers } from '../../shared/catalogue';
import { capital, pointSchema, spotSchema, type CircuitChoice, type RunChoice, type Yard } from '../../yard';
import { lengthInput, listInput, pointInputs, type Spot } from './input';
import type { YardInput } from './types';

const circuit = ['power', 'circuit'];
const lampsOf = (run: Run): string[] => run.nodes.flatMap(({ fixture }) => fixture ?? []);

/** The entry of `power.circuit.runs` that a run comes from: by id, else by a lamp it names, else the one that takes what is left. */
function entryOf(entries: readonly RunChoice[], run: Run): RunChoice | undefined {
	const lamps = lampsOf(run);
	const own = entries.find(({ id }) => id === run.id);
	if (own || run.byHand.length === 0) return own;
	return entries.find((one) => one.lamps?.some((lamp) => lamps.includes(lamp))) ?? entries.find((one) => !one.lamps);
}
/** The circuit with something of a run held. Among several runs it names its lamps, so that they stay together. */
function held(told: CircuitChoice | undefined, runs: readonly Run[], run: Run, set: Partial<RunChoice>): CircuitChoice {
	const entries = told?.runs ?? [];
	const own = entryOf(entries, run);
	if (own) return { ...told, runs: entries.map((one) => (one === own ? { ...own, ...set } : one)) };
	const entry = { id: run.id, ...(runs.length > 1 ? { lamps: lampsOf(run) } : {}), ...set };
	return { ...told, runs: [...entries, entry] };
}
function runInputs(spot: Spot, { runs, supply }: Plan): YardInput[] {
	return runs.flatMap((run) => {
		const sizes = usualSizes(run.cable.system);
		const thickness = sizes.findIndex(({ size }) => size === run.cable.size);
		const here = { ...spot, of: run.name, about: run.id };
		const set = (part: Partial<RunChoice>, { power }: Yard) => held(power.circuit, runs, run, part);
		return [
			...(thickness < 0
				? []
				: listInput(
						here,
						circuit,
						`power.circuit.${run.id}.size`,
						'Thickness of the cable',
						sizes.map((_, k) => k),
						thickness,
						(k) => sizeName(sizes[k]!),
						(k, yard) => set({ size: sizes[k]!.size }, yard)
					)),
			...listInput(
				here,
				circuit,
				`power.circuit.${run.id}.tap`,
				'Tap of the transformer',
				supply?.taps ?? [],
				run.tapVolts,
				(volts) => `${volts} V`,
				(tap, yard) => set({ tap }, yard)
			)
		];
	});
}
/** Where the receptacle and the transformer are, as far as that was told. */
function supplyInputs(spot: Spot, { power }: Yard): YardInput[] {
	const { transformer } = power;
	const told = transformer && transformer !== 'suggest' ? transformer : null;
	const path = ['power', 'transformer'];
	return [
		...pointInputs({ ...spot, of: 'the receptacle' }, ['power', 'receptacle'], pointSchema.shape),
		...(told
			? [
					...pointInputs(spot, [...path, 'at'], pointSchema.shape),
					...lengthInput(
						spot,
						[...path, 'height'],
						'Height of its lower edge',
						spotSchema.shape.height,
						told.height ?? null
					)
				]
			: [])
	];
}
export function circuitInputs(yard: Yard, plan: Plan): YardInput[] {
	const { supply, fixtures, site } = plan;
	if (!supply || fixtures.length === 0) return [];
	const spot: Spot = { yard, units: site.units, of: 'the transformer', about: 'supply' };
	const kinds = ['LED', 'halogen'] as const;
	return [
		...listInput(
			{ ...spot, of: 'the lamps', about: 'lamps' },
			['power', 'lamp'],
			'power.lamp',
			'Kind of lamp',
			[0, 1],
			yard.power.lamp === 'halogen' ? 1 : 0,
			(k) => capital(kinds[k]!),
			(k) => (k === 1 ? 'halogen' : 'led')
		),
		...listInput(
			spot,
			circuit,
			'power.circuit.transformerVoltAmps',
			'Rating',
			transformers.map(({ voltAmps }) => voltAmps),
			supply.ratedVoltAmps,
			(rating) => `${rating} VA`,
			(transformerVoltAmps, { power }) => ({ ...power.circuit, transformerVoltAmps })
		),
		...supplyInputs(spot, yard),
		...runInputs(spot, plan)
	];
}
