/** Answers that several questions offer. */
import type { Option } from './types';

export const levels: Option[] = [
	{ value: 'none', label: 'Leave it dark' },
	{ value: 'soft', label: 'Softly', help: 'Seen, without drawing the eye' },
	{ value: 'bright', label: 'Brightly', help: 'One of the things the eye goes to' }
];
export const yesNo: Option[] = [
	{ value: true, label: 'Yes' },
	{ value: false, label: 'No' }
];
export const floors: Option[] = [
	{ value: 'ground', label: 'Ground' },
	{ value: 'upper', label: 'Upper' }
];
export const finishes: Option[] = [
	{ value: 'light', label: 'Light', help: 'White or cream paint, pale stone' },
	{ value: 'medium', label: 'Medium', help: 'Tan brick, grey paint, weathered wood' },
	{ value: 'dark', label: 'Dark', help: 'Red or brown brick, dark paint, slate' }
];
export const textures: Option[] = [
	{ value: 'smooth', label: 'Smooth', help: 'Render, siding, paint' },
	{ value: 'rough', label: 'Rough', help: 'Stone or brick with deep joints' }
];
export const crossingKinds: Option[] = [
	{ value: 'sleeve', label: 'Sleeve', help: 'A pipe already lies under it' },
	{ value: 'joint', label: 'Joint', help: 'A gap with a strip in it, between two slabs' },
	{ value: 'bore', label: 'Bore', help: 'A hole that you are willing to make under it' }
];
/** How a walk or drive runs between the points of its line. */
export const courses: Option[] = [
	{ value: false, label: 'Straight' },
	{ value: true, label: 'In a curve' }
];
