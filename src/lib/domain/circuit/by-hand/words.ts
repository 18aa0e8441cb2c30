/** What a cause is called, and why it moves the volts: by the sign of `volts`, by hand less plan. */
import type { CableSize } from '../types';
import { annexG, tableCelsius, thumbCelsius } from './figures';
import { remembered } from './thumb';

interface Said {
	label: string;
	why: string;
}
const percent = (ratio: number): string => `${Math.abs((ratio - 1) * 100).toFixed(1)} %`;
const compared = (ratio: number): string => `${percent(ratio)} ${ratio < 1 ? 'less' : 'more'}`;

export const led = (volts: number): Said => ({
	label: 'LED lamps at their marked amps',
	why:
		volts < 0
			? 'Above 12 V an LED lamp draws fewer amps than its volt-amperes ÷ 12. By hand it is counted in full.'
			: 'Below 12 V an LED lamp draws more amps than its volt-amperes ÷ 12. By hand that is left out.'
});
export const halogen = (volts: number): Said => ({
	label: 'Halogen lamps at their marked amps',
	why:
		volts < 0
			? 'Below 12 V a halogen lamp draws fewer amps than its watts ÷ 12. By hand it is counted in full.'
			: 'Above 12 V a halogen lamp draws more amps than its watts ÷ 12. By hand that is left out.'
});
export const sag = (tapVolts: number, terminals: number): Said => ({
	label: 'No sag',
	why: `By hand the tap gives the ${tapVolts} V on its label. With all runs on, the plan has ${terminals.toFixed(3)} V there.`
});
export const tableCopper = (celsius: number, ratio: number): Said => ({
	label: `Copper at ${tableCelsius} °C`,
	why: `The handbook's table is for hot copper; the plan has it at ${celsius} °C. At ${tableCelsius} °C it resists ${compared(ratio)}.`
});
export const serviceCopper = (celsius: number, planned: number): Said => ({
	label: 'Copper warm from use',
	why: `The handbook takes ${annexG.warm} times the ohms at 20 °C. The plan, at ${celsius} °C, takes ${planned.toFixed(3)} times.`
});
export const strands = (ratio: number): Said => ({
	label: 'Plain copper, not strands',
	why: `The handbook starts from ${annexG.at20} Ω·mm²/m at 20 °C. Flexible strands, as the plan takes them, resist ${compared(ratio)}.`
});
/** `at`: where the load stands, as a share of the way out; branches count where they leave it. */
export const place = (at: number): Said => ({
	label: 'Load spread evenly',
	why: `The rule spreads the load evenly, as if all of it stood half-way out. Here it stands ${(at * 100).toFixed(0)} % of the way out, on the whole; a branch counts where it leaves the way.`
});
export const thumbCopper = (celsius: number, ratio: number): Said => ({
	label: `Copper at ${thumbCelsius} °C`,
	why: `The rule's constant fits copper at ${thumbCelsius} °C. At the plan's ${celsius} °C it resists ${compared(ratio)}.`
});
export function constant(size: CableSize, { taken, even }: { taken: number; even: number }): Said {
	const isOwn = size.system === 'awg' && size.size === remembered.gauge;
	const scaled = isOwn
		? 'from memory, a round figure'
		: `12 AWG's ${remembered.constant}, from memory, scaled to this cable's copper`;
	return {
		label: 'The constant itself',
		why: `An even load on this cable at ${thumbCelsius} °C makes it ${even.toFixed(0)}. The rule says ${taken}: ${scaled}.`
	};
}
