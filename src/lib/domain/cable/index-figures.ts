/** The workings of the circuit's figures, for lessons: apart from the stage's face, so that pages that show none do not carry them. */
export {
	currentWorking,
	dropWorking,
	gapWorking,
	lampWorking,
	lightWorking,
	loadWorking,
	moreLampsWorking,
	ohmsWorking,
	roomWorking,
	terminalWorking,
	totalWorking,
	voltsIn,
	voltsWorking,
	type Case,
	type Names
} from './figures';
