/** What the customer has already: keep it, use it where it can serve, or replace it; each solved on the plan's own runs. */
import { sizeName } from '../circuit';
import type { Plan } from '../plan';
import { lowestWords } from './circuit';
import { ownedCircuit, sameBut, type OwnedCircuit } from './owned-circuit';
import { halogenVerdict } from './owned-halogens';
import { transformerVerdict } from './owned-transformer';
import type { Needs, Owned, OwnedVerdict } from './types';
import { cableLength, inside, listed, sentence } from './words';

/** On which runs it is thick enough and long enough, in the plan's order, and of what is left. */
function cableVerdict({ size, metres }: NonNullable<Owned['cable']>, circuit: OwnedCircuit): OwnedVerdict {
	const { needs } = circuit;
	const base = {
		what: 'cable' as const,
		name: `${cableLength(metres, needs.units, false)} of ${sizeName(size)} cable`
	};
	const tried = needs.runs.map((run, r) => ({ run, judged: sameBut(circuit, { sizes: new Map([[r, size]]) }) }));
	const able = tried.filter(({ judged }) => judged.ok);
	let left = metres;
	const served = able.filter(({ run }) => {
		if (run.metres > left + 1e-9) return false;
		left -= run.metres;
		return true;
	});
	const names = listed(served.map(({ run }) => run.name));
	if (served.length > 0) {
		const places = new Map(served.map(({ run }) => [needs.runs.indexOf(run), size]));
		const together = sameBut(circuit, { sizes: places });
		if (together.ok) {
			const want = served.reduce((sum, { run }) => sum + run.metres, 0);
			const why = `${sentence(`${names} wants ${cableLength(want, needs.units, true)}, waste included`).replace(' wants', served.length > 1 ? ' want' : ' wants')} ${lowestWords(together)}`;
			const all = served.length === needs.runs.length;
			return { ...base, verdict: all ? 'keep' : 'reuse', why, where: all ? null : names };
		}
	}
	if (able.length > 0) {
		const shortest = Math.min(...able.map(({ run }) => run.metres));
		const why = `It is thick enough, and too short: the shortest run it could serve wants ${cableLength(shortest, needs.units, true)}, waste included.`;
		return { ...base, verdict: 'replace', why, where: null };
	}
	const why = `It is too thin: ${inside(tried[0]!.judged.problems[0]!.message)}`;
	return { ...base, verdict: 'replace', why, where: null };
}

/**
 * What of the customer's own things can serve the plan. A transformer must carry the load within 80 % of its rating and give every lamp its volts;
 * where it is not told, it has a 12 V tap alone. Cable must be thick and long enough for whole runs. Halogens stay where the plan
 * is for halogen; beside LEDs they do not look alike, and what they would cost in amperes and copper is said. Empty where nothing
 * is fed. `needs` are those of the plan.
 */
export function compareOwned(needs: Needs, plan: Plan, owned: Owned): OwnedVerdict[] {
	const circuit = ownedCircuit(needs, plan);
	if (!circuit) return [];
	return [
		...(owned.transformer ? [transformerVerdict(owned.transformer, circuit)] : []),
		...(owned.halogens && owned.halogens.count > 0 ? [halogenVerdict(owned.halogens, circuit)] : []),
		...(owned.cable ? [cableVerdict(owned.cable, circuit)] : [])
	];
}
