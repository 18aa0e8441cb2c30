export * from './types';
export { chapters, fieldOf, questions } from './questions';
export { glossary, type Word } from './glossary';
export { fullPath, newItemId, readAnswer, writeAnswer, type Each } from './answers';
export { fieldStatus, fieldsOf, type FieldStatus } from './status';
export {
	chapterProgress,
	findStep,
	firstOpenStep,
	itemName,
	nextStep,
	previousStep,
	remaining,
	stepForPath,
	stepPath,
	stepTitle,
	stepsOf,
	stepsOfChapter,
	type Place,
	type Progress
} from './steps';
export { describeAnswer, describeBearing } from './describe';
export { keptAside, type KeptAnswer } from './kept';
