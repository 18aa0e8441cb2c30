export { default as Packet } from './Packet.svelte';
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
