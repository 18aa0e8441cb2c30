/** Halogen lamps that the customer has: where the plan is for halogen they may stay; beside LEDs what they would cost. */
import { markedVoltAmps, sizeName, squareMillimetres, type CableSize, type Load } from '../circuit';
import { fixtureModels, transformers } from '../shared/catalogue';
import { lowestWords } from './circuit';
import { likeness } from './fits';
import { sameBut, thicker, type OwnedCircuit } from './owned-circuit';
import type { FixtureNeed, Judged, Owned, OwnedVerdict, ShelfTransformer } from './types';
import { counted, kindsCounted, kindWords, listed } from './words';

type Halogens = NonNullable<Owned['halogens']>;

/** Lumens of one watt: the mean of the catalogue's halogen lamps, from memory. */
const lumensPerWatt = (() => {
	const lamps = fixtureModels.flatMap(({ lamp }) => (lamp.kind === 'halogen' ? [lamp] : []));
	return lamps.reduce((sum, { lumens }) => sum + lumens, 0) / lamps.reduce((sum, { watts }) => sum + watts, 0);
})();
/** The window of rule cable.volts. */
const loadOf = (watts: number): Load => ({ kind: 'halogen', watts, ratedVolts: 12, minVolts: 10.8, maxVolts: 12 });

/** The need whose light comes nearest, of one kind of lamp; null: there is none. */
function nearest(needs: readonly FixtureNeed[], source: FixtureNeed['source'], lumens: number): FixtureNeed | null {
	const off = (need: FixtureNeed) => Math.abs(Math.log(need.lumens / lumens));
	return needs.filter((need) => need.source === source).toSorted((a, b) => off(a) - off(b))[0] ?? null;
}
const suits = (lumens: number, need: FixtureNeed): boolean =>
	lumens >= need.lumens * likeness.light.least && lumens <= need.lumens * likeness.light.most;

/** The first of a need's lights that hang on a run, as many as there are lamps for. */
function placesFor({ count, watts }: Halogens, need: FixtureNeed, { needs }: OwnedCircuit) {
	const fed = new Set(needs.runs.flatMap(({ shape }) => shape.loads.map(({ id }) => id)));
	const ids = need.fixtures.filter((id) => fed.has(id)).slice(0, count);
	return { ids, loads: new Map(ids.map((id) => [id, loadOf(watts)])) };
}

function inHalogenPlan(
	halogens: Halogens,
	need: FixtureNeed,
	circuit: OwnedCircuit
): Omit<OwnedVerdict, 'what' | 'name'> {
	const { ids, loads } = placesFor(halogens, need, circuit);
	const labels = listed(ids.map((id) => circuit.labels.get(id)!));
	const lumens = Math.round(halogens.watts * lumensPerWatt);
	if (!suits(lumens, need)) {
		const why = `At ${halogens.watts} W one gives about ${lumens} lm; the plan's ${kindWords(need.kind, 2)} want ${Math.round(need.lumens)}.`;
		return { verdict: 'replace', why, where: null };
	}
	const judged = sameBut(circuit, { loads });
	if (!judged.ok) return { verdict: 'replace', why: judged.problems[0]!.message, where: null };
	const all = halogens.count <= ids.length;
	const why = `The plan is for halogen, and ${counted(ids.length, 'lamp')} of ${halogens.watts} W ${ids.length === 1 ? 'serves' : 'serve'} at ${labels}. ${lowestWords(judged)}`;
	return { verdict: all ? 'keep' : 'reuse', why, where: all ? null : `at ${labels}` };
}

/** Large enough for anything a home has, so that only the copper decides. */
const ample: ShelfTransformer = transformers.at(-1)!;
interface Gauge {
	run: number;
	size: CableSize;
	judged: Judged;
}
/** What one run would have to be laid in, the thinnest first; null: no usual size is enough. */
function gaugeFor(run: number, loads: ReadonlyMap<string, Load>, circuit: OwnedCircuit): Gauge | null {
	const own = circuit.sizes[run]!;
	for (const size of [own, ...thicker(own)]) {
		const judged = sameBut(circuit, { loads, sizes: new Map([[run, size]]), transformer: ample, runs: [run] });
		if (judged.ok) return { run, size, judged };
	}
	return null;
}
function copperWords(run: number, loads: ReadonlyMap<string, Load>, circuit: OwnedCircuit): string {
	const { name } = circuit.needs.runs[run]!;
	const gauge = gaugeFor(run, loads, circuit);
	const own = sizeName(circuit.sizes[run]!);
	if (!gauge) return `No usual cable would give them their volts on ${name}.`;
	return squareMillimetres(gauge.size) > squareMillimetres(circuit.sizes[run]!)
		? `With them ${name} would want ${sizeName(gauge.size)} in place of ${own}.`
		: `${own} would still do on ${name}.`;
}

function besideLed(halogens: Halogens, need: FixtureNeed, circuit: OwnedCircuit): Omit<OwnedVerdict, 'what' | 'name'> {
	const { ids, loads } = placesFor(halogens, need, circuit);
	const isTheirs = new Set(ids);
	const hung = circuit.needs.runs.map(({ shape }) => shape.loads.filter(({ id }) => isTheirs.has(id)));
	const led = hung.flat().reduce((sum, { load }) => sum + markedVoltAmps(load), 0);
	const halogen = ids.length * halogens.watts;
	const run = hung.findIndex((loads0) => loads0.length === Math.max(...hung.map(({ length }) => length)));
	const amps = (voltAmps: number): string => `${(voltAmps / 12).toFixed(1)} A`;
	const verb = ids.length === 1 ? 'draws' : 'draw';
	const why = [
		'Beside LEDs they do not look alike.',
		`In place of ${kindsCounted(ids.length, need.kind)}, ${ids.length} of ${halogens.watts} W ${verb} ${Math.round(halogen)} VA, ${amps(halogen)} at 12 V; the LEDs there ${Math.round(led)} VA, ${amps(led)}.`,
		...(ids.length > 0 ? [copperWords(run, loads, circuit)] : [])
	].join(' ');
	return { verdict: 'replace', why, where: null };
}

/** By the need of their kind whose light they come nearest to; where the plan is for LED, of the LEDs. */
export function halogenVerdict(halogens: Halogens, circuit: OwnedCircuit): OwnedVerdict {
	const base = { what: 'halogens' as const, name: `${halogens.count} of ${halogens.watts} W halogen` };
	const lumens = halogens.watts * lumensPerWatt;
	const { fixtures } = circuit.needs;
	const own = nearest(fixtures, 'halogen', lumens);
	if (own) return { ...base, ...inHalogenPlan(halogens, own, circuit) };
	return { ...base, ...besideLed(halogens, nearest(fixtures, 'led', lumens)!, circuit) };
}
