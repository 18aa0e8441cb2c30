/** The circuit stage: a two-wire network gives volts and amperes. Knows nothing of yards. */
export type * from './types';
export {
	ampsLimit,
	awgSquareMillimetres,
	byThickness,
	loopOhms,
	ohmsPerKm,
	resistanceLaw,
	sizeName,
	squareMillimetres,
	usualSizes
} from './conductors';
export { filament, lampAt, leastVoltAmps, loadAmps, markedVoltAmps, window } from './lamps';
export type { Filament, LampAt } from './lamps';
export { isHard } from './judge';
export { solve } from './solve';
export { chooseBelow, chooseSupply } from './choose';
export * from './by-hand';
export * from './diagnose';
