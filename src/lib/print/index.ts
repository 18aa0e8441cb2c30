export { default as Packet } from './Packet.svelte';
export { planOnPaper } from './plan-on-paper';
export { readChoice, scaleChoices, type ScaleChoice } from './scale-choice';
export { detailPlan, fitPlan, papers, scales, type Fit, type Paper, type Scale } from './scale';
export {
	aimOf,
	crossingText,
	modelName,
	money,
	nodeNames,
	planCode,
	scheduleText,
	targetName,
	yardName
} from './words';
